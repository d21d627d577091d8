using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Findings that no card's check can express: what could not be read, identified or weighed.</summary>
internal sealed class ProgramFindings(HazardRoom hazards, UnsafeMethods unsafeMethods, Limits limits)
{
    /// <summary>All of them for one dish.</summary>
    public IEnumerable<RawFinding> Find(Recipe recipe, RecipePart part, Batch batch, Acidity acidity)
    {
        foreach (ReadingProblem problem in recipe.Problems)
        {
            if (problem.Kind is not ("no-ingredients" or "several-dishes"))
            {
                yield return hazards.Raise("unread", null, batch, problem.Span);
            }
        }

        if (batch.Items.IsEmpty)
        {
            yield return hazards.Raise("no-ingredients", null, batch, level: FindingLevel.Stop);
            yield break;
        }

        if (!batch.HasSteps)
        {
            yield return hazards.Raise("no-steps", null, batch, level: FindingLevel.Caution);
        }

        foreach (StepFact fact in batch.Facts)
        {
            if (unsafeMethods.Finding(fact, acidity) is { } method)
            {
                yield return method;
            }
            else if (fact.Id == "sub-recipe" && !IsTheDishItself(fact, part.Name ?? recipe.Title))
            {
                yield return hazards.Raise("sub-recipe", null, batch, fact.Span, fact.Words, FindingLevel.Change);
            }
        }

        foreach (RawFinding finding in OfItems(batch))
        {
            yield return finding;
        }
    }

    // "Basic bolognese sauce." above the list of a bolognese sauce describes the dish. In a step the same words call for another pot.
    private static bool IsTheDishItself(StepFact fact, string? title)
    {
        int first = fact.Words.IndexOf(' ', StringComparison.Ordinal);
        return fact.Sentence.Role == StepRole.Introduction && first > 0
            && title?.Contains(fact.Words[(first + 1)..], StringComparison.OrdinalIgnoreCase) == true;
    }

    private IEnumerable<RawFinding> OfItems(Batch batch)
    {
        int line = -1;
        foreach (BatchItem item in batch.Items)
        {
            bool first = item.Line != line;
            line = item.Line;
            if (item.Food is null)
            {
                yield return hazards.Raise("unidentified", item, batch, level: item.InJar ? FindingLevel.Change : FindingLevel.Caution);
            }
            else if (item.InJar && !item.Weighed && first)
            {
                yield return hazards.Raise(AmountIsAbsurd(item) ? "absurd-amount" : "unmeasured", item, batch, level: FindingLevel.Caution);
            }

            if (first && item.Presence == Presence.AtServing)
            {
                yield return hazards.Raise("at-serving", item, batch);
            }

            if (first && item.Ingredient.Match is OneOf)
            {
                yield return hazards.Raise("regional-word", item, batch);
            }

            if (first && item.Ingredient.Match is Identified { OnTheCooksWord: true })
            {
                yield return hazards.Raise("cooks-word", item, batch);
            }
        }
    }

    private bool AmountIsAbsurd(BatchItem item) =>
        item.Ingredient.Amount is { } amount && (amount.Value.High > limits["absurd-grams"] || amount.Value.High <= 0);
}
