using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Foods;

/// <summary>One food of an ingredient line. A line that names several foods gives one entry a food.</summary>
/// <param name="Line">The line it stands in.</param>
/// <param name="Span">Place of the food's words (amount left out) in the file.</param>
/// <param name="Words">The recipe's own words for the food as they stand in the line, amount and preparation left out.</param>
/// <param name="Food">The food in plain singular lower-case words as the recipe names it.</param>
/// <param name="Match">What it means in the food table.</param>
/// <param name="Amount">First printed measure, a sum in its first unit; <see langword="null"/> where none is printed.</param>
/// <param name="Measures">Every printed measure, the first included.</param>
/// <param name="Package">Size of one package in "2 (14 oz) cans".</param>
/// <param name="Preparation">"chopped", "browned and drained", or <see langword="null"/>.</param>
/// <param name="Size">"small", "medium" or "large" where printed.</param>
/// <param name="Optional">Whether the line says it may be left out.</param>
/// <param name="ToTaste">Whether the amount is left to taste.</param>
/// <param name="Alternatives">Other foods of an either-or; each counts as in.</param>
/// <param name="JuiceOrZestOf">"juice", "zest", "juice and zest" where only that of the counted fruit goes in.</param>
/// <param name="SharesAmountWith">Food words of the entry that carries a shared amount, or <see langword="null"/>.</param>
/// <param name="AtServing">Whether the line itself or its heading says it is only added at serving.</param>
/// <param name="NotFood">Whether the line names equipment, not food.</param>
public sealed record Ingredient(
    IngredientLine Line,
    SourceSpan Span,
    string Words,
    string Food,
    FoodMatch Match,
    Amount? Amount,
    ImmutableArray<Amount> Measures,
    Amount? Package,
    string? Preparation,
    string? Size,
    bool Optional,
    bool ToTaste,
    ImmutableArray<Alternative> Alternatives,
    string? JuiceOrZestOf,
    string? SharesAmountWith,
    bool AtServing,
    bool NotFood)
{
    /// <summary>Number of this entry within its line, from 0.</summary>
    internal int Entry { get; init; }
}

/// <summary>The other side of an either-or ("lamb or beef").</summary>
/// <param name="Food">Its plain singular words.</param>
/// <param name="Match">What it means in the food table.</param>
/// <param name="Words">The recipe's own words for it.</param>
public sealed record Alternative(string Food, FoodMatch Match, string Words);
