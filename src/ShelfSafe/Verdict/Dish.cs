using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>One judged dish of a file.</summary>
internal sealed record Dish(
    RecipePart Part,
    Batch Batch,
    IReadOnlyList<Ingredient> Ingredients,
    Acidity Acidity,
    DishOutcome Outcome,
    List<RawFinding> Findings);
