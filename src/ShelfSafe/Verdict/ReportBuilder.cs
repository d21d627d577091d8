using System.Collections.Concurrent;
using System.Collections.Immutable;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Puts the judged dishes of a file together into the finished report.</summary>
internal sealed class ReportBuilder(RulePack pack, JarYield jars)
{
    private static readonly Comparer<Finding> WorstFirst = Comparer<Finding>.Create(Compare);
    private static readonly SameThing SameFinding = new();
    private readonly ConcurrentDictionary<string, SourceReference> _sources = new(StringComparer.Ordinal); // no more than the pack names
    private readonly Lazy<FreezerPlan> _freezer = new(() => new(WorkTables.Of(pack).Freezing, pack.Tables.Sources.ToDictionary(row => row.Id, StringComparer.Ordinal)));

    /// <summary>The report; of several dishes the worst leads, dishes that are no jar food aside.</summary>
    public VettingReport Build(Recipe recipe, IReadOnlyList<Dish> dishes, Kitchen kitchen)
    {
        LineTable lines = new(recipe.Text);
        bool several = dishes.Count > 1;
        (Dish lead, Outcome outcome) = SeveralDishes.Lead(dishes);
        bool permits = outcome is Outcome.Pressure or Outcome.BoilingWater;
        bool after = outcome is Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges;
        KitchenAdvice advice = new(pack.Tables, Source);
        Candidate? candidate = permits || after ? lead.Outcome.Lead : null;
        KitchenReading reading = advice.Of(
            kitchen,
            own => candidate is null ? [] : ProcessSelector.Lines(candidate.Processes, own, candidate.Overruled, advice.SteamFor(own)),
            candidate is null ? [] : candidate.Processes.Select(row => row.Method));
        ImmutableArray<ProcessLine> process = reading.Lines;
        return new(
            recipe.Title,
            lead.Acidity,
            outcome,
            Category(lead),
            [.. lead.Outcome.Reasons],
            Findings(dishes, lines, several),
            [.. dishes.SelectMany(dish => Ingredients(dish, lines, several))],
            Measures(lead, process, kitchen),
            lead.Nearest,
            permits ? process : [],
            after ? process : [],
            !reading.FreezerFirst && (outcome == Outcome.DryStorage || (permits && !process.IsEmpty)) ? [] : Storage(lead),
            several ? [.. dishes.Select(dish => Part(dish, lines))] : [],
            new(pack.Version, pack.Date, pack.Sha256),
            kitchen)
        {
            KitchenNotes = reading.Notes,
            OwnPack = OwnPack(lead.Batch),
            FreezerFirst = reading.FreezerFirst ? _freezer.Value.For([.. lead.Batch.InJar.Select(item => item.Food).OfType<FoodRow>()]) : [],
            UsableMethods = reading.Methods,
        };
    }

    // The pack that the steps name; null where they name none or both.
    private static string? OwnPack(Batch batch) => (batch.Says("hot-pack"), batch.Says("raw-pack")) switch
    {
        (true, false) => "hot",
        (false, true) => "raw",
        _ => null,
    };

    private CategoryReport? Category(Dish dish)
    {
        if (dish.Outcome.Lead is not { IsNamed: true } lead)
        {
            return null;
        }

        List<Difference> differences = [.. dish.Differences.Select(own => new Difference(own.What, own.Unit, own.Yours, own.Tested, own.Allowed))];
        if (MostSolids(lead) is { } most)
        {
            Interval solids = dish.Batch.SolidsShare;
            differences.Add(new("solids share", "share by volume", solids, new(0, most), solids.High <= most));
        }

        return new(lead.Id, lead.Name, lead.Kind, [.. differences]);
    }

    // What the gates of the category's own card allow; null where they say nothing of solids.
    private double? MostSolids(Candidate lead)
    {
        CardShelf<CategoryCard> cards = pack.Tables.CategoryShelf;
        return lead.Kind != "category" || cards.Find(lead.Id) is not (int card and >= 0) ? null
            : cards[card].Gates
                .SelectMany(gate => gate.Check.Terms)
                .Where(term => term is { Kind: TermKind.SolidsShareAbove, Negated: false })
                .Min(term => (double?)term.Threshold);
    }

    private ImmutableArray<Finding> Findings(IReadOnlyList<Dish> dishes, LineTable lines, bool several)
    {
        List<Finding> all = [];
        foreach (Dish dish in dishes)
        {
            // The same thing twice is one finding that names both places.
            foreach (IGrouping<RawFinding, RawFinding> group in dish.Findings.GroupBy(finding => finding, SameFinding))
            {
                RawFinding worst = group.MaxBy(finding => finding.Level)!;
                all.Add(new(worst.Rule, worst.Level, worst.Ingredient, Places(group, worst, lines), worst.Message, worst.Why, worst.Instead, [.. worst.Sources.Select(Source)], several ? dish.Part.Name : null));
            }
        }

        return [.. all.OrderBy(finding => finding, WorstFirst)];
    }

    private static int Compare(Finding one, Finding other)
    {
        int order = other.Level.CompareTo(one.Level);
        order = order != 0 ? order : one.Places[0].Line.CompareTo(other.Places[0].Line);
        order = order != 0 ? order : one.Places[0].Column.CompareTo(other.Places[0].Column);
        return order != 0 ? order : string.CompareOrdinal(one.Rule, other.Rule);
    }

    private static ImmutableArray<Place> Places(IEnumerable<RawFinding> group, RawFinding worst, LineTable lines)
    {
        if (worst.Spans.Length == 1 && !group.Skip(1).Any())
        {
            return [At(worst.Spans[0], lines)]; // as nearly always
        }

        SourceSpan[] spans = [.. group.SelectMany(finding => finding.Spans).Distinct().OrderBy(span => span.Start)];
        return [.. spans.Select(span => At(span, lines))];
    }

    private SourceReference Source(string key)
    {
        if (!_sources.TryGetValue(key, out SourceReference? known))
        {
            known = pack.Tables.Source(key) is { } row ? new(row.Id, row.Title, row.Locator, row.Url) : new(string.Empty, key, string.Empty, string.Empty);
            _sources[key] = known;
        }

        return known;
    }

    private static Place At(SourceSpan span, LineTable lines)
    {
        (int line, int column) = lines.At(span.Start);
        (int endLine, int endColumn) = lines.At(span.End);
        return new(line, column, endLine, endColumn);
    }

    private static IEnumerable<IngredientReport> Ingredients(Dish dish, LineTable lines, bool several)
    {
        // The items stand in the order of the ingredients that they were made of, those of the steps behind them.
        ImmutableArray<BatchItem> items = dish.Batch.Items;
        int next = 0;
        foreach (Ingredient ingredient in dish.Ingredients)
        {
            if (ingredient.NotFood)
            {
                continue;
            }

            Interval? grams = null;
            for (; next < items.Length && ReferenceEquals(items[next].Ingredient, ingredient); next++)
            {
                grams = grams is { } before ? before.Hull(items[next].Grams) : items[next].Grams;
            }

            yield return new(
                lines.At(ingredient.Line.Text.Span.Start).Line,
                ingredient.Line.Text.Text,
                ingredient.Amount,
                ingredient.Measures,
                ingredient.Package,
                ingredient.Food,
                (ingredient.Match as Identified)?.Food.Id,
                ingredient.Preparation,
                ingredient.Optional,
                ingredient.ToTaste,
                [.. ingredient.Alternatives.Select(other => new AlternativeReport(other.Food, (other.Match as Identified)?.Food.Id, Traits(other.Match)))],
                ingredient.SharesAmountWith,
                grams is { IsBounded: true } ? grams : null,
                Traits(ingredient.Match),
                ingredient.Match is not Unidentified,
                ingredient.Match is Identified { OnTheCooksWord: true },
                several ? dish.Part.Name : null);
        }
    }

    private static ImmutableArray<string> Traits(FoodMatch match) => match.Candidates.Length == 1
        ? match.Candidates[0].Traits
        : [.. match.Candidates.SelectMany(food => food.Traits).Distinct(StringComparer.Ordinal)];

    private MeasuresReport Measures(Dish dish, ImmutableArray<ProcessLine> process, Kitchen kitchen)
    {
        Batch batch = dish.Batch;
        if (batch.InJar.IsEmpty)
        {
            return new(null, null, null, null, null, null, null);
        }

        return new(
            batch.SolidsShare,
            batch.ShareOf(item => item.Has("fat")),
            batch.ShareOf(item => item.Acidity == FoodAcidity.Acid),
            batch.ShareOf(item => item.Acidity == FoodAcidity.LowAcid && !item.Has("water")),
            batch.TotalGrams,
            batch.TotalMillilitres,
            Yield(batch, process, kitchen));
    }

    // The usual jar of the kitchen, else the pint, else the smallest that the process prints.
    private JarYieldReport? Yield(Batch batch, ImmutableArray<ProcessLine> process, Kitchen kitchen)
    {
        string? jar = process.IsEmpty ? null
            : kitchen.Jar is { } usual && process.Any(line => line.Jar == usual) ? usual
            : process.Any(line => line.Jar == "pint") ? "pint"
            : process[0].Jar;
        if (jar is null)
        {
            return null;
        }

        double headspace = process.First(line => line.Jar == jar).HeadspaceInches;
        Interval? packed = process.Select(line => line.Product).Distinct(StringComparer.Ordinal).Select(product => Packed(batch, product, headspace)).FirstOrDefault(volume => volume is not null);
        return jars.Plan(packed ?? batch.TotalMillilitres, jar, headspace, kitchen.Capacity) is { } plan
            ? new(jar, plan.Jars, plan.Loads, plan.RemainderMillilitres, headspace, kitchen.Capacity is null ? null : plan.Load) { Load = plan.Load, ByPublishedWeight = packed is not null }
            : null;
    }

    // Of a plain pack in pieces each jar takes the published weight of the food whose own row it is.
    private Interval? Packed(Batch batch, string product, double headspace)
    {
        BatchItem[] pieces = [.. batch.InJar.Where(item => item.Food?.Process == $"yes: {product}")];
        bool others = batch.InJar.Any(item => item.Food is { Bulk: BulkUse.Yes } && !item.Has("thin-liquid") && !pieces.Contains(item)); // they take room of their own
        return pieces.Length == 0 || others ? null : jars.Packed(pieces.Aggregate(Interval.Zero, (sum, item) => sum + item.Grams), product, headspace);
    }

    private ImmutableArray<StorageAdvice> Storage(Dish dish)
    {
        List<StorageAdvice> advice = [];
        foreach (StorageRow row in pack.Tables.Storage)
        {
            if (advice.Count == 0 && StorageMatch.Applies(row, dish, pack.Tables.Limits))
            {
                if (row.Fridge.Length > 0)
                {
                    advice.Add(new("fridge", row.Fridge, row.Text, row.Source));
                }

                if (row.Freezer.Length > 0)
                {
                    advice.Add(new("freezer", row.Freezer, row.Text, row.Source));
                }
            }
        }

        return [.. advice];
    }

    private static PartReport Part(Dish dish, LineTable lines)
    {
        SourceSpan span = dish.Part.Span;
        return new(
            dish.Part.Name ?? string.Empty,
            lines.At(span.Start).Line,
            lines.At(Math.Max(span.Start, span.End - 1)).Line,
            dish.Acidity,
            dish.Outcome.Outcome);
    }
}
