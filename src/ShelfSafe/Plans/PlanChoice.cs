using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Plans;

/// <summary>Whether a report can be planned, and by which row.</summary>
/// <param name="Process">The row, or <see langword="null"/>.</param>
/// <param name="Problem">Why there is none: <c>no-process</c>, <c>altitude</c>, <c>gauge</c>, <c>jar</c>, or empty.</param>
public sealed record PlanChoice(ProcessLine? Process, string Problem)
{
    /// <summary>Chooses the one row for a kitchen; of several for the same jar the longest time, then the hot pack.</summary>
    public static PlanChoice Of(VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.Process.IsEmpty || report.Outcome is not (Outcome.Pressure or Outcome.BoilingWater))
        {
            return new(null, "no-process");
        }

        if (report.Kitchen.AltitudeFeet is null)
        {
            return new(null, "altitude");
        }

        if (report.Process.Any(line => line.Psi is not null) && report.Kitchen.Gauge is null)
        {
            return new(null, "gauge");
        }

        // No jar is taken for granted where the sizes have rows of their own: the cook names the one that stands on the table.
        string[] jars = [.. report.Process.Select(line => line.Jar).Distinct(StringComparer.Ordinal)];
        string? jar = report.Kitchen.Jar ?? (jars.Length == 1 ? jars[0] : null);
        ProcessLine? line = report.Process.Where(line => line.Jar == jar)
            .OrderByDescending(line => line.Minutes)
            .ThenByDescending(line => line.Pack == "hot")
            .FirstOrDefault();
        return line is null ? new(null, "jar") : new(line, string.Empty);
    }
}
