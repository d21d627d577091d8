using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>One food of a published formula (<c>rules/formula-slots.csv</c>).</summary>
/// <param name="Formula">Id of the formula.</param>
/// <param name="Name">The food as the source names it.</param>
/// <param name="Foods">Ids of the foods that fill it.</param>
/// <param name="Role">How its amount binds.</param>
/// <param name="Low">Least tested amount, or <see langword="null"/> where the source prints none ("to cover").</param>
/// <param name="High">Most tested amount, or <see langword="null"/>.</param>
/// <param name="Unit">Canonical unit of both, empty where none is printed.</param>
/// <param name="Grams">Grams of the middle of the two: the density row for unlike measures, or <see langword="null"/>.</param>
/// <param name="Words">Words of which the ingredient line must say one; empty where the food alone tells.</param>
/// <param name="Label"><c>5%</c> or <c>bottled</c> where the label must say so, else empty.</param>
/// <param name="Discarded">Whether it is soaked, rinsed or drained away.</param>
/// <param name="PerJar">Whether the amount is that of one jar.</param>
/// <param name="Swaps">Other foods that guidance takes for it, measure for measure.</param>
/// <param name="Presence">Whether it may be missing.</param>
/// <param name="Source">Document and page.</param>
public sealed record FormulaSlot(
    string Formula,
    string Name,
    ImmutableArray<string> Foods,
    FormulaRole Role,
    double? Low,
    double? High,
    string Unit,
    double? Grams,
    ImmutableArray<string> Words,
    string Label,
    bool Discarded,
    bool PerJar,
    ImmutableArray<string> Swaps,
    FormulaPresence Presence,
    string Source)
{
    /// <summary>Its foods, swaps included, as a mask.</summary>
    internal ulong FoodMask { get; } = WordMask.Of(Foods) | WordMask.Of(Swaps);

    /// <summary>Whether it carries the recipe, and is not what that is made of.</summary>
    internal bool IsCarrier { get; } = Foods.All(static food => food.Contains("vinegar", StringComparison.Ordinal) || food.Contains("sugar", StringComparison.Ordinal) || food is "water" or "salt");

    /// <summary>Whether the recipe keeps by it.</summary>
    internal bool IsAcid => Foods.Contains("vinegar-white") || Foods.Contains("lemon-juice-bottled");
}
