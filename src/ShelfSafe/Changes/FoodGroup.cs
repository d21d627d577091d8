using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>All entries of one food in one recipe: written on one line or on three, it is the same food.</summary>
/// <param name="Key">The food's id, or its words where it has none.</param>
/// <param name="Food">The food, or <see langword="null"/> where it is not identified or a choice.</param>
/// <param name="AtServing">Whether every entry of it is kept for serving.</param>
internal sealed record FoodGroup(string Key, FoodRow? Food, ImmutableArray<IngredientReport> Entries, bool AtServing)
{
    /// <summary>The first entry, for lines and words.</summary>
    public IngredientReport First => Entries[0];

    /// <summary>Grams of all entries; unknown where one of them is.</summary>
    public Interval Grams => Entries.Select(entry => entry.Grams ?? Interval.Unknown).Aggregate(Interval.Zero, (sum, grams) => sum + grams);

    /// <summary>The foods of a report, each once, in reading order.</summary>
    public static List<FoodGroup> Of(VettingReport report, Dictionary<string, FoodRow> foods)
    {
        HashSet<(int, string)> serving = [.. report.Findings.Where(finding => finding.Rule == "at-serving").SelectMany(finding => finding.Places.Select(place => (place.Line, Words(finding.Ingredient))))];
        bool Kept(IngredientReport entry) => serving.Any(one => one.Item1 == entry.Line
            && (one.Item2.Length == 0 || one.Item2.Contains(WordFolding.Key(entry.Food), StringComparison.Ordinal) || report.Ingredients.Count(other => other.Line == entry.Line) == 1));
        return
        [
            .. report.Ingredients.GroupBy(KeyOf, StringComparer.Ordinal).SelectMany(group => Parted(group.Key, [.. group.Where(entry => !Kept(entry))], [.. group.Where(Kept)], foods)),
        ];
    }

    // What goes into the jar and what is kept for serving day are two things, though it is one food.
    private static IEnumerable<FoodGroup> Parted(string key, ImmutableArray<IngredientReport> inJar, ImmutableArray<IngredientReport> kept, Dictionary<string, FoodRow> foods)
    {
        IngredientReport first = inJar.Concat(kept).First();
        FoodRow? food = first is { FoodId: { } id, Alternatives.IsEmpty: true } ? foods.GetValueOrDefault(id) : null;
        if (!inJar.IsEmpty)
        {
            yield return new(key, food, inJar, AtServing: false);
        }

        if (!kept.IsEmpty)
        {
            yield return new(inJar.IsEmpty ? key : key + " at serving", food, kept, AtServing: true);
        }
    }

    private static string Words(string? ingredient) => ingredient is null ? string.Empty : WordFolding.Key(ingredient);

    // A choice is a food of its own, whichever side is named first; an unread food is its words.
    private static string KeyOf(IngredientReport entry)
    {
        string own = entry.FoodId ?? "\"" + WordFolding.Key(entry.Food);
        return entry.Alternatives.IsEmpty
            ? own
            : string.Join('|', entry.Alternatives.Select(other => other.FoodId ?? "\"" + WordFolding.Key(other.Food)).Append(own).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }
}
