using ShelfSafe.Hazards;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Whether a row of the cold-storage table speaks of a dish: by kind of dish or by trait, in the order of the table.</summary>
internal static class StorageMatch
{
    /// <summary>The column lists kinds and traits, any of which is enough; <c>any</c> closes the table.</summary>
    /// <param name="row">The row.</param>
    /// <param name="dish">The dish.</param>
    /// <param name="limits">Above which share of the batch a trait speaks for the dish.</param>
    public static bool Applies(StorageRow row, Dish dish, Limits limits)
    {
        foreach ((string word, ulong mask) in row.Words)
        {
            if (word == "any"
                || dish.Batch.IsKind(word)
                || IsFound(word, dish)
                || ((mask & dish.Batch.TraitMask) != 0 && Share(word, dish) > limits["storage-trait-share"]))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsFound(string rule, Dish dish)
    {
        foreach (RawFinding finding in dish.Findings)
        {
            if (finding.Rule == rule)
            {
                return true;
            }
        }

        return false;
    }

    private static double Share(string trait, Dish dish) => dish.Batch.ShareOf(item => item.Has(trait)).High;
}
