using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>The typed tables and cards of a pack, each read when it is first asked for.</summary>
internal sealed class PackTables
{
    private static readonly string[] AliasColumns = ["alias", "food", "region", "source"];
    private static readonly string[] StorageColumns = ["id", "applies", "fridge", "freezer", "text", "source", "url", "status"];

    private readonly PackFiles _files;
    private readonly List<PackFault>? _faults;
    private readonly Lazy<RowTable<FoodRow>> _foods;
    private readonly Lazy<ImmutableArray<AliasRow>> _aliases;
    private readonly Lazy<RowTable<ProcessRow>> _processes;
    private readonly Lazy<RowTable<SourceRow>> _sources;
    private readonly Lazy<ImmutableArray<StorageRow>> _storage;
    private readonly Lazy<ImmutableArray<HazardCard>> _hazards;
    private readonly Lazy<ImmutableArray<CategoryCard>> _categories;
    private readonly Lazy<CardShelf<HazardCard>> _hazardShelf;
    private readonly Lazy<CardShelf<CategoryCard>> _categoryShelf;
    private readonly Lazy<ImmutableArray<JarSignCard>> _jarSigns;
    private readonly Lazy<Limits> _limits;
    private readonly Lazy<KitchenTables> _kitchen;
    private readonly Lazy<RuleLists> _lists;

    /// <summary>Tables of a pack that was found to be without fault.</summary>
    public PackTables(PackFiles files)
        : this(files, null)
    {
    }

    private PackTables(PackFiles files, List<PackFault>? faults)
    {
        (_files, _faults) = (files, faults);
        _foods = Table(TableKeys.Foods, Food);
        _aliases = Table("food-aliases.csv", AliasColumns, static row => new AliasRow(row.Text("alias"), row.Text("food"), row.Text("region"), row.Text("source"), row.Line));
        _processes = Table(TableKeys.Processes, Process);
        _sources = Table(TableKeys.Sources, static row => new SourceRow(row.Text("id"), row.Text("title"), row.Text("locator"), row.Text("url"), row.Text("seen"), row.Text("status")));
        _storage = Table("storage.csv", StorageColumns, static row => new StorageRow(row.Text("id"), row.Text("applies"), row.Text("fridge"), row.Text("freezer"), row.Text("text"), row.Text("source"), row.Text("url"), row.Text("status")));
        PackImage? image = (files as ImageFiles)?.Image;
        _hazards = new(() => image is not null ? HazardShelf.All : Read(found => Cards("hazards/", CardReader.Hazard, found)));
        _categories = new(() => image is not null ? CategoryShelf.All : Read(found => Cards("categories/", CardReader.Category, found)));
        _hazardShelf = new(() => CardImage.Hazards(image ?? PackImage.Of(writer => CardImage.WriteHazards(Hazards, writer))));
        _categoryShelf = new(() => CardImage.Categories(image ?? PackImage.Of(writer => CardImage.WriteCategories(Categories, writer))));
        _jarSigns = new(() => Read(found => JarSignReader.ReadAll(files, found)));
        _limits = new(() => Read(found => Limits.Read(files["limits.csv"], found)));
        _kitchen = new(() => Read(found => KitchenTables.Read(path => files[path], found)));
        _lists = new(() => Read(found => new RuleLists(files[TableKeys.Lists.File], found), TableKeys.Lists.File));
    }

    /// <summary>All foods; made one by one where only a few are needed, see <see cref="Food(int)"/>.</summary>
    public ImmutableArray<FoodRow> Foods => _foods.Value.All;

    /// <summary>The food at a place of the table.</summary>
    public FoodRow Food(int row) => _foods.Value[row];

    /// <summary>Other names of foods.</summary>
    public ImmutableArray<AliasRow> Aliases => _aliases.Value;

    /// <summary>The published processes.</summary>
    public ImmutableArray<ProcessRow> Processes => _processes.Value.All;

    /// <summary>The published processes, to be found by <c>id</c> or <c>product</c>.</summary>
    public RowTable<ProcessRow> ProcessTable => _processes.Value;

    /// <summary>The publications.</summary>
    public ImmutableArray<SourceRow> Sources => _sources.Value.All;

    /// <summary>A publication by its key, or <see langword="null"/>.</summary>
    public SourceRow? Source(string key) => _sources.Value.First("id", key);

    /// <summary>How long dishes keep cold.</summary>
    public ImmutableArray<StorageRow> Storage => _storage.Value;

    /// <summary>The hazard cards.</summary>
    public ImmutableArray<HazardCard> Hazards => _hazards.Value;

    /// <summary>The hazard cards, to be read as they are needed.</summary>
    public CardShelf<HazardCard> HazardShelf => _hazardShelf.Value;

    /// <summary>The category cards.</summary>
    public ImmutableArray<CategoryCard> Categories => _categories.Value;

    /// <summary>The category cards, to be read as they are needed.</summary>
    public CardShelf<CategoryCard> CategoryShelf => _categoryShelf.Value;

    /// <summary>The cards for jars in the hand.</summary>
    public ImmutableArray<JarSignCard> JarSigns => _jarSigns.Value;

    /// <summary>Named thresholds.</summary>
    public Limits Limits => _limits.Value;

    /// <summary>Canners, notes on the kitchen, and countries.</summary>
    public KitchenTables Kitchen => _kitchen.Value;

    /// <summary>Short lists of traits, groups, kinds and rules.</summary>
    public RuleLists Lists => _lists.Value;

    /// <summary>Reads every table now; what is wrong is added to the faults and left out.</summary>
    public static PackTables Read(PackFiles files, List<PackFault> faults)
    {
        PackTables tables = new(files, faults);
        _ = tables.Categories.Length + tables.Hazards.Length + tables.Foods.Length + tables.Aliases.Length + tables.Processes.Length;
        _ = tables.Sources.Length + tables.Storage.Length + tables.JarSigns.Length + tables.Limits.Count + tables.Kitchen.Canners.Length;
        _ = tables.Lists.Count;
        return tables;
    }

    private Lazy<ImmutableArray<T>> Table<T>(string file, string[] header, Func<CsvRow, T?> read)
        where T : class =>
        new(() => Read(found => CsvTable.Read(file, _files[file], header, read, found).ToImmutableArray(), file));

    private Lazy<RowTable<T>> Table<T>(TableKeys keys, Func<CsvRow, T?> read)
        where T : class =>
        new(() => Read(found => new RowTable<T>(_files[keys.File], keys, read, found), keys.File));

    private ImmutableArray<T> Cards<T>(string folder, Func<string, string, RuleLists, List<PackFault>, T?> read, List<PackFault> found)
        where T : class =>
        [.. _files.CardsOf(folder).Select(path => read(path, _files.Card(path), Lists, found)).OfType<T>()];

    // A fault is for the list of a validation; in a pack that was validated before there is none.
    private T Read<T>(Func<List<PackFault>, T> read, string file = "")
    {
        List<PackFault> found = [];
        T made = read(found);
        if (file.Length > 0 && !_files.Has(file))
        {
            found = [new(file, 1, 1, "the table is missing")];
        }

        if (found.Count > 0)
        {
            (_faults ?? throw new InvalidDataException("The rule pack is broken: " + found[0])).AddRange(found);
        }

        return made;
    }

    private static FoodRow? Food(CsvRow row) => new(
        row.Text("id"),
        row.Text("name"),
        row.Text("group"),
        row.Number("ph_low"),
        row.Number("ph_high"),
        row.Choice("acidity", ("low-acid", FoodAcidity.LowAcid), ("borderline", FoodAcidity.Borderline), ("acid", FoodAcidity.Acid), ("dry", FoodAcidity.Dry)),
        [.. row.List("traits")],
        row.Text("acid_strength"),
        row.Text("process"),
        row.Choice("bulk", ("no", BulkUse.No), ("seasoning", BulkUse.Seasoning), ("yes", BulkUse.Yes)),
        [.. row.List("bulk_jars")],
        row.Text("bulk_source"),
        row.Number("minor_g_per_kg"),
        row.Text("minor_source"),
        row.Text("why_no"),
        row.Text("source"),
        row.Text("url"),
        row.Text("status"),
        row.Text("notes"),
        row.Line);

    private static ProcessRow? Process(CsvRow row) => new(
        row.Text("id"),
        row.Text("product"),
        row.Text("food_group"),
        row.Text("acidity"),
        row.Text("pack"),
        row.Choice("jar", ("pint", "pint"), ("half-pint", "half-pint"), ("quart", "quart"), ("half-gallon", "half-gallon"), ("pint-and-a-half", "pint-and-a-half")),
        row.Choice("method", ("boiling-water", "boiling-water"), ("pressure", "pressure")),
        (int)(row.Number("minutes") ?? 0),
        Bands(row, "bw_minutes_by_altitude"),
        Bands(row, "dial_psi_by_altitude"),
        Bands(row, "weighted_psi_by_altitude"),
        row.Number("headspace_in") ?? 0,
        row.Text("acid_addition"),
        row.Text("conditions"),
        row.Text("source"),
        row.Text("url"),
        row.Text("status") == "verified");

    private static ImmutableArray<AltitudeBand> Bands(CsvRow row, string column)
    {
        if (AltitudeBand.Parse(row.Text(column)) is { } bands)
        {
            return bands;
        }

        row.Fault(column, "altitude bands are written 0-1000:10;1001+:15");
        return [];
    }
}
