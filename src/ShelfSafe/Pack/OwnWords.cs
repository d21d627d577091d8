using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Reads the cook's own words for foods: a table with the columns <c>word,food</c>.</summary>
/// <remarks>A word can only point to a food that the pack knows, by id or by name; it never carries a pH or a process.</remarks>
public static class OwnWords
{
    private const int MostWordsInAFault = 60;

    private static readonly string[] _header = ["word", "food"];

    /// <summary>Reads the table.</summary>
    /// <param name="file">Path for messages.</param>
    /// <param name="text">The table.</param>
    /// <param name="pack">The pack whose foods may be named.</param>
    /// <param name="faults">What is wrong; where there is anything, no word is given.</param>
    public static ImmutableArray<AliasRow> Read(string file, string text, RulePack pack, out ImmutableArray<PackFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(pack);
        Dictionary<string, string> foods = new(StringComparer.OrdinalIgnoreCase);
        foreach (FoodRow food in pack.Tables.Foods)
        {
            foods[food.Name] = food.Id;
        }

        foreach (FoodRow food in pack.Tables.Foods)
        {
            foods[food.Id] = food.Id;
        }

        List<PackFault> found = [];
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        List<AliasRow> rows = CsvTable.Read(file, text, _header, row => Row(row, foods, seen), found);
        faults = [.. found];
        return found.Count == 0 ? [.. rows] : [];
    }

    private static AliasRow? Row(CsvRow row, Dictionary<string, string> foods, HashSet<string> seen)
    {
        string word = row.Text("word");
        string food = row.Text("food");
        if (word.Length == 0)
        {
            row.Fault("word", "the word is missing");
        }
        else if (!seen.Add(word))
        {
            row.Fault("word", $"\"{Short(word)}\" stands twice; each word once");
        }

        if (!foods.TryGetValue(food, out string? id))
        {
            row.Fault("food", $"\"{Short(food)}\" is no food of the rules; name one by its id or name in foods.csv");
            return null;
        }

        return new(word, id, string.Empty, "the cook's own word", row.Line);
    }

    private static string Short(string text) => text.Length <= MostWordsInAFault ? text : text[..MostWordsInAFault] + "...";
}
