using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Reads the published formulas and checks them against the foods and processes of the pack.</summary>
internal static class FormulaTable
{
    /// <summary>All formulas of the pack; what is wrong is added to the faults and left out.</summary>
    public static ImmutableArray<FormulaRow> Read(RulePack pack, List<PackFault> faults) => Open(pack, faults).All;

    /// <summary>The formulas of the pack, of the built-in one each made when it is first asked for.</summary>
    public static RowTable<FormulaRow> Open(RulePack pack, List<PackFault> faults)
    {
        // Of the built-in pack the build has checked the names of foods and processes.
        PackTables? tables = pack.Image is null ? pack.Tables : null;
        HashSet<string>? foods = tables?.Foods.Select(food => food.Id).ToHashSet(StringComparer.Ordinal);
        HashSet<string>? processes = tables?.Processes.Select(process => process.Id).ToHashSet(StringComparer.Ordinal);
        RowTable<FormulaSlot> slots = new(pack.Text(TableKeys.FormulaSlots.File), TableKeys.FormulaSlots, row => Slot(row, foods), faults);
        RowTable<FormulaRow> rows = new(pack.Text(TableKeys.Formulas.File), TableKeys.Formulas, row => Formula(row, slots, processes), faults);
        if (tables is not null)
        {
            HashSet<string> known = [.. rows.All.Select(row => row.Id)];
            foreach (string orphan in slots.All.Select(slot => slot.Formula).Distinct(StringComparer.Ordinal).Where(id => !known.Contains(id)))
            {
                faults.Add(new(TableKeys.FormulaSlots.File, 1, 1, $"formula \"{orphan}\" is not a row of formulas.csv"));
            }
        }

        return rows;
    }

    private static FormulaRow? Formula(CsvRow row, RowTable<FormulaSlot> slots, HashSet<string>? processes)
    {
        ImmutableArray<FormulaSlot> own = slots.With("formula", row.Text("id"));
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
            row.Text("id"), row.Text("name"), [.. row.List("kinds")], [.. row.List("process_rows")], [.. row.Text("needs").Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)], row.Text("yield"), row.Text("source"), row.Text("url"), seen, own);
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
