using System.Collections.Immutable;

namespace ShelfSafe.Records;

/// <summary>Writes batches out and reads them in again, as JSON Lines or CSV.</summary>
public static class BatchExchange
{
    /// <summary>The formats.</summary>
    public static IReadOnlyList<string> Formats { get; } = ["jsonl", "csv"];

    /// <summary>Writes batches; lines end in a line feed, and the same batches give the same bytes everywhere.</summary>
    /// <param name="batches">The batches.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    public static string Write(IEnumerable<BatchRecord> batches, string format) =>
        format == "csv" ? BatchCsv.Write(batches) : BatchJson.Write(batches);

    /// <summary>Reads batches; a row that is broken becomes a fault.</summary>
    /// <param name="text">The text of the file.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    /// <param name="faults">Every broken row by its line, a lot that stands twice among them.</param>
    public static ImmutableArray<ImportRow> Read(string text, string format, out ImmutableArray<ImportFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<ImportFault> found = [];
        string body = text.TrimStart('\uFEFF');
        List<ImportRow> rows = format == "csv" ? BatchCsv.Read(body, found) : BatchJson.Read(body, found);
        Dictionary<string, int> lines = new(StringComparer.Ordinal);
        foreach (ImportRow row in rows)
        {
            if (!lines.TryAdd(row.Batch.Lot, row.Line))
            {
                found.Add(new(row.Line, BatchChecks.Line($"lot {row.Batch.Lot} stands on line {lines[row.Batch.Lot]} already")));
            }
        }

        faults = [.. found.OrderBy(static fault => fault.Line)];
        return [.. rows];
    }
}
