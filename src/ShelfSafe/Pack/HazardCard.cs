using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>A hazard card: rule, documentation and lesson in one file of <c>rules/hazards/</c>.</summary>
/// <param name="Rule">Rule id, the file's name.</param>
/// <param name="Rows">Its checks, at least one; the worst level that holds is raised.</param>
/// <param name="Message">What is there and why it matters, with placeholders.</param>
/// <param name="StepMessage">The same where only the steps say it; empty where the card has none.</param>
/// <param name="Why">Why it matters, with placeholders.</param>
/// <param name="Instead">What to do instead, with placeholders.</param>
/// <param name="Sections">Prose of every section of the card by its heading.</param>
public sealed record HazardCard(
    string Rule,
    ImmutableArray<HazardRow> Rows,
    string Message,
    string StepMessage,
    string Why,
    string Instead,
    ImmutableDictionary<string, string> Sections)
{
    /// <summary>Level of the first row, for findings that the program raises itself.</summary>
    public FindingLevel FirstLevel => Rows[0].Level;

    /// <summary>Other cases: what else to do there; the first that holds is used.</summary>
    public ImmutableArray<HazardCase> Cases { get; init; } = [];
}

/// <summary>A case in which a finding asks for something else than the card's Instead.</summary>
/// <param name="Check">When it holds; looked at after the verdict.</param>
/// <param name="Instead">What to do; empty where another finding says it already, and this one is dropped.</param>
/// <param name="Message">What is said there, with placeholders; empty for the card's own message.</param>
public sealed record HazardCase(Check Check, string Instead, string Message = "");

/// <summary>One row of a hazard card.</summary>
/// <param name="Level">Level of the finding.</param>
/// <param name="Check">When it is raised.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>.</param>
public sealed record HazardRow(FindingLevel Level, Check Check, ImmutableArray<string> Sources);
