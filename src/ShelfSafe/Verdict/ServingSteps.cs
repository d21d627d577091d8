using System.Collections.Immutable;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Steps of the table: what is only served beside, or added when serving, is no part of the jar.</summary>
internal static class ServingSteps
{
    /// <summary>Whether a sentence speaks of serving alone.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="facts">Facts of the dish; where jars are filled, "over the top" is no serving unless the sentence says so.</param>
    /// <param name="dry">Whether every listed food is dry, so that "To make: simmer with 8 cups water" needs no jar before it.</param>
    public static bool Outside(StepSentence sentence, ImmutableArray<StepFact> facts, bool dry = false)
    {
        StepFact? filled = null;
        foreach (StepFact fact in facts)
        {
            filled = fact.Id == JarSteps.Filled ? fact : filled;
        }

        foreach (StepFact fact in facts)
        {
            if (ReferenceEquals(fact.Sentence, sentence) && fact.Id is "serve-with" or "at-serving" or "served-fresh" or LaterSteps.Used
                && (fact.Id is "served-fresh" or LaterSteps.Used || filled is null || SaysServing(sentence.Text.Text, fact.Span.Start > filled.Span.Start)))
            {
                return true;
            }
        }

        StepFact? closed = filled ?? facts.FirstOrDefault(static fact => fact.Id == "dry-mixed");
        return (closed is not null || dry) && LaterSteps.At(sentence, facts) is { } later && !(closed?.Span.Start > later.Span.Start);
    }

    private static bool SaysServing(string text, bool after) =>
        (after && text.Contains("garnish", StringComparison.OrdinalIgnoreCase)) || (!text.Contains(" now", StringComparison.OrdinalIgnoreCase) && (text.Contains("serv", StringComparison.OrdinalIgnoreCase) || text.Contains("open", StringComparison.OrdinalIgnoreCase)
        || text.Contains("eat", StringComparison.OrdinalIgnoreCase) || text.Contains("table", StringComparison.OrdinalIgnoreCase)));
}
