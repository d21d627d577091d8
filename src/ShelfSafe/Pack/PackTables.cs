using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>The typed tables and cards of a pack.</summary>
internal sealed record PackTables(
    ImmutableArray<FoodRow> Foods,
    ImmutableArray<AliasRow> Aliases,
    ImmutableArray<ProcessRow> Processes,
    ImmutableArray<SourceRow> Sources,
    ImmutableArray<StorageRow> Storage,
    ImmutableArray<HazardCard> Hazards,
    ImmutableArray<CategoryCard> Categories,
    ImmutableArray<JarSignCard> JarSigns,
    Limits Limits,
    KitchenTables Kitchen)
{
    private static readonly string[] FoodColumns =
        ["id", "name", "group", "ph_low", "ph_high", "acidity", "traits", "acid_strength", "process", "bulk", "bulk_jars", "bulk_source", "minor_g_per_kg", "minor_source", "why_no", "source", "url", "status", "notes"];

    private static readonly string[] ProcessColumns =
        ["id", "guide", "product", "food_group", "acidity", "pack", "jar", "method", "minutes", "bw_minutes_by_altitude", "dial_psi_by_altitude", "weighted_psi_by_altitude", "headspace_in", "acid_addition", "conditions", "source", "url", "status"];

    /// <summary>Reads every table; what is wrong is added to the faults and left out.</summary>
    public static PackTables Read(IReadOnlyDictionary<string, string> files, List<PackFault> faults)
    {
        List<HazardCard> hazards = [];
        List<CategoryCard> categories = [];
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            if (name.StartsWith("hazards/", StringComparison.Ordinal) && CardReader.Hazard(name, files[name], faults) is { } hazard)
            {
                hazards.Add(hazard);
            }
            else if (name.StartsWith("categories/", StringComparison.Ordinal) && CardReader.Category(name, files[name], faults) is { } category)
            {
                categories.Add(category);
            }
        }

        return new(
            Table(files, "foods.csv", FoodColumns, Food, faults),
            Table(files, "food-aliases.csv", ["alias", "food", "region", "source"], row => new AliasRow(row.Text("alias"), row.Text("food"), row.Text("region"), row.Text("source"), row.Line), faults),
            Table(files, "processes.csv", ProcessColumns, Process, faults),
            Table(files, "sources.csv", ["id", "title", "locator", "url", "seen", "status"], row => new SourceRow(row.Text("id"), row.Text("title"), row.Text("locator"), row.Text("url"), row.Text("seen"), row.Text("status")), faults),
            Table(files, "storage.csv", ["id", "applies", "fridge", "freezer", "text", "source", "url", "status"], row => new StorageRow(row.Text("id"), row.Text("applies"), row.Text("fridge"), row.Text("freezer"), row.Text("text"), row.Text("source"), row.Text("url"), row.Text("status")), faults),
            [.. hazards],
            [.. categories],
            JarSignReader.ReadAll(files, faults),
            Limits.Read(files.GetValueOrDefault("limits.csv", string.Empty), faults),
            KitchenTables.Read(name => files.GetValueOrDefault(name, string.Empty), faults));
    }

    private static ImmutableArray<T> Table<T>(IReadOnlyDictionary<string, string> files, string file, string[] header, Func<CsvRow, T?> read, List<PackFault> faults)
        where T : class
    {
        if (!files.TryGetValue(file, out string? text))
        {
            faults.Add(new(file, 1, 1, "the table is missing"));
            return [];
        }

        return [.. CsvTable.Read(file, text, header, read, faults)];
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
