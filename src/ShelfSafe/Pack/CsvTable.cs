using System.Globalization;
using nietras.SeparatedValues;

namespace ShelfSafe.Pack;

/// <summary>Reads one table of the rule pack with Sep and turns every fault into a <see cref="PackFault"/>.</summary>
internal static class CsvTable
{
    /// <summary>Reads all rows; a row that its reader refuses becomes a fault and is left out.</summary>
    /// <param name="file">Path for messages.</param>
    /// <param name="table">The table.</param>
    /// <param name="header">The exact columns, in order.</param>
    /// <param name="read">Makes a row; returns <see langword="null"/> after reporting a fault.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static List<T> Read<T>(string file, PackText table, string[] header, Func<CsvRow, T?> read, List<PackFault> faults)
        where T : class
    {
        if (table.Cells is { } cut)
        {
            return Read(file, cut, header, read, faults);
        }

        List<T> rows = [];
        string text = table.ToString();
        string body = text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text;
        int lineEnd = body.IndexOfAny(['\r', '\n']);
        string first = lineEnd < 0 ? body : body[..lineEnd];
        if (!string.Equals(first, string.Join(',', header), StringComparison.Ordinal))
        {
            faults.Add(new(file, 1, 1, $"the first line must be: {string.Join(',', header)}"));
            return rows;
        }

        ReadRows(file, body, header, read, rows, faults);
        return rows;
    }

    private static SepReader Open(string body) => Sep.New(',').Reader(static options => options with { Unescape = true }).FromText(body);

    private static void ReadRows<T>(string file, string body, string[] header, Func<CsvRow, T?> read, List<T> rows, List<PackFault> faults)
        where T : class
    {
        string[] cells = new string[header.Length];
        try
        {
            using SepReader reader = Open(body);
            foreach (SepReader.Row row in reader)
            {
                if (row.LineNumberToExcl - row.LineNumberFrom > 1)
                {
                    faults.Add(new(file, row.LineNumberFrom, 1, "a value runs over the end of its line; a quote mark is left open"));
                    return;
                }

                for (int i = 0; i < cells.Length; i++)
                {
                    cells[i] = row[i].ToString();
                }

                if (read(new CsvRow(file, row.LineNumberFrom, header, cells, faults)) is { } made)
                {
                    rows.Add(made);
                }
            }
        }
        catch (InvalidDataException fault)
        {
            faults.Add(new(file, LineIn(fault.Message), 1, "the row has too few or too many values"));
        }
    }

    // The build has cut this table and found no fault in its form.
    private static List<T> Read<T>(string file, ImageTable table, string[] header, Func<CsvRow, T?> read, List<PackFault> faults)
        where T : class
    {
        if (!table.HasHeader(header))
        {
            faults.Add(new(file, 1, 1, $"the first line must be: {string.Join(',', header)}"));
            return [];
        }

        List<T> rows = new(table.Count);
        for (int row = 0; row < table.Count; row++)
        {
            if (read(new CsvRow(file, header, table, row, faults)) is { } made)
            {
                rows.Add(made);
            }
        }

        return rows;
    }

    private static int LineIn(string message)
    {
        // Sep names the line in brackets, such as [3,4); the first number is the line.
        int open = message.IndexOf('[', StringComparison.Ordinal);
        int end = open < 0 ? -1 : message.IndexOfAny([',', ')', ']', '.'], open);
        return end > open && int.TryParse(message.AsSpan(open + 1, end - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int line)
            ? line
            : 1;
    }
}
