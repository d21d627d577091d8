using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>One published process: a product in one jar, pack and method (<c>rules/processes.csv</c>).</summary>
/// <param name="Id">Key of the row.</param>
/// <param name="Product">Product as the guide names it.</param>
/// <param name="FoodGroup">Group of the product, as the guide parts them.</param>
/// <param name="Acidity"><c>acid</c>, <c>acidified</c> or <c>low-acid</c>.</param>
/// <param name="Pack"><c>hot</c>, <c>raw</c>, or <c>either</c> where one row is printed for both.</param>
/// <param name="Jar">Size of the jar, an id of <c>rules/jars.csv</c>.</param>
/// <param name="Method"><c>boiling-water</c> or <c>pressure</c>.</param>
/// <param name="Minutes">At pressure for every altitude; in boiling water the figure of the lowest band.</param>
/// <param name="BoilingWater">Minutes by altitude band, empty for pressure.</param>
/// <param name="Dial">Pounds by altitude band on a dial gauge, empty where none is printed.</param>
/// <param name="Weighted">Pounds by altitude band on a weighted gauge, empty where none is printed.</param>
/// <param name="HeadspaceInches">Headspace, inches.</param>
/// <param name="AcidAddition">Acid to add to each jar, as printed, or empty.</param>
/// <param name="Conditions">Further conditions, as printed, or empty.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Url">Where it was read.</param>
/// <param name="Seen">Whether the printed source was seen; a row that was not yields no time.</param>
public sealed record ProcessRow(
    string Id,
    string Product,
    string FoodGroup,
    string Acidity,
    string Pack,
    string Jar,
    string Method,
    int Minutes,
    ImmutableArray<AltitudeBand> BoilingWater,
    ImmutableArray<AltitudeBand> Dial,
    ImmutableArray<AltitudeBand> Weighted,
    double HeadspaceInches,
    string AcidAddition,
    string Conditions,
    string Source,
    string Url,
    bool Seen);

/// <summary>A printed altitude band and the figure in it.</summary>
/// <param name="FromFeet">Lowest altitude, counted in.</param>
/// <param name="ToFeet">Highest altitude, counted in; infinite where the table prints it open-ended.</param>
/// <param name="Figure">Minutes or pounds a square inch.</param>
public readonly record struct AltitudeBand(double FromFeet, double ToFeet, double Figure)
{
    /// <summary>Reads "0-2000:11;2001-4000:12;1001+:15"; <see langword="null"/> where it is not of that form.</summary>
    public static ImmutableArray<AltitudeBand>? Parse(string text)
    {
        ImmutableArray<AltitudeBand>.Builder bands = ImmutableArray.CreateBuilder<AltitudeBand>();
        foreach (string piece in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            int colon = piece.IndexOf(':', StringComparison.Ordinal);
            int dash = piece.IndexOf('-', StringComparison.Ordinal);
            bool open = colon > 0 && piece[colon - 1] == '+';
            string from = open ? piece[..(colon - 1)] : dash > 0 ? piece[..dash] : string.Empty;
            string to = open || dash < 0 || colon < dash ? string.Empty : piece[(dash + 1)..colon];
            if (!TryNumber(from, out double low) || !TryNumber(colon < 0 ? string.Empty : piece[(colon + 1)..], out double figure))
            {
                return null;
            }

            double high = double.PositiveInfinity;
            if (!open && !TryNumber(to, out high))
            {
                return null;
            }

            bands.Add(new(low, high, figure));
        }

        return bands.ToImmutable();
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out number);
}
