using System.Globalization;

namespace ShelfSafe.Cli;

/// <summary>Reads an altitude with its unit, such as <c>1350 ft</c> or <c>410 m</c>.</summary>
internal static class Altitude
{
    private const double MetresPerFoot = 0.3048; // exact, the international foot
    private const double LowestFeet = -1_500; // below every shore of the Dead Sea
    private const double HighestFeet = 20_000; // above every town

    /// <summary>Reads an altitude in feet; without a unit it is refused, because metres read as feet would be too low.</summary>
    /// <param name="text">The text.</param>
    /// <param name="feet">The altitude in feet.</param>
    /// <param name="wrong">What is wrong and what would be right.</param>
    public static bool TryRead(string text, out double feet, out string wrong)
    {
        feet = 0;
        ReadOnlySpan<char> rest = text.AsSpan().Trim();
        int end = 0;
        while (end < rest.Length && (char.IsAsciiDigit(rest[end]) || rest[end] is '-' or '+' or '.' or ','))
        {
            end++;
        }

        ReadOnlySpan<char> unit = rest[end..].Trim();
        double factor = unit.ToString().ToUpperInvariant() switch
        {
            "FT" or "FOOT" or "FEET" or "'" => 1,
            "M" or "METRE" or "METRES" or "METER" or "METERS" => 1 / MetresPerFoot,
            _ => 0,
        };
        if (IsTwoWays(rest[..end]))
        {
            wrong = $"\"{text}\" can be read in two ways; write it without the point, such as \"1350 ft\" or \"410 m\"";
            return false;
        }

        if (end == 0 || !TryNumber(rest[..end], out double value))
        {
            wrong = $"\"{text}\" is not an altitude; write a number and its unit, such as \"1350 ft\" or \"410 m\"";
            return false;
        }

        if (factor == 0)
        {
            wrong = unit.Length == 0
                ? $"\"{text}\" has no unit; write \"{rest[..end]} ft\" or \"{rest[..end]} m\""
                : $"\"{text}\" has a unit that is not known; known: ft, m";
            return false;
        }

        feet = value * factor;
        if (feet is < LowestFeet or > HighestFeet)
        {
            wrong = $"\"{text}\" is no altitude of a kitchen; from -1500 ft to 20000 ft";
            return false;
        }

        wrong = string.Empty;
        return true;
    }

    // "1.350 m" is thirteen hundred and fifty metres in half of Europe: read as one metre it would give too low a pressure.
    private static bool IsTwoWays(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> number = text.TrimStart("+-");
        int point = number.IndexOf('.');
        return point is > 0 and < 4 && number[0] != '0' && number[(point + 1)..] is { Length: 3 } last && !last.ContainsAnyExceptInRange('0', '9');
    }

    // "1,350" is read as thirteen hundred and fifty; "1,35" and "1.350,5" are refused rather than guessed.
    private static bool TryNumber(ReadOnlySpan<char> text, out double value)
    {
        int comma = text.IndexOf(',');
        if (comma >= 0 && (comma == 0 || !IsGrouped(text[comma..])))
        {
            value = 0;
            return false;
        }

        return double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    private static bool IsGrouped(ReadOnlySpan<char> text)
    {
        int point = text.IndexOf('.');
        ReadOnlySpan<char> whole = point < 0 ? text : text[..point];
        return whole.Length == 4 && !whole[1..].Contains(',');
    }
}
