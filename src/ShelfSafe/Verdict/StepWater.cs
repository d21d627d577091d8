using System.Collections.Immutable;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>"Cover with water": it goes in, as much as it takes, though no list names it.</summary>
/// <remarks>Known gap: water that is drained off is told by the next sentence that drains anything.</remarks>
internal static class StepWater
{
    /// <summary>The first water that goes into the jar, with its place in its sentence; <see langword="null"/> where the list has water or broth, or the steps add none.</summary>
    public static (StepSentence Sentence, int Start, int End)? Find(ImmutableArray<StepFact> facts, ImmutableArray<BatchItem> listed)
    {
        if (listed.IsEmpty || listed.Any(item => item.Has("water") || item.Has("broth")))
        {
            return null;
        }

        ServingSteps serving = new(facts, AllDry(listed));
        bool canner = LaterSteps.NamesCanner(facts);
        foreach (StepFact fact in facts)
        {
            // Not what "To make" says of some other day.
            int at = fact.Id == "water-added" && (canner || fact.Sentence.Role == StepRole.Step) && !serving.Outside(fact.Sentence) && !IsPouredOff(fact.Sentence, facts, fact.Span.Start) ? fact.Sentence.Text.Text.IndexOf("water", StringComparison.OrdinalIgnoreCase) : -1;
            if (at >= 0)
            {
                return (fact.Sentence, at, at + "water".Length);
            }
        }

        return null;
    }

    /// <summary>Whether the water of a sentence is drained off again before anything sour goes in: "Cover with boiling water. Next day drain".</summary>
    /// <remarks>Lemon juice in it keeps the food pale, as that of the published marinated mushrooms; the vinegar goes on after the draining.</remarks>
    /// <param name="water">The sentence.</param>
    /// <param name="facts">Facts of the dish.</param>
    /// <param name="at">Where the water stands; the draining stands behind it.</param>
    public static bool IsPouredOff(StepSentence water, ImmutableArray<StepFact> facts, int at = -1)
    {
        int from = water.Text.Map(0, 1).Start;
        foreach (StepFact drained in facts)
        {
            if (drained.Id == "drained" && drained.Span.Start > Math.Max(at, from))
            {
                return !facts.Any(fact => fact.Id == "acid-added" && fact.Span.Start >= from && fact.Span.Start < drained.Span.Start && (IsVinegar(fact) || !facts.Any(later => later.Span.Start > drained.Span.Start && IsVinegar(later))));
            }
        }

        return false;
    }

    private static bool IsVinegar(StepFact fact) => fact.Id == "acid-added" && fact.Sentence.Text.Text.Contains("vinegar", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether every listed food is dry.</summary>
    public static bool AllDry(ImmutableArray<BatchItem> listed) => listed.Length > 1 && listed.All(static item => item.Acidity == FoodAcidity.Dry);
}
