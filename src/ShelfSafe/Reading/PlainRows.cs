using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Reads text line by line: plain text, and Markdown that the library refuses.</summary>
internal sealed class PlainRows
{
    private readonly SourceText _source;
    private readonly List<Row> _rows = [];
    private readonly MappedTextBuilder _builder;
    private int _block;
    private bool _inList;

    private PlainRows(SourceText source, int blocks)
    {
        _source = source;
        _builder = new(source);
        _block = blocks;
    }

    /// <summary>The rows of the text.</summary>
    public static List<Row> Read(SourceText source, int firstBlock)
    {
        PlainRows reader = new(source, firstBlock);
        string body = source.Body;
        for (int start = 0; start < body.Length;)
        {
            int length = body.AsSpan(start).IndexOfAny('\n', '\r');
            int end = length < 0 ? body.Length : start + length;
            reader.ReadLine(start, end);
            start = end + 1 < body.Length && body[end] == '\r' && body[end + 1] == '\n' ? end + 2 : end + 1;
        }

        reader.Flush();
        return reader._rows;
    }

    private void ReadLine(int start, int end)
    {
        string body = _source.Body;
        while (start < end && TextMarks.IsBlank(body[start]))
        {
            start++;
        }

        if (start == end)
        {
            Flush();
            return;
        }

        int mark = Marker(body, start, end, out bool ordered);
        if (mark > start)
        {
            Flush();
            _block += _inList ? 0 : 1;
            _inList = true;
            Add(RowKind.Item, mark, end, new(Block: _block, Depth: 1, Ordered: ordered));
            return;
        }

        if (HeadingLevel(body.AsSpan(start, end - start)) is var level and > 0)
        {
            Flush();
            _inList = false;
            Add(RowKind.Heading, start + level, end, new(Level: level));
            return;
        }

        _inList = false;
        if (_builder.Length > 0)
        {
            _builder.AddBreak(start - 1, start, hard: false);
        }

        _builder.AddBody(start, end);
    }

    // 1 to 6 number signs and a space; 0 where the line is no heading.
    private static int HeadingLevel(ReadOnlySpan<char> line)
    {
        int level = line.IndexOfAnyExcept('#');
        return level is > 0 and < 7 && line[level] == ' ' ? level : 0;
    }

    private static int Marker(string body, int start, int end, out bool ordered)
    {
        int at = start;
        bool any = false;
        ordered = false;
        while (at < end)
        {
            int digits = at;
            while (digits < end && digits - at < 4 && char.IsAsciiDigit(body[digits]))
            {
                digits++;
            }

            bool spaced(int place) => place < end && TextMarks.IsBlank(body[place]);
            if (digits > at && !any && digits < end && body[digits] is '.' or ')' && spaced(digits + 1))
            {
                ordered = true;
                at = digits + 2;
            }
            else if (TextMarks.IsBullet(body[at]) || (body[at] is '-' or '*' or '+' or '–' or '>' && spaced(at + 1)))
            {
                at++;
            }
            else if (any && TextMarks.IsBlank(body[at]))
            {
                at++;
                continue;
            }
            else
            {
                break;
            }

            any = true;
        }

        return any ? at : start;
    }

    private void Add(RowKind kind, int start, int end, RowPlace place)
    {
        _builder.AddBody(start, end);
        MappedText text = _builder.Build();
        if (text.Text.Length > 0)
        {
            _rows.Add(new()
            {
                Kind = kind, Text = text, Level = place.Level, Block = place.Block, Depth = place.Depth, Ordered = place.Ordered,
            });
        }
    }

    private void Flush()
    {
        List<LineBreak> breaks = [];
        MappedText text = _builder.Build(breaks);
        if (text.Text.Length > 0)
        {
            _rows.Add(new() { Kind = RowKind.Paragraph, Text = text, Breaks = breaks });
        }
    }
}
