using System.Text;

namespace ShelfSafe.Records;

/// <summary>Cells of comma-separated text whose values may hold line breaks, since a recipe has many lines (RFC 4180).</summary>
internal static class CsvCells
{
    /// <summary>Reads all rows with the line on which each begins; <paramref name="wrong"/> names the first place that is no CSV.</summary>
    public static List<(int Line, List<string> Cells)> Read(string text, out (int Line, string Message)? wrong)
    {
        List<(int, List<string>)> rows = [];
        List<string> cells = [];
        StringBuilder cell = new();
        wrong = null;
        int line = 1;
        int start = 1;
        int at = 0;
        while (at < text.Length)
        {
            if (text[at] == '"' && cell.Length == 0)
            {
                at = Quoted(text, at, cell, ref line);
                if (at < 0 || (at < text.Length && text[at] is not (',' or '\r' or '\n')))
                {
                    wrong = (start, at < 0 ? "a quote mark is left open" : "a value goes on after its closing quote mark");
                    return rows;
                }

                if (at < text.Length && text[at] == ',')
                {
                    Close();
                    at++;
                    continue;
                }
            }

            if (at == text.Length)
            {
                break;
            }

            char sign = text[at++];
            if (sign == ',')
            {
                Close();
            }
            else if (sign is '\r' or '\n')
            {
                at += sign == '\r' && at < text.Length && text[at] == '\n' ? 1 : 0;
                EndRow();
                line++;
                start = line;
            }
            else
            {
                cell.Append(sign);
            }
        }

        EndRow();
        return rows;

        void Close()
        {
            cells.Add(cell.ToString());
            cell.Clear();
        }

        void EndRow()
        {
            Close();
            if (cells.Count > 1 || cells[0].Length > 0)
            {
                rows.Add((start, cells));
            }

            cells = [];
        }
    }

    /// <summary>Writes one row.</summary>
    public static void Write(StringBuilder text, IEnumerable<string> cells)
    {
        bool first = true;
        foreach (string cell in cells)
        {
            text.Append(first ? string.Empty : ",");
            text.Append(cell.AsSpan().IndexOfAny(",\"\r\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");
            first = false;
        }

        text.Append('\n');
    }

    // Returns the place after the closing quote mark, or -1 where there is none.
    private static int Quoted(string text, int open, StringBuilder cell, ref int line)
    {
        for (int at = open + 1; at < text.Length; at++)
        {
            if (text[at] != '"')
            {
                line += text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n')) ? 1 : 0;
                cell.Append(text[at]);
            }
            else if (at + 1 < text.Length && text[at + 1] == '"')
            {
                cell.Append('"');
                at++;
            }
            else
            {
                return at + 1;
            }
        }

        return -1;
    }
}
