using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>What a kitchen change does: foods, shares, findings, outcome and process before and after.</summary>
/// <param name="Before">The report on the first recipe.</param>
/// <param name="After">The report on the changed one.</param>
/// <param name="Changes">Foods that changed; those that matter stand first.</param>
/// <param name="Shares">Shares of the batch whose ranges lie apart.</param>
/// <param name="NewFindings">Findings of the changed recipe that the first one does not have.</param>
/// <param name="GoneFindings">Findings of the first recipe that the changed one no longer has.</param>
/// <param name="ProcessDiffers">Whether the published rows that apply are others.</param>
public sealed record RecipeComparison(
    VettingReport Before,
    VettingReport After,
    ImmutableArray<IngredientChange> Changes,
    ImmutableArray<ShareChange> Shares,
    ImmutableArray<Finding> NewFindings,
    ImmutableArray<Finding> GoneFindings,
    bool ProcessDiffers)
{
    /// <summary>Foods that were measured in another way, so that a change may hide: no change was found in them.</summary>
    public ImmutableArray<AmountDoubt> Unsure { get; init; } = [];

    /// <summary>Warnings of either recipe that hang on how <see cref="Unsure"/> foods are measured, while foods, verdict and process are the same.</summary>
    public ImmutableArray<Finding> UnsureFindings { get; init; } = [];

    /// <summary>Whether the two are the same for the jar: nothing was found at all.</summary>
    public bool IsSame => Changes.IsEmpty && Shares.IsEmpty && NewFindings.IsEmpty && GoneFindings.IsEmpty && !VerdictDiffers && !ProcessDiffers;

    /// <summary>Whether outcome or acidity is another one.</summary>
    public bool VerdictDiffers => Before.Outcome != After.Outcome || Before.Acidity != After.Acidity;

    /// <summary>Whether anything was found that matters for the jar: a food, a new warning, another verdict or process.</summary>
    public bool Matters => VerdictDiffers || ProcessDiffers
        || Changes.Any(change => change.Matters)
        || NewFindings.Any(finding => finding.Level >= FindingLevel.Change);
}

/// <summary>One food measured in two unlike ways.</summary>
/// <param name="Before">Ingredient line before.</param>
/// <param name="After">Ingredient line after.</param>
/// <param name="Factor">Amount after as a multiple of the amount before, least and most.</param>
public sealed record AmountDoubt(string Before, string After, Interval Factor);

/// <summary>A share of the batch that really changed.</summary>
/// <param name="What"><c>solids</c>, <c>fat</c>, <c>acid</c> or <c>low-acid</c>.</param>
/// <param name="Before">Share before, 0 to 1.</param>
/// <param name="After">Share after, 0 to 1.</param>
public sealed record ShareChange(string What, Interval Before, Interval After);
