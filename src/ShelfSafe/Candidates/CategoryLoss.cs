using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>How much of a dish would have to be left out to fit a category.</summary>
internal sealed class CategoryLoss(Limits limits)
{
    /// <summary>Share of the batch that goes, 0 to 1.</summary>
    /// <remarks>At the middle of each range, dry goods as they swell; a main food without an amount weighs what
    /// the others weigh on the average, fat for the pan next to nothing. Of a seasoning only what is above its limit goes:
    /// the finding asks for less of it, not for a dish without it. Water, broth and sugar carry a dish and are none of it. What the recipe itself calls optional counts on neither
    /// side: it is the same dish without it.</remarks>
    public double Of(Batch batch, HashSet<BatchItem> gone)
    {
        double known = 0;
        int count = 0;
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Grams.IsBounded && item.Ingredient.Amount is not null && IsMain(item))
            {
                known += Middle(item);
                count++;
            }
        }

        // Where no main food has an amount, each counts as much as the heaviest of the others: a seasoning is never the dish.
        double usual = count == 0 ? batch.InJar.Where(item => item.Grams.IsBounded && !item.Has("water") && !item.Has("broth")).Select(Middle).DefaultIfEmpty(1).Max() : known / count;
        double kilograms = batch.InJar.Where(item => item.Grams.IsBounded).Sum(item => item.Grams.Low) / 1000;
        double all = 0;
        double lost = 0;
        int main = 0;
        int mainLost = 0;
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Has("water") || item.Has("broth") || item.Has("sugar") || item.Ingredient.Optional)
            {
                continue;
            }

            double grams = item.Grams.IsBounded ? Middle(item) : IsMain(item) && item.Food?.Group != "fat-oil" ? usual : 0;
            all += grams;
            lost += gone.Contains(item) ? Math.Max(0, grams - Kept(item, kilograms)) : 0;
            bool counts = IsMain(item) && item.Food?.Group != "fat-oil";
            main += counts ? 1 : 0;
            mainLost += counts && gone.Contains(item) ? 1 : 0;
        }

        // Of many small foods most may go though they weigh little: that too is another dish.
        double byCount = main == 0 ? 0 : (double)mainLost / main;
        return all <= 0 ? 1 : Math.Max(lost / all, byCount > limits["largest-count-left-out"] ? byCount : 0);
    }

    private static double Kept(BatchItem item, double kilograms) =>
        item.Food is { Bulk: BulkUse.Seasoning, MinorGramsPerKilogram: { } minor } ? minor * kilograms : 0;

    private double Middle(BatchItem item) =>
        (item.Grams.Low + item.Grams.High) / 2 * (item.Has("dry-legume") ? limits["dry-goods-swell"] : 1);

    private static bool IsMain(BatchItem item) => !item.Ingredient.Optional && item.Food?.Bulk != BulkUse.Seasoning && !item.Has("water") && !item.Has("broth");
}
