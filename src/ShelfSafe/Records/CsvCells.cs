using System.Text;

namespace ShelfSafe.Records;

/// <summary>Cells of comma-separated text whose values may hold line breaks, since a recipe has many lines (RFC 4180).</summary>
internal sealed class CsvCells
{
    private readonly string _text;
    private readonly List<(int Line, List<string> Cells)> _rows = [];
    private readonly StringBuilder _cell = new();
    private List<string> _cells = [];
    private int _at;
    private int _line = 1;
    private int _start = 1;

    private CsvCells(string text) => _text = text;

    /// <summary>Reads all rows with the line on which each begins; <paramref name="wrong"/> names the first place that is no CSV.</summary>
    public static List<(int Line, List<string> Cells)> Read(string text, out (int Line, string Message)? wrong)
    {
        CsvCells reader = new(text);
        wrong = null;
        while (reader._at < text.Length)
        {
            if (reader.Next() is { } fault)
            {
                wrong = (reader._start, fault);
                return reader._rows;
            }
        }

        reader.EndRow();
        return reader._rows;
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

    // Takes a quoted run or one sign; answers what is wrong, or null.
    private string? Next()
    {
        if (_text[_at] == '"' && _cell.Length == 0)
        {
            return !Quoted() ? "a quote mark is left open"
                : _at < _text.Length && _text[_at] is not (',' or '\r' or '\n') ? "a value goes on after its closing quote mark"
                : null;
        }

        char sign = _text[_at++];
        if (sign == ',')
        {
            EndCell();
        }
        else if (sign is '\r' or '\n')
        {
            _at += sign == '\r' && _at < _text.Length && _text[_at] == '\n' ? 1 : 0;
            EndRow();
            _line++;
            _start = _line;
        }
        else
        {
            _cell.Append(sign);
        }

        return null;
    }

    // Goes behind the closing quote mark; false where there is none.
    private bool Quoted()
    {
        for (_at++; _at < _text.Length; _at++)
        {
            if (_text[_at] != '"')
            {
                _line += _text[_at] == '\n' || (_text[_at] == '\r' && (_at + 1 == _text.Length || _text[_at + 1] != '\n')) ? 1 : 0;
                _cell.Append(_text[_at]);
            }
            else if (_at + 1 < _text.Length && _text[_at + 1] == '"')
            {
                _cell.Append('"');
                _at++;
            }
            else
            {
                _at++;
                return true;
            }
        }

        return false;
    }

    private void EndCell()
    {
        _cells.Add(_cell.ToString());
        _cell.Clear();
    }

    private void EndRow()
    {
        EndCell();
        if (_cells.Count > 1 || _cells[0].Length > 0)
        {
            _rows.Add((_start, _cells));
        }

        _cells = [];
    }
}
