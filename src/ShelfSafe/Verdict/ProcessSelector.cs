using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Turns rows of the process table into lines for a kitchen, each printed band as it stands.</summary>
/// <remarks>Nothing is interpolated: an altitude outside every printed band gets no line.</remarks>
internal static class ProcessSelector
{
    private static readonly Comparer<ProcessLine> ByJar = Comparer<ProcessLine>.Create(Compare);

    /// <summary>All lines that the kitchen's altitude, gauge and jar leave.</summary>
    /// <param name="rows">Rows that govern the product.</param>
    /// <param name="overruled">Rows that a longer time of a single food overrules; named beside it.</param>
    /// <param name="kitchen">The kitchen; without an altitude every band is given.</param>
    /// <param name="steam">What an atmospheric steam canner may take, or <see langword="null"/> where none was asked for.</param>
    public static ImmutableArray<ProcessLine> Lines(IEnumerable<ProcessRow> rows, Kitchen kitchen, IReadOnlyList<ProcessRow>? overruled = null, SteamRule? steam = null)
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

        lines.AddRange(Steamed(lines, all, steam));
        return [.. lines.OrderBy(line => line, ByJar)];
    }

    private static int Compare(ProcessLine one, ProcessLine other)
    {
        int order = JarSizes.Order(one.Jar).CompareTo(JarSizes.Order(other.Jar));
        order = order != 0 ? order : string.CompareOrdinal(one.RowId, other.RowId);
        order = order != 0 ? order : string.CompareOrdinal(one.Pack, other.Pack);
        order = order != 0 ? order : string.CompareOrdinal(one.Gauge, other.Gauge);
        return order != 0 ? order : one.AltitudeFeet.Low.CompareTo(other.AltitudeFeet.Low);
    }

    // The very minutes of the boiling-water row at this altitude, and only within the limits of the research: acid or acidified rows alone.
    private static List<ProcessLine> Steamed(IReadOnlyList<ProcessLine> lines, List<ProcessRow> rows, SteamRule? steam)
    {
        if (steam is null)
        {
            return [];
        }

        HashSet<string> acid = [.. rows.Where(row => row is { Method: "boiling-water", Acidity: "acid" or "acidified" } && Small(row.Jar, steam.Row)).Select(row => row.Id)];
        return
        [
            .. lines.Where(line => line.Method == "boiling-water" && acid.Contains(line.RowId) && line.Minutes <= steam.Row.MostMinutes)
                .Select(line => line with { Method = steam.Row.Method, Source = $"{line.Source}; {steam.Row.Source}", Note = line.Note is { } note ? $"{note}; {steam.Note}" : steam.Note, Overruled = [] }),
        ];
    }

    private static bool Small(string jar, CannerRow steam) => steam.LargestJar.Length == 0 || JarSizes.Order(jar) <= JarSizes.Order(steam.LargestJar);

    // A row printed for food packed hot or raw is a row for each.
    private static IEnumerable<ProcessRow> ByPack(ProcessRow row) => row.Pack == "either" ? [row with { Pack = "hot" }, row with { Pack = "raw" }] : [row];

    // A smaller jar takes the next larger listed row of the same product and pack; a larger one gets none.
    private static bool Fits(ProcessRow row, string jar, List<ProcessRow> all)
    {
        int wanted = JarSizes.Order(jar);
        int own = JarSizes.Order(row.Jar);
        return own >= wanted && !all.Any(other =>
            other.Product == row.Product && other.Pack == row.Pack && other.Method == row.Method
            && JarSizes.Order(other.Jar) >= wanted && JarSizes.Order(other.Jar) < own);
    }

    private static void Add(List<ProcessLine> lines, ProcessRow row, ImmutableArray<AltitudeBand> bands, string? gauge, Kitchen kitchen, IReadOnlyList<ProcessRow>? overruled)
    {
        if (gauge is not null && kitchen.Gauge is { } own && own != gauge)
        {
            return;
        }

        ImmutableArray<OverruledProcess> others = Overruled(row, overruled);
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

    private static ImmutableArray<OverruledProcess> Overruled(ProcessRow row, IReadOnlyList<ProcessRow>? overruled)
    {
        List<OverruledProcess> others = [];
        foreach (ProcessRow other in overruled ?? [])
        {
            if (other.Jar == row.Jar && (other.Pack == row.Pack || other.Pack == "either") && other.Minutes < row.Minutes)
            {
                others.Add(new(other.Id, other.Product, other.Minutes, other.Source));
            }
        }

        return [.. others];
    }
}
