namespace ShelfSafe.Steps;

/// <summary>A compiled row: the words that say a fact, what else must be said, and what takes it back.</summary>
/// <param name="Fact">Index of the fact.</param>
/// <param name="Core">The words that are pointed at.</param>
/// <param name="Needs">Numbers of the conditions that must all hold.</param>
/// <param name="Unless">Numbers of those of which none may hold.</param>
internal sealed record StepRule(int Fact, Phrase Core, int[] Needs, int[] Unless);
