using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>What one formula says of the batch.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Candidate">Its judgement, findings and processes.</param>
/// <param name="Differences">The comparison food by food.</param>
/// <param name="Covered">Items that the tested recipe itself holds, in an amount it was tested with.</param>
/// <param name="IsSmooth">Whether the tested recipe is itself sieved, blended or boiled down.</param>
internal sealed record FormulaVerdict(
    FormulaRow Formula,
    Candidate Candidate,
    ImmutableArray<FormulaDifference> Differences,
    ImmutableArray<BatchItem> Covered,
    bool IsSmooth)
{
    private static readonly string[] AnsweredOfItems =
        ["thickener", "grain", "fat", "dairy", "dense", "low-acid", "untested-food", "borderline-acid", "cured-meat", "oil-infusion", "syrup", "alkaline"];

    // A step that leaves the published amounts is answered by none of them: "leave the fat on", "use half the sugar".
    private static readonly (string Rule, string Fact)[] Departures = [("fat", "not-skimmed"), ("low-sugar", "sugar-cut")];

    private static readonly string[] AnsweredOfBatch = ["low-acid", "borderline-acid", "proportions", "fat", "too-little-liquid", "low-sugar"];

    /// <summary>
    /// Whether the tested recipe itself answers the finding: the food belongs to it, or the finding is about proportions that were tested.
    /// Findings that ask for a label, a soak, a method, a jar or a time stand; so does blending what was tested in pieces.
    /// </summary>
    /// <param name="finding">A finding of the dish.</param>
    /// <param name="batch">The dish.</param>
    public bool Answers(RawFinding finding, Batch batch)
    {
        if (Candidate.Judgement == Judgement.Refuses || Array.Exists(Departures, one => one.Rule == finding.Rule && finding.Level >= FindingLevel.Change && batch.Says(one.Fact)))
        {
            return false;
        }

        if (finding is { Rule: "weak-vinegar", Item: { } vinegar } && Candidate.Method == "pressure")
        {
            return Covered.Contains(vinegar); // under pressure its acid does not carry the jar
        }

        if (finding is { Rule: "thickener", Item: null } && Covered.Any(item => item.Has("thickener")))
        {
            return true; // "stir in the cornstarch": another thickener, or more of it, is a fault of the fit
        }

        return finding.Item is { } item
            ? AnsweredOfItems.Contains(finding.Rule, StringComparer.Ordinal) && Covered.Contains(item)
            : AnsweredOfBatch.Contains(finding.Rule, StringComparer.Ordinal) || (finding.Rule == "dense" && IsSmooth);
    }
}
