using ShelfSafe.Core;

namespace ShelfSafe.Verdict;

/// <summary>What several dishes in one file come to: the worst leads, dishes that are no jar food aside.</summary>
internal static class SeveralDishes
{
    /// <summary>The dish that leads, and the outcome of the file.</summary>
    public static (Dish Dish, Outcome Outcome) Lead(IReadOnlyList<Dish> dishes)
    {
        Dish worst = dishes.Where(IsJarFood).OrderBy(dish => Permits(dish.Outcome.Outcome)).FirstOrDefault() ?? dishes[0];
        return (worst, AreMixed(dishes) ? Outcome.CannotTell : worst.Outcome.Outcome);
    }

    /// <summary>Whether the dishes need different methods, so that no single answer fits the file.</summary>
    public static bool AreMixed(IReadOnlyList<Dish> dishes) =>
        dishes.Count > 1 && dishes.Where(IsJarFood).Select(dish => Method(dish.Outcome.Outcome)).Where(method => method.Length > 0).Distinct(StringComparer.Ordinal).Skip(1).Any();

    private static bool IsJarFood(Dish dish) => dish.Outcome.Outcome != Outcome.NotAJarFood;

    private static int Permits(Outcome outcome) => outcome switch
    {
        Outcome.CannotTell => 0,
        Outcome.FreezeOrChill => 1,
        Outcome.TestedRecipeOnly => 2,
        Outcome.NotAJarFood => 3,
        Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges => 4,
        Outcome.DryStorage => 5,
        Outcome.Pressure or Outcome.BoilingWater => 6,
    };

    private static string Method(Outcome outcome) => outcome switch
    {
        Outcome.Pressure or Outcome.PressureAfterChanges => "pressure",
        Outcome.BoilingWater or Outcome.BoilingWaterAfterChanges => "boiling-water",
        Outcome.DryStorage => "dry",
        Outcome.CannotTell or Outcome.TestedRecipeOnly or Outcome.FreezeOrChill or Outcome.NotAJarFood => string.Empty,
    };
}
