namespace ShelfSafe.Core;

/// <summary>An amount as the recipe prints it, before anything is weighed.</summary>
/// <param name="Value">The printed number or range; <see cref="Interval.High"/> is infinite for "at least".</param>
/// <param name="Unit">Canonical unit (g kg mg ml cl dl l tsp tbsp cup ... each), or the printed measure word, lower case, singular.</param>
public sealed record Amount(Interval Value, string Unit);
