using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Why a recipe cannot be planned, in one line.</summary>
public static class PlanWords
{
    /// <summary>The line for a problem of <see cref="Plans.PlanChoice"/>.</summary>
    public static string Problem(Words words, string problem, VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(report);
        if (problem == "no-row")
        {
            return string.Join(' ', report.KitchenNotes.Take(1).Select(static note => $"{note.Text} {note.Instead}"));
        }

        string jars = string.Join(", ", report.Process.Select(line => words.Named("jar", line.Jar)).Distinct(StringComparer.Ordinal));
        return words.With($"plan.problem.{problem}", Names.Of(report.Outcome), jars);
    }
}
