using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Holds a draft against what the first report promised.</summary>
internal static class AdaptPromise
{
    /// <summary>Whether a draft came out as promised: the same way of canning, covered as written, and only by rows that the first report named.</summary>
    public static bool Keeps(VettingReport promised, VettingReport after)
    {
        Outcome wanted = Method(promised.Outcome) == "pressure" ? Outcome.Pressure : Outcome.BoilingWater;
        HashSet<string> rows = [.. promised.ProcessAfterChanges.Concat(promised.Process).Select(line => line.RowId)];
        return after.Outcome == wanted
            && !after.Process.IsEmpty
            && after.Process.All(line => rows.Contains(line.RowId))
            && after.Findings.All(finding => finding.Level < FindingLevel.Change)
            && after.Ingredients.All(entry => entry.Identified);
    }

    /// <summary>Way of canning that an outcome permits, now or after changes; empty where it permits none.</summary>
    public static string Method(Outcome outcome) => outcome switch
    {
        Outcome.Pressure or Outcome.PressureAfterChanges => "pressure",
        Outcome.BoilingWater or Outcome.BoilingWaterAfterChanges => "boiling-water",
        Outcome.TestedRecipeOnly or Outcome.FreezeOrChill or Outcome.DryStorage or Outcome.NotAJarFood or Outcome.CannotTell => string.Empty,
    };

    /// <summary>Whether a copy is read as the original was: same verdict, same foods, same findings that count.</summary>
    public static bool IsAlike(VettingReport report, VettingReport copy) =>
        report.Outcome == copy.Outcome
        && report.Acidity == copy.Acidity
        && report.Category?.Id == copy.Category?.Id
        && copy.Parts.IsEmpty
        && report.Ingredients.Select(entry => entry.FoodId ?? entry.Food).SequenceEqual(copy.Ingredients.Select(entry => entry.FoodId ?? entry.Food), StringComparer.Ordinal)
        && Counting(report).SetEquals(Counting(copy));

    /// <summary>Findings that bar a yes, by rule and level.</summary>
    public static HashSet<(string, FindingLevel)> Counting(VettingReport report) =>
        [.. report.Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => (finding.Rule, finding.Level))];
}
