using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Before a yes is given, everything in the text is looked at once more, and whatever was not understood is asked.</summary>
/// <remarks>It can only take a yes back: words that nobody knows, foods that stand outside the list, a food that is already prepared, more of a food than listed.</remarks>
internal sealed class LastLook(FoodCatalogue catalogue, LineWordTable words, PlainWords plain, HazardRoom hazards, JarYield jars, Limits limits, RuleLists lists, JarAcid jarAcid)
{
    private readonly UnreadWords _unread = new(catalogue, words, plain);
    private readonly LineTails _tails = new(catalogue, words, lists);
    private readonly TextFoods _foods = new(catalogue, words, limits, lists);
    private readonly AcidWords _acid = new(catalogue, words, limits, jarAcid);
    private readonly NamedJars _jars = new(words, jars, limits);

    /// <summary>Findings that bar a yes as written.</summary>
    /// <param name="recipe">The recipe, for its title.</param>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    /// <param name="outcome">What would be permitted.</param>
    public IEnumerable<RawFinding> Find(Recipe recipe, RecipePart part, Batch batch, DishOutcome outcome)
    {
        bool dry = outcome.Outcome == Outcome.DryStorage;
        bool plain = outcome.Lead is { Kind: "category", IsSmooth: false };
        foreach ((SourceSpan span, string text) in _foods.InTitle(recipe, part, batch, outcome.Lead?.Kind == "category").Concat(_foods.BesideTheSteps(part, batch)).Concat(_foods.Unserved(part, batch)))
        {
            yield return hazards.Raise("step-food", null, batch, span, text, FindingLevel.Change);
        }

        if (batch.Fact(JarSteps.Filled) is { } filled && !batch.Says(outcome.Lead?.Method == "pressure" ? JarSteps.Pressure : JarSteps.Canner) && !dry && !batch.Facts.Any(fact => fact.Id.StartsWith("unsafe-", StringComparison.Ordinal)))
        {
            yield return hazards.Raise("no-canner", null, batch, filled.Span, filled.Words, FindingLevel.Change);
        }

        if (_jars.TooLarge(recipe, part, outcome.Lead?.Processes ?? []) is { } jar)
        {
            yield return hazards.Raise("jar-too-large", null, batch, jar.Span, jar.Words, FindingLevel.Change);
        }

        foreach (IngredientLine line in part.Ingredients)
        {
            if ((_tails.SecondAmount(line) ?? _tails.Doubt(line, batch)) is { } second)
            {
                yield return hazards.Raise("unread", null, batch, second.Span, second.Words, FindingLevel.Change);
            }

            foreach ((SourceSpan span, string text) in _tails.OtherFoods(line, batch))
            {
                yield return hazards.Raise("step-food", null, batch, span, text, FindingLevel.Change);
            }

            if (plain && !dry && _tails.Prepared(line, batch) is { } prepared)
            {
                yield return hazards.Raise("prepared-food", null, batch, prepared.Span, prepared.Words, FindingLevel.Change);
            }
        }

        foreach ((SourceSpan span, string text) in outcome.Outcome is Outcome.BoilingWater or Outcome.BoilingWaterAfterChanges && outcome.Lead?.Method == "boiling-water" ? _acid.Find(part, batch, outcome.Lead.Kind == "formula") : [])
        {
            yield return hazards.Raise("acid-in-doubt", null, batch, span, text, FindingLevel.Change);
        }

        foreach ((SourceSpan span, string text) in dry ? [] : _foods.More(part, batch))
        {
            yield return hazards.Raise("more-in-steps", null, batch, span, text, FindingLevel.Change);
        }

        foreach ((SourceSpan span, string text) in outcome.Outcome is Outcome.Pressure or Outcome.BoilingWater ? _unread.Find(part, batch) : [])
        {
            yield return hazards.Raise("unread", null, batch, span, text, FindingLevel.Change);
        }
    }
}
