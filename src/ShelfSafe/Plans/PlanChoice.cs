using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Plans;

/// <summary>Whether a report can be planned, and by which row.</summary>
/// <param name="Process">The row, or <see langword="null"/>.</param>
/// <param name="Problem">Why there is none: <c>no-process</c>, <c>canner</c>, <c>no-row</c>, <c>altitude</c>, <c>gauge</c>, <c>jar</c>, or empty.</param>
public sealed record PlanChoice(ProcessLine? Process, string Problem)
{
    private const string Steam = "atmospheric-steam";

    /// <summary>Chooses the one row for a kitchen and its canners; of several for the same jar the recipe's own pack, then the longest time, then the hot pack, steam last.</summary>
    public static PlanChoice Of(VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.Outcome is not (Outcome.Pressure or Outcome.BoilingWater))
        {
            return new(null, "no-process");
        }

        // The kitchen told its canners, and none of them does this.
        if (report.Kitchen is { Canners.IsEmpty: false } && report.UsableMethods.IsEmpty && report.KitchenNotes.Any(note => note.Id is "electric" or "no-pressure-canner" or "no-boiling-water-canner"))
        {
            return new(null, "canner");
        }

        if (report.LacksRow)
        {
            return new(null, "no-row");
        }

        if (report.Kitchen.AltitudeFeet is null)
        {
            return new(null, "altitude");
        }

        ProcessLine[] lines = [.. report.Process.Where(line => report.UsableMethods.IsEmpty || report.UsableMethods.Contains(line.Method))];
        if (Array.Exists(lines, line => line.Psi is not null) && report.Kitchen.Gauge is null)
        {
            return new(null, "gauge");
        }

        // No jar is taken for granted where the sizes have rows of their own: the cook names the one that stands on the table.
        string[] jars = [.. lines.Select(line => line.Jar).Distinct(StringComparer.Ordinal)];
        string? jar = report.Kitchen.Jar ?? (jars.Length == 1 ? jars[0] : null);
        ProcessLine? line = lines.Where(line => line.Jar == jar && IsOwnPack(line, report, lines))
            .OrderByDescending(line => line.Minutes)
            .ThenByDescending(line => line.Pack == "hot")
            .ThenBy(line => line.Method == Steam)
            .FirstOrDefault();
        return line is null ? new(null, "jar") : new(line, string.Empty);
    }

    // A recipe that fills its jars hot goes by the hot row of each product that has one, and one that fills them raw by the raw row.
    private static bool IsOwnPack(ProcessLine line, VettingReport report, ProcessLine[] all) => report.OwnPack is not { } own
        || line.Pack == own
        || !Array.Exists(all, other => other.Product == line.Product && other.Method == line.Method && other.Jar == line.Jar && other.Pack == own);
}
