using System.Globalization;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Plans;

/// <summary>Reads the column <c>applies</c> of the run sheet: tests joined by <c>+</c> all hold, one after <c>-</c> must not.</summary>
internal sealed class StepTest(VettingReport report, ProcessLine process, Dictionary<string, FoodRow> foods)
{
    /// <summary>Whether a row is for this recipe; any of its tests is enough.</summary>
    public bool Takes(RunSheetRow row) =>
        (row.Method == "any" || row.Method == process.Method) && row.Applies.Any(All);

    /// <summary>The foods that a row speaks of, in plain words; all foods where it names none.</summary>
    public string Foods(RunSheetRow row)
    {
        string[] tests = [.. row.Applies.SelectMany(one => one.Split('+', StringSplitOptions.TrimEntries)).Where(IsFood)];
        return FoodWords.Joined([.. InJar().Where(entry => tests.Length == 0 || tests.Any(test => Food(test, entry))).Select(FoodWords.Of).Distinct(StringComparer.Ordinal)]);
    }

    private bool All(string tests)
    {
        string[] parts = tests.Split(" - ", StringSplitOptions.TrimEntries);
        return parts[0].Split('+', StringSplitOptions.TrimEntries).All(One) && !parts.Skip(1).Any(One);
    }

    private bool One(string test)
    {
        int blank = test.IndexOf(' ', StringComparison.Ordinal);
        string value = test[(blank + 1)..];
        return test[..Math.Max(blank, 0)] switch
        {
            "category" => report.Category?.Id == value,
            "pack" => process.Pack == value,
            "gauge" => process.Gauge == value,
            "under" => process.Minutes < int.Parse(value, CultureInfo.InvariantCulture),
            "over" => process.Minutes > int.Parse(value, CultureInfo.InvariantCulture),
            _ when IsFood(test) => InJar().Any(entry => Food(test, entry)),
            _ => test == "any"
                || (test == "several loads" && report.Measures.JarYield is { Loads: not { IsBounded: true, High: <= 1 } })
                || (test == "acid" && process.AcidAddition is { Length: > 0 })
                || (test == "conditions" && process.Conditions.Length > 0 && !IsOverruledSoup()),
        };
    }

    // The row of a single food lends a soup its longer time; how a soup is cooked, its own directions say.
    private bool IsOverruledSoup() => report.Category?.Id == "soup" && !process.Overruled.IsDefaultOrEmpty;

    private static bool IsFood(string test) =>
        test.StartsWith("group ", StringComparison.Ordinal) || test.StartsWith("trait ", StringComparison.Ordinal) || test.StartsWith("food ", StringComparison.Ordinal);

    private IEnumerable<IngredientReport> InJar()
    {
        HashSet<int> serving = [.. report.Findings.Where(finding => finding.Rule == "at-serving").SelectMany(finding => finding.Places.Select(place => place.Line))];
        return report.Ingredients.Where(entry => !serving.Contains(entry.Line));
    }

    private bool Food(string test, IngredientReport entry)
    {
        string value = test[(test.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        return test[0] switch
        {
            't' => entry.Traits.Contains(value, StringComparer.Ordinal),
            'f' => entry.FoodId == value,
            _ => entry.FoodId is { } id && foods.TryGetValue(id, out FoodRow? food) && food.Group == value,
        };
    }
}
