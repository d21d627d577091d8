using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>The tables for changing a recipe and for the day of the work. No verdict reads them.</summary>
/// <param name="Changes">What kitchen changes mean.</param>
/// <param name="Adaptations">What a jar version does about each finding.</param>
/// <param name="Freezing">The freezer version.</param>
/// <param name="RunSheet">The run sheet.</param>
internal sealed record WorkTables(
    ImmutableArray<ChangeRow> Changes,
    ImmutableArray<AdaptRow> Adaptations,
    ImmutableArray<FreezingRow> Freezing,
    ImmutableArray<RunSheetRow> RunSheet)
{
    private static readonly string[] ChangeColumns = ["id", "kinds", "foods", "when", "unless", "weight", "text", "instead", "sources"];
    private static readonly string[] AdaptColumns = ["rule", "treatment", "step", "text", "sources"];
    private static readonly string[] FreezingColumns = ["id", "foods", "part", "text", "sources"];
    private static readonly string[] RunSheetColumns = ["id", "part", "method", "applies", "minutes", "minutes_most", "text", "source", "url", "status"];
    private static readonly string[] Treatments = ["serve", "leave-out", "step", "liquid", "acid", "method", "ask", "freeze"];

    /// <summary>Reads the tables of a pack.</summary>
    /// <exception cref="InvalidDataException">A table is wrong.</exception>
    public static WorkTables Of(RulePack pack)
    {
        List<PackFault> faults = [];
        WorkTables tables = Read(pack.Text, faults);
        return faults.Count == 0 ? tables : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>Reads the tables; what is wrong is added to the faults and left out.</summary>
    public static WorkTables Read(Func<string, PackText> text, List<PackFault> faults) => new(
        [.. CsvTable.Read("changes.csv", text("changes.csv"), ChangeColumns, Change, faults)],
        [.. CsvTable.Read("adaptations.csv", text("adaptations.csv"), AdaptColumns, Adaptation, faults)],
        [.. CsvTable.Read("freezing.csv", text("freezing.csv"), FreezingColumns, Freeze, faults)],
        [.. CsvTable.Read("run-sheet.csv", text("run-sheet.csv"), RunSheetColumns, Step, faults)]);

    /// <summary>Adds a fault for each source key that does not exist.</summary>
    public void CheckSources(IEnumerable<SourceRow> sources, List<PackFault> faults)
    {
        HashSet<string> known = [.. sources.Select(source => source.Id)];
        IEnumerable<(string File, string Row, ImmutableArray<string> Keys)> all =
        [
            .. Changes.Select(row => ("changes.csv", row.Id, row.Sources)),
            .. Adaptations.Select(row => ("adaptations.csv", row.Rule, row.Sources)),
            .. Freezing.Select(row => ("freezing.csv", row.Id, row.Sources)),
        ];
        foreach ((string file, string row, ImmutableArray<string> keys) in all)
        {
            foreach (string key in keys.IsEmpty ? [string.Empty] : keys)
            {
                if (!known.Contains(key))
                {
                    faults.Add(new(file, 1, 1, $"row \"{row}\": source \"{key}\" does not exist in sources.csv"));
                }
            }
        }
    }

    private static ChangeRow? Change(CsvRow row) => new(
        row.Text("id"),
        [.. row.List("kinds")],
        [.. row.List("foods")],
        [.. row.List("when")],
        [.. row.List("unless")],
        row.Choice("weight", ("matters", true), ("harmless", false)),
        row.Text("text"),
        row.Text("instead"),
        [.. row.List("sources")]);

    private static AdaptRow? Adaptation(CsvRow row)
    {
        string treatment = row.Text("treatment");
        if (!Treatments.Contains(treatment, StringComparer.Ordinal))
        {
            row.Fault("treatment", $"\"{treatment}\" is not known; allowed: {string.Join(", ", Treatments)}");
            return null;
        }

        return new(row.Text("rule"), treatment, row.Text("step"), row.Text("text"), [.. row.List("sources")]);
    }

    private static FreezingRow? Freeze(CsvRow row) => new(
        row.Text("id"),
        [.. row.List("foods")],
        row.Choice("part", ("cool", "cool"), ("pack", "pack"), ("keeps", "keeps"), ("use", "use")),
        row.Text("text"),
        [.. row.List("sources")]);

    private static RunSheetRow? Step(CsvRow row) => new(
        row.Text("id"),
        row.Choice("part", ("before", "before"), ("prepare", "prepare"), ("fill", "fill"), ("canner", "canner"), ("after", "after"), ("trouble", "trouble")),
        row.Choice("method", ("any", "any"), ("pressure", "pressure"), ("boiling-water", "boiling-water"), ("atmospheric-steam", "atmospheric-steam")),
        [.. row.List("applies")],
        Minutes(row, "minutes"),
        Minutes(row, "minutes_most"),
        row.Text("text"),
        row.Text("source"),
        row.Text("url"),
        row.Choice("status", ("verified", "verified"), ("common practice", "common practice")));

    // "process" stands for the minutes of the published process, told here as infinite.
    private static double? Minutes(CsvRow row, string column) => row.Text(column) == "process" ? double.PositiveInfinity : row.Number(column);
}
