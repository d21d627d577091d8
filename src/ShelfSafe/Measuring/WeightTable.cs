using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Weights of pieces and cups by food (<c>rules/measures.csv</c>), and wide ranges by food group.</summary>
internal sealed class WeightTable
{
    private static readonly string[] Columns =
        ["food", "food_id", "state", "measure", "grams", "source", "ndb_or_fdc_no", "url", "status", "source_measure", "bulk_g_per_ml"];

    private readonly Dictionary<string, List<(string Measure, double Grams)>> _byFood = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (Interval Each, Interval Density)> _groups = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _links = new(StringComparer.Ordinal);

    /// <summary>Reads the tables of a pack.</summary>
    public WeightTable(RulePack pack, List<PackFault> faults)
    {
        CsvTable.Read("measures.csv", pack.Text("measures.csv"), Columns, row =>
        {
            if (row.Text("status") == "verified" && row.Number("grams") is { } grams)
            {
                Add(_byFood, row.Text("food_id"), (row.Text("measure"), grams));
            }

            return string.Empty;
        }, faults);
        CsvTable.Read("food-composition.csv", pack.Text("food-composition.csv"), ["foods_csv_id", "composition_food_id", "basis"], row =>
        {
            Add(_links, row.Text("foods_csv_id"), row.Text("composition_food_id"));
            return string.Empty;
        }, faults);
        CsvTable.Read("group-weights.csv", pack.Text("group-weights.csv"), ["group", "each_low_g", "each_high_g", "cup_low_g_per_ml", "cup_high_g_per_ml", "source"], row =>
        {
            _groups[row.Text("group")] = (new(row.Number("each_low_g") ?? 0, row.Number("each_high_g") ?? 0), new(row.Number("cup_low_g_per_ml") ?? 0, row.Number("cup_high_g_per_ml") ?? 0));
            return string.Empty;
        }, faults);
    }

    /// <summary>Grams of one piece of a food in a counted unit; <see langword="null"/> where no row speaks of it.</summary>
    public Interval? Piece(FoodRow food, string unit, string? size)
    {
        string[] names = unit switch
        {
            "each" => size switch { "small" => ["each-small", "each"], "large" => ["each-large", "each"], "medium" => ["each-medium", "each"], _ => ["each", "each-small", "each-medium", "each-large", "fillet", "bird", "root"] },
            "can" => ["can", "can-14oz", "can-14.5oz", "can-15oz", "can-15.5oz", "can-16oz", "tin-400g"],
            "package" => ["package", "packet"],
            "head" => ["head", "head-small", "head-medium", "head-large"],
            "stalk" => ["stalk", "stalk-small", "stalk-medium", "stalk-large"],
            _ => [unit],
        };
        Interval? found = null;
        foreach (string id in Ids(food))
        {
            foreach ((string measure, double grams) in _byFood.GetValueOrDefault(id, []))
            {
                if (names.Contains(measure, StringComparer.Ordinal))
                {
                    found = found is { } before ? before.Hull(Interval.Exactly(grams)) : Interval.Exactly(grams);
                }
            }
        }

        return found ?? unit switch
        {
            "can" => new(200, 850),
            "clove" => new(3, 6),
            "sprig" => new(0.3, 3),
            "leaf" => new(0.1, 30),
            "bunch" => new(25, 400),
            "slice" => new(5, 60),
            "stick" => food.Has("dairy") || food.Has("fat") ? new(113, 113.5) : new(2, 60),
            _ => null,
        };
    }

    /// <summary>Grams a millilitre of the food as scooped, over all forms that the table has.</summary>
    public Interval Density(FoodRow food)
    {
        Interval? found = null;
        foreach (string id in Ids(food))
        {
            foreach ((string measure, double grams) in _byFood.GetValueOrDefault(id, []))
            {
                double? millilitres = measure switch { "cup" => 236.588, "tbsp" => 14.7868, "tsp" => 4.92892, "fl-oz" => 29.5735, _ => null };
                if (millilitres is { } volume)
                {
                    Interval density = Interval.Exactly(grams / volume);
                    found = found is { } before ? before.Hull(density) : density;
                }
            }
        }

        return found ?? (_groups.TryGetValue(food.Group, out (Interval Each, Interval Density) group) ? group.Density : new(0.2, 1.4));
    }

    /// <summary>Grams of one of whatever the group holds.</summary>
    public Interval? Group(FoodRow food) => _groups.TryGetValue(food.Group, out (Interval Each, Interval Density) group) ? group.Each : null;

    private List<string> Ids(FoodRow food) => _links.TryGetValue(food.Id, out List<string>? linked) ? linked : [food.Id];

    private static void Add<T>(Dictionary<string, List<T>> map, string key, T value)
    {
        if (!map.TryGetValue(key, out List<T>? list))
        {
            map[key] = list = [];
        }

        list.Add(value);
    }
}
