using Markdig.Extensions.Tables;
using Markdig.Syntax;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Flattens a parsed Markdown document into rows in reading order.</summary>
internal sealed class MarkdownRows
{
    private readonly SourceText _source;
    private readonly InlineReader _inlines;
    private readonly List<Row> _rows = [];
    private int _blocks;

    private MarkdownRows(SourceText source, int blocks)
    {
        _source = source;
        _inlines = new(source);
        _blocks = blocks;
    }

    /// <summary>The rows of a document.</summary>
    /// <param name="firstBlock">Number of lists that were read before, so that numbers stay unique.</param>
    public static List<Row> Read(MarkdownDocument document, SourceText source, int firstBlock)
    {
        MarkdownRows reader = new(source, firstBlock);
        reader.ReadBlocks(document, block: 0, depth: 0);
        return reader._rows;
    }

    private void ReadBlocks(ContainerBlock container, int block, int depth)
    {
        foreach (Block child in container)
        {
            ReadBlock(child, block, depth);
        }
    }

    private void ReadBlock(Block child, int block, int depth)
    {
        switch (child)
        {
            case HeadingBlock heading:
                Keep(_inlines.Read(heading, RowKind.Heading, new(Level: heading.Level)));
                break;
            case ListBlock list:
                ReadList(list, block == 0 ? ++_blocks : block, depth + 1);
                break;
            case Table table:
                ReadTable(table);
                break;
            case HtmlBlock html:
                HtmlRows.Read(_source, html.Span.Start, html.Span.End + 1, _rows, ref _blocks);
                break;
            case CodeBlock code:
                Keep(_inlines.Read(code, RowKind.Code, new(Block: block, Depth: depth)));
                break;
            case LinkReferenceDefinitionGroup group:
                ReadFootnotes(group);
                break;
            case ContainerBlock inner:
                ReadBlocks(inner, block, depth);
                break;
            case ParagraphBlock paragraph:
                Keep(_inlines.Read(paragraph, RowKind.Paragraph, new(Block: block, Depth: depth)));
                break;
            default:
                break;
        }
    }

    private void ReadList(ListBlock list, int block, int depth)
    {
        foreach (Block child in list)
        {
            if (child is not ListItemBlock item)
            {
                continue;
            }

            Row? own = null;
            foreach (Block part in item)
            {
                if (own is null && part is LeafBlock leaf and not HtmlBlock and not ThematicBreakBlock)
                {
                    own = _inlines.Read(leaf, RowKind.Item, new(Block: block, Depth: depth, Ordered: list.IsOrdered));
                    Keep(own);
                    continue;
                }

                if (own is not null && part is ListBlock)
                {
                    own.HasChildren = true;
                }

                ReadBlock(part, block, depth);
            }
        }
    }

    private void ReadTable(Table table)
    {
        int block = ++_blocks;
        foreach (Block child in table)
        {
            if (child is not TableRow row)
            {
                continue;
            }

            List<MappedText> cells = [];
            foreach (Block cell in row)
            {
                if (cell is ContainerBlock content)
                {
                    cells.Add(_inlines.ReadCell(content));
                }
            }

            Keep(TableText.Join(cells, block, row.IsHeader));
        }
    }

    /// <summary>A footnote of one word looks like a link's address to Markdown; its text must not be lost.</summary>
    private void ReadFootnotes(LinkReferenceDefinitionGroup group)
    {
        foreach (Block child in group)
        {
            if (child is LinkReferenceDefinition { Label: { Length: > 0 } label } note && label[0] == '^')
            {
                int from = _source.Body.IndexOf(':', note.Span.Start, note.Span.Length);
                MappedTextBuilder builder = new(_source);
                builder.AddBody(from < 0 ? note.Span.Start : from + 1, note.Span.End + 1);
                Keep(new() { Kind = RowKind.Paragraph, Text = builder.Build() });
            }
        }
    }

    private void Keep(Row row)
    {
        if (row.Text.Text.Length > 0)
        {
            _rows.Add(row);
        }
    }
}
