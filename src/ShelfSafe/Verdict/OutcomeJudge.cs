using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>What one dish came to.</summary>
/// <param name="Lead">The category or formula that is named, or <see langword="null"/>.</param>
/// <param name="Reasons">How it was reached, one sentence a step.</param>
/// <param name="Acidity">Class of the dish: as its foods tell, or as the published process that it falls under tells.</param>
internal sealed record DishOutcome(Outcome Outcome, Candidate? Lead, List<string> Reasons, Acidity Acidity);

/// <summary>The one place that makes an outcome of acidity, findings and candidates. It only tightens.</summary>
internal sealed class OutcomeJudge(Limits limits, RuleLists lists, WordTable words)
{
    private readonly RuleList _body = lists.Of(RuleLists.BodyTraits);
    private readonly RuleList _driedKinds = lists.Of(RuleLists.DriedKinds);

    /// <summary>The outcome of one dish.</summary>
    public DishOutcome Of(Batch batch, Acidity acidity, IReadOnlyList<RawFinding> found, IReadOnlyList<Candidate> candidates)
    {
        Candidate? lead = Best(candidates);
        // Cabbage in its brine, fruit with bottled lemon juice: what boiling water may process as written keeps by the acid of the published recipe.
        acidity = acidity == Acidity.LowAcid && lead is { Method: "boiling-water", Judgement: Judgement.Admits } ? Acidity.Acidified : acidity;
        List<string> reasons = [words[$"reason.acidity.{Names.Of(acidity)}"]];
        if (batch.InJar.IsEmpty)
        {
            reasons.Add(words["reason.nothing-read"]);
            return new(Outcome.CannotTell, null, reasons, acidity);
        }

        if (batch.NotAJar == "yes" && lead is not { Kind: "formula", Judgement: not Judgement.Refuses })
        {
            reasons.Add(words.With(batch.Dish[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "reason.not-a-jar-food-vowel" : "reason.not-a-jar-food", batch.Dish));
            return new(Outcome.NotAJarFood, null, reasons, acidity);
        }

        bool stop = found.Any(finding => finding.Level == FindingLevel.Stop);
        bool change = found.Any(finding => finding.Level == FindingLevel.Change);
        if (lead is { Judgement: not Judgement.Refuses } && !stop && !(lead.Method == "dry" && (change || lead.Findings.Any(finding => finding.Level == FindingLevel.Change))))
        {
            reasons.Add(lead.Reason);
            return new(Permitted(lead), lead, reasons, acidity);
        }

        bool barred = lead is { Method: "dry" } && (lead.Judgement == Judgement.AdmitsAfter || lead.Findings.Any(static finding => finding is { Level: >= FindingLevel.Change, Rule: not "untested-food" })); // nuts keep dry
        if (acidity == Acidity.Dry && !stop && !change && !barred && !IsPaste(batch) && !batch.Kinds.Any(_driedKinds.Contains)) // jerky: whether it was dried far enough no text tells
        {
            reasons.Add(words["reason.dry-storage"]);
            return new(Outcome.DryStorage, lead, reasons, acidity);
        }

        if (lead is not null)
        {
            reasons.Add(lead.Reason);
        }

        return new(WithoutProcess(batch, acidity, found, lead, reasons), lead, reasons, acidity);
    }

    /// <summary>A printed time or jar that falls short of the published one must be changed first.</summary>
    public static DishOutcome AfterOwnProcess(DishOutcome outcome, IEnumerable<RawFinding> all)
    {
        Outcome after = outcome.Outcome switch
        {
            Outcome.Pressure => Outcome.PressureAfterChanges,
            Outcome.BoilingWater => Outcome.BoilingWaterAfterChanges,
            Outcome.DryStorage => Outcome.CannotTell,
            var same => same,
        };
        return after != outcome.Outcome && all.Any(finding => finding.Level >= FindingLevel.Change) ? outcome with { Outcome = after } : outcome;
    }

    // Of several that admit, the one that asks for less; then the higher rank. Of several that refuse the formula of the dish's kind, then the soup.
    private static Candidate? Best(IReadOnlyList<Candidate> candidates)
    {
        Candidate? best = null;
        foreach (Candidate candidate in candidates)
        {
            best = best is null || Compare(candidate, best) > 0 ? candidate : best;
        }

        return best;
    }

    private static int Compare(Candidate one, Candidate other)
    {
        int order = one.Judgement.CompareTo(other.Judgement);
        order = order != 0 ? order : Rank(one).CompareTo(Rank(other));
        return order != 0 ? order : string.CompareOrdinal(other.Id, one.Id);
    }

    private static int Rank(Candidate candidate) => candidate.Kind == "formula" ? int.MaxValue
        : candidate.Judgement == Judgement.Refuses && candidate.Id == "soup" ? int.MaxValue - 1
        : candidate.Rank;

    private static Outcome Permitted(Candidate lead) => (lead.Method, lead.Judgement) switch
    {
        ("dry", _) => Outcome.DryStorage,
        ("pressure", Judgement.Admits) => Outcome.Pressure,
        ("pressure", _) => Outcome.PressureAfterChanges,
        (_, Judgement.Admits) => Outcome.BoilingWater,
        _ => Outcome.BoilingWaterAfterChanges,
    };

    private bool IsPaste(Batch batch) =>
        batch.ShareOf(item => item.Has("nut")).Low > limits["body-share"] && (batch.Says("blended") || batch.Says("mashed"));

    private Outcome WithoutProcess(Batch batch, Acidity acidity, IReadOnlyList<RawFinding> found, Candidate? lead, List<string> reasons)
    {
        if (TooMuchUnknown(batch, found))
        {
            reasons.Add(words["reason.cannot-tell"]);
            return Outcome.CannotTell;
        }

        bool body = _body.Words.Any(trait => IsBody(trait, batch))
            || found.Any(finding => finding.Rule == "oil-infusion")
            || batch.NotAJar == "freeze";
        if (acidity is Acidity.Acid or Acidity.Acidified && !body)
        {
            reasons.Add(words["reason.tested-recipe-only"]);
            return Outcome.TestedRecipeOnly;
        }

        reasons.Add(words[lead is { Kind: "formula", IsNamed: true } ? "reason.freeze-or-chill-formula" : "reason.freeze-or-chill"]);
        return Outcome.FreezeOrChill;
    }

    private bool IsBody(string trait, Batch batch) => (WordMask.Of(trait) & batch.TraitMask) != 0
        && batch.ShareOf(item => item.Has(trait)) is { Low: > 0 } share && (share.Low + share.High) / 2 > limits["body-share"];

    private bool TooMuchUnknown(Batch batch, IReadOnlyList<RawFinding> found)
    {
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Food is null
                && !(item.Weighed && item.Grams.High <= limits["unknown-small-grams"])
                && batch.ShareOf(other => ReferenceEquals(other, item)).High > limits["unknown-large-share"]
                && !found.Any(finding => finding.Item?.Food is not null && finding.Level >= FindingLevel.Change))
            {
                return true;
            }
        }

        return false;
    }
}
