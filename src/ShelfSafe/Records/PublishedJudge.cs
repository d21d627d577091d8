using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Records;

/// <summary>Compares the process used with those that the verdict shows for this kitchen. It can only say no to a yes.</summary>
public static class PublishedJudge
{
    private const string TomatoGroup = "tomato";

    /// <summary>Judges one batch.</summary>
    /// <param name="report">The verdict, made for the kitchen and the jar that were used.</param>
    /// <param name="used">The process used.</param>
    /// <param name="pack">The rule pack that judged.</param>
    /// <remarks>
    /// Only an outcome that holds as written counts, at a known altitude, in the same jar, pack, method and gauge, for at
    /// least the printed minutes and at least the printed pressure. Whatever was not told does not count.
    /// </remarks>
    public static PublishedAnswer Judge(VettingReport report, ProcessUsed used, RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(used);
        ArgumentNullException.ThrowIfNull(pack);
        ProcessUsed bare = used with { RowId = null };
        bool boil = report.Acidity is not (Acidity.Acid or Acidity.Dry) || used.Method == "pressure";
        if (report.Outcome is not (Outcome.BoilingWater or Outcome.Pressure))
        {
            return new(bare, Published: false, boil, "batch.not-by-outcome");
        }

        if (report.Kitchen.AltitudeFeet is null)
        {
            return new(bare, Published: false, boil, "batch.not-by-altitude");
        }

        if (report.Process.FirstOrDefault(line => Meets(bare, line)) is not { } met)
        {
            return new(bare, Published: false, boil, bare.Minutes is null ? "batch.not-told" : "batch.not-by-process");
        }

        bool tomato = pack.Tables.Processes.Any(row => row.Id == met.RowId && row.FoodGroup == TomatoGroup);
        return new(bare with { RowId = met.RowId }, Published: true, boil || tomato, string.Empty);
    }

    private static bool Meets(ProcessUsed used, ProcessLine line) =>
        used.Method == line.Method
        && used.Jar == line.Jar
        && used.Pack == line.Pack
        && used.Gauge == line.Gauge
        && used.Minutes >= line.Minutes
        && (line.Psi is null ? used.Psi is null : used.Psi >= line.Psi);
}
