using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>What the pack says about changing a recipe: treatments, freezing, limits, foods and sources.</summary>
internal sealed class AdaptRules
{
    private static readonly (string Word, string[] Groups)[] GroupWords =
    [
        ("meat", ["meat", "poultry"]),
        ("bean", ["legume-dried", "legume-fresh"]),
        ("fish", ["seafood"]),
    ];

    private readonly Dictionary<string, AdaptRow> _rows;
    private readonly FreezerPlan _freezing;
    private readonly Dictionary<string, SourceRow> _sources;
    private readonly Dictionary<string, FoodRow> _foods;
    private readonly AdaptRow _other;
    private readonly ILookup<string, string> _names;

    /// <summary>Reads the tables of a pack.</summary>
    /// <exception cref="InvalidDataException">A table is wrong.</exception>
    public AdaptRules(RulePack pack)
    {
        WorkTables tables = WorkTables.Of(pack);
        _rows = tables.Adaptations.ToDictionary(row => row.Rule, StringComparer.Ordinal);
        _sources = pack.Tables.Sources.ToDictionary(row => row.Id, StringComparer.Ordinal);
        _freezing = new(tables.Freezing, _sources);
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        _other = _rows["proportions"];
        _names = pack.Tables.Aliases.Select(alias => (alias.Food, Words: alias.Alias))
            .Concat(pack.Tables.Foods.Select(food => (Food: food.Id, Words: food.Name)))
            .Where(name => !name.Words.Contains(' ', StringComparison.Ordinal))
            .ToLookup(name => name.Food, name => name.Words, StringComparer.Ordinal);
        Words = new(pack.Tables.Lists);
        LargestShareOut = pack.Tables.Limits["largest-share-left-out"];
    }

    /// <summary>Above this share of the batch, 0 to 1, what is left is another dish.</summary>
    public double LargestShareOut { get; }

    /// <summary>The words by which sentences are cut and put in order.</summary>
    public AdaptWords Words { get; }

    /// <summary>What to do about a rule; a rule without a row leads to the freezer.</summary>
    public AdaptRow this[string rule] => _rows.GetValueOrDefault(rule, _other);

    /// <summary>What to do about a finding: a dense food can stay out of the jar, a dish that is dense cannot.</summary>
    public AdaptRow For(Finding finding) => this[finding is { Rule: "dense", Ingredient: not null } ? "@dense-food" : finding.Rule];

    /// <summary>The sources of a row.</summary>
    public ImmutableArray<SourceReference> Sources(AdaptRow row) => Sources(row.Sources);

    /// <summary>Most of a food that only seasons, in grams a kilogram of the batch; <see langword="null"/> for every other food.</summary>
    public double? SeasoningLimit(IngredientReport entry) =>
        Rows([entry]).FirstOrDefault() is { Bulk: BulkUse.Seasoning, MinorGramsPerKilogram: { } limit } ? limit : null;

    /// <summary>Whether a food may be the liquid that is added: plain broth, or plain tomato juice.</summary>
    public bool IsLiquid(IngredientReport entry) => Rows([entry]).FirstOrDefault() is { Bulk: BulkUse.Yes } food && food.Has("thin-liquid");

    /// <summary>The freezer version for the foods of a report, months from the storage table last.</summary>
    public ImmutableArray<FreezingStep> Freezing(VettingReport report)
    {
        FoodRow[] foods = [.. report.Ingredients.Where(entry => entry.FoodId is not null && _foods.ContainsKey(entry.FoodId)).Select(entry => _foods[entry.FoodId!])];
        return _freezing.For(foods);
    }

    /// <summary>
    /// Other words by which a step may call food that goes: "pasta" for the spaghetti. They are the one-word names of every food of
    /// its kitchen group, or with one of its traits, where no food that stays is of that group or has that trait.
    /// </summary>
    public IEnumerable<string> Kin(IEnumerable<IngredientReport> gone, IReadOnlyList<IngredientReport> stays)
    {
        FoodRow[] kept = [.. Rows(stays)];
        HashSet<string> groups = [.. Rows(gone).Select(food => food.Group)];
        HashSet<string> traits = [.. Rows(gone).SelectMany(food => food.Traits)];
        groups.ExceptWith(kept.Select(food => food.Group));
        traits.ExceptWith(kept.SelectMany(food => food.Traits));
        return _foods.Values
            .Where(food => !kept.Contains(food) && (groups.Contains(food.Group) || food.Traits.Any(traits.Contains)))
            .SelectMany(food => _names[food.Id])
            .Concat(groups.SelectMany(group => group.Split('-')).Where(word => word is not ("fresh" or "dried" or "other")))
            .Where(word => !Words.Rendered.Contains(word)) // "drain off the fat" speaks of what the meat gives
            .Except(stays.SelectMany(entry => Mentions.Words(entry.Food)), StringComparer.Ordinal);
    }

    /// <summary>Words for several foods at once of which none stays: "the beans" where no bean is left.</summary>
    public IEnumerable<string> NoneOf(IReadOnlyList<IngredientReport> stays)
    {
        if (stays.Any(entry => entry.FoodId is null))
        {
            return []; // what was not read may be any of them
        }

        HashSet<string> groups = [.. Rows(stays).Concat(stays.SelectMany(entry => entry.Alternatives).Select(other => other.FoodId is { } id ? _foods.GetValueOrDefault(id) : null).OfType<FoodRow>()).Select(food => food.Group)];
        HashSet<string> words = [.. stays.SelectMany(entry => Mentions.Words(entry.Food))];
        return GroupWords.Where(pair => !words.Contains(pair.Word) && !groups.Overlaps(pair.Groups)).Select(pair => pair.Word);
    }

    private IEnumerable<FoodRow> Rows(IEnumerable<IngredientReport> entries) =>
        entries.Select(entry => entry.FoodId is { } id ? _foods.GetValueOrDefault(id) : null).OfType<FoodRow>();

    private ImmutableArray<SourceReference> Sources(ImmutableArray<string> keys) =>
        [.. keys.Where(_sources.ContainsKey).Select(key => _sources[key]).Select(row => new SourceReference(row.Id, row.Title, row.Locator, row.Url))];
}
