using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>A published formula near the recipe.</summary>
/// <param name="Swap">What the cook would have to change.</param>
/// <param name="Ingredients">Its foods, scaled to the cook's main one.</param>
internal sealed record FormulaNear(FormulaRow Formula, string Swap, ImmutableArray<string> Ingredients);
