using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Reads the published formulas and checks them against the foods and processes of the pack.</summary>
internal static class FormulaTable
{
    private static readonly string[] Columns = ["id", "name", "kinds", "process_rows", "yield", "source", "url", "status"];

    private static readonly string[] SlotColumns =
        ["formula", "slot", "foods", "role", "low", "high", "unit", "grams", "state", "label", "discarded", "per_jar", "swaps", "optional", "source"];

    /// <summary>All formulas of the pack; what is wrong is added to the faults and left out.</summary>
    public static ImmutableArray<FormulaRow> Read(RulePack pack, List<PackFault> faults) =>
        Read(pack.Text("formulas.csv"), pack.Text("formula-slots.csv"), pack.Image is null ? pack.Tables : null, faults);

    /// <summary>All formulas of two tables.</summary>
    /// <param name="formulas">The formulas.</param>
    /// <param name="slots">Their foods.</param>
    /// <param name="tables">Foods and processes that may be named, or <see langword="null"/> where the build has checked the names.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static ImmutableArray<FormulaRow> Read(PackText formulas, PackText slots, PackTables? tables, List<PackFault> faults)
    {
        HashSet<string>? foods = tables?.Foods.Select(food => food.Id).ToHashSet(StringComparer.Ordinal);
        HashSet<string>? processes = tables?.Processes.Select(process => process.Id).ToHashSet(StringComparer.Ordinal);
        ILookup<string, FormulaSlot> byFormula = CsvTable
            .Read("formula-slots.csv", slots, SlotColumns, row => Slot(row, foods), faults)
            .ToLookup(slot => slot.Formula, StringComparer.Ordinal);
        List<FormulaRow> rows = CsvTable.Read("formulas.csv", formulas, Columns, row => Formula(row, byFormula, processes), faults);
        HashSet<string> known = [.. rows.Select(row => row.Id)];
        foreach (IGrouping<string, FormulaSlot> orphan in byFormula.Where(group => !known.Contains(group.Key)))
        {
            faults.Add(new("formula-slots.csv", 1, 1, $"formula \"{orphan.Key}\" is not a row of formulas.csv"));
        }

        return [.. rows];
    }

    private static FormulaRow? Formula(CsvRow row, ILookup<string, FormulaSlot> slots, HashSet<string>? processes)
    {
        ImmutableArray<FormulaSlot> own = [.. slots[row.Text("id")]];
        if (own.Length is 0 or > 60)
        {
            row.Fault("id", "a formula has 1 to 60 rows in formula-slots.csv");
            return null;
        }

        foreach (string process in row.List("process_rows"))
        {
            if (processes?.Contains(process) == false)
            {
                row.Fault("process_rows", $"\"{process}\" is not a row of processes.csv");
            }
        }

        bool seen = row.Choice("status", ("memory", false), ("verified", true));
        return new(
            row.Text("id"), row.Text("name"), [.. row.List("kinds")], [.. row.List("process_rows")], row.Text("yield"), row.Text("source"), row.Text("url"), seen, own);
    }

    private static FormulaSlot? Slot(CsvRow row, HashSet<string>? foods)
    {
        foreach (string column in (ReadOnlySpan<string>)["foods", "swaps"])
        {
            foreach (string food in row.List(column))
            {
                if (foods?.Contains(food) == false)
                {
                    row.Fault(column, $"\"{food}\" is not a row of foods.csv");
                }
            }
        }

        FormulaRole role = row.Choice("role", ("fixed", FormulaRole.Fixed), ("at-most", FormulaRole.AtMost), ("at-least", FormulaRole.AtLeast), ("free", FormulaRole.Free));
        double? low = row.Number("low");
        double? high = row.Number("high");
        if (role != FormulaRole.Free && !(low > 0 && high >= low))
        {
            row.Fault("low", "low and high are amounts above 0, the lower first; only a free food may go without");
        }

        return new(
            row.Text("formula"),
            row.Text("slot"),
            [.. row.List("foods")],
            role,
            low,
            high,
            row.Text("unit"),
            row.Number("grams"),
            [.. row.Text("state").Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)],
            row.Choice("label", (string.Empty, string.Empty), ("5%", "5%"), ("bottled", "bottled")),
            row.Choice("discarded", ("no", false), ("yes", true)),
            row.Choice("per_jar", ("no", false), ("yes", true)),
            [.. row.List("swaps")],
            row.Choice("optional", ("no", FormulaPresence.Required), ("yes", FormulaPresence.Optional), ("instead", FormulaPresence.Instead)),
            row.Text("source"));
    }
}
