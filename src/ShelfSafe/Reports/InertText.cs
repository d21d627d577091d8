using System.Globalization;
using System.Text;

namespace ShelfSafe.Reports;

/// <summary>Takes the power out of text that came from a recipe: it may not move the cursor, colour a terminal or turn its direction.</summary>
internal static class InertText
{
    private const int Longest = 2_000;
    private const int ZeroWidthJoiner = 0x200D;
    private const int ZeroWidthNonJoiner = 0x200C;

    /// <summary>
    /// Runs of white space become one space, every control or hidden formatting mark one replacement character;
    /// a text over 2,000 units is cut and ends in an ellipsis. The joiners that emoji and some scripts need stay.
    /// </summary>
    public static string Of(string text) => IsInert(text) ? text : Cleaned(text);

    /// <summary>Columns that a text takes on a terminal: 2 for wide scripts and emoji, 0 for marks that join.</summary>
    public static int Columns(ReadOnlySpan<char> text)
    {
        if (Ascii.IsValid(text))
        {
            return text.Length;
        }

        int columns = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            columns += Columns(rune);
        }

        return columns;
    }

    // Most texts are plain words with one space between them, and stay as they are.
    private static bool IsInert(string text)
    {
        char before = ' ';
        foreach (char letter in text)
        {
            if (letter is < ' ' or > '~' || (letter == ' ' && before == ' '))
            {
                return false;
            }

            before = letter;
        }

        return text.Length <= Longest && (text.Length == 0 || before != ' ');
    }

    private static string Cleaned(string text)
    {
        Span<char> units = stackalloc char[2];
        StringBuilder built = new(Math.Min(text.Length, Longest) + 1);
        bool space = false;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (built.Length >= Longest)
            {
                return built.Append('…').ToString();
            }

            if (Rune.IsWhiteSpace(rune))
            {
                space = built.Length > 0;
                continue;
            }

            if (space)
            {
                built.Append(' ');
                space = false;
            }

            built.Append(units[..(IsHarmless(rune) ? rune : Rune.ReplacementChar).EncodeToUtf16(units)]);
        }

        return built.ToString();
    }

    private static bool IsHarmless(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => false,
        UnicodeCategory.Format => rune.Value is ZeroWidthJoiner or ZeroWidthNonJoiner,
        _ => true,
    };

    private static int Columns(Rune rune)
    {
        if (rune.IsAscii)
        {
            return 1;
        }

        UnicodeCategory category = Rune.GetUnicodeCategory(rune);
        if (category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format)
        {
            return 0;
        }

        // East Asian wide blocks and the emoji planes; Unicode Standard Annex 11 in outline.
        return rune.Value is (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3)
            or (>= 0xF900 and <= 0xFAFF) or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60)
            or (>= 0x1F300 and <= 0x1FAFF) or (>= 0x20000 and <= 0x3FFFD)
            ? 2
            : 1;
    }
}
