using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Reading;

/// <summary>Cuts a paragraph of foods into ingredient lines: at its line ends, or at its commas.</summary>
internal static class ParagraphLines
{
    /// <summary>Whether the paragraph's own lines look like ingredient lines.</summary>
    public static bool HasIngredientLines(Row row, bool trusted)
    {
        if (row.Breaks.Count == 0)
        {
            return false;
        }

        int lines = 0;
        int amounts = 0;
        int verbs = 0;
        int words = 0;
        int hard = 0;
        for (int i = 0; i <= row.Breaks.Count; i++)
        {
            int from = i == 0 ? 0 : row.Breaks[i - 1].Index + 1;
            int to = i < row.Breaks.Count ? row.Breaks[i].Index : row.Text.Text.Length;
            LineShape shape = LineShape.Of(row.Text.Text[from..to]);
            lines++;
            amounts += shape.HasAmount ? 1 : 0;
            verbs += shape.IsVerb && !shape.StartsWithAmount ? 1 : 0;
            words += shape.Words;
            hard += i < row.Breaks.Count && row.Breaks[i].Hard ? 1 : 0;
        }

        // "tomatoes / mozzarella / basil": a column of bare names is a list as well.
        bool column = lines >= 3 && verbs == 0 && words <= lines * 2 && !row.Text.Text.AsSpan().ContainsAny(".!?:");
        bool dense = amounts * 2 >= lines && verbs * 3 < lines && words <= lines * 10;
        return dense || column || (trusted && verbs * 3 < lines && words <= lines * (hard > 0 ? 12 : 7));
    }

    /// <summary>Whether one sentence is a list of foods with amounts: "1 kg plums, 500 g sugar and 2 lemons".</summary>
    public static bool IsListOfAmounts(string text)
    {
        int parts = 0;
        int amounts = 0;
        foreach ((int from, int to) in Parts(text))
        {
            parts++;
            ReadOnlySpan<char> part = text.AsSpan(from, to - from).Trim();
            amounts += AmountScan.StartsWithAmount(part) || (Separator(text) is not null && AmountScan.Look(part).Measured) ? 1 : 0;
        }

        return amounts >= 2 && amounts * 2 >= parts;
    }

    /// <summary>The lines that were parted by line ends.</summary>
    public static IEnumerable<MappedText> AtBreaks(Row row)
    {
        int from = 0;
        foreach (LineBreak at in row.Breaks)
        {
            yield return row.Text.Cut(from, at.Index);
            from = at.Index + 1;
        }

        yield return row.Text.Cut(from, row.Text.Text.Length);
    }

    /// <summary>The foods that were parted by commas or semicolons; words on preparation stay with their food.</summary>
    public static IEnumerable<MappedText> AtCommas(MappedText text)
    {
        foreach ((int from, int to) in Parts(text.Text))
        {
            MappedText part = text.Cut(from, to);
            if (part.Text.Length > 0)
            {
                yield return part;
            }
        }
    }

    private static List<(int From, int To)> Parts(string text)
    {
        List<(int From, int To)> parts = [];
        char? separator = Separator(text);
        bool semicolons = separator is not null;
        int end = text.Length;
        while (end > 0 && (text[end - 1] is '.' || TextMarks.IsBlank(text[end - 1])))
        {
            end--;
        }

        int from = 0;
        int depth = 0;
        for (int i = 0; i < end; i++)
        {
            depth = text[i] switch { '(' or '[' => depth + 1, ')' or ']' => Math.Max(0, depth - 1), _ => depth };
            bool decimalComma = text[i] == ',' && i > 0 && i + 1 < end && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]);
            bool mark = depth == 0 && !decimalComma && (semicolons ? IsSeparator(text, i, separator) : text[i] is ',' or '.' && (i + 1 == end || TextMarks.IsBlank(text[i + 1])));
            bool joined = depth == 0 && !semicolons && IsAndAmount(text, i);
            if ((mark && !IsPreparation(text.AsSpan(i + 1, end - i - 1), semicolons) && !IsShortened(text, i)) || joined)
            {
                parts.Add((from, i));
                from = i + (joined ? 5 : 1);
            }
        }

        parts.Add((from, end));
        return parts;
    }

    // A mark that parts foods more surely than a comma. A slash does only where three foods with amounts stand between slashes:
    // "1 cup milk / 1 cup cream" is a choice, "1 cup / 240 ml" the same amount twice.
    private static char? Separator(string text)
    {
        foreach (char mark in (ReadOnlySpan<char>)['\u00B7', '\u2022', ';', '|'])
        {
            if (text.Contains(mark, StringComparison.Ordinal))
            {
                return mark;
            }
        }

        int foods = 0;
        foreach (string part in text.Split(" / "))
        {
            foods += AmountScan.StartsWithAmount(part) && ProsePhrases.HasFoodWord(part) ? 1 : 0;
        }

        return foods >= 3 ? '/' : null;
    }

    private static bool IsSeparator(string text, int at, char? separator) =>
        text[at] == separator && (separator != '/' || (at > 0 && at + 1 < text.Length && text[at - 1] == ' ' && text[at + 1] == ' '));

    private static bool IsShortened(string text, int at) => text[at] == '.' && at > 0 && LineWords.IsShortened(LastWord(text, at));

    private static ReadOnlySpan<char> LastWord(string text, int end)
    {
        int start = end;
        while (start > 0 && char.IsLetter(text[start - 1]))
        {
            start--;
        }

        return text[start..end].ToLowerInvariant();
    }

    private static bool IsAndAmount(string text, int at) =>
        text[at] == ' ' && at + 5 < text.Length && text.AsSpan(at, 5).Equals(" and ", StringComparison.OrdinalIgnoreCase)
        && AmountScan.StartsWithAmount(text.AsSpan(at + 5)) && at > 0 && !char.IsDigit(text[at - 1]) && !EndsInNumber(text.AsSpan(0, at))
        && !SpelledNumber.TryRest(text, at + 1, out _, out _);

    // "One and one-half pints": the number is not yet whole.
    private static bool EndsInNumber(ReadOnlySpan<char> text) =>
        LineWords.IsNumber(text[(text.LastIndexOf(' ') + 1)..]);

    /// <summary>Whether the words up to the next comma only say how the food before them is prepared.</summary>
    private static bool IsPreparation(ReadOnlySpan<char> rest, bool semicolons)
    {
        int end = semicolons ? -1 : rest.IndexOfAny(',', ';');
        ReadOnlySpan<char> part = (end < 0 ? rest : rest[..end]).Trim();
        if (semicolons || part.IsEmpty)
        {
            return false;
        }

        if (AmountScan.StartsWithAmount(part))
        {
            return !ProsePhrases.HasFoodWord(part.ToString()); // "beets, an inch or two across"
        }

        string words = HeadingWords.Normalise(part);
        string[] each = words.Split(' ');
        if (each[0] is "cut" or "to" or "plus" or "or" or "for" or "at" or "in" or "if" or "about" or "preferably" or "optional" or "such" or "into" or "skin" or "as" or "without" or "with")
        {
            return true;
        }

        foreach (string word in each)
        {
            if (!word.EndsWith("ed", StringComparison.Ordinal)
                && word is not ("finely" or "roughly" or "thinly" or "freshly" or "coarsely" or "very" or "well" or "and" or "cut" or "raw" or "fine" or "thin" or "ground" or "divided" or "skinless" or "boneless" or "not"))
            {
                return false;
            }
        }

        return true;
    }
}
