using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>Tells what kind of dish a recipe is, by the rows of <c>rules/dish-kinds.csv</c>.</summary>
/// <remarks>
/// Title words decide first, then headings, then foods and step facts: a stew that holds what a chutney holds stays a stew.
/// Rows in the order of the table, so that kinds with published formulas of their own stand first.
/// </remarks>
internal sealed class DishReader
{
    private readonly RowTable<DishKindRow> _rows;
    private readonly ImmutableArray<DishKindRow> _byFoods;
    private readonly StepRuleSet _rules;

    private DishReader(RowTable<DishKindRow> rows, StepRuleSet rules)
    {
        _rows = rows;
        _byFoods = rows.With("words", string.Empty);
        _rules = rules;
    }

    /// <summary>Makes a reader of the table in a pack; of the built-in pack only the rows that a dish asks for are read.</summary>
    /// <exception cref="InvalidDataException">The table is broken; packs are validated before.</exception>
    public static DishReader Create(RulePack pack)
    {
        List<PackFault> faults = [];
        DishReader reader = Create(pack, faults);
        return faults.Count == 0 ? reader : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>Makes a reader of the table in a pack; what is wrong is added to the faults.</summary>
    public static DishReader Create(RulePack pack, List<PackFault> faults)
    {
        RowTable<DishKindRow> rows = DishKindRow.Read(pack.Text(DishKindRow.File), faults);
        return new(rows, pack.Image is { } image ? new StepRuleSet(image, DishKindRow.Compiled) : Compiled(rows.All, faults));
    }

    /// <summary>Whether dishes of these kinds are put up at all: <c>yes</c> (nothing to put up), <c>freeze</c>, or empty.</summary>
    /// <remarks>A kind that may go in jars, told by the title, outweighs one told by foods.</remarks>
    public static string NotAJar(ImmutableArray<DishKind> kinds)
    {
        foreach (string answer in (ReadOnlySpan<string>)["yes", "freeze"])
        {
            foreach (DishKind kind in kinds)
            {
                if (string.Equals(kind.NotAJar, answer, StringComparison.Ordinal))
                {
                    return answer;
                }
            }
        }

        return string.Empty;
    }

    /// <summary>The kinds of a dish, the surest first; empty where nothing tells.</summary>
    /// <param name="title">Title of the recipe or name of the part.</param>
    /// <param name="headings">Headings and group labels; read only where the title tells nothing.</param>
    /// <param name="facts">Facts of the steps.</param>
    /// <param name="foodIds">Catalogue ids of the foods in the batch.</param>
    public ImmutableArray<DishKind> Kinds(string? title, IEnumerable<string> headings, ImmutableArray<StepFact> facts, HashSet<string> foodIds)
    {
        // "Pumpkin purée for pies" is a purée: what a dish is for does not tell what it is, unless nothing else does.
        int purpose = Purpose(title);
        ImmutableArray<DishKind> found = purpose > 0 ? ByWords([title![..purpose]], fromTitle: true) : [];
        if (found.IsEmpty && (purpose <= 0 || SaysNothing(title![..purpose])))
        {
            found = ByWords(title is null ? [] : [title], fromTitle: true);
        }

        if (found.IsEmpty)
        {
            found = ByWords([.. headings], fromTitle: false);
        }

        ImmutableArray<DishKind> byFoods = ByFoods(facts, foodIds);
        return found.IsEmpty ? byFoods : [.. byFoods.Where(kind => kind.NotAJar == "closed" && !found.Any(other => other.Id == kind.Id)), .. found];
    }

    private static StepRuleSet Compiled(ImmutableArray<DishKindRow> rows, List<PackFault> faults)
    {
        List<PackFault> found = [];
        StepRuleSet rules = StepRuleSet.Of(DishKindRow.Phrases(rows), found);
        faults.AddRange(found.Select(fault => fault with { File = DishKindRow.File }));
        return rules;
    }

    // "Recipe for apple pie", "Dinner for two: stew".
    private static bool SaysNothing(string words) =>
        words.AsSpan().Trim().EndsWith("recipe", StringComparison.OrdinalIgnoreCase) || words.AsSpan().Trim().EndsWith("dinner", StringComparison.OrdinalIgnoreCase)
        || words.AsSpan().Trim().EndsWith("supper", StringComparison.OrdinalIgnoreCase) || words.AsSpan().Trim().EndsWith("meal", StringComparison.OrdinalIgnoreCase);

    private static int Purpose(string? title)
    {
        int at = -1;
        foreach (string joint in (ReadOnlySpan<string>)[" for ", " (for ", " that ", " which ", " to go ", " to serve ", " when "])
        {
            int own = title?.IndexOf(joint, StringComparison.OrdinalIgnoreCase) ?? -1;
            at = own > 0 && (at < 0 || own < at) ? own : at;
        }

        return at;
    }

    private ImmutableArray<DishKind> ByWords(string[] texts, bool fromTitle)
    {
        PartReading reading = new(Array.ConvertAll(texts, _rules.Read));
        SortedDictionary<int, string> hits = []; // by the place of the row, which is its fact
        for (int text = 0; text < texts.Length; text++)
        {
            foreach (SentenceHit hit in reading.Of(text))
            {
                if (int.TryParse(_rules.Facts[hit.Fact], NumberStyles.None, CultureInfo.InvariantCulture, out int row))
                {
                    hits.TryAdd(row, texts[text][hit.Start..hit.End]);
                }
            }
        }

        ImmutableArray<DishKind>.Builder kinds = ImmutableArray.CreateBuilder<DishKind>();
        foreach ((int row, string words) in hits)
        {
            Add(kinds, _rows[row], words, fromTitle);
        }

        return kinds.ToImmutable();
    }

    private ImmutableArray<DishKind> ByFoods(ImmutableArray<StepFact> facts, HashSet<string> foodIds)
    {
        ImmutableArray<DishKind>.Builder kinds = ImmutableArray.CreateBuilder<DishKind>();
        foreach (DishKindRow row in _byFoods)
        {
            foreach (ImmutableArray<string> terms in row.Foods)
            {
                if (AllHold(terms, facts, foodIds))
                {
                    Add(kinds, row, string.Join(", ", terms.Where(term => !term.StartsWith('!'))), fromTitle: false);
                    break;
                }
            }
        }

        return kinds.ToImmutable();
    }

    private static bool AllHold(ImmutableArray<string> terms, ImmutableArray<StepFact> facts, HashSet<string> foodIds)
    {
        foreach (string term in terms)
        {
            bool denied = term.StartsWith('!');
            if (Has(term.AsSpan(denied ? 1 : 0), facts, foodIds) == denied)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Has(ReadOnlySpan<char> term, ImmutableArray<StepFact> facts, HashSet<string> foodIds)
    {
        const string Fact = "fact:";
        if (term.StartsWith(Fact))
        {
            foreach (StepFact fact in facts)
            {
                if (term[Fact.Length..].SequenceEqual(fact.Id))
                {
                    return true;
                }
            }

            return false;
        }

        if (!term.EndsWith('*'))
        {
            return foodIds.GetAlternateLookup<ReadOnlySpan<char>>().Contains(term);
        }

        foreach (string id in foodIds)
        {
            if (id.AsSpan().StartsWith(term[..^1]))
            {
                return true;
            }
        }

        return false;
    }

    private static void Add(ImmutableArray<DishKind>.Builder kinds, DishKindRow row, string evidence, bool fromTitle)
    {
        if (!kinds.Any(kind => string.Equals(kind.Id, row.Kind, StringComparison.Ordinal)))
        {
            kinds.Add(new(row.Kind, row.NotAJar, evidence, fromTitle));
        }
    }
}
