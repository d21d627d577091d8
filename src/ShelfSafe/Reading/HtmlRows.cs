using System.Net;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Reads the words of an HTML block: list items, headings, table rows and paragraphs become rows.</summary>
/// <remarks>Known gap: attributes, styles and scripts are not read; text hidden by a style counts as printed.</remarks>
internal sealed class HtmlRows
{
    private readonly SourceText _source;
    private readonly List<Row> _rows;
    private readonly MappedTextBuilder _builder;
    private readonly List<MappedText> _cells = [];
    private int _block;
    private int _level;
    private bool _inItem;
    private bool _ordered;
    private bool _noMoreTags;

    private HtmlRows(SourceText source, List<Row> rows)
    {
        _source = source;
        _rows = rows;
        _builder = new(source);
    }

    /// <summary>Adds the rows of the body from <paramref name="start"/> to <paramref name="end"/>.</summary>
    public static void Read(SourceText source, int start, int end, List<Row> rows, ref int blocks)
    {
        HtmlRows reader = new(source, rows) { _block = ++blocks };
        end = Math.Min(end, source.Body.Length);
        for (int at = Math.Max(0, start); at < end;)
        {
            at = reader.Step(at, end);
        }

        reader.Flush();
        reader.FlushCells();
    }

    private int Step(int at, int end)
    {
        char c = _source.Body[at];
        if (c == '<' && !_noMoreTags && at + 1 < end && (char.IsAsciiLetter(_source.Body[at + 1]) || _source.Body[at + 1] is '/' or '!'))
        {
            return Tag(at, end);
        }

        if (c == '&' && Entity(at, end) is > 0 and int length)
        {
            return at + length;
        }

        if (c is '\n' or '\r')
        {
            _builder.AddBreak(at, at + 1, hard: false);
        }
        else if (c != '\t' || _builder.Length > 0)
        {
            _builder.Add(c, at, at + 1);
        }

        return at + 1;
    }

    private int Tag(int at, int end)
    {
        ReadOnlySpan<char> body = _source.Body.AsSpan(0, end);
        bool comment = body[at..].StartsWith("<!--", StringComparison.Ordinal);
        int close = comment ? body[at..].IndexOf("-->", StringComparison.Ordinal) : body[at..].IndexOf('>');
        if (close < 0)
        {
            _noMoreTags = !comment;
            return comment ? end : at;
        }

        int after = at + close + (comment ? 3 : 1);
        if (!comment)
        {
            bool closing = body[at + 1] == '/';
            int from = at + (closing ? 2 : 1);
            int to = from;
            while (to < after && char.IsAsciiLetterOrDigit(body[to]))
            {
                to++;
            }

            string name = body[from..to].ToString().ToLowerInvariant();
            if (name is "script" or "style" && !closing)
            {
                int stop = body[after..].IndexOf("</", StringComparison.Ordinal);
                return stop < 0 ? end : after + stop;
            }

            Act(name, closing, at, after);
        }

        return after;
    }

    private void Act(string name, bool closing, int at, int after)
    {
        switch (name)
        {
            case "br":
                _builder.AddBreak(at, after, hard: true);
                break;
            case "li" or "dt" or "dd":
                Flush();
                _inItem = !closing;
                break;
            case "ul" or "ol":
                Flush();
                _ordered = name == "ol" && !closing;
                break;
            case "td" or "th":
                if (closing || _builder.Length > 0)
                {
                    _cells.Add(_builder.Build());
                }

                break;
            case "tr" or "table":
                FlushCells();
                break;
            case "h1" or "h2" or "h3" or "h4" or "h5" or "h6":
                Flush();
                _level = closing ? 0 : name[1] - '0';
                break;
            case "p" or "div" or "section" or "article" or "details" or "summary" or "figure" or "figcaption" or "blockquote" or "dl" or "hr" or "pre":
                Flush();
                break;
            default:
                break;
        }
    }

    private int Entity(int at, int end)
    {
        int semicolon = _source.Body.AsSpan(at, Math.Min(end - at, 33)).IndexOf(';');
        if (semicolon < 2)
        {
            return 0;
        }

        string decoded = WebUtility.HtmlDecode(_source.Body.Substring(at, semicolon + 1));
        if (decoded.Length > 2)
        {
            return 0;
        }

        foreach (char c in decoded)
        {
            _builder.Add(c, at, at + semicolon + 1);
        }

        return semicolon + 1;
    }

    private void Flush()
    {
        List<LineBreak> breaks = [];
        MappedText text = _builder.Build(breaks);
        if (text.Text.Length == 0)
        {
            return;
        }

        if (_cells.Count > 0)
        {
            _cells.Add(text);
            return;
        }

        _rows.Add(new()
        {
            Kind = _level > 0 ? RowKind.Heading : _inItem ? RowKind.Item : RowKind.Paragraph,
            Text = text,
            Breaks = breaks,
            Level = _level,
            Block = _inItem ? _block : 0,
            Depth = _inItem ? 1 : 0,
            Ordered = _ordered,
        });
    }

    private void FlushCells()
    {
        if (_cells.Count == 0)
        {
            Flush();
            return;
        }

        Flush();
        Row row = TableText.Join([.. _cells], _block, isHeader: false);
        _cells.Clear();
        if (row.Text.Text.Length > 0)
        {
            _rows.Add(row);
        }
    }
}
