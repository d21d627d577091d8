using System.Collections.Immutable;

namespace ShelfSafe.Reading.Amounts;

/// <summary>The fractions that Unicode has as one character each (Number Forms, U+2150 to U+215E, and Latin-1).</summary>
internal static class VulgarFractions
{
    /// <summary>The characters.</summary>
    public const string Characters = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    /// <summary>Their values, in the same order.</summary>
    public static ImmutableArray<double> Values { get; } =
        [1 / 2d, 1 / 3d, 2 / 3d, 1 / 4d, 3 / 4d, 1 / 5d, 2 / 5d, 3 / 5d, 4 / 5d, 1 / 6d, 5 / 6d, 1 / 8d, 3 / 8d, 5 / 8d, 7 / 8d];
}
