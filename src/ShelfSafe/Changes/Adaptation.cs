using System.Collections.Immutable;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>What came of adapting a recipe.</summary>
public enum AdaptationKind
{
    /// <summary>A jar version, judged again and covered by a published process.</summary>
    Jar,

    /// <summary>The recipe as written is covered already.</summary>
    AsWritten,

    /// <summary>A question to the cook must be answered first; until then the freezer version holds.</summary>
    Question,

    /// <summary>No change leads to a published process: the freezer version.</summary>
    Freezer,

    /// <summary>There is nothing to put up: a dry mix, or a dish to eat fresh.</summary>
    Nothing,
}

/// <summary>A jar version or, where there is none, the freezer version and the reason.</summary>
/// <param name="Kind">What came of it.</param>
/// <param name="Before">The report on the recipe as written.</param>
/// <param name="After">The report on the jar version, or <see langword="null"/> where there is none.</param>
/// <param name="Recipe">The jar version as Markdown, without the list of changes; empty where there is none.</param>
/// <param name="Changes">Every change, in the order of the recipe.</param>
/// <param name="Serving">Sentences for serving day that the jar version does not print, as they would be read as steps before the jar.</param>
/// <param name="Questions">What the cook must say first.</param>
/// <param name="Reasons">Why there is no jar version.</param>
/// <param name="Freezing">Steps of the freezer version; empty for a jar version.</param>
/// <param name="Formula">The published recipe it was brought to, or <see langword="null"/>.</param>
public sealed record Adaptation(
    AdaptationKind Kind,
    VettingReport Before,
    VettingReport? After,
    string Recipe,
    ImmutableArray<AdaptChange> Changes,
    ImmutableArray<string> Serving,
    ImmutableArray<AdaptNote> Questions,
    ImmutableArray<AdaptNote> Reasons,
    ImmutableArray<FreezingStep> Freezing,
    FormulaComparison? Formula);

/// <summary>One change of a jar version.</summary>
/// <param name="Kind"><c>serve</c>, <c>leave-out</c>, <c>step</c>, <c>liquid</c>, <c>acid</c>, <c>method</c>, <c>amount</c> or <c>reworded</c>.</param>
/// <param name="What">The words of the recipe that it changes, or the words that are added.</param>
/// <param name="Now">What stands there now, or empty.</param>
/// <param name="Why">Reason.</param>
/// <param name="Sources">Publications that it rests on; empty where it only follows another change.</param>
public sealed record AdaptChange(string Kind, string What, string Now, string Why, ImmutableArray<SourceReference> Sources);

/// <summary>A question or a reason, about some words of the recipe or about the whole.</summary>
/// <param name="What">The words, or empty for the whole recipe.</param>
/// <param name="Text">What is asked of the cook, or the reason, in plain words.</param>
/// <param name="Sources">Publications that it rests on.</param>
public sealed record AdaptNote(string What, string Text, ImmutableArray<SourceReference> Sources);
