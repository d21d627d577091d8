using System.Globalization;

namespace ShelfSafe.Pack;

/// <summary>One row of a table while it is read; each getter reports its own fault.</summary>
internal readonly struct CsvRow
{
    private readonly string _file;
    private readonly string[] _header;
    private readonly string[]? _cells;
    private readonly ImageTable _table;
    private readonly int _row;
    private readonly List<PackFault> _faults;

    /// <summary>A row that was cut out of text.</summary>
    public CsvRow(string file, int line, string[] header, string[] cells, List<PackFault> faults) =>
        (_file, Line, _header, _cells, _faults) = (file, line, header, cells, faults);

    /// <summary>A row of the built-in pack.</summary>
    public CsvRow(string file, string[] header, ImageTable table, int row, List<PackFault> faults) =>
        (_file, Line, _header, _table, _row, _faults) = (file, table.Line(row), header, table, row, faults);

    /// <summary>Line in the table, from 1.</summary>
    public int Line { get; }

    /// <summary>The value of a column, trimmed.</summary>
    public string Text(string column) => Cell(Index(column)).Trim();

    /// <summary>The value of a column split at semicolons, empty pieces dropped.</summary>
    public string[] List(string column) =>
        Text(column) is { Length: > 0 } text ? text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) : [];

    /// <summary>A number, or <see langword="null"/> where the cell is empty or wrong (a fault is then reported).</summary>
    public double? Number(string column)
    {
        string text = Text(column);
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
        {
            return value;
        }

        Fault(column, $"\"{text}\" is not a number; write digits with a point");
        return null;
    }

    /// <summary>A value from a closed list; the first of the list where it is wrong (a fault is then reported).</summary>
    public T Choice<T>(string column, params ReadOnlySpan<(string Word, T Value)> allowed)
    {
        string text = Text(column);
        foreach ((string word, T value) in allowed)
        {
            if (string.Equals(word, text, StringComparison.Ordinal))
            {
                return value;
            }
        }

        List<string> words = [];
        foreach ((string word, T _) in allowed)
        {
            words.Add(word.Length == 0 ? "(empty)" : word);
        }

        Fault(column, $"\"{text}\" is not known; allowed: {string.Join(", ", words)}");
        return allowed[0].Value;
    }

    /// <summary>Reports a fault at a column.</summary>
    public void Fault(string column, string message)
    {
        int at = 1;
        for (int i = 0; i < Index(column); i++)
        {
            at += Cell(i).Length + 1;
        }

        _faults.Add(new(_file, Line, at, message));
    }

    private string Cell(int column) => _cells is null ? _table.Cell(_row, column) : _cells[column];

    private int Index(string column) => Array.IndexOf(_header, column);
}
