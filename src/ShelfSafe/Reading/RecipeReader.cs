using System.Collections.Immutable;
using Markdig;
using Markdig.Syntax;
using ShelfSafe.Core;
using SourceSpan = ShelfSafe.Core.SourceSpan;

namespace ShelfSafe.Reading;

/// <summary>Reads a recipe from Markdown or plain text. Any text gives a recipe, never an exception.</summary>
internal sealed class RecipeReader
{
    /// <summary>Above this many UTF-16 units a text is read line by line: no recipe is that long.</summary>
    private const int LargestMarkdown = 1_000_000;

    // A longer first line is talk and no title.
    private const int LongestOpening = 60;

    // A text without a bar has no table, and looking for one costs a walk over all that was read.
    private readonly Lazy<MarkdownPipeline> _plain = new(static () => Usual().Build());
    private readonly Lazy<MarkdownPipeline> _tables = new(static () => Usual().UsePipeTables().Build());

    private readonly Memo<string, RowLook> _looks = new();

    /// <summary>Reads a text.</summary>
    /// <param name="text">The file as it stands, a byte-order mark included.</param>
    /// <param name="plainText">Whether the text is not Markdown: its lines are lines.</param>
    public Recipe Read(string text, bool plainText = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<ReadingProblem> problems = [];
        FrontMatter front = FrontMatter.Read(text, text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0);
        SourceText source = SourceText.From(text, front.End);
        List<Row> rows = RowTidier.Tidy(Known(ReadRows(source, plainText, front.Blocks, problems)));
        rows.InsertRange(0, front.Rows);
        List<SortedLine> lines = BlockSorter.Sort(rows, front.Rows.Count);
        ImmutableArray<RecipePart> parts = PartSplitter.Split(lines, rows, text.Length);
        if (IsEmpty(parts))
        {
            problems.Add(new("no-ingredients", new(0, Math.Min(text.Length, 1))));
        }

        return new(text, front.Title ?? TitleOf(rows, lines, plainText), front.Yield ?? YieldOf(rows, lines), parts, [.. problems]);
    }

    private static MarkdownPipelineBuilder Usual() => new MarkdownPipelineBuilder().UsePreciseSourceLocation().UseTaskLists();

    private List<Row> ReadRows(SourceText source, bool plainText, int blocks, List<ReadingProblem> problems)
    {
        if (source.DeepAt >= 0)
        {
            problems.Add(new("nesting", At(source, source.DeepAt)));
        }

        bool large = source.Body.Length > LargestMarkdown;
        if (large)
        {
            problems.Add(new("too-large", At(source, LargestMarkdown)));
        }

        if (source.LongAt >= 0)
        {
            problems.Add(new("line-too-long", At(source, source.LongAt)));
        }

        if (plainText || large || source.LongAt >= 0)
        {
            return PlainRows.Read(source, blocks);
        }

        MarkdownDocument document;
        try
        {
            document = Markdown.Parse(source.Body, (source.Body.AsSpan().Contains('|') ? _tables : _plain).Value);
        }
        catch (ArgumentException)
        {
            // The library's own depth limit: inline marks can nest too, and only the parse can tell.
            problems.Add(new("nesting", At(source, 0)));
            return PlainRows.Read(source, blocks);
        }

        return MarkdownRows.Read(document, source, blocks);
    }

    // Cooks write "1 tsp salt" in every other recipe, and "Method" in all.
    private List<Row> Known(List<Row> rows)
    {
        foreach (Row row in rows)
        {
            string text = row.Text.Text;
            row.Look = _looks.TryGet(text, out RowLook? known) ? known : _looks.Keep(text, text.Length, row.Look);
            row.Text.Look = row.Look.Words;
        }

        return rows;
    }

    private static SourceSpan At(SourceText source, int body)
    {
        int start = source.ToFile(body);
        return source.Body.Length == 0 ? new(0, 0) : new(start, start + 1);
    }

    private static bool IsEmpty(ImmutableArray<RecipePart> parts)
    {
        foreach (RecipePart part in parts)
        {
            if (part.Ingredients.Length > 0)
            {
                return false;
            }
        }

        return true;
    }

    // In Markdown a short line of its own at the top is the title too, where no heading is one.
    private static string? TitleOf(List<Row> rows, List<SortedLine> lines, bool plainText)
    {
        string? opening = null;
        foreach (Row row in rows)
        {
            if (row.Kind == RowKind.Heading && (row.Level == 1 || row.Announces is HeadingKind.Name or HeadingKind.Group))
            {
                return row.Text.Text.TrimEnd(':', ' ');
            }

            if (row.Kind != RowKind.Paragraph)
            {
                continue;
            }

            string text = row.Text.Text;
            int line = row.Breaks.Count > 0 ? row.Breaks[0].Index : text.Length;
            if (line <= LongestOpening && text[line - 1] is not ('.' or ':' or ',') && !AmountScan.StartsWithAmount(text))
            {
                if (plainText)
                {
                    return text[..line];
                }

                opening ??= ReferenceEquals(row, rows[0]) && line == text.Length && !lines.Exists(own => own.IsIngredient && own.Text.Span == row.Text.Span) ? text : null;
            }
        }

        return opening;
    }

    private static string? YieldOf(List<Row> rows, List<SortedLine> lines)
    {
        foreach (Row row in rows)
        {
            if (row.Kind == RowKind.Heading && YieldFinder.Find(row.Text) is { } printed)
            {
                return printed;
            }
        }

        foreach (SortedLine line in lines)
        {
            if (!line.IsIngredient && YieldFinder.Find(line.Text) is { } printed)
            {
                return printed;
            }
        }

        return null;
    }
}
