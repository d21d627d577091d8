using System.Collections.Immutable;
using ShelfSafe.Heat;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>What a vetted recipe weighs and is made of, as far as a picture needs it.</summary>
/// <param name="Parts">Foods in the jar and their kilograms, the middle of what they may weigh.</param>
/// <param name="Food">Composition of the whole, or <see langword="null"/>.</param>
/// <param name="WhyNot">Why no picture can be drawn, or <see langword="null"/>.</param>
internal sealed record RecipeMix(ImmutableArray<(FoodRow Food, double Kilograms)> Parts, Composition? Food, string? WhyNot);

/// <summary>Reads recipes for pictures.</summary>
/// <remarks>Known gap: of a food with several published states the plain one is taken; it colours a picture and touches no verdict.</remarks>
internal sealed class RecipeMixer
{
    private static readonly string[] Columns = ["food", "water", "protein", "fat", "carbohydrate", "fibre", "starch", "ash", "density", "source"];

    private readonly Dictionary<string, FoodRow> _foods;
    private readonly Dictionary<string, Composition> _published = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _like = new(StringComparer.Ordinal);
    private readonly LessonNumbers _numbers;
    private readonly WordTable _words;

    /// <summary>Reads the composition tables of a pack.</summary>
    public RecipeMixer(RulePack pack, LessonNumbers numbers, WordTable words)
    {
        _numbers = numbers;
        _words = words;
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        CsvTable.Read("composition.csv", pack.Text("composition.csv"), Columns, row => Published(row), []);
        CsvTable.Read("food-composition.csv", pack.Text("food-composition.csv"), ["food", "like", "basis", "state", "form"], row => _like.TryAdd(row.Text("food"), row.Text("like")) ? string.Empty : null, []);
    }

    /// <summary>Adds up a recipe, or says why not.</summary>
    public RecipeMix Of(VettingReport report)
    {
        if (report.Parts.Length > 1)
        {
            return new([], null, _words["why.several"]);
        }

        HashSet<int> later = [.. report.Findings.Where(finding => finding.Rule == "at-serving").SelectMany(finding => finding.Places).Select(place => place.Line)];
        List<(FoodRow Food, double Kilograms)> parts = [];
        foreach (IngredientReport ingredient in report.Ingredients.Where(one => !later.Contains(one.Line)))
        {
            if (ingredient.Grams is not { IsBounded: true } grams)
            {
                return new([], null, _words.With("why.unweighed", ingredient.Food));
            }

            if (ingredient.FoodId is { } id && _foods.TryGetValue(id, out FoodRow? food))
            {
                parts.Add((food, (grams.Low + grams.High) / 2000));
            }
            else
            {
                return new([], null, _words.With("why.unread", ingredient.Food));
            }
        }

        return parts.Sum(part => part.Kilograms) <= 0 ? new([], null, _words["why.empty"]) : Sum(parts);
    }

    /// <summary>Composition of a published recipe from the middle of its printed amounts, or <see langword="null"/> where one cannot be weighed.</summary>
    public Composition? Of(FormulaRow formula)
    {
        List<(FoodRow Food, double Kilograms)> parts = [];
        foreach (FormulaSlot slot in formula.Slots.Where(slot => !slot.Discarded && slot.Role != FormulaRole.Free))
        {
            if (slot.PerJar || slot.Grams is not { } grams || !_foods.TryGetValue(slot.Foods[0], out FoodRow? food))
            {
                return null;
            }

            parts.Add((food, grams / 1000));
        }

        return parts.Count == 0 ? null : Sum(parts).Food;
    }

    private RecipeMix Sum(List<(FoodRow Food, double Kilograms)> parts)
    {
        double total = parts.Sum(part => part.Kilograms);
        double[] sums = new double[6];
        foreach ((FoodRow food, double kilograms) in parts)
        {
            if (Of(food) is { } own)
            {
                double[] shares = [own.Water, own.Protein, own.Fat, own.Carbohydrate, own.Fibre, own.Ash];
                for (int i = 0; i < shares.Length; i++)
                {
                    sums[i] += kilograms * shares[i];
                }
            }
            else if (kilograms > _numbers["negligible-share"] * total)
            {
                return new([.. parts], null, _words.With("why.no-composition", food.Name));
            }
        }

        return new([.. parts], Composition.FromParts(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]), null);
    }

    private Composition? Of(FoodRow food) =>
        food.Group == "water" ? new Composition(1, 0, 0, 0, 0, 0)
        : _published.TryGetValue(_like.GetValueOrDefault(food.Id, food.Id), out Composition found) ? found
        : null;

    private string? Published(CsvRow row)
    {
        double water = row.Number("water") ?? 0;
        double fibre = row.Number("fibre") ?? 0;
        double carbohydrate = Math.Max(0, (row.Number("carbohydrate") ?? 0) - fibre); // printed with the fibre in it
        double sum = water + (row.Number("protein") ?? 0) + (row.Number("fat") ?? 0) + carbohydrate + fibre + (row.Number("ash") ?? 0);
        if (sum > 0)
        {
            _published[row.Text("food")] = Composition.FromParts(water, row.Number("protein") ?? 0, row.Number("fat") ?? 0, carbohydrate, fibre, row.Number("ash") ?? 0);
        }

        return string.Empty;
    }
}
