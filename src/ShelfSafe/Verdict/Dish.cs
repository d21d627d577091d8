using System.Collections.Immutable;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>One judged dish of a file.</summary>
/// <param name="Differences">Comparison with the formula that leads.</param>
/// <param name="Nearest">Formulas near a dish that got no process.</param>
internal sealed record Dish(
    RecipePart Part,
    Batch Batch,
    IReadOnlyList<Ingredient> Ingredients,
    Acidity Acidity,
    DishOutcome Outcome,
    List<RawFinding> Findings,
    ImmutableArray<FormulaDifference> Differences,
    ImmutableArray<NearestFormula> Nearest);
