using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Makes the batch of a dish: listed foods, foods that only the steps name, step facts and kind of dish.</summary>
internal sealed class BatchRoom
{
    private readonly StepReader _steps;
    private readonly DishReader _dishes;
    private readonly BatchBuilder _builder;
    private readonly StepFoods _stepFoods;
    private readonly JarAcid _jarAcid;
    private readonly JarSteps _jarSteps;
    private readonly LaterSteps _laterSteps;
    private readonly Directions _directions;
    private readonly RuleList _dryKinds;
    private readonly RuleList _later;
    private readonly Dictionary<string, string> _nouns;

    /// <summary>Prepares the readers of a pack.</summary>
    public BatchRoom(RulePack pack, FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, Weigher weigher)
    {
        _steps = StepReader.Create(pack, texts);
        _dishes = DishReader.Create(pack);
        _builder = new(weigher, pack.Tables.Limits, texts);
        _stepFoods = new(catalogue, words, texts, pack.Tables.Lists);
        _jarSteps = new(words, texts);
        _laterSteps = new(words, texts);
        _directions = new(words, texts);
        _dryKinds = pack.Tables.Lists.Of(RuleLists.DryKinds);
        _later = pack.Tables.Lists.Of(RuleLists.LaterFacts);
        List<PackFault> faults = [];
        _nouns = Nouns(pack, faults);
        _jarAcid = new(JarAcid.Read(pack.Text("jar-acid.csv"), faults), words);
        if (faults.Count > 0)
        {
            throw new InvalidDataException(faults[0].ToString());
        }
    }

    /// <summary>Plain words for the kinds of dishes; what is wrong is added to the faults.</summary>
    public static Dictionary<string, string> Nouns(RulePack pack, List<PackFault> faults)
    {
        Dictionary<string, string> nouns = new(StringComparer.Ordinal);
        CsvTable.Read("dish-nouns.csv", pack.Text("dish-nouns.csv"), ["kind", "noun"], row => nouns[row.Text("kind")] = row.Text("noun"), faults);
        return nouns;
    }

    /// <summary>Foods that only the steps name.</summary>
    public StepFoods StepFoods => _stepFoods;

    /// <summary>The bottled acid that each jar of a plain pack takes.</summary>
    public JarAcid JarAcid => _jarAcid;

    /// <summary>The batch of one dish.</summary>
    public Batch Make(Recipe recipe, RecipePart part, IReadOnlyList<Ingredient> ingredients)
    {
        ImmutableArray<StepFact> facts = _steps.Read(part);
        if (_stepFoods.AfterStraining(part, facts) is { } returned && !facts.Any(fact => fact.Id == returned.Id))
        {
            facts = facts.Add(returned);
        }

        if (_laterSteps.Find(part) is { } later)
        {
            facts = facts.Add(later);
        }

        // Before the jars: a sentence taken for a use says nothing about them.
        if (facts.Any(static fact => fact.Id == LaterSteps.Used))
        {
            facts = _laterSteps.OwnUses(part, facts, _dishes.Kinds(part.Name ?? recipe.Title, [], facts, []).Any(kind => _dryKinds.Contains(kind.Id)));
        }

        facts = ServingSteps.WithoutLater(facts.AddRange(_jarSteps.Find(part, facts)), _later);
        ImmutableArray<BatchItem> listed = _builder.Items(ingredients);
        ImmutableArray<BatchItem> items = [.. listed, .. _stepFoods.Find(part, part.Name ?? recipe.Title, facts, listed)];
        string[] headings = Headings(recipe, part);
        HashSet<string> foods = Foods(items);
        ImmutableArray<DishKind> kinds = _dishes.Kinds(part.Name ?? recipe.Title, headings, facts, foods);
        ImmutableArray<PrintedPh> printed = StepReader.PrintedPhs(part);
        return new(
            part.Name,
            part.Span,
            items,
            facts,
            [.. kinds.Select(kind => kind.Id)],
            DishReader.NotAJar(kinds),
            Noun(kinds),
            _directions.Has(part),
            printed.IsEmpty ? null : printed.Max(ph => ph.Ph),
            _steps.PrintedProcesses(part),
            _jarAcid.IsEnough(items, facts));
    }

    private static HashSet<string> Foods(ImmutableArray<BatchItem> items)
    {
        HashSet<string> foods = new(StringComparer.Ordinal);
        foreach (BatchItem item in items)
        {
            if (item is { InJar: true, Food: { } food })
            {
                foods.Add(food.Id);
            }
        }

        return foods;
    }

    // Headings of the steps, then labels of the list, each once; the title is none of them.
    private static string[] Headings(Recipe recipe, RecipePart part)
    {
        List<string> headings = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        string? last = null;
        void Add(string? heading)
        {
            // Neighbours stand under one and the same heading.
            if (heading is not null && !ReferenceEquals(heading, last) && heading != recipe.Title && seen.Add(heading))
            {
                headings.Add(heading);
            }

            last = heading;
        }

        foreach (StepSentence step in part.Steps)
        {
            Add(step.Heading);
        }

        foreach (IngredientLine line in part.Ingredients)
        {
            Add(line.Group);
        }

        return [.. headings];
    }

    // What a sentence calls the dish: its kind, unless that is no English noun.
    private string Noun(ImmutableArray<DishKind> kinds)
    {
        const string Other = "@other";
        string kind = kinds.IsEmpty ? Other : kinds[0].Id;
        return _nouns.GetValueOrDefault(kind) ?? kind.Replace('-', ' ');
    }

    /// <summary>Foods of some bulk that only the steps name.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Unlisted(RecipePart part, Batch batch) => _stepFoods.Unlisted(part, batch.Facts, batch.Kinds, [.. batch.Items.Where(item => !item.FromSteps)]);
}
