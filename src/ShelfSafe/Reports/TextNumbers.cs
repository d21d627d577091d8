using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Reports;

/// <summary>Numbers as the reports for people print them, the same in every culture.</summary>
internal static class TextNumbers
{
    /// <summary>International foot, exact.</summary>
    public const double MetresPerFoot = 0.3048;

    private const string Share = "share";

    /// <summary>A whole number with thousands parted by commas.</summary>
    public static string Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>Three figures at most, such as 0.25, 3.5 or 1,240.</summary>
    public static string Short(double value) => Math.Abs(value) switch
    {
        < 10 => value.ToString("0.##", CultureInfo.InvariantCulture),
        < 100 => value.ToString("0.#", CultureInfo.InvariantCulture),
        _ => Whole(value),
    };

    /// <summary>A range: one number where both ends print alike; an open end is told by the caller's words.</summary>
    /// <param name="range">The range.</param>
    /// <param name="unit">Unit after the numbers; <c>share</c>, or <c>share by volume</c> and the like, prints as per cent.</param>
    /// <param name="words">Gives the words for open ends.</param>
    public static string Range(Interval range, string unit, Words words)
    {
        bool share = unit.StartsWith(Share, StringComparison.Ordinal);
        string suffix = share ? " %" + unit[Share.Length..] : unit.Length == 0 ? string.Empty : " " + unit;
        double factor = share ? 100 : 1;
        string low = Short(range.Low * factor);
        if (!range.IsBounded)
        {
            return range.Low <= 0 ? words["comparison.any"] : words.With("comparison.at-least", low + suffix);
        }

        string high = Short(range.High * factor);
        return string.Equals(low, high, StringComparison.Ordinal) ? low + suffix : $"{low}-{high}{suffix}";
    }
}
