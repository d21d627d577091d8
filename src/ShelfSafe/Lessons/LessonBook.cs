using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>All lessons of a rule pack: by topic, by rule id, by food.</summary>
public sealed class LessonBook
{
    private const int MostNearest = 5;

    private readonly ImmutableArray<LessonCard> _cards;
    private readonly PackTables _tables;
    private readonly WordTable _words;
    private readonly FoodLessons _foods;
    private readonly Dictionary<string, SourceRow> _sources;
    private readonly Dictionary<string, LessonCard> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, HazardCard> _byRule;

    private LessonBook(RulePack pack)
    {
        LessonTables lessons = pack.Lessons();
        _cards = lessons.Cards;
        _tables = pack.Tables;
        _words = WordTable.BuiltIn; // the fixed words belong to the program, as those of the reports do
        _sources = _tables.Sources.ToDictionary(source => source.Id, StringComparer.Ordinal);
        _byRule = _tables.Hazards.ToDictionary(card => card.Rule, StringComparer.OrdinalIgnoreCase);
        _foods = new(_tables, _words);
        Illustrator = new(pack, lessons.Numbers, _words);
        foreach (LessonCard card in _cards)
        {
            foreach (string name in card.Names.Append(card.Id))
            {
                _byName[Plain(name)] = card;
            }
        }
    }

    /// <summary>Topics with their titles, in the order of their ids.</summary>
    public IEnumerable<(string Id, string Title)> Topics => _cards.Select(card => (card.Id, card.Title));

    /// <summary>Rule ids, in order.</summary>
    public IEnumerable<string> Rules => _tables.Hazards.Select(card => card.Rule);

    /// <summary>Draws the pictures.</summary>
    public Illustrator Illustrator { get; }

    /// <summary>Prepares the lessons of a pack.</summary>
    /// <param name="pack">The rule pack.</param>
    public static LessonBook Create(RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack);
    }

    /// <summary>Finds a lesson: a topic goes before a rule, a rule before a food; a topic or rule that is a food's own name tells of both.</summary>
    /// <param name="asked">Topic, rule id or food, in any case.</param>
    /// <param name="nearest">Up to five words that would have been found, where nothing is.</param>
    /// <returns>The lesson, or <see langword="null"/>.</returns>
    public Lesson? Find(string asked, out IReadOnlyList<string> nearest)
    {
        ArgumentNullException.ThrowIfNull(asked);
        nearest = [];
        string plain = Plain(asked);
        IReadOnlyList<FoodRow> foods = _foods.Find(plain);
        if (_byName.TryGetValue(plain, out LessonCard? card))
        {
            return With(OfTopic(card), foods, plain);
        }

        if (_byRule.TryGetValue(plain.Replace(' ', '-'), out HazardCard? hazard))
        {
            return With(OfRule(hazard), foods, plain);
        }

        if (foods.Count > 0)
        {
            return _foods.Of(plain, foods);
        }

        nearest = Nearest.Of(plain, [.. _byName.Keys, .. _byRule.Keys, .. _foods.Names], MostNearest);
        return null;
    }

    /// <summary>The one line that tells of a word that nothing stands under.</summary>
    /// <param name="asked">The word.</param>
    /// <param name="nearest">What <see cref="Find"/> gave.</param>
    public string Unknown(string asked, IReadOnlyList<string> nearest)
    {
        ArgumentNullException.ThrowIfNull(asked);
        const int Most = 60;
        return _words.With("why.unknown", asked.Length > Most ? asked[..Most] + "…" : asked, string.Join(", ", nearest));
    }

    private static string Plain(string text) => string.Join(' ', text.ToLowerInvariant().Replace('-', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    // A topic or rule that is a food's own name tells of the food too; "thickener" is a rule, and only another word for starch.
    private Lesson With(Lesson lesson, IReadOnlyList<FoodRow> foods, string plain)
    {
        FoodRow[] own = [.. foods.Where(food => plain.StartsWith(food.Name, StringComparison.OrdinalIgnoreCase))];
        return own.Length == 0 ? lesson : lesson with { Sections = [.. lesson.Sections, .. own.SelectMany(food => _foods.Sections(food))], Sources = [.. lesson.Sources, .. FoodLessons.Sources(own)] };
    }

    private Lesson OfTopic(LessonCard card) => new(
        card.Id,
        card.Title,
        [new(string.Empty, card.Paragraphs)],
        card.Picture,
        [.. card.Sources.Select(Source)],
        card.TryIt,
        card.See,
        []);

    private Lesson OfRule(HazardCard card)
    {
        ImmutableArray<LessonSection>.Builder sections = ImmutableArray.CreateBuilder<LessonSection>();
        sections.Add(new(_words["lesson.message"], [card.Sections.GetValueOrDefault("In general") is { Length: > 0 } general ? general : Filled(card.Message)]));
        sections.Add(new(_words["label.why"], [Filled(card.Why)]));
        if (card.Sections.GetValueOrDefault("Lesson") is { Length: > 0 } more)
        {
            sections.Add(new(_words["lesson.more"], [more]));
        }

        sections.Add(new(_words["lesson.instead"], [Filled(card.Instead)]));
        PictureKind picture = LessonReader.Picture(card.Sections.GetValueOrDefault("Picture", string.Empty)) ?? PictureKind.None;
        SourceReference[] sources = [.. card.Rows.SelectMany(row => row.Sources).Distinct(StringComparer.Ordinal).Select(Source)];
        return new(card.Rule, _words.With("lesson.rule", card.Rule), sections.ToImmutable(), picture, [.. sources], [.. Commands(card, picture)], [.. _cards.Where(lesson => lesson.See.Contains(card.Rule, StringComparer.Ordinal)).Select(lesson => lesson.Id)], []);
    }

    // A sample that trips the rule, where the card names one; else all samples, one line each.
    private static IEnumerable<string> Commands(HazardCard card, PictureKind picture)
    {
        if (card.Sections.GetValueOrDefault("Sample") is not { Length: > 0 } sample)
        {
            return ["shelfsafe vet sample-recipes --quiet"];
        }

        string file = $"sample-recipes/{sample}.md";
        return picture == PictureKind.None ? [$"shelfsafe vet {file}"] : [$"shelfsafe why {card.Rule} --recipe {file}", $"shelfsafe vet {file}"];
    }

    // A card speaks of one ingredient of one dish; a lesson speaks of any.
    private string Filled(string text)
    {
        text = NumberChoice.Singular(text);
        foreach (string blank in (ReadOnlySpan<string>)["ingredient", "words", "dish", "food", "why-no", "share", "amount", "published"])
        {
            text = text.Replace($"\"{{{blank}}}\"", _words[$"lesson.any-{blank}"], StringComparison.Ordinal).Replace($"{{{blank}}}", _words[$"lesson.any-{blank}"], StringComparison.Ordinal);
        }

        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }

    private SourceReference Source(string key) => _sources.TryGetValue(key, out SourceRow? row)
        ? new(row.Id, row.Title, row.Locator, row.Url)
        : new(string.Empty, key, string.Empty, string.Empty);
}
