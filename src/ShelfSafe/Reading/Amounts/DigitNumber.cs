using System.Globalization;
using static ShelfSafe.Reading.Amounts.NumberScan;

namespace ShelfSafe.Reading.Amounts;

/// <summary>Reads one number in digits and fraction signs: 2, 1.5, 1,5, 1 000, ½, 1 1/2, 1-1/2, 1 &amp; 1/2.</summary>
internal static class DigitNumber
{
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static readonly double[] VulgarValues = [1 / 2d, 1 / 3d, 2 / 3d, 1 / 4d, 3 / 4d, 1 / 5d, 2 / 5d, 3 / 5d, 4 / 5d, 1 / 6d, 5 / 6d, 1 / 8d, 3 / 8d, 5 / 8d, 7 / 8d];

    /// <summary>Reads a number at an offset; false where no digit and no fraction sign stands there.</summary>
    /// <param name="end">Offset after it.</param>
    /// <param name="value">Its value; not finite for 1/0 or overflow.</param>
    public static bool TryRead(string text, int at, out int end, out double value)
    {
        end = at;
        value = 0;
        if (VulgarAt(text[at]) is int only and >= 0)
        {
            end = at + 1;
            value = VulgarValues[only];
            return true;
        }

        return (char.IsAsciiDigit(text[at]) || (text[at] == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))) && Digits(text, at, out end, out value);
    }

    private static int VulgarAt(char letter) => letter < 128 ? -1 : Vulgar.IndexOf(letter, StringComparison.Ordinal);

    private static bool Digits(string text, int at, out int end, out double value)
    {
        end = at;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] is '.' or ',' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]))))
        {
            end++;
        }

        value = Parse(text.AsSpan(at, end - at));
        if (Thousands(text, at, ref end, ref value))
        {
            return true;
        }

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

    // "1 000" and "12 050": three digits behind a blank that begin with none, which no number or size by itself does.
    private static bool Thousands(string text, int at, ref int end, ref double value)
    {
        bool group = end - at <= 3 && end + 3 < text.Length && text[end] is ' ' or '\u00A0' or '\u2009' or '\u202F' && text[end + 1] == '0'
            && !text.AsSpan(at, end - at).ContainsAnyExceptInRange('0', '9') && text[at] != '0'
            && !text.AsSpan(end + 1, 3).ContainsAnyExceptInRange('0', '9') && (end + 4 == text.Length || !char.IsLetterOrDigit(text[end + 4]) || char.IsAsciiLetter(text[end + 4]));
        if (group)
        {
            value = (value * 1000) + Parse(text.AsSpan(end + 1, 3));
            end += 4;
        }

        return group;
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
        else if ((next < text.Length && text[next] == '&' ? next + 1 : Word(text, next, out int wordEnd) is "and" ? wordEnd : -1) is > 0 and var andEnd)
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
}
