using System.Collections.Immutable;

namespace ShelfSafe.Steps;

/// <summary>A compiled row: the words that say a fact, what else must be said, and what takes it back.</summary>
/// <param name="Fact">Index of the fact.</param>
/// <param name="Core">The words that are pointed at.</param>
/// <param name="Needs">All of these must hold.</param>
/// <param name="Unless">None of these may hold.</param>
internal sealed record StepRule(int Fact, Phrase Core, ImmutableArray<PhraseCondition> Needs, ImmutableArray<PhraseCondition> Unless);
