using Markdig.Extensions.TaskLists;
using Markdig.Helpers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Turns the inline tree of a block into cleaned text that knows its places.</summary>
/// <remarks>Pictures are left out (their words are not printed) unless a line has nothing else, footnote marks too; link text and code text are kept.</remarks>
internal sealed class InlineReader(SourceText source)
{
    private readonly MappedTextBuilder _builder = new(source);
    private int _lead;
    private bool _leadBold;

    /// <summary>The text of one or more leaf blocks as one row.</summary>
    public Row Read(LeafBlock leaf, RowKind kind, RowPlace place)
    {
        _lead = 0;
        if (leaf.Inline is not null)
        {
            AppendLine(leaf.Inline);
            if (kind == RowKind.Item && _builder.Length == 0)
            {
                AppendPictures(leaf.Inline);
            }
        }
        else
        {
            AppendRaw(leaf);
        }

        List<LineBreak> breaks = [];
        int lead = _builder.RemoveFootnoteMarks() && _lead > 0 ? Math.Min(_lead, _builder.Length) : _lead;
        MappedText text = _builder.Build(breaks);
        return new()
        {
            Kind = kind,
            Text = text,
            Breaks = breaks,
            Level = place.Level,
            Block = place.Block,
            Depth = place.Depth,
            Ordered = place.Ordered,
            LeadLength = Math.Min(lead, text.Text.Length),
            LeadBold = _leadBold,
        };
    }

    /// <summary>The cleaned text of a table cell.</summary>
    public MappedText ReadCell(ContainerBlock cell)
    {
        foreach (Block block in cell)
        {
            if (block is LeafBlock { Inline: not null } leaf)
            {
                _builder.AddBreak(leaf.Span.Start, leaf.Span.Start + 1, hard: false);
                Append(leaf.Inline);
            }
        }

        _builder.RemoveFootnoteMarks();
        return _builder.Build();
    }

    private void AppendLine(ContainerInline line)
    {
        bool first = true;
        foreach (Inline inline in line)
        {
            AppendOne(inline);
            if (first && inline is EmphasisInline emphasis && _builder.Length > 0)
            {
                _lead = _builder.Length;
                _leadBold = emphasis.DelimiterCount >= 2;
                first = false;
            }
            else if (_builder.Length > 0)
            {
                first = false;
            }
        }
    }

    private void Append(ContainerInline container)
    {
        foreach (Inline inline in container)
        {
            AppendOne(inline);
        }
    }

    // A line that is only a picture says what its words say.
    private void AppendPictures(ContainerInline line)
    {
        foreach (Inline inline in line)
        {
            if (inline is LinkInline { IsImage: true } picture)
            {
                Append(picture);
            }
        }
    }

    private void AppendOne(Inline inline)
    {
        switch (inline)
        {
            case LiteralInline literal:
                AppendLiteral(literal.Content, literal.Span);
                break;
            case LineBreakInline lineBreak:
                _builder.AddBreak(lineBreak.Span.Start, lineBreak.Span.Start + 1, lineBreak.IsHard);
                break;
            case HtmlEntityInline entity:
                AppendWhole(entity.Transcoded, entity.Span);
                break;
            case CodeInline code:
                AppendCode(code);
                break;
            case AutolinkInline link:
                AppendLiteral(new StringSlice(link.Url), link.Span);
                break;
            case HtmlInline html when html.Tag.StartsWith("<br", StringComparison.OrdinalIgnoreCase):
                _builder.AddBreak(html.Span.Start, html.Span.End + 1, hard: true);
                break;
            case LinkInline { IsImage: true }:
                break;
            case LinkInline { Label: { Length: > 0 } label } when label[0] == '^':
                break;
            case DelimiterInline delimiter:
                AppendLiteral(new StringSlice(delimiter.ToLiteral()), delimiter.Span);
                Append(delimiter);
                break;
            case ContainerInline container:
                Append(container);
                break;
            case HtmlInline or TaskList:
            default:
                break;
        }
    }

    private void AppendLiteral(StringSlice content, Markdig.Syntax.SourceSpan span) => AppendLiteral(content, span.Start, span.End + 1);

    /// <summary>Follows the content through the source units it came from, stepping over escapes.</summary>
    private void AppendLiteral(StringSlice content, int from, int to)
    {
        string body = source.Body;
        ReadOnlySpan<char> words = content.AsSpan();
        if (to - from == words.Length && from >= 0 && to <= body.Length && body.AsSpan(from, words.Length).SequenceEqual(words) && words.IndexOf("~~") < 0)
        {
            _builder.AddBody(from, to);
            return;
        }

        int at = Math.Clamp(from, 0, body.Length);
        to = Math.Clamp(to, at, body.Length);
        bool lost = false;
        for (int i = content.Start; i <= content.End; i++)
        {
            char c = content.Text[i];
            int seek = at;
            while (!lost && seek < to && body[seek] != c && !(c == '\uFFFD' && body[seek] == '\0'))
            {
                seek++;
            }

            if (lost || seek >= to)
            {
                lost = true;
                seek = Math.Max(from, Math.Min(at, to - 1));
            }

            if (c == '~' && i < content.End && content.Text[i + 1] == '~')
            {
                i++;
                at = Math.Min(seek + 2, to);
                continue;
            }

            _builder.Add(c, Math.Min(seek, Math.Max(0, body.Length - 1)), Math.Min(seek + 1, body.Length));
            at = Math.Min(seek + 1, to);
        }
    }

    /// <summary>Code over several lines is read from the source: the library's content differs between line ends.</summary>
    private void AppendCode(CodeInline code)
    {
        string body = source.Body;
        int from = Math.Clamp(code.Span.Start + code.DelimiterCount, 0, body.Length);
        int to = Math.Clamp(code.Span.End + 1 - code.DelimiterCount, from, body.Length);
        if (body.AsSpan(from, to - from).IndexOfAny('\n', '\r') < 0)
        {
            AppendLiteral(new StringSlice(code.Content), code.Span);
            return;
        }

        for (int at = from; at < to; at++)
        {
            if (body[at] is not ('\n' or '\r'))
            {
                _builder.Add(body[at] == '\0' ? '\uFFFD' : body[at], at, at + 1);
                continue;
            }

            _builder.AddBreak(at, at + 1, hard: false);
            while (at + 1 < to && body[at + 1] is ' ' or '\t' or '>' or '\n' or '\r')
            {
                at++;
            }
        }
    }

    private void AppendWhole(StringSlice content, Markdig.Syntax.SourceSpan span)
    {
        for (int i = content.Start; i <= content.End; i++)
        {
            _builder.Add(content.Text[i], span.Start, span.End + 1);
        }
    }

    private void AppendRaw(LeafBlock leaf)
    {
        for (int i = 0; i < leaf.Lines.Count; i++)
        {
            StringLine line = leaf.Lines.Lines[i];
            if (i > 0)
            {
                _builder.AddBreak(Math.Max(0, line.Position - 1), line.Position, hard: true);
            }

            AppendLiteral(line.Slice, line.Position, line.Position + line.Slice.Length);
        }
    }
}
