using System.Collections.Immutable;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>The front door: text in, finished report out. Same text, pack and kitchen give the same report, byte for byte.</summary>
public sealed class RecipeVetter
{
    private readonly RulePack _pack;
    private readonly RecipeReader _reader = new();
    private readonly IngredientReader _ingredients;
    private readonly BatchRoom _batches;
    private readonly HazardRoom _hazards;
    private readonly DryCompany _dryCompany;
    private readonly ProgramFindings _program;
    private readonly AcidityJudge _acidity;
    private readonly CategoryJudge _categories;
    private readonly FormulaRoom _formulas;
    private readonly OwnProcess _ownProcess;
    private readonly LastLook _lastLook;
    private readonly OutcomeJudge _outcomes;
    private readonly OtherCases _cases;
    private readonly ReportBuilder _reports;

    private RecipeVetter(RulePack pack, string region, IReadOnlyList<AliasRow> ownWords)
    {
        PackTables tables = pack.Tables;
        _pack = pack;
        List<PackFault> faults = [];
        LineWordTable words = LineWordTable.Of(pack, faults);
        FoodCatalogue catalogue = FoodCatalogue.Create(pack, ownWords, words, region);
        ReadTexts texts = new(catalogue, words);
        _ingredients = new(catalogue, words, texts);
        _dryCompany = new(catalogue, words);
        _hazards = new(tables);
        Weigher weigher = Weigher.Create(pack);
        _batches = new(pack, catalogue, words, texts, weigher);
        _program = new(_hazards, new UnsafeMethods(pack.Text("unsafe-methods.csv"), faults), tables.Limits);
        if (faults.Count > 0)
        {
            throw new InvalidDataException(faults[0].ToString());
        }

        _acidity = new(tables.Limits, tables.Lists);
        _categories = new(_hazards, tables);
        _formulas = FormulaRoom.Create(pack, _hazards);
        _ownProcess = new(_hazards, WordTable.BuiltIn, pack.Tables.Kitchen.Row("atmospheric-steam", "atmospheric-steam"));
        _lastLook = new(catalogue, words, texts, new PlainWords(pack.Text("plain-words.csv")), _hazards, weigher.Jars, tables.Limits, tables.Lists, _batches.JarAcid, _batches.StepFoods, new(words, texts));
        _outcomes = new(tables.Limits, tables.Lists, WordTable.BuiltIn);
        _cases = new(_hazards, _hazards.Text);
        _reports = new(pack, weigher.Jars);
    }

    /// <summary>What is wrong in the tables that only a vetter reads: step facts, kinds of dishes, measures, formulas. Nothing is in a sound pack.</summary>
    /// <param name="pack">A pack that was loaded.</param>
    public static ImmutableArray<PackFault> Faults(RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        List<PackFault> faults = [];
        LineWordTable words = LineWordTable.Of(pack, faults);
        ReadTexts texts = new(FoodCatalogue.Create(pack, [], words, string.Empty), words);
        _ = new StepReader(StepFactRow.Read(pack.Text(StepFactRow.File), faults), faults, texts);
        DishReader.Create(pack, faults);
        MeasureTableReader.Read(pack.Text, faults);
        FormulaJudge.Create(pack, new(pack.Tables), faults);
        _ = new UnsafeMethods(pack.Text("unsafe-methods.csv"), faults);
        BatchRoom.Nouns(pack, faults);
        JarAcid.Read(pack.Text("jar-acid.csv"), faults);
        return [.. faults.Distinct()];
    }

    /// <summary>Prepares a vetter; costly once, then cheap a recipe, and usable from several threads.</summary>
    /// <param name="pack">The rule pack.</param>
    /// <param name="region">Country code that settles words with regional meanings, or empty.</param>
    /// <param name="ownWords">The cook's own words for foods of the table, or <see langword="null"/>.</param>
    /// <exception cref="InvalidDataException">A table is wrong; <see cref="Faults"/> names all that is.</exception>
    public static RecipeVetter Create(RulePack pack, string region = "", IReadOnlyList<AliasRow>? ownWords = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack, region, ownWords ?? []);
    }

    /// <summary>Vets one recipe. Text never causes an exception.</summary>
    /// <param name="text">The recipe as it stands in the file.</param>
    /// <param name="kitchen">The kitchen it is judged for.</param>
    /// <param name="plainText">Whether the text is no Markdown.</param>
    public VettingReport Vet(string text, Kitchen kitchen, bool plainText = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(kitchen);
        Recipe recipe = _reader.Read(text, plainText);
        List<Dish> dishes = [];
        foreach (RecipePart part in recipe.Parts)
        {
            dishes.Add(Judge(recipe, part, kitchen));
        }

        if (SeveralDishes.AreMixed(dishes))
        {
            // Told at each dish after the first, so that the cook sees where to cut.
            for (int i = 1; i < dishes.Count; i++)
            {
                dishes[i] = dishes[i] with { Findings = [.. dishes[i].Findings, _hazards.Raise("several-methods", null, dishes[i].Batch, level: FindingLevel.Change)] };
            }
        }

        return _reports.Build(recipe, dishes, kitchen);
    }

    /// <summary>The published formulas that a recipe can be compared with.</summary>
    public ImmutableArray<FormulaName> Formulas => _formulas.Names;

    /// <summary>The first dish of a text beside one published formula; <see langword="null"/> where no formula has the id.</summary>
    /// <param name="text">The recipe as it stands in the file.</param>
    /// <param name="formula">Id of the formula.</param>
    public FormulaComparison? Against(string text, string formula)
    {
        ArgumentNullException.ThrowIfNull(text);
        Recipe recipe = _reader.Read(text);
        RecipePart part = recipe.Parts.FirstOrDefault(one => !one.Ingredients.IsEmpty) ?? recipe.Parts[0];
        List<Ingredient> ingredients = [.. part.Ingredients.SelectMany(line => _ingredients.Read(line)).Take((int)_pack.Tables.Limits["most-ingredients"])];
        _dryCompany.Settle(ingredients);
        Batch batch = _batches.Make(recipe, part, ingredients);
        return _formulas.Compare(formula, batch, points => _cases.Settle(points, batch, _acidity.Of(batch), Outcome.TestedRecipeOnly));
    }

    private Dish Judge(Recipe recipe, RecipePart part, Kitchen kitchen)
    {
        List<Ingredient> ingredients = Ingredients(part, out bool endless);
        _dryCompany.Settle(ingredients);
        Batch batch = _batches.Make(recipe, part, ingredients);
        Acidity acidity = _acidity.Of(batch);
        List<RawFinding> found = _hazards.Find(batch, acidity);
        found.AddRange(_program.Find(recipe, part, batch, acidity));
        foreach ((SourceSpan span, string words) in batch.Items.IsEmpty ? [] : _batches.Unlisted(part, batch))
        {
            found.Add(_hazards.Raise("step-food", null, batch, span, words, FindingLevel.Change));
        }

        if (endless)
        {
            found.Add(_hazards.Raise("unread", null, batch, ingredients[^1].Span, ingredients[^1].Words, FindingLevel.Stop));
        }

        found = WithoutTestedJars(batch, acidity, found);
        List<Candidate> candidates = Categories(batch, acidity, found);
        FormulaView view = _formulas.Look(batch);
        FormulaAnswer? formula = _formulas.Of(view, found);
        if (formula is not null)
        {
            candidates.Add(formula.Candidate);
            found = formula.Candidate.Judgement == Judgement.Refuses ? found : formula.Found;
        }

        DishOutcome outcome = _outcomes.Of(batch, acidity, found, candidates);
        List<RawFinding> all = [.. found, .. _ownProcess.Find(recipe, batch, outcome.Lead, kitchen)];
        if (outcome.Outcome is Outcome.Pressure or Outcome.BoilingWater or Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges or Outcome.DryStorage)
        {
            all.AddRange(_lastLook.Find(recipe, part, batch, outcome).Where(late => !all.Exists(early => early.Level >= FindingLevel.Change && early.Spans.Contains(late.Spans[0]))));
        }

        outcome = OutcomeJudge.AfterOwnProcess(outcome, all);
        bool barred = outcome.Outcome is Outcome.FreezeOrChill or Outcome.TestedRecipeOnly or Outcome.CannotTell or Outcome.NotAJarFood;
        return new(part, batch, ingredients, outcome.Acidity, outcome, _cases.Settle(Settle(batch, all, outcome), batch, outcome.Acidity, outcome.Outcome), Compared(formula, outcome), barred ? _formulas.Nearest(view, outcome.Lead) : []);
    }

    // Of a list longer than any recipe's the rest is not judged, and nothing is permitted.
    private List<Ingredient> Ingredients(RecipePart part, out bool endless)
    {
        double most = _pack.Tables.Limits["most-ingredients"];
        List<Ingredient> ingredients = [];
        foreach (IngredientLine line in part.Ingredients)
        {
            ingredients.AddRange(_ingredients.Read(line));
            if (ingredients.Count > most)
            {
                break;
            }
        }

        endless = ingredients.Count > most;
        return ingredients;
    }

    // A half-gallon jar is rejected, but for what was tested in it: apple and grape juice.
    private List<RawFinding> WithoutTestedJars(Batch batch, Acidity acidity, List<RawFinding> found)
    {
        StepFact[] large = [.. batch.Facts.Where(static fact => fact.Id == "unsafe-half-gallon")];
        if (large.Length == 0)
        {
            return found;
        }

        List<RawFinding> rest = found.FindAll(finding => finding.Rule != "unsafe-method" || !Array.Exists(large, fact => finding.Spans.Contains(fact.Span)));
        return Categories(batch, acidity, rest).Exists(static one => one.Judgement != Judgement.Refuses && one.Processes.Any(static row => row.Jar == "half-gallon")) ? rest : found;
    }

    private List<Candidate> Categories(Batch batch, Acidity acidity, List<RawFinding> found)
    {
        List<Candidate> candidates = [];
        CardShelf<CategoryCard> cards = _pack.Tables.CategoryShelf;
        foreach (int card in MeantCards.Of(cards, batch))
        {
            if (_categories.Judge(cards[card], batch, acidity, found) is { } candidate)
            {
                candidates.Add(candidate);
            }
        }

        return candidates;
    }

    // The comparison is shown where the formula leads.
    private static ImmutableArray<FormulaDifference> Compared(FormulaAnswer? formula, DishOutcome outcome) =>
        formula is not null && ReferenceEquals(formula.Candidate, outcome.Lead) ? formula.Differences : [];

    // Holds the invariants: an outcome "after changes" names a change, and a "no" names its reason.
    private List<RawFinding> Settle(Batch batch, List<RawFinding> found, DishOutcome outcome)
    {
        List<RawFinding> all = [.. found];
        if (outcome.Lead is { } lead && outcome.Outcome is not (Outcome.NotAJarFood or Outcome.CannotTell))
        {
            // A category that refuses says why; what it would have asked of single foods is beside the point then.
            bool far = lead is { Kind: "formula", Judgement: Judgement.Refuses, IsNear: false };
            all.AddRange(lead.Findings.Where(finding => !far && (lead.Judgement != Judgement.Refuses || finding.Item is null || lead.IsNear)));
            if (far)
            {
                // Far from every published recipe: the table of the comparison says the rest.
                all.Add(_hazards.Raise("proportions", null, batch, level: FindingLevel.Change));
            }
        }

        bool barred = all.Any(finding => finding.Level >= FindingLevel.Change);
        if (!barred && outcome.Outcome is Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges)
        {
            List<RawFinding> raised = [.. all.Select(finding => finding.Rule is "unmeasured" or "no-steps" or "unidentified" ? finding with { Level = FindingLevel.Change } : finding)];
            if (!raised.Any(finding => finding.Level >= FindingLevel.Change))
            {
                raised.AddRange(batch.InJar.Where(item => !item.Weighed).Select(item => _hazards.Raise("unmeasured", item, batch, level: FindingLevel.Change)));
            }

            return raised;
        }

        if (!barred && outcome.Outcome is Outcome.FreezeOrChill or Outcome.TestedRecipeOnly or Outcome.CannotTell)
        {
            all.Add(_hazards.Raise("proportions", null, batch, level: FindingLevel.Change));
        }

        return all;
    }
}
