using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Turns rows of the process table into lines for a kitchen, each printed band as it stands.</summary>
/// <remarks>Nothing is interpolated: an altitude outside every printed band gets no line.</remarks>
internal static class ProcessSelector
{
    private static readonly string[] JarOrder = ["half-pint", "pint", "pint-and-a-half", "quart", "half-gallon"];

    /// <summary>All lines that the kitchen's altitude, gauge and jar leave.</summary>
    /// <param name="rows">Rows that govern the product.</param>
    /// <param name="overruled">Rows that a longer time of a single food overrules; named beside it.</param>
    /// <param name="kitchen">The kitchen; without an altitude every band is given.</param>
    public static ImmutableArray<ProcessLine> Lines(IEnumerable<ProcessRow> rows, Kitchen kitchen, IReadOnlyList<ProcessRow>? overruled = null)
    {
        List<ProcessLine> lines = [];
        List<ProcessRow> all = [.. rows.SelectMany(ByPack)];
        foreach (ProcessRow row in all)
        {
            if (kitchen.Jar is { } jar && !Fits(row, jar, all))
            {
                continue;
            }

            Add(lines, row, row.BoilingWater, null, kitchen, overruled);
            Add(lines, row, row.Dial, "dial", kitchen, overruled);
            Add(lines, row, row.Weighted, "weighted", kitchen, overruled);
        }

        return [.. lines.OrderBy(line => Array.IndexOf(JarOrder, line.Jar)).ThenBy(line => line.RowId, StringComparer.Ordinal).ThenBy(line => line.Pack, StringComparer.Ordinal).ThenBy(line => line.Gauge, StringComparer.Ordinal).ThenBy(line => line.AltitudeFeet.Low)];
    }

    // A row printed for food packed hot or raw is a row for each.
    private static IEnumerable<ProcessRow> ByPack(ProcessRow row) => row.Pack == "either" ? [row with { Pack = "hot" }, row with { Pack = "raw" }] : [row];

    // A smaller jar takes the next larger listed row of the same product and pack; a larger one gets none.
    private static bool Fits(ProcessRow row, string jar, List<ProcessRow> all)
    {
        int wanted = Array.IndexOf(JarOrder, jar);
        int own = Array.IndexOf(JarOrder, row.Jar);
        return own >= wanted && !all.Any(other =>
            other.Product == row.Product && other.Pack == row.Pack && other.Method == row.Method
            && Array.IndexOf(JarOrder, other.Jar) >= wanted && Array.IndexOf(JarOrder, other.Jar) < own);
    }

    private static void Add(List<ProcessLine> lines, ProcessRow row, ImmutableArray<AltitudeBand> bands, string? gauge, Kitchen kitchen, IReadOnlyList<ProcessRow>? overruled)
    {
        ImmutableArray<OverruledProcess> others = [.. (overruled ?? []).Where(other => other.Jar == row.Jar && (other.Pack == row.Pack || other.Pack == "either") && other.Minutes < row.Minutes).Select(other => new OverruledProcess(other.Id, other.Product, other.Minutes, other.Source))];
        if (gauge is not null && kitchen.Gauge is { } own && own != gauge)
        {
            return;
        }

        foreach (AltitudeBand band in bands)
        {
            // Rounded up to whole feet: toward the next band, which is never milder.
            if (kitchen.AltitudeFeet is { } feet && (Math.Ceiling(feet) < band.FromFeet && band.FromFeet > 0 || Math.Ceiling(feet) > band.ToFeet))
            {
                continue;
            }

            string? note = kitchen.Jar is { } jar && jar != row.Jar ? $"printed for the {row.Jar}, the next larger jar" : null;
            int minutes = gauge is null ? (int)band.Figure : row.Minutes;
            double? psi = gauge is null ? null : band.Figure;
            lines.Add(new(
                row.Id,
                row.Product,
                row.Method,
                kitchen.Jar ?? row.Jar,
                row.Pack,
                minutes,
                gauge,
                psi,
                new(band.FromFeet, band.ToFeet),
                row.HeadspaceInches,
                row.AcidAddition.Length == 0 ? null : row.AcidAddition,
                row.Conditions,
                row.Source,
                note,
                others));
        }
    }
}
