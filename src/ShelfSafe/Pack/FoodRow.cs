using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>One food of <c>rules/foods.csv</c>; the columns are explained in <c>rules/README.md</c>.</summary>
/// <param name="Id">Key in trade words, never reused.</param>
/// <param name="Name">The food in plain singular words.</param>
/// <param name="Group">Kitchen group.</param>
/// <param name="PhLow">Lowest published pH, or <see langword="null"/>.</param>
/// <param name="PhHigh">Highest published pH, or <see langword="null"/>.</param>
/// <param name="Acidity">Class by the whole published range, at the worse end; low-acid where none is published.</param>
/// <param name="Traits">Words of the closed list in <c>rules/README.md</c>.</param>
/// <param name="AcidStrength">Strength of an acid as printed, such as "5%", or empty.</param>
/// <param name="Process"><c>yes: ...</c>, <c>recipe: ...</c>, <c>as-minor</c> or <c>no</c>.</param>
/// <param name="Bulk">Whether it may be a main food of a published soup or mixture.</param>
/// <param name="BulkJars">Largest jars that the food's own process prints, space-free ids such as <c>pint</c>.</param>
/// <param name="BulkSource">Document and page of those jars, or empty.</param>
/// <param name="MinorGramsPerKilogram">Largest seasoning share, grams a kilogram of batch, or <see langword="null"/>.</param>
/// <param name="MinorSource">Where that share comes from, or empty.</param>
/// <param name="WhyNo">Plain reason for a <c>no</c>, or empty.</param>
/// <param name="Source">Where the row comes from.</param>
/// <param name="Url">Where that was read, or empty.</param>
/// <param name="Status">Which of its facts were seen, such as <c>ph:verified;process:verified</c>.</param>
/// <param name="Notes">Remarks for who keeps the table, or empty.</param>
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
    /// <summary>Its traits as a mask.</summary>
    internal ulong TraitMask { get; } = WordMask.Of(Traits);

    /// <summary>Its id as a mask.</summary>
    internal ulong IdMask { get; } = WordMask.Of(Id);

    /// <summary>Whether the food carries a trait.</summary>
    public bool Has(string trait)
    {
        foreach (string own in Traits)
        {
            if (own.AsSpan().SequenceEqual(trait))
            {
                return true;
            }
        }

        return false;
    }
}
