using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Whether a row of the cold-storage table speaks of a dish: by kind of dish or by trait, in the order of the table.</summary>
internal static class StorageMatch
{
    /// <summary>The column lists kinds and traits, any of which is enough; <c>any</c> closes the table.</summary>
    public static bool Applies(StorageRow row, Dish dish)
    {
        foreach (string word in row.Applies.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (word == "any"
                || dish.Batch.IsKind(word)
                || dish.Findings.Any(finding => finding.Rule == word)
                || dish.Batch.ShareOf(item => item.Has(word)).High > 0.2)
            {
                return true;
            }
        }

        return false;
    }
}
