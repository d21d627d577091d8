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
    /// least the printed minutes and at least the printed pressure, and so for every product that the verdict names. Whatever
    /// was not told does not count.
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

        // Each product that the verdict names asks for its own time: the shortest of a mixture is not enough.
        ProcessLine?[] met = [.. report.Process.GroupBy(line => line.Product, StringComparer.Ordinal).Select(product => product.Where(line => Meets(bare, line)).MaxBy(line => line.Minutes))];
        if (met.Length == 0 || met.Any(line => line is null))
        {
            return new(bare, Published: false, boil, bare.Minutes is null ? "batch.not-told" : "batch.not-by-process");
        }

        ProcessLine longest = met.MaxBy(line => line!.Minutes)!;
        bool tomato = pack.Tables.Processes.Any(row => row.FoodGroup == TomatoGroup && met.Any(line => line!.RowId == row.Id));
        return new(bare with { RowId = longest.RowId }, Published: true, boil || tomato, string.Empty);
    }

    private static bool Meets(ProcessUsed used, ProcessLine line) =>
        used.Method == line.Method
        && used.Jar == line.Jar
        && used.Pack == line.Pack
        && used.Gauge == line.Gauge
        && used.Minutes >= line.Minutes
        && (line.Psi is null ? used.Psi is null : used.Psi >= line.Psi);
}
