using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>What the published table has for a food that a cook names, without any recipe.</summary>
/// <param name="Asked">The words as given.</param>
/// <param name="Food">Plain name of the food, or <see langword="null"/> where none was recognised.</param>
/// <param name="Lines">Rows that name it, at this kitchen; empty where there is none.</param>
/// <param name="ByName">Whether the rows were found by their own name: they hold for the published recipe of that name alone.</param>
/// <param name="BeyondTable">Whether rows name it, but none reaches this altitude or jar.</param>
/// <param name="WhyNot">Why there is no plain process of its own, or empty.</param>
/// <param name="Notes">What must be said of the kitchen; a kitchen whose only appliance was never tested gets no line.</param>
/// <param name="Recipes">Published recipes that hold the food, for foods that are put up only by such a recipe.</param>
/// <param name="Whole">Whether all words that were asked for are a food or a product of the tables, and none was passed over.</param>
public sealed record ProcessAnswer(
    string Asked,
    string? Food,
    ImmutableArray<ProcessLine> Lines,
    bool ByName,
    bool BeyondTable,
    string WhyNot,
    ImmutableArray<KitchenNote> Notes,
    ImmutableArray<string> Recipes,
    bool Whole);

/// <summary>Looks published processes up by food or product. Nothing is interpolated: what the table does not print is not there.</summary>
public sealed class ProcessTable
{
    private readonly PackTables _tables;
    private readonly FoodCatalogue _catalogue;
    private readonly ImmutableArray<FormulaRow> _formulas;

    private ProcessTable(RulePack pack, string region)
    {
        List<PackFault> faults = [];
        _tables = pack.Tables;
        LineWordTable words = LineWordTable.Of(pack, faults);
        _catalogue = FoodCatalogue.Create(pack, [], words, region);
        _formulas = FormulaTable.Read(pack, faults);
        if (faults.Count > 0)
        {
            throw new InvalidDataException(faults[0].ToString());
        }
    }

    /// <summary>Prepares the look-up.</summary>
    /// <param name="pack">The rule pack.</param>
    /// <param name="region">Country code that settles words with regional meanings, or empty.</param>
    /// <exception cref="InvalidDataException">A table of the pack is wrong.</exception>
    public static ProcessTable Create(RulePack pack, string region = "")
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack, region);
    }

    /// <summary>What the table has.</summary>
    /// <param name="words">A food or a product, as the cook says it.</param>
    /// <param name="kitchen">Altitude, gauge and jar; what is not given is not narrowed down.</param>
    /// <param name="method"><c>boiling-water</c>, <c>atmospheric-steam</c>, <c>pressure</c>, or <see langword="null"/> for all that the kitchen may use.</param>
    public ProcessAnswer Find(string words, Kitchen kitchen, string? method = null)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(kitchen);
        FoodMatch match = _catalogue.Find(words);
        FoodRow? food = match.Candidates.Length == 1 ? match.Candidates[0] : null;
        HashSet<string> products = new(StringComparer.Ordinal);
        if (food is not null && food.Process.StartsWith("yes: ", StringComparison.Ordinal))
        {
            products.Add(food.Process["yes: ".Length..]);
        }

        bool byName = products.Count == 0;
        if (byName)
        {
            products.UnionWith(Named(words));
        }

        string? published = method == "atmospheric-steam" ? "boiling-water" : method; // steam has no rows of its own
        ProcessRow[] rows = [.. _tables.Processes.Where(row => row.Seen && products.Contains(row.Product) && (published is null || row.Method == published))];
        KitchenAdvice advice = new(_tables, Source);
        KitchenReading reading = advice.Of(
            kitchen,
            own => [.. ProcessSelector.Lines(rows, own, steam: advice.SteamFor(own, method == "atmospheric-steam")).Where(line => method is null || line.Method == method)],
            rows.Select(row => row.Method));
        ImmutableArray<ProcessLine> lines = reading.Lines;
        string why = rows.Length > 0 && !byName ? string.Empty
            : food is null ? string.Empty
            : food.WhyNo.Length > 0 ? food.WhyNo
            : food.Process;
        bool whole = food is null || (byName && rows.Length > 0) || _catalogue.IsExact(words, out _);
        return new(words, food?.Name, lines, byName && rows.Length > 0, rows.Length > 0 && lines.IsEmpty, why, reading.Notes, rows.Length > 0 ? [] : Recipes(food), whole);
    }

    // Every word asked for stands in the product's name.
    private IEnumerable<string> Named(string words)
    {
        string[] asked = [.. WordFolding.Words(words).Select(WordFolding.Singular)];
        foreach (string product in _tables.Processes.Select(row => row.Product).Distinct(StringComparer.Ordinal))
        {
            HashSet<string> own = new(WordFolding.Words(product).Select(WordFolding.Singular), StringComparer.Ordinal);
            if (asked.Length > 0 && asked.All(own.Contains))
            {
                yield return product;
            }
        }
    }

    private SourceReference Source(string key) => _tables.Sources.FirstOrDefault(row => row.Id == key) is { } row
        ? new(row.Id, row.Title, row.Locator, row.Url)
        : new(string.Empty, key, string.Empty, string.Empty);

    private ImmutableArray<string> Recipes(FoodRow? food) => food is null
        ? []
        : [.. _formulas.Where(formula => formula.Seen && formula.Slots.Any(slot => slot.Foods.Contains(food.Id))).Select(formula => formula.Name).Take((int)_tables.Limits["table-recipes"])];
}
