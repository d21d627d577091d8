using System.Buffers;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Reading;

/// <summary>Sees where amounts of food stand in a text, without reading their value.</summary>
internal static class AmountScan
{
    /// <summary>Numbers in words count only this near the start: further on they are prose.</summary>
    private const int NumberWordsWithin = 60;

    /// <summary>Letters of "seventeen".</summary>
    private const int LongestNumberWord = 9;

    private static readonly string[] _leads =
    [
        "about ", "around ", "approx. ", "approx ", "approximately ", "circa ", "ca. ", "~", "up to ", "at least ", "roughly ", "nearly ",
        "the juice of ", "juice of ", "the zest of ", "zest of ", "zest and juice of ", "juice and zest of ", "another ", "optional: ", "(optional) ",
        "plus ", "scant ", "heaping ", "good ", "generous ", "the ", "some ", "+ ", "etwa ",
    ];

    /// <summary>First characters of <see cref="_leads"/>, in both cases.</summary>
    private static readonly SearchValues<char> _leadLetters = SearchValues.Create("acurntjzpshg~o(+eACURNTJZPSHGOE");

    /// <summary>First letters of the numbers in words, in both cases.</summary>
    private static readonly SearchValues<char> _numberLetters = SearchValues.Create("otfsendhqczvOTFSENDHQCZV");

    /// <summary>What was seen.</summary>
    /// <param name="AtStart">The text begins with an amount.</param>
    /// <param name="Measured">A number with a measure stands somewhere in it.</param>
    internal readonly record struct Result(bool AtStart, bool Measured);

    /// <summary>Looks at one line.</summary>
    public static Result Look(ReadOnlySpan<char> text)
    {
        bool measured = false;
        int at = 0;
        while (at < text.Length && !measured)
        {
            if (at > NumberWordsWithin && !char.IsDigit(text[at]) && !IsFraction(text[at]))
            {
                at++;
                continue;
            }

            int end = NumberEnd(text, at);
            if (end > at)
            {
                measured = LineWords.IsMeasure(UnitAfter(text, end)) || (at == 0 && end < text.Length);
                at = Math.Max(end, at + 1);
                continue;
            }

            at = NextWord(text, at);
        }

        bool start = StartsWithAmount(text);
        return new(start, (measured && !IsTimeFirst(text)) || EndsWithAmount(text));
    }

    /// <summary>Whether an amount of food begins at the start of the text.</summary>
    public static bool StartsWithAmount(ReadOnlySpan<char> text)
    {
        int start = SkipLead(text);
        int end = NumberEnd(text, start);
        if (end > start)
        {
            ReadOnlySpan<char> unit = UnitAfter(text, end);
            return end < text.Length && text[end] != '°' && !(LineWords.IsNotFoodUnit(unit) && !IsCupMark(text, end, unit));
        }

        return StartsWithArticle(text[start..]);
    }

    /// <summary>End of the number that starts at <paramref name="at"/>, ranges and fractions included; <paramref name="at"/> where none does.</summary>
    public static int NumberEnd(ReadOnlySpan<char> text, int at)
    {
        int end = OneNumber(text, at);
        end = end > at ? FractionEnd(text, end) : end;
        while (end > at && end < text.Length)
        {
            int next = end;
            while (next < text.Length && (text[next] is '-' or '–' or '—' or '/' or '⁄' or 'x' or '×' || TextMarks.IsBlank(text[next])) && next - end < 3)
            {
                next++;
            }

            if (next + 3 < text.Length && text[next..].StartsWith("to ", StringComparison.OrdinalIgnoreCase) && next > end)
            {
                next += 3;
            }

            int more = OneNumber(text, next);
            if (more <= next)
            {
                break;
            }

            end = more;
        }

        return end;
    }

    // "One and one-half", "2 and a half": the fraction belongs to the number.
    private static int FractionEnd(ReadOnlySpan<char> text, int end) =>
        text[end..].StartsWith(" and ", StringComparison.OrdinalIgnoreCase) && SpelledNumber.TryFraction(text, end + 5, out int after, out _) ? after : end;

    /// <summary>The lower-case word that follows a number: its unit, if it has one.</summary>
    public static ReadOnlySpan<char> UnitAfter(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && (TextMarks.IsBlank(text[at]) || text[at] is '-' or '°' or '('))
        {
            at++;
        }

        int end = at;
        while (end < text.Length && char.IsLetter(text[end]))
        {
            end++;
        }

        ReadOnlySpan<char> word = text[at..end];
        foreach (char c in word)
        {
            if (!char.IsAsciiLetterLower(c))
            {
                return word.ToString().ToLowerInvariant();
            }
        }

        return word;
    }

    private static bool IsCupMark(ReadOnlySpan<char> text, int end, ReadOnlySpan<char> unit) =>
        unit is "c" && text[end] != '°' && !text[end..].TrimStart().StartsWith("C");

    private static bool IsTimeFirst(ReadOnlySpan<char> text)
    {
        int end = NumberEnd(text, 0);
        return end > 0 && LineWords.IsNotFoodUnit(UnitAfter(text, end)) && UnitAfter(text, end) is not "c";
    }

    private static bool EndsWithAmount(ReadOnlySpan<char> text) =>
        text.EndsWith("to taste", StringComparison.OrdinalIgnoreCase) || text.StartsWith("to taste", StringComparison.OrdinalIgnoreCase)
        || text.EndsWith("to cover", StringComparison.OrdinalIgnoreCase);

    private static int OneNumber(ReadOnlySpan<char> text, int at)
    {
        int digits = DigitsEnd(text, at);
        return digits > at ? digits : SpelledEnd(text, at);
    }

    private static int DigitsEnd(ReadOnlySpan<char> text, int at)
    {
        int end = at;
        bool digit = false;
        while (end < text.Length)
        {
            char c = text[end];
            bool inside = c is '.' or ',' && digit && end + 1 < text.Length && char.IsDigit(text[end + 1]);
            bool leading = c is '.' && !digit && end == at && end + 1 < text.Length && char.IsDigit(text[end + 1]);
            if (!char.IsDigit(c) && !IsFraction(c) && !inside && !leading)
            {
                break;
            }

            digit = true;
            end++;
        }

        return end;
    }

    private static int SpelledEnd(ReadOnlySpan<char> text, int at)
    {
        int word = at;
        if (at < text.Length && !_numberLetters.Contains(text[at]))
        {
            return at;
        }

        while (word < text.Length && char.IsLetter(text[word]))
        {
            word++;
        }

        if (word - at is < 3 or > LongestNumberWord || (at > 0 && char.IsLetter(text[at - 1])))
        {
            return at;
        }

        Span<char> lower = stackalloc char[LongestNumberWord];
        int length = text[at..word].ToLowerInvariant(lower);
        return SpelledNumber.TryFraction(text, at, out int fraction, out _) ? fraction : LineWords.IsNumber(lower[..length]) ? word : at;
    }

    private static bool IsFraction(char c) => c is '½' or '⅓' or '⅔' or '¼' or '¾' or (>= '⅐' and <= '⅞') or '↉';

    private static bool StartsWithArticle(ReadOnlySpan<char> text)
    {
        int skip = text.StartsWith("a ", StringComparison.OrdinalIgnoreCase) ? 2
            : text.StartsWith("an ", StringComparison.OrdinalIgnoreCase) ? 3 : 0;
        if (skip == 0)
        {
            string first = UnitAfter(text, 0).ToString();
            return first is "pinch" or "dash" or "handful" or "knob" or "splash" or "bunch" or "clove" or "sprig" or "drizzle";
        }

        ReadOnlySpan<char> rest = text[skip..];
        for (int words = 0; words < 3 && !rest.IsEmpty; words++)
        {
            ReadOnlySpan<char> word = UnitAfter(rest, 0);
            if (LineWords.IsMeasure(word) || LineWords.IsNumber(word) || word is "little" or "bit" or "drizzle" or "dollop" or "lot")
            {
                return true;
            }

            rest = rest[NextWord(rest, 0)..];
        }

        return false;
    }

    private static int SkipLead(ReadOnlySpan<char> text)
    {
        int start = 0;
        for (bool found = true; found && start < text.Length && _leadLetters.Contains(text[start]);)
        {
            found = false;
            foreach (string lead in _leads)
            {
                if (text[start..].StartsWith(lead, StringComparison.OrdinalIgnoreCase))
                {
                    start += lead.Length;
                    found = true;
                }
            }
        }

        return start;
    }

    private static int NextWord(ReadOnlySpan<char> text, int at)
    {
        if (at < text.Length && !char.IsLetterOrDigit(text[at]))
        {
            return at + 1;
        }

        while (at < text.Length && char.IsLetter(text[at]))
        {
            at++;
        }

        return at < text.Length && !char.IsDigit(text[at]) ? at + 1 : at;
    }
}
