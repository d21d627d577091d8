using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>One food of <c>rules/foods.csv</c>; the columns are explained in <c>rules/README.md</c>.</summary>
/// <param name="PhLow">Lowest published pH, or <see langword="null"/>.</param>
/// <param name="PhHigh">Highest published pH, or <see langword="null"/>.</param>
/// <param name="Process"><c>yes: ...</c>, <c>recipe: ...</c>, <c>as-minor</c> or <c>no</c>.</param>
/// <param name="BulkJars">Largest jars that the food's own process prints, space-free ids such as <c>pint</c>.</param>
/// <param name="MinorGramsPerKilogram">Largest seasoning share, grams a kilogram of batch, or <see langword="null"/>.</param>
/// <param name="Line">Line in the table, from 1.</param>
public sealed record FoodRow(
    string Id,
    string Name,
    string Group,
    double? PhLow,
    double? PhHigh,
    FoodAcidity Acidity,
    ImmutableArray<string> Traits,
    string AcidStrength,
    string Process,
    BulkUse Bulk,
    ImmutableArray<string> BulkJars,
    string BulkSource,
    double? MinorGramsPerKilogram,
    string MinorSource,
    string WhyNo,
    string Source,
    string Url,
    string Status,
    string Notes,
    int Line)
{
    /// <summary>Whether the food carries a trait.</summary>
    public bool Has(string trait)
    {
        foreach (string own in Traits)
        {
            if (string.Equals(own, trait, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
