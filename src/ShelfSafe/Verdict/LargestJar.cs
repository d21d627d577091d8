using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>Says which jar is the largest that a published process lists, and which food of the batch allows no larger one.</summary>
internal static class LargestJar
{
    /// <summary>The finding with the largest jar in its message.</summary>
    /// <param name="finding">A finding whose message has the place <c>{published}</c>.</param>
    /// <param name="rows">The rows of the process; at least one.</param>
    /// <param name="batch">The batch; a food is named only where another food of it has a larger jar.</param>
    /// <param name="table">Words of reports.</param>
    public static RawFinding In(RawFinding finding, IReadOnlyList<ProcessRow> rows, Batch batch, WordTable table)
    {
        string largest = rows.MaxBy(static row => JarSizes.Order(row.Jar))!.Jar;
        int order = JarSizes.Order(largest);
        (string Words, int Most)[] own =
        [
            .. batch.InJar
                .Where(static item => item.Food is { BulkJars.Length: > 0 })
                .Select(static item => (item.Words, item.Food!.BulkJars.Max(JarSizes.Order))),
        ];
        string[] least = own.Any(food => food.Most > order) ? [.. own.Where(food => food.Most <= order).Select(static food => food.Words).Distinct(StringComparer.Ordinal)] : [];
        string jar = table["jar." + largest];
        string text = least.Length == 0 ? table.With("jar-too-large.largest", jar) : table.With("jar-too-large.food", jar, string.Join("\", \"", least));
        return OwnProcess.With(finding, text);
    }
}
