using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Whether a row of the cold-storage table speaks of a dish: by kind of dish or by trait, in the order of the table.</summary>
internal static class StorageMatch
{
    /// <summary>The column lists kinds and traits, any of which is enough; <c>any</c> closes the table.</summary>
    public static bool Applies(StorageRow row, Dish dish)
    {
        foreach ((string word, ulong mask) in row.Words)
        {
            if (word == "any"
                || dish.Batch.IsKind(word)
                || dish.Findings.Exists(finding => finding.Rule == word)
                || ((mask & dish.Batch.TraitMask) != 0 && dish.Batch.ShareOf(item => item.Has(word)).High > 0.2))
            {
                return true;
            }
        }

        return false;
    }
}
