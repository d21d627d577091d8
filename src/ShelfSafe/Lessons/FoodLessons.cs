using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>What the food table says of one food, as a lesson. No minutes and no pressures: those belong to a whole recipe.</summary>
internal sealed class FoodLessons
{
    private readonly PackTables _tables;
    private readonly WordTable _words;
    private readonly Dictionary<string, List<FoodRow>> _byName = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Prepares the names; a food's own name goes before another word for a different food.</summary>
    public FoodLessons(PackTables tables, WordTable words)
    {
        _tables = tables;
        _words = words;
        Dictionary<string, FoodRow> ids = tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        foreach (FoodRow food in tables.Foods)
        {
            _byName[Plain(food.Name)] = [food];
        }

        foreach (FoodRow food in tables.Foods)
        {
            _byName.TryAdd(Plain(food.Id), [food]);
        }

        HashSet<string> own = [.. _byName.Keys];
        foreach (AliasRow alias in tables.Aliases.Where(alias => !own.Contains(Plain(alias.Alias))))
        {
            if (!_byName.TryGetValue(Plain(alias.Alias), out List<FoodRow>? found))
            {
                _byName.Add(Plain(alias.Alias), found = []);
            }

            if (!found.Contains(ids[alias.Food]))
            {
                found.Add(ids[alias.Food]);
            }
        }
    }

    /// <summary>Names of the foods themselves, without their other words.</summary>
    public IEnumerable<string> Names => _tables.Foods.Select(food => food.Name);

    /// <summary>The foods that a word may mean: by name, another word, or a plain plural; several where countries differ, none where it is not known.</summary>
    public IReadOnlyList<FoodRow> Find(string name) =>
        _byName.TryGetValue(name, out List<FoodRow>? food) || (name.EndsWith('s') && (_byName.TryGetValue(name[..^1], out food) || (name.EndsWith("es", StringComparison.Ordinal) && _byName.TryGetValue(name[..^2], out food))))
            ? food
            : [];

    /// <summary>Where the rows come from.</summary>
    public static ImmutableArray<SourceReference> Sources(IEnumerable<FoodRow> foods) => [.. foods.SelectMany(food => (food.Url.Length == 0 ? [string.Empty] : food.Url.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Select(url => new SourceReference(string.Empty, food.Source, string.Empty, url))).Distinct()];

    /// <summary>The lesson of a word for food.</summary>
    /// <param name="asked">The word.</param>
    /// <param name="foods">What it may mean, at least one.</param>
    public Lesson Of(string asked, IReadOnlyList<FoodRow> foods) => new(
        foods[0].Id,
        foods.Count == 1 ? foods[0].Name : asked,
        [.. foods.SelectMany(food => Sections(food))],
        foods.All(food => food.Acidity == FoodAcidity.Dry) ? PictureKind.None : PictureKind.Acid,
        Sources(foods),
        [.. foods.Where(food => food.Process.StartsWith("yes", StringComparison.Ordinal)).Select(food => $"shelfsafe table \"{food.Name}\""), "shelfsafe why acid"],
        [.. foods.SelectMany(Further).Distinct(StringComparer.Ordinal)],
        [.. foods.Select(food => food.Id)]);

    // The rules that look at it, then what its acidity leads to.
    private IEnumerable<string> Further(FoodRow food) => Hazards(food).Concat(food.Acidity switch
    {
        FoodAcidity.Dry => ["water-activity"],
        FoodAcidity.Acid => ["acid"],
        FoodAcidity.Borderline => ["borderline-acid", "acid"],
        FoodAcidity.LowAcid => ["low-acid", "botulism"],
    });

    private static string Plain(string name) => name.Replace('-', ' ');

    /// <summary>What the table says.</summary>
    public ImmutableArray<LessonSection> Sections(FoodRow food)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        lines.Add(_words["food.acidity." + food.Acidity.ToString().ToLowerInvariant()]);
        lines.Add(food is { PhLow: { } low, PhHigh: { } high }
            ? _words.With("food.ph", low.ToString("0.0#", CultureInfo.InvariantCulture), high.ToString("0.0#", CultureInfo.InvariantCulture))
            : _words["food.no-ph"]);
        if (!food.Traits.IsDefaultOrEmpty)
        {
            lines.Add(_words.With("food.traits", string.Join(", ", food.Traits)));
        }

        lines.Add(Process(food));
        string[] jars = [.. Jars(food)];
        if (jars.Length > 0)
        {
            lines.Add(_words.With("food.jars", string.Join(", ", jars)));
        }

        string[] hazards = [.. Hazards(food)];
        if (hazards.Length > 0)
        {
            lines.Add(_words.With("food.hazards", string.Join(", ", hazards)));
        }

        return [new(_words.With("food.heading", food.Name), lines.ToImmutable())];
    }

    private static bool IsNamed(Term term, FoodRow food) => !term.Negated && term.Kind switch
    {
        TermKind.Trait => term.Values.Any(food.Has),
        TermKind.Food => term.Values.Contains(food.Id, StringComparer.Ordinal),
        _ => false,
    };

    // Only the rules that name the food or one of its traits; whether one holds depends on the whole recipe.
    private IEnumerable<string> Hazards(FoodRow food) => _tables.Hazards
        .Where(card => card.Rows.Any(row => row.Check.Terms.Any(term => IsNamed(term, food))))
        .Select(card => card.Rule);

    private string Process(FoodRow food)
    {
        int colon = food.Process.IndexOf(':', StringComparison.Ordinal);
        string kind = colon < 0 ? food.Process : food.Process[..colon];
        return kind switch
        {
            "yes" => _words.With("food.process-yes", food.Process[(colon + 1)..].Trim()),
            "recipe" => _words.With("food.process-recipe", food.Process[(colon + 1)..].Trim()),
            "as-minor" => _words["food.process-minor"],
            _ => _words.With("food.process-no", food.WhyNo),
        };
    }

    private IEnumerable<string> Jars(FoodRow food)
    {
        int colon = food.Process.IndexOf(':', StringComparison.Ordinal);
        string[] products = food.Process.StartsWith("yes", StringComparison.Ordinal) ? food.Process[(colon + 1)..].Split(';', StringSplitOptions.TrimEntries) : [];
        return _tables.Processes.Where(row => row.Seen && products.Contains(row.Product, StringComparer.Ordinal)).Select(row => row.Jar).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
    }
}
