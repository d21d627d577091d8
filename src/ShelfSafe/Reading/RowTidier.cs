using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Finds the headings, labels and bullets that were written without Markdown's own marks.</summary>
internal sealed class RowTidier
{
    /// <summary>Level of a line that acts as a known heading ("**Method**").</summary>
    public const int KnownLevel = 8;

    /// <summary>Level of any other label ("**Sauce**").</summary>
    public const int LabelLevel = 9;

    private const int LongestLabel = 70;

    private readonly List<Row> _rows;
    private readonly List<Row> _tidy;
    private int _block;

    private RowTidier(List<Row> rows)
    {
        _rows = rows;
        _tidy = new(rows.Count + 8);
    }

    /// <summary>The rows with such lines turned into headings and items.</summary>
    public static List<Row> Tidy(List<Row> rows)
    {
        RowTidier tidier = new(rows);
        foreach (Row row in rows)
        {
            tidier._block = Math.Max(tidier._block, row.Block);
        }

        for (int i = 0; i < rows.Count; i++)
        {
            tidier.Take(i);
        }

        return tidier._tidy;
    }

    private void Take(int index)
    {
        Row row = _rows[index];
        if (row.Kind == RowKind.Heading)
        {
            bool isLine = row.Breaks.Count > 0 || (_tidy.Count > 0 && AmountScan.Look(row.Text.Text) is { AtStart: true, Measured: true });
            if (isLine)
            {
                TakeParagraph(AsParagraph(row), index);
            }
            else
            {
                _tidy.Add(row);
            }
        }
        else if (row.Kind == RowKind.Paragraph)
        {
            TakeParagraph(row, index);
        }
        else
        {
            _tidy.Add(row);
        }
    }

    private void TakeParagraph(Row row, int index)
    {
        if (RowSigns.IsBulleted(row))
        {
            AddItems(row);
            return;
        }

        int from = 0;
        for (int i = 0; i < row.Breaks.Count; i++)
        {
            int lineStart = i == 0 ? 0 : row.Breaks[i - 1].Index + 1;
            int lineEnd = row.Breaks[i].Index;
            if (IsLabelLine(row, lineStart, lineEnd, first: i == 0))
            {
                AddPart(row, from, lineStart, index, last: false);
                AddLabel(row.Text.Cut(lineStart, lineEnd));
                from = lineEnd + 1;
            }
        }

        AddPart(row, from, row.Text.Text.Length, index, last: true);
    }

    private void AddPart(Row row, int from, int to, int index, bool last)
    {
        if (from >= to)
        {
            return;
        }

        Row part = from == 0 && to == row.Text.Text.Length ? row : Slice(row, from, to);
        if (part.Text.Text.Length == 0)
        {
            return;
        }

        if (part.Breaks.Count == 0 && last && IsWholeLabel(part, index))
        {
            AddLabel(part.Text);
            return;
        }

        if (RowSigns.IsBulleted(part))
        {
            AddItems(part);
            return;
        }

        AddWithInlineLabel(part, last && NextIsList(index));
    }

    /// <summary>Whether a paragraph of one line does a heading's work.</summary>
    private bool IsWholeLabel(Row row, int index)
    {
        string text = row.Text.Text;
        if (text.Length > LongestLabel || row.Shape is { IsTiming: true } or { StartsWithAmount: true } || YieldFinder.Find(text) is not null)
        {
            return false;
        }

        if (row.AllLead && text[^1] is not ('.' or '!' or '?' or ','))
        {
            return row.LeadBold || NextIsList(index) || IsKnown(row.Announces);
        }

        bool colon = text[^1] is ':' or '：';
        HeadingKind kind = row.Announces;
        int words = row.Shape.Words;
        bool bare = words <= 4 && NextIsList(index) && _tidy.Count > 0 && char.IsLetter(text[^1]) && char.IsUpper(FirstLetter(text));
        return bare || colon ? NextIsList(index) && (words <= 6 || IsKnown(kind)) : IsKnown(kind) && IsBareLabel(text, kind, words);
    }

    private static bool IsLabelLine(Row row, int start, int end, bool first)
    {
        while (end > start && TextMarks.IsBlank(row.Text.Text[end - 1]))
        {
            end--;
        }

        ReadOnlySpan<char> line = row.Text.Text.AsSpan(start, end - start);
        if (line.Length is 0 or > LongestLabel)
        {
            return false;
        }

        bool lead = first && row.LeadLength > 0 && line[Math.Min(row.LeadLength, line.Length)..].TrimEnd().TrimEnd(':').IsEmpty && row.LeadBold;
        bool colon = line[^1] is ':' or '：';
        string text = line.ToString();
        HeadingKind kind = HeadingWords.Classify(text);
        LineShape shape = LineShape.Of(text);
        if (shape.IsTiming || shape.StartsWithAmount)
        {
            return false;
        }

        return lead || (colon && (first || IsKnown(kind)) && shape.Words <= 6) || (IsKnown(kind) && IsBareLabel(text, kind, shape.Words));
    }

    /// <summary>"Ingredients" or "METHOD" alone on a line.</summary>
    private static bool IsBareLabel(string text, HeadingKind kind, int words) =>
        words <= 2 && char.IsUpper(FirstLetter(text)) && text[^1] is not ('.' or '!' or ',' or ';')
        && (kind is HeadingKind.Ingredients or HeadingKind.Equipment || (kind is HeadingKind.Method or HeadingKind.Note && words == 1));

    private static char FirstLetter(string text)
    {
        foreach (char c in text)
        {
            if (char.IsLetter(c))
            {
                return c;
            }
        }

        return ' ';
    }

    private static bool IsKnown(HeadingKind kind) => kind is not (HeadingKind.Name or HeadingKind.Group or HeadingKind.Introduction);

    private void AddLabel(MappedText text)
    {
        HeadingKind kind = HeadingWords.Classify(text.Text);
        int level = IsKnown(kind) && kind is not HeadingKind.Serving ? KnownLevel : LabelLevel;
        _tidy.Add(new() { Kind = RowKind.Heading, Text = text, Level = level });
    }

    private void AddWithInlineLabel(Row row, bool beforeList)
    {
        string text = row.Text.Text;
        int colon = text.AsSpan(0, Math.Min(text.Length, 48)).IndexOf(':');
        if (colon > 0 && colon + 1 < text.Length && TextMarks.IsBlank(text[colon + 1]) && !row.Shape.IsTiming)
        {
            HeadingKind kind = HeadingWords.Classify(text.AsSpan(0, colon));
            bool bold = row.LeadBold && row.LeadLength >= colon && row.LeadLength <= colon + 1;
            int words = LineShape.Of(text[..colon]).Words;
            bool tools = kind == HeadingKind.Needs && LineShape.Of(text[(colon + 1)..]) is { IsEquipment: true } && !ParagraphLines.IsListOfAmounts(text[(colon + 1)..]);
            if (kind is HeadingKind.Ingredients or HeadingKind.Needs && words <= 5 && !tools)
            {
                AddLabel(row.Text.Cut(0, colon));
                _tidy.Add(Slice(row, colon + 1, text.Length));
                return;
            }

            if ((IsKnown(kind) || bold || kind == HeadingKind.Group) && words <= 5)
            {
                _tidy.Add(Slice(row, colon + 1, text.Length, text[..colon]));
                return;
            }
        }

        _tidy.Add(row);
        if (beforeList && text[^1] is ':' && HeadingWords.Classify(text) is HeadingKind.Ingredients or HeadingKind.Needs)
        {
            _tidy.Add(new() { Kind = RowKind.Heading, Text = row.Text.Cut(Math.Max(0, text.LastIndexOf(' ')), text.Length), Level = LabelLevel });
        }
    }

    private bool NextIsList(int index) => index + 1 < _rows.Count && (_rows[index + 1].Kind is RowKind.Item or RowKind.TableRow or RowKind.Code
        || (_rows[index + 1].Kind == RowKind.Paragraph && RowSigns.IsBulleted(_rows[index + 1])));

    private void AddItems(Row row)
    {
        _block++;
        int from = 0;
        for (int i = 0; i <= row.Breaks.Count; i++)
        {
            int to = i < row.Breaks.Count ? row.Breaks[i].Index : row.Text.Text.Length;
            int start = from;
            while (start < to && (RowSigns.IsDash(row.Text.Text, start) || TextMarks.IsBlank(row.Text.Text[start])))
            {
                start++;
            }

            MappedText text = row.Text.Cut(start, to);
            if (text.Text.Length > 0)
            {
                _tidy.Add(new() { Kind = RowKind.Item, Text = text, Block = _block, Depth = 1 });
            }

            from = to + 1;
        }
    }

    private static Row AsParagraph(Row row) => new()
    {
        Kind = RowKind.Paragraph, Text = row.Text, Breaks = row.Breaks, LeadLength = row.LeadLength, LeadBold = row.LeadBold,
    };

    private static Row Slice(Row row, int from, int to, string? label = null)
    {
        string all = row.Text.Text;
        while (from < to && TextMarks.IsBlank(all[from]))
        {
            from++;
        }

        MappedText text = row.Text.Cut(from, to);
        List<LineBreak> breaks = [];
        foreach (LineBreak at in row.Breaks)
        {
            if (at.Index > from && at.Index < from + text.Text.Length)
            {
                breaks.Add(at with { Index = at.Index - from });
            }
        }

        return new()
        {
            Kind = row.Kind, Text = text, Breaks = breaks, Block = row.Block, Depth = row.Depth, Label = label,
            LeadLength = from == 0 ? row.LeadLength : 0, LeadBold = row.LeadBold,
        };
    }
}
