using System.Collections.Immutable;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>What one formula says of the batch.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Candidate">Its judgement, findings and processes.</param>
/// <param name="Differences">The comparison food by food.</param>
/// <param name="Covered">Items that the tested recipe itself holds, in an amount it was tested with.</param>
internal sealed record FormulaVerdict(
    FormulaRow Formula,
    Candidate Candidate,
    ImmutableArray<FormulaDifference> Differences,
    ImmutableArray<BatchItem> Covered)
{
    private static readonly string[] Answered =
    [
        "thickener", "fat", "dairy", "dense", "too-little-liquid", "low-acid", "untested-food", "borderline-acid", "proportions", "cured-meat", "oil-infusion",
        "low-sugar", "syrup", "grain", "alkaline", "ground-meat",
    ];

    /// <summary>
    /// Whether the tested recipe itself answers the finding: the food belongs to it, or the finding is about a batch whose every food does.
    /// Findings that ask for a label, a soak, a method or a time stand.
    /// </summary>
    public bool Answers(RawFinding finding) =>
        Candidate.Judgement != Judgement.Refuses
        && Answered.Contains(finding.Rule, StringComparer.Ordinal)
        && (finding.Item is null ? finding.Rule is "dense" or "too-little-liquid" or "low-acid" or "borderline-acid" or "proportions" or "fat" : Covered.Contains(finding.Item));
}
