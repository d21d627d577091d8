using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Finds the acidity class of a batch. The line is pH 4.6 (21 CFR 114.3); nothing is averaged or computed.</summary>
internal sealed class AcidityJudge(Limits limits, RuleLists lists)
{
    private readonly RuleList _acidKinds = lists.Of(RuleLists.AcidKinds);
    private readonly RuleList _stewKinds = lists.Of(RuleLists.StewKinds);
    private readonly RuleList _dryKinds = lists.Of(RuleLists.DryKinds);
    private readonly RuleList _driedKinds = lists.Of(RuleLists.DriedKinds);
    private readonly RuleList _dryingFacts = lists.Of(RuleLists.DryingFacts);
    private readonly RuleList _dryAlone = lists.Of(RuleLists.DryAloneGroups);
    private readonly RuleList _wet = lists.Of(RuleLists.WetTraits);
    private readonly RuleList _wetFacts = lists.Of(RuleLists.WetFacts);
    private readonly RuleList _swelling = lists.Of(RuleLists.SwellingTraits);

    /// <summary>The class; unknown where nothing was read.</summary>
    public Acidity Of(Batch batch)
    {
        if (batch.InJar.IsEmpty)
        {
            return Acidity.Unknown;
        }

        bool wet = IsWet(batch);
        bool mix = batch.Kinds.Any(_dryKinds.Contains); // nuts count as low in acid once they are wet; in a dry mix they are dry
        if (IsDried(batch) || (!wet && batch.InJar.All(item => item.Acidity == FoodAcidity.Dry || (mix && item.Food is { } food && _dryAlone.Contains(food.Group) && !item.Has("dense-puree")))))
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

        // Cabbage in its brine makes its own acid.
        bool sours = batch.IsKind("fermented-vegetable") && batch.InJar.Any(static item => item.Has("salt"));
        return (acid || borderline || sours) && (!low || Counts(batch)) ? Acidity.Acidified : Acidity.LowAcid;
    }

    // Dry goods that were wetted or cooked are dry no longer; only a mix that is cooked later, from its tag, stays dry.
    private bool IsWet(Batch batch) =>
        batch.InJar.Any(item => HasAny(item, _wet))
        || (batch.Facts.Any(fact => _wetFacts.Contains(fact.Id)) && !batch.Kinds.Any(_dryKinds.Contains) && !batch.Says("dry-mixed"));

    // Jerky that is hung or dried, granola that is baked: the steps take the water out.
    private bool IsDried(Batch batch) => batch.Kinds.Any(_driedKinds.Contains) && batch.Facts.Any(fact => _dryingFacts.Contains(fact.Id));

    // Beans, grain, pasta and starch are low in acid as soon as water is with them.
    private bool Swells(BatchItem item) => HasAny(item, _swelling);

    private static bool HasAny(BatchItem item, RuleList traits) => item.Food is { } food && food.Traits.Any(traits.Contains);

    private static bool IsWater(BatchItem item) => item.Has("water");

    private bool Counts(Batch batch)
    {
        if (batch.Kinds.Any(_acidKinds.Contains))
        {
            return true;
        }

        bool stew = batch.Kinds.Any(_stewKinds.Contains);
        double all = 0;
        double sour = 0;
        double acidifier = 0;
        double usual = Usual(batch);
        foreach (BatchItem item in batch.InJar)
        {
            double grams = Middle(item, usual);
            all += grams;
            sour += IsSour(item) ? grams : 0;
            acidifier += item.Has("acidifier") || item.Has("fresh-citrus") ? grams : 0;
        }

        return sour >= all * limits[stew ? "acidified-stew-share" : "acidified-share"]
            || (!stew && acidifier >= all * limits["acid-relied-on-share"]);
    }

    private static bool IsSour(BatchItem item) => item.Acidity == FoodAcidity.Acid
        || (item is { Acidity: FoodAcidity.Borderline, Food.Group: not ("vegetable" or "dairy") });

    // A main food without an amount is taken to weigh what the others weigh on the average.
    private double Usual(Batch batch)
    {
        double sum = 0;
        int count = 0;
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Grams.IsBounded && item.Food?.Bulk != BulkUse.Seasoning && item.Acidity != FoodAcidity.Dry)
            {
                sum += (item.Grams.Low + item.Grams.High) / 2;
                count++;
            }
        }

        return count == 0 ? limits["unknown-main-grams"] : sum / count;
    }

    // The class names the dish; it permits nothing, so the middle of a range is enough here. Dry goods count as they swell.
    private double Middle(BatchItem item, double usual)
    {
        double grams = item.Grams.IsBounded ? (item.Grams.Low + item.Grams.High) / 2
            : item.Food?.Bulk == BulkUse.Seasoning ? 0
            : item.Presence == Presence.Maybe ? usual / 2
            : usual;
        return Swells(item) && item.Acidity == FoodAcidity.Dry ? grams * limits["dry-goods-swell"] : grams;
    }
}
