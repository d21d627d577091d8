using ShelfSafe.Foods;

namespace ShelfSafe.Verdict;

/// <summary>Foods in the words of the recipe, for sentences that speak of them.</summary>
internal static class FoodWords
{
    private static readonly char[] Blanks = [' ', ',', ';', '(', ')', '*', '_'];

    /// <summary>The food as the recipe writes it, one or many: "green beans" for the food that is told in the singular.</summary>
    public static string Of(IngredientReport entry)
    {
        string[] food = [.. WordFolding.Words(entry.Food).Select(WordFolding.Singular)];
        string[] words = entry.Text.Split(Blanks, StringSplitOptions.RemoveEmptyEntries);
        for (int at = 0; food.Length > 0 && at + food.Length <= words.Length; at++)
        {
            if (words.AsSpan(at, food.Length).ToArray().Select(word => string.Concat(WordFolding.Words(word).Select(WordFolding.Singular))).SequenceEqual(food, StringComparer.Ordinal))
            {
                return string.Join(' ', words[at..(at + food.Length)]).ToLowerInvariant();
            }
        }

        return entry.Food;
    }

    /// <summary>Several names as a list in a sentence; empty for none.</summary>
    public static string Joined(IReadOnlyList<string> names) => names.Count switch
    {
        0 => string.Empty,
        1 => names[0],
        _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
    };
}
