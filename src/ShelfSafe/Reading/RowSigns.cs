using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>What the words of one row show about its place in a recipe.</summary>
internal static class RowSigns
{
    /// <summary>Whether a cell of a table row is or begins with an amount.</summary>
    public static bool CellHasAmount(Row row)
    {
        foreach (MappedText cell in row.Cells)
        {
            if (cell.Text.Length > 0 && AmountScan.NumberEnd(cell.Text, 0) == cell.Text.Length || AmountScan.StartsWithAmount(cell.Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The names of the columns, inside a table of foods.</summary>
    public static bool IsColumnNames(Row row, LineShape shape) => row.IsHeader && (!shape.HasAmount || YieldFinder.IsBare(row.Text.Text));

    /// <summary>A table row that names a group: one filled cell of several, with a colon or the words of a group.</summary>
    public static bool IsGroupRow(Row row, LineShape shape)
    {
        int filled = 0;
        foreach (MappedText cell in row.Cells)
        {
            filled += cell.Text.Length > 0 ? 1 : 0;
        }

        if (filled != 1 || shape.HasAmount || row.Cells.Count < 2)
        {
            return false;
        }

        string text = row.Text.Text;
        HeadingKind kind = HeadingWords.Classify(text);
        return text[^1] == ':' || kind is HeadingKind.Serving || (kind is HeadingKind.Group && text.StartsWith("for ", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A table with a food and its amount in every cell: "| 4 cups berries | 3 cups sugar |".</summary>
    public static bool EachCellIsFood(Row row)
    {
        foreach (MappedText cell in row.Cells)
        {
            if (cell.Text.Length > 0 && !(AmountScan.StartsWithAmount(cell.Text) && ProsePhrases.HasFoodWord(cell.Text)))
            {
                return false;
            }
        }

        return row.Cells.Count > 1;
    }

    /// <summary>A direction or remark that strayed into the list of foods.</summary>
    public static bool IsRemark(Row row, LineShape shape)
    {
        if (shape.StartsWithAmount || shape.Words < 5)
        {
            return false;
        }

        string text = row.Text.Text;
        bool sentence = text[^1] is '.' or '!';
        bool states = text.Contains(" are ", StringComparison.Ordinal) || text.Contains(" is ", StringComparison.Ordinal)
            || text.Contains(" you ", StringComparison.Ordinal) || text.StartsWith("If ", StringComparison.Ordinal);
        return (shape.IsVerb && (sentence || shape.Words > 6) && !shape.HasAmount)
            || (row.Depth > 1 && sentence && states && shape.Words > 7 && !shape.HasAmount);
    }

    /// <summary>"The following can be used" over a deeper list names no food.</summary>
    public static bool IsIntroducing(string text) => text.Contains("following", StringComparison.OrdinalIgnoreCase)
        || text.Contains("options", StringComparison.OrdinalIgnoreCase) || text.Contains("choose", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a label names a group of ingredients or what is served beside.</summary>
    public static bool IsGroupLabel(string label) => HeadingWords.Classify(label) is HeadingKind.Group or HeadingKind.Serving;

    /// <summary>A paragraph of names between commas, with no sentence in it.</summary>
    public static bool IsShortList(string text)
    {
        int dot = text.IndexOf(". ", StringComparison.Ordinal);
        return (dot < 0 || ParagraphLines.IsListOfAmounts(text)) && text[^1] is not (':' or '!' or '?')
            && (text.Contains(',', StringComparison.Ordinal) || text.Contains(';', StringComparison.Ordinal) || LineShape.Of(text).Words <= 8);
    }

    /// <summary>"To serve: lettuce, radishes, lime wedges" as a paragraph: names between commas and no sentence.</summary>
    public static bool IsServingNames(Row row) => row.Label is not null && HeadingWords.Classify(row.Label) == HeadingKind.Serving
        && row.Text.Text is [.., not ('.' or '!')] && row.Text.Text.Count(static c => c == ',') > 1 && !row.Shape.IsVerb && IsShortList(row.Text.Text);

    /// <summary>"To serve: parsley" as one line.</summary>
    public static bool IsServingLine(string text)
    {
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon is > 0 and < 30 && HeadingWords.Classify(text.AsSpan(0, colon)) == HeadingKind.Serving;
    }

    /// <summary>What prose under such a heading is.</summary>
    public static StepRole RoleOf(HeadingKind kind) => kind switch
    {
        HeadingKind.Note or HeadingKind.Equipment or HeadingKind.Variation => StepRole.Note,
        HeadingKind.Serving => StepRole.Serving,
        HeadingKind.Introduction => StepRole.Introduction,
        HeadingKind.Name or HeadingKind.Group or HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Method => StepRole.Step,
    };

    /// <summary>Whether each line of a paragraph begins with a bullet or dash of its own.</summary>
    public static bool IsBulleted(Row row)
    {
        string text = row.Text.Text;
        if (TextMarks.IsBullet(text[0]))
        {
            return true;
        }

        if (row.Breaks.Count == 0 || !IsDash(text, 0))
        {
            return false;
        }

        foreach (LineBreak at in row.Breaks)
        {
            if (!IsDash(text, at.Index + 1))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a bullet or dash stands there.</summary>
    public static bool IsDash(string text, int at) =>
        at < text.Length && (TextMarks.IsBullet(text[at]) || text[at] is '-' or '–' or '—' or '*');
}
