using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Finds the acidity class of a batch. The line is pH 4.6 (21 CFR 114.3); nothing is averaged or computed.</summary>
internal sealed class AcidityJudge(Limits limits)
{
    private static readonly HashSet<string> ReliesOnAcid = new(StringComparer.Ordinal)
    {
        "salsa", "ketchup", "relish", "chutney", "pickle", "dressing", "vinaigrette", "hot-sauce", "barbecue-sauce", "fermented-vegetable", "sauerkraut", "ceviche",
    };

    /// <summary>The class; unknown where nothing was read.</summary>
    public Acidity Of(Batch batch)
    {
        if (batch.InJar.IsEmpty)
        {
            return Acidity.Unknown;
        }

        bool wet = IsWet(batch);
        if (!wet && batch.InJar.All(item => item.Acidity == FoodAcidity.Dry))
        {
            return Acidity.Dry;
        }

        bool low = batch.InJar.Any(item => (item.Acidity == FoodAcidity.LowAcid && !IsWater(item)) || (wet && Swells(item)));
        bool borderline = batch.InJar.Any(item => item.Acidity == FoodAcidity.Borderline);
        bool acid = batch.InJar.Any(item => item.Acidity == FoodAcidity.Acid);
        if (!low && !borderline)
        {
            return acid ? Acidity.Acid : wet ? Acidity.LowAcid : Acidity.Dry;
        }

        return (acid || borderline) && (!low || Counts(batch)) ? Acidity.Acidified : Acidity.LowAcid;
    }

    // Dry goods that were wetted or cooked are dry no longer; only a mix that is cooked later, from its tag, stays dry.
    private static bool IsWet(Batch batch) =>
        batch.InJar.Any(item => item.Has("water") || item.Has("broth") || item.Has("thin-liquid"))
        || ((batch.Says("boiled") || batch.Says("simmered") || batch.Says("soaked") || batch.Says("rehydrated") || batch.Says("pressure-canned") || batch.Says("boiling-water-canned"))
            && !batch.IsKind("dry-mix") && !batch.IsKind("spice-mix") && !batch.Says("dry-mixed"));

    // Beans, grain, pasta and starch are low in acid as soon as water is with them.
    private static bool Swells(BatchItem item) =>
        item.Has("dry-legume") || item.Has("grain") || item.Has("rice") || item.Has("pasta") || item.Has("starchy") || item.Has("thickener") || item.Has("bread");

    private static bool IsWater(BatchItem item) => item.Has("water");

    private bool Counts(Batch batch)
    {
        if (batch.Kinds.Any(ReliesOnAcid.Contains))
        {
            return true;
        }

        Interval sour = Mass(batch, item => item.Acidity is FoodAcidity.Acid or FoodAcidity.Borderline);
        Interval rest = Mass(batch, item => item.Acidity == FoodAcidity.LowAcid && !IsWater(item));
        Interval acidifier = Mass(batch, item => item.Has("acidifier") || item.Has("fresh-citrus"));
        double middle = Middle(sour) / Math.Max(1, Middle(sour) + Middle(rest));
        bool stew = batch.IsKind("soup") || batch.IsKind("stew") || batch.IsKind("curry") || batch.IsKind("stock");
        return middle >= limits["acidified-share"]
            || !stew && Middle(acidifier) / Math.Max(1, Middle(batch.TotalGrams)) >= limits["acid-relied-on-share"];
    }

    private static Interval Mass(Batch batch, Func<BatchItem, bool> chosen)
    {
        Interval sum = Interval.Zero;
        foreach (BatchItem item in batch.InJar)
        {
            sum += chosen(item) ? item.Grams : Interval.Zero;
        }

        return sum;
    }

    // The class names the dish; it permits nothing, so the middle of a range is enough here.
    private static double Middle(Interval grams) => grams.IsBounded ? (grams.Low + grams.High) / 2 : grams.Low;
}
