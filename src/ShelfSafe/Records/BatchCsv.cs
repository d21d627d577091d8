using System.Text;

namespace ShelfSafe.Records;

/// <summary>Batches as a table with a header row.</summary>
/// <remarks>
/// A spreadsheet runs a value that begins with =, +, - or @ as a formula, and a title or note is somebody's text: such a
/// text is written with an apostrophe before it, which is taken off again when it is read.
/// </remarks>
internal static class BatchCsv
{
    private const string Guarded = "=+-@'\t\r";

    /// <summary>Writes batches.</summary>
    public static string Write(IEnumerable<BatchRecord> batches)
    {
        StringBuilder text = new();
        CsvCells.Write(text, BatchFields.All.Select(static field => field.Name));
        foreach (BatchRecord batch in batches)
        {
            CsvCells.Write(text, BatchFields.All.Select(field => Guard(field, field.Write(batch) ?? string.Empty)));
        }

        return text.ToString();
    }

    /// <summary>Reads batches.</summary>
    public static List<ImportRow> Read(string text, List<ImportFault> faults)
    {
        List<ImportRow> batches = [];
        List<(int Line, List<string> Cells)> rows = CsvCells.Read(text, out (int Line, string Message)? wrong);
        if (rows.Count == 0 || !rows[0].Cells.SequenceEqual(BatchFields.All.Select(static field => field.Name), StringComparer.Ordinal))
        {
            faults.Add(new(1, $"the first line must be: {string.Join(',', BatchFields.All.Select(static field => field.Name))}"));
            return batches;
        }

        if (wrong is { } place)
        {
            faults.Add(new(place.Line, place.Message));
        }

        foreach ((int line, List<string> cells) in rows.Skip(1))
        {
            if (cells.Count != BatchFields.All.Length)
            {
                faults.Add(new(line, BatchChecks.Line($"the row has {cells.Count} values; it must have {BatchFields.All.Length}")));
            }
            else if (BatchFields.Read(name => Value(name, cells), out string fault) is { } batch)
            {
                batches.Add(new(line, batch));
            }
            else
            {
                faults.Add(new(line, fault));
            }
        }

        return batches;
    }

    private static string Guard(BatchField field, string text) =>
        field.Kind == FieldKind.Text && text.Length > 0 && Guarded.Contains(text[0], StringComparison.Ordinal) ? "'" + text : text;

    private static string? Value(string name, List<string> cells)
    {
        for (int i = 0; i < cells.Count; i++)
        {
            if (BatchFields.All[i].Name == name)
            {
                string cell = BatchFields.All[i].Kind == FieldKind.Text && cells[i].StartsWith('\'') ? cells[i][1..] : cells[i];
                return cell.Length == 0 ? null : cell;
            }
        }

        return null;
    }
}
