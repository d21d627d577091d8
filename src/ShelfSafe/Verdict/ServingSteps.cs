using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Steps of the table: what is only served beside, or added when serving, is no part of the jar.</summary>
internal static class ServingSteps
{
    /// <summary>Fact: the words are for the day the jar is opened, if they stand behind the canner or in a note.</summary>
    public const string Later = "served-later";

    /// <summary>The facts without those by which a note tells what is done with the opened jar: "mash with butter for a side dish".</summary>
    /// <param name="facts">Facts of the dish, those of the jars among them.</param>
    /// <param name="states">Facts that tell what becomes of the food.</param>
    public static ImmutableArray<StepFact> WithoutLater(ImmutableArray<StepFact> facts, RuleList states) =>
        facts.RemoveAll(fact => states.Contains(fact.Id) && SaysLater(fact.Sentence, facts) && IsBehindTheCanner(fact.Sentence, facts));

    private static bool SaysLater(StepSentence sentence, ImmutableArray<StepFact> facts)
    {
        foreach (StepFact fact in facts)
        {
            if (fact.Id == Later && ReferenceEquals(fact.Sentence, sentence))
            {
                return true;
            }
        }

        return false;
    }

    // Behind the sentence that gives the filled jars their heat; where no step fills jars, behind the one that prints a time for the canner.
    private static bool IsBehindTheCanner(StepSentence sentence, ImmutableArray<StepFact> facts)
    {
        int start = sentence.Text.Map(0, Math.Min(1, sentence.Text.Text.Length)).Start;
        bool filled = facts.Any(static fact => fact.Id == JarSteps.Filled);
        return facts.Any(fact => !ReferenceEquals(fact.Sentence, sentence) && fact.Span.Start < start && (filled
            ? fact.Id is JarSteps.Canner or JarSteps.Pressure
            : fact.Id is "boiling-water-canned" or "pressure-canned" or "steam-canned" && fact.Sentence.Text.Text.Any(char.IsAsciiDigit)));
    }

    /// <summary>Whether a sentence speaks of serving alone.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="facts">Facts of the dish; where jars are filled, "over the top" is no serving unless the sentence says so.</param>
    /// <param name="dry">Whether every listed food is dry, so that "To make: simmer with 8 cups water" needs no jar before it.</param>
    public static bool Outside(StepSentence sentence, ImmutableArray<StepFact> facts, bool dry = false)
    {
        if (SaysLater(sentence, facts) && (sentence.Role == StepRole.Note || IsBehindTheCanner(sentence, facts)))
        {
            return true;
        }

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
        || text.Contains("reheat", StringComparison.OrdinalIgnoreCase) || Eats(text) || text.Contains("table", StringComparison.OrdinalIgnoreCase)));

    // "Eat with bread", but not "heat" or "great".
    private static bool Eats(string text)
    {
        int at = text.IndexOf("eat", StringComparison.OrdinalIgnoreCase);
        while (at > 0 && char.IsLetter(text[at - 1]))
        {
            at = text.IndexOf("eat", at + 1, StringComparison.OrdinalIgnoreCase);
        }

        return at >= 0;
    }
}
