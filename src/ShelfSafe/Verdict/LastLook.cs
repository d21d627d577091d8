using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Before a yes is given, everything in the text is looked at once more, and whatever was not understood is asked.</summary>
/// <remarks>It can only take a yes back: words that nobody knows, foods that stand outside the list, a food that is already prepared, more of a food than listed.</remarks>
internal sealed class LastLook(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, PlainWords plain, HazardRoom hazards, JarYield jars, Limits limits, RuleLists lists, JarAcid jarAcid, StepFoods stepFoods, StepMeasures measures)
{
    private readonly UnreadWords _unread = new(catalogue, words, texts, plain);
    private readonly LineTails _tails = new(catalogue, words, texts, lists, limits);
    private readonly TextFoods _foods = new(catalogue, words, texts, measures, limits, lists, stepFoods);
    private readonly AcidWords _acid = new(words, texts, measures, limits, lists, jarAcid);
    private readonly NamedJars _jars = new(words, jars, limits);
    private readonly NamedHeadspace _headspace = new(words, texts, limits);
    private readonly ProcessDoubts _doubts = new(words, texts);
    private readonly DilutingWater _water = new(texts, measures);
    private readonly StepAdditions _additions = new(words, texts, lists, stepFoods);

    /// <summary>Findings that bar a yes as written.</summary>
    /// <param name="recipe">The recipe, for its title.</param>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    /// <param name="outcome">What would be permitted.</param>
    public IEnumerable<RawFinding> Find(Recipe recipe, RecipePart part, Batch batch, DishOutcome outcome)
    {
        Lazy<HashSet<string>> listed = new(() => stepFoods.Known(part));
        return
        [
            .. InText(recipe, part, batch, outcome, listed),
            .. InJars(recipe, part, batch, outcome),
            .. part.Ingredients.SelectMany(line => InLine(line, batch, outcome)),
            .. InSteps(part, batch, outcome, listed),
        ];
    }

    private IEnumerable<RawFinding> InText(Recipe recipe, RecipePart part, Batch batch, DishOutcome outcome, Lazy<HashSet<string>> listed) =>
        All("title-state", batch, _foods.StatesOfTitle(recipe, part, outcome.Lead))
            .Concat(All("unread", batch, _unread.InTitle(TextFoods.Title(recipe, part)).Select(place => TextFoods.OfTitle(recipe, part, place))))
            .Concat(All("step-food", batch, _foods.InTitle(recipe, part, batch, outcome.Outcome == Outcome.DryStorage, listed).Concat(_foods.BesideTheSteps(part, batch, listed)).Concat(_foods.Unserved(part, batch)).Concat(_additions.Find(recipe, part, batch, listed))));

    private IEnumerable<RawFinding> InJars(Recipe recipe, RecipePart part, Batch batch, DishOutcome outcome)
    {
        if (outcome.Outcome != Outcome.DryStorage && WithoutCanner(batch, outcome) is { } filled)
        {
            yield return One("no-canner", batch, (filled.Span, filled.Words));
        }

        // "Process" alone is the process that was named; a steam canner is another one. Source: NCHFP on atmospheric steam canners.
        if (outcome.Lead?.Method == "pressure" && batch.Fact("steam-canned") is { } steamed)
        {
            yield return One("no-canner", batch, (steamed.Span, steamed.Words));
        }

        foreach (RawFinding doubt in All("process-in-doubt", batch, outcome.Outcome == Outcome.DryStorage ? [] : _doubts.Find(part, batch)))
        {
            yield return doubt;
        }

        // Dry foods keep in any proportion.
        if (outcome.Outcome != Outcome.DryStorage && batch.Fact("amounts-loose") is { } loose)
        {
            yield return One("loose-amounts", batch, (loose.Span, loose.Words));
        }

        if (_jars.TooLarge(recipe, part, outcome.Lead?.Processes ?? []) is { } jar)
        {
            yield return LargestJar.In(One("jar-too-large", batch, jar), outcome.Lead!.Processes, batch, WordTable.BuiltIn);
        }

        // Of several products in one jar each has its own headspace; that of the soup itself is as published as that of its chicken.
        IReadOnlyList<ProcessRow> rows = outcome.Lead is { } lead ? [.. lead.Processes, .. lead.Overruled] : [];
        foreach ((SourceSpan, string) headspace in _headspace.Other(part, rows))
        {
            IEnumerable<string> published = rows.Select(static row => row.HeadspaceInches).Distinct().Order().Select(Inches.Of);
            yield return OwnProcess.With(One("own-process", batch, headspace), WordTable.BuiltIn.With("own-process.headspace", string.Join(WordTable.BuiltIn["own-process.or"], published)));
        }
    }

    // Jars that are filled meet the canner behind it; where only a word tells of jars ("jar up hot"), the canner may be named anywhere.
    private static StepFact? WithoutCanner(Batch batch, DishOutcome outcome)
    {
        bool pressure = outcome.Lead?.Method == "pressure";
        bool named = batch.Says(pressure ? JarSteps.Pressure : JarSteps.Canner)
            || (!batch.Says(JarSteps.Filled) && (batch.Says("pressure-canned") || (!pressure && (batch.Says("boiling-water-canned") || batch.Says("steam-canned")))));
        return named || batch.Facts.Any(static fact => fact.Id.StartsWith("unsafe-", StringComparison.Ordinal)) ? null : batch.Fact(JarSteps.Filled) ?? batch.Fact("jars-named");
    }

    private IEnumerable<RawFinding> InLine(IngredientLine line, Batch batch, DishOutcome outcome)
    {
        if ((_tails.SecondAmount(line, batch) ?? _tails.Doubt(line, batch)) is { } second)
        {
            yield return One("unread", batch, second);
        }

        // Dry foods keep in any proportion; in a published recipe each amount counts.
        if (outcome.Outcome != Outcome.DryStorage && outcome.Lead?.Kind == "formula" && _tails.More(line, batch) is { } more)
        {
            yield return One("more-in-steps", batch, more);
        }

        foreach (RawFinding other in All("step-food", batch, _tails.OtherFoods(line, batch)).Concat(All("unread", batch, _unread.InLine(line, batch))))
        {
            yield return other;
        }

        string? pieces = outcome.Lead is { Kind: "category", IsSmooth: false, Name: var name } ? name : null;
        if ((outcome.Outcome == Outcome.DryStorage ? _tails.Wet(line) : _tails.Prepared(line, batch, pieces)) is { } prepared)
        {
            yield return One("prepared-food", batch, prepared);
        }
    }

    private IEnumerable<RawFinding> InSteps(RecipePart part, Batch batch, DishOutcome outcome, Lazy<HashSet<string>> listed)
    {
        bool acid = outcome.Outcome is Outcome.BoilingWater or Outcome.BoilingWaterAfterChanges && outcome.Lead?.Method == "boiling-water";
        bool now = outcome.Outcome is Outcome.Pressure or Outcome.BoilingWater;
        return All("acid-in-doubt", batch, acid ? _acid.Find(part, batch, outcome.Lead!.Kind == "formula") : [])
            .Concat(All("more-in-steps", batch, _foods.More(part, batch, outcome.Outcome == Outcome.DryStorage)))
            .Concat(All("more-in-steps", batch, outcome.Lead?.Kind == "formula" ? _water.Find(part, batch) : []))
            .Concat(All("unread", batch, now ? _unread.Find(part, batch, listed) : []));
    }

    private IEnumerable<RawFinding> All(string rule, Batch batch, IEnumerable<(SourceSpan, string)> places)
    {
        foreach ((SourceSpan, string) place in places)
        {
            yield return One(rule, batch, place);
        }
    }

    private RawFinding One(string rule, Batch batch, (SourceSpan Span, string Words) place) => hazards.Raise(rule, null, batch, place.Span, place.Words, FindingLevel.Change);
}
