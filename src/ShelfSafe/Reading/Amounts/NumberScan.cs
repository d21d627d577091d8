using System.Buffers;
using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Reading.Amounts;

/// <summary>Reads numbers and ranges as recipes print them: 2, 1.5, 1,5, ½, 1 1/2, 1-1/2, 2 to 3, up to 4, half a dozen, a couple.</summary>
internal static class NumberScan
{
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    // First letters of bounds ("up to") and of numbers in words.
    private static readonly SearchValues<char> FirstLetters = SearchValues.Create("acdefhmnoqstuACDEFHMNOQSTU");
    private static readonly double[] VulgarValues = [1 / 2d, 1 / 3d, 2 / 3d, 1 / 4d, 3 / 4d, 1 / 5d, 2 / 5d, 3 / 5d, 4 / 5d, 1 / 6d, 5 / 6d, 1 / 8d, 3 / 8d, 5 / 8d, 7 / 8d];

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

        value = Interval.Exactly(low);
        int next = Skip(text, end);
        int after = RangeSign(text, next);
        if (after > next && TryNumber(text, after, out int highEnd, out double high) && high > low)
        {
            value = new(low, high);
            end = highEnd;
        }
        else if (next < text.Length && text[next] == '+' && (next + 1 == text.Length || !char.IsDigit(text[next + 1])))
        {
            value = new(low, double.PositiveInfinity);
            end = next + 1;
        }

        // "1 dozen", "2-3 dozen": the spelled-out numbers have counted theirs already.
        if (char.IsAsciiDigit(text[at]) && WordLook.At(text, Skip(text, end), out int dozenEnd) is "dozen" or "doz")
        {
            value *= 12;
            end = dozenEnd;
        }

        return true;
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

        if (VulgarAt(text[at]) is int only and >= 0)
        {
            end = at + 1;
            value = VulgarValues[only];
            return true;
        }

        if (char.IsAsciiDigit(text[at]) || (text[at] == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])))
        {
            return Digits(text, at, out end, out value);
        }

        return SpelledNumber.TryRead(text, at, out end, out value);
    }

    private static int VulgarAt(char letter) => letter < 128 ? -1 : Vulgar.IndexOf(letter, StringComparison.Ordinal);

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

    private static bool Digits(string text, int at, out int end, out double value)
    {
        end = at;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] is '.' or ',' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]))))
        {
            end++;
        }

        value = Parse(text.AsSpan(at, end - at));
        if (Exponent(text, ref end, ref value))
        {
            return true;
        }

        if (Slash(text, end, out int afterSlash, out double bottom))
        {
            // Nothing divided by nothing, or a fraction of a fraction, bounds nothing.
            value = Slash(text, afterSlash, out int again, out _) || (value == 0 && bottom == 0) ? double.PositiveInfinity : value / bottom;
            end = Math.Max(afterSlash, again);
            return true;
        }

        AddFraction(text, ref end, ref value);
        return true;
    }

    // "1e99" is a number too, and has to be seen as the absurd amount it is.
    private static bool Exponent(string text, ref int end, ref double value)
    {
        if (end + 1 >= text.Length || text[end] is not ('e' or 'E') || !char.IsAsciiDigit(text[end + 1]))
        {
            return false;
        }

        int exponent = end + 1;
        while (exponent < text.Length && char.IsAsciiDigit(text[exponent]))
        {
            exponent++;
        }

        value *= Math.Pow(10, Math.Min(400, Parse(text.AsSpan(end + 1, exponent - end - 1))));
        end = exponent;
        return true;
    }

    // A whole number may be followed by a fraction: "1 1/2", "1-1/2", "1½", "2 and 1/4".
    private static void AddFraction(string text, ref int end, ref double value)
    {
        int next = Skip(text, end);
        if (next < text.Length && text[next] is '-' or '\u2013' && next == end)
        {
            next++;
        }
        else if (Word(text, next, out int andEnd) is "and" or "&")
        {
            next = Skip(text, andEnd);
            if (SpelledNumber.TryFraction(text, next, out int partEnd, out double part))
            {
                value += part; // "2 and a half"
                end = partEnd;
                return;
            }
        }

        if (next < text.Length && VulgarAt(text[next]) is int index and >= 0
            && (next == end || text[next - 1] is not ('-' or '\u2013') || value >= 1)) // "1-½" is no range down to a half
        {
            value += VulgarValues[index];
            end = next + 1;
        }
        else if (next < text.Length && char.IsAsciiDigit(text[next]) && next > end)
        {
            int top = next;
            while (top < text.Length && char.IsAsciiDigit(text[top]))
            {
                top++;
            }

            if (top - next <= 2 && Slash(text, top, out int fractionEnd, out double below) && Parse(text.AsSpan(next, top - next)) < below)
            {
                value += Parse(text.AsSpan(next, top - next)) / below;
                end = fractionEnd;
            }
        }
    }

    private static bool Slash(string text, int at, out int end, out double bottom)
    {
        end = at;
        bottom = 0;
        if (at >= text.Length || text[at] is not ('/' or '\u2044' or '\u2215'))
        {
            return false;
        }

        int digits = at + 1;
        while (digits < text.Length && char.IsAsciiDigit(text[digits]))
        {
            digits++;
        }

        bool unit = digits < text.Length && char.IsLetter(text[digits]) && digits - at > 3;
        if (digits == at + 1 || unit)
        {
            return false;
        }

        bottom = Parse(text.AsSpan(at + 1, digits - at - 1));
        end = digits;
        return true;
    }

    private static double Parse(ReadOnlySpan<char> text)
    {
        // "1,000" is a thousand; "1,5" is one and a half.
        ReadOnlySpan<char> plain = text;
        int comma = text.IndexOf(',');
        if (comma > 0)
        {
            bool thousands = text.Length - comma == 4 && text[0] != '0' && !text.Contains('.');
            plain = thousands ? text.ToString().Replace(",", string.Empty, StringComparison.Ordinal) : text.ToString().Replace(',', '.');
        }

        return double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;
    }

    private static int RangeSign(string text, int at)
    {
        if (at >= text.Length)
        {
            return at;
        }

        if (text[at] is '-' or '\u2013' or '\u2014' or '\u2212')
        {
            return at + 1;
        }

        return WordLook.At(text, at, out int end) is "to" or "or" ? end : at;
    }
}
