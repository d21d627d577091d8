using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Amounts to grams and millilitres, each as the range it may be.</summary>
/// <remarks>
/// A food without a row of its own takes the wide range of its group. Vague measures take wide ranges too; what no kitchen holds is not weighed.
/// Units of a volume span the national meanings (NIST SP 430; kitchen-measure tables of Australia and the United Kingdom).
/// </remarks>
internal sealed class Weigher(WeightTable table, Limits limits)
{
    private static readonly Dictionary<string, (double Low, double High)> Millilitres = new(StringComparer.Ordinal)
    {
        ["ml"] = (1, 1), ["cl"] = (10, 10), ["dl"] = (100, 100), ["l"] = (1000, 1000), ["tsp"] = (4.93, 5), ["tbsp"] = (14.8, 20), ["cup"] = (236.6, 250),
        ["fl-oz"] = (28.4, 29.6), ["pint"] = (473.2, 568.3), ["quart"] = (946.4, 1136.5), ["gallon"] = (3785, 4546), ["pinch"] = (0.2, 0.6), ["dash"] = (0.3, 1),
        ["splash"] = (3, 30), ["drizzle"] = (3, 30), ["handful"] = (60, 180), ["spoon"] = (5, 20), ["glass"] = (120, 300), ["mug"] = (240, 350), ["ladle"] = (80, 150),
        ["bowl"] = (200, 500), ["bottle"] = (250, 1000), ["jar"] = (200, 1000), ["drop"] = (0.05, 0.1), ["shot"] = (25, 50), ["scoop"] = (30, 80), ["dollop"] = (10, 40),
    };

    private static readonly Dictionary<string, double> Grams = new(StringComparer.Ordinal)
    {
        ["g"] = 1, ["kg"] = 1000, ["mg"] = 0.001, ["oz"] = 28.349523125, ["lb"] = 453.59237,
    };

    /// <summary>What an ingredient weighs and fills if it is this food.</summary>
    /// <param name="food">The food, or <see langword="null"/> where it is not identified.</param>
    public Weighing Weigh(Ingredient ingredient, FoodRow? food)
    {
        Interval? grams = null;
        foreach (Amount amount in ingredient.Measures)
        {
            // Several measures of one line say the same thing twice; the first that can be weighed counts, metric mass before all.
            Interval? weighed = One(amount, ingredient, food);
            if (weighed is { } found && (grams is null || Grams.ContainsKey(amount.Unit)))
            {
                grams = found;
            }
        }

        if (grams is not { } mass || mass.High > limits["absurd-grams"] || mass.High <= 0 || double.IsNaN(mass.High) || double.IsNaN(mass.Low))
        {
            return new(null, null, string.Empty);
        }

        double density = food?.Group is "fat-oil" ? 0.92 : food?.Group is "sweetener" ? 1.4 : 1;
        return new(mass, mass * (1 / density), "measured");
    }

    private Interval? One(Amount amount, Ingredient ingredient, FoodRow? food)
    {
        if (ingredient.Package is { } package && amount == ingredient.Amount && package.Unit != amount.Unit
            && One(package, ingredient with { Package = null }, food) is { } each)
        {
            return each * amount.Value;
        }

        if (Grams.TryGetValue(amount.Unit, out double factor))
        {
            return amount.Value * factor;
        }

        if (food is null)
        {
            return Millilitres.TryGetValue(amount.Unit, out (double Low, double High) unread) ? new(amount.Value.Low * unread.Low * 0.2, amount.Value.High * unread.High * 1.4) : null;
        }

        if (table.Piece(food, amount.Unit, ingredient.Size) is { } piece)
        {
            return piece * amount.Value;
        }

        return Millilitres.TryGetValue(amount.Unit, out (double Low, double High) volume)
            ? new Interval(volume.Low, volume.High) * table.Density(food) * amount.Value
            : table.Group(food) is { } group ? group * amount.Value : null;
    }
}
