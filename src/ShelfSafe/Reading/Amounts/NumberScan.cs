using System.Buffers;
using ShelfSafe.Core;

namespace ShelfSafe.Reading.Amounts;

/// <summary>Reads numbers and ranges as recipes print them: 2, 1.5, 1,5, ½, 1 1/2, 1-1/2, 2 to 3, up to 4, half a dozen, a couple.</summary>
internal static class NumberScan
{
    // First letters of bounds ("up to") and of numbers in words.
    private static readonly SearchValues<char> FirstLetters = SearchValues.Create("acdefhmnoqstuACDEFHMNOQSTU");

    /// <summary>Reads a number or range at an offset; false where none stands there.</summary>
    /// <param name="end">Offset after it.</param>
    /// <param name="value">What it may be; not finite for 1/0 or overflow.</param>
    public static bool TryRange(string text, int start, out int end, out Interval value)
    {
        value = default;
        end = start;
        int at = Skip(text, start);
        if (at < text.Length && char.IsAsciiLetter(text[at]) && !FirstLetters.Contains(text[at]))
        {
            return false; // as most words of a sentence
        }

        if (at < text.Length && (char.IsLetter(text[at]) ? TryBound(text, at, out end, out value) : TryNegative(text, at, out end, out value)))
        {
            return true;
        }

        if (!TryNumber(text, at, out end, out double low))
        {
            end = start;
            return false;
        }

        value = Upward(text, low, ref end);

        // "1 dozen", "2-3 dozen": the spelled-out numbers have counted theirs already.
        if (char.IsAsciiDigit(text[at]) && WordLook.At(text, Skip(text, end), out int dozenEnd) is "dozen" or "doz")
        {
            value *= 12;
            end = dozenEnd;
        }

        return true;
    }

    // What a number and the words behind it may be: "2", "2 to 3", "2+".
    private static Interval Upward(string text, double low, ref int end)
    {
        int next = Skip(text, end);
        int after = RangeSign(text, next);
        if ((after > next || (after < text.Length && after > end && text[after - 1] == '~')) && TryNumber(text, after, out int highEnd, out double high) && high > low)
        {
            end = highEnd;
            return new(low, high);
        }

        if (next < text.Length && text[next] == '+' && (next + 1 == text.Length || !char.IsDigit(text[next + 1])))
        {
            end = next + 1;
            return new(low, double.PositiveInfinity);
        }

        return Interval.Exactly(low);
    }

    // "up to 4", "at most 4" and "no more than 4" reach from none to four, "at least 2" from two upward.
    private static bool TryBound(string text, int at, out int end, out Interval value)
    {
        value = default;
        end = at;
        ReadOnlySpan<char> first = WordLook.At(text, at, out int number);
        bool least = false;
        switch (first)
        {
            case "max" or "maximum":
                number += number < text.Length && text[number] == '.' ? 1 : 0;
                break;
            case "up" or "at" or "no" or "not":
                ReadOnlySpan<char> second = WordLook.At(text, Skip(text, number), out number);
                least = first is "at" && second is "least";
                bool bounds = least || (first is "up" && second is "to") || (first is "at" && second is "most")
                    || (first is "no" or "not" && second is "more" && WordLook.At(text, Skip(text, number), out number) is "than");
                number = bounds ? number : -1;
                break;
            default:
                return false;
        }

        if (number < 0 || !TryNumber(text, number, out int numberEnd, out double bound))
        {
            return false;
        }

        end = numberEnd;
        value = least ? new(bound, double.PositiveInfinity) : new(0, bound);
        return true;
    }

    // A minus sign right before the first number of a line is kept: nobody can weigh less than nothing, so it is reported.
    private static bool TryNegative(string text, int at, out int end, out Interval value)
    {
        value = default;
        end = at;
        bool starts = at + 1 < text.Length && text[at] is '-' or '\u2212' && text.AsSpan(0, at).IsWhiteSpace();
        if (!starts || !char.IsAsciiDigit(text[at + 1]) || !TryNumber(text, at + 1, out end, out double number))
        {
            end = at;
            return false;
        }

        value = Interval.Exactly(-number);
        return true;
    }

    /// <summary>Reads one number at an offset.</summary>
    public static bool TryNumber(string text, int start, out int end, out double value)
    {
        int at = Skip(text, start);
        end = start;
        value = 0;
        if (at >= text.Length)
        {
            return false;
        }

        return DigitNumber.TryRead(text, at, out end, out value) || SpelledNumber.TryRead(text, at, out end, out value);
    }

    /// <summary>Offset of the next character that is no blank.</summary>
    public static int Skip(string text, int at)
    {
        while (at < text.Length && (char.IsWhiteSpace(text[at]) || text[at] is '\u00A0' or '~' or '≈'))
        {
            at++;
        }

        return at;
    }

    /// <summary>The word at an offset, as it stands, lower case; empty where none stands there.</summary>
    public static string Word(string text, int at, out int end) => WordLook.At(text, at, out end).ToString();

    private static int RangeSign(string text, int at)
    {
        if (at >= text.Length)
        {
            return at;
        }

        if (text[at] is '-' or '\u2013' or '\u2014' or '\u2212')
        {
            return WordLook.At(text, Skip(text, at + 1), out int toEnd) is "to" ? toEnd : at + 1; // "3- to 4-pound"
        }

        // "3~4": the sign was passed over as if it were "about".
        if (text[at - 1] == '~' && char.IsAsciiDigit(text[at]))
        {
            return at;
        }

        return WordLook.At(text, at, out int end) is "to" or "or" ? end : at;
    }
}
