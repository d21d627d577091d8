using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>What is left of a gram of food when it is cooked, soaked or drained.</summary>
/// <param name="rows">Rows of <c>rules/yields.csv</c>.</param>
public sealed class Yields(ImmutableArray<YieldRow> rows)
{
    /// <summary>Grams after for each gram before, the most specific row: food, then its group, then any food.</summary>
    /// <param name="food">The food.</param>
    /// <param name="from"><c>raw</c>, <c>dry</c> or <c>canned</c>.</param>
    /// <param name="to"><c>cooked</c>, <c>soaked</c> or <c>drained</c>.</param>
    /// <returns>The factor, or <see langword="null"/> where no row covers it: the weight may then be anything up to that of a cooked dry food.</returns>
    public Interval? Factor(FoodRow food, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(food);
        YieldRow? best = null;
        int rank = 0;
        foreach (YieldRow row in rows)
        {
            int own = row.Food == food.Id ? 3 : row.Food != "*" ? 0 : row.Group == food.Group ? 2 : row.Group == "*" ? 1 : 0;
            if (own > rank && row.From == from && row.To == to)
            {
                (best, rank) = (row, own);
            }
        }

        return best?.Factor;
    }
}
