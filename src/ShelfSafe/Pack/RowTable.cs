using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>A table whose rows are found by key; of the built-in pack each row is made when it is first asked for, and only once.</summary>
internal sealed class RowTable<T>
    where T : class
{
    private const int SmallestMemory = 7; // of rows that were found; it grows with them

    private readonly T?[] _rows;
    private readonly Func<int, T>? _make;
    private readonly ImageIndex[] _indexes = []; // for each key column
    private readonly Lazy<ImmutableArray<T>> _all;
    private readonly Dictionary<(string Column, string Value), List<int>> _read = [];
    private readonly string[] _keys;
    private readonly ConcurrentDictionary<string, ImmutableArray<T>>[] _found; // for each key column

    /// <summary>Reads or opens the table.</summary>
    /// <param name="text">The table.</param>
    /// <param name="keys">File, columns, and which of them rows are found by; see <see cref="TableKeys"/>.</param>
    /// <param name="read">Makes a row.</param>
    /// <param name="faults">Receives what is wrong with a table that is text.</param>
    public RowTable(PackText text, TableKeys keys, Func<CsvRow, T?> read, List<PackFault> faults)
    {
        _keys = keys.Keys;
        _found = Array.ConvertAll(_keys, static _ => new ConcurrentDictionary<string, ImmutableArray<T>>(concurrencyLevel: 1, SmallestMemory, StringComparer.Ordinal));
        _all = new(() => [.. Enumerable.Range(0, _rows!.Length).Select(row => this[row])]);
        if (text.Cells is { } table && table.HasHeader(keys.Header))
        {
            _indexes = Array.ConvertAll(keys.Keys, key => table.Index(key));
            _rows = new T?[table.Count];
            _make = row => read(new CsvRow(keys.File, keys.Header, table, row, faults))!;
        }
        else
        {
            _rows = [.. CsvTable.Read(keys.File, text, keys.Header, row => Keyed(row, keys, read), faults).Select((row, at) => File(row.Keys, row.Made, at))];
        }
    }

    /// <summary>Number of rows.</summary>
    public int Count => _rows.Length;

    /// <summary>All rows in the order of the table.</summary>
    public ImmutableArray<T> All => _all.Value;

    /// <summary>The row at a place of the table, always the same object.</summary>
    public T this[int row] => _rows[row] ?? Interlocked.CompareExchange(ref _rows[row], _make!(row), null) ?? _rows[row]!;

    /// <summary>The first row with a value in a key column, or <see langword="null"/>.</summary>
    public T? First(string column, string value) => With(column, value) is [T first, ..] ? first : null;

    /// <summary>The rows with a value in a key column, in the order of the table.</summary>
    public ImmutableArray<T> With(string column, string value)
    {
        ConcurrentDictionary<string, ImmutableArray<T>> found = _found[Array.IndexOf(_keys, column)];
        if (!found.TryGetValue(value, out ImmutableArray<T> rows))
        {
            rows = [.. Places(column, value).Select(row => this[row])];
            if (!rows.IsEmpty)
            {
                found[value] = rows; // only what the table has, so that memory stays flat
            }
        }

        return rows;
    }

    /// <summary>The rows with any of the values in a key column, in the order of the table.</summary>
    public IReadOnlyList<T> WithAny(string column, IEnumerable<string> values)
    {
        List<int> places = [];
        foreach (string value in values)
        {
            places.AddRange(Places(column, value));
        }

        places.Sort();
        return places.ConvertAll(row => this[row]);
    }

    private IReadOnlyList<int> Places(string column, string value) =>
        _make is not null ? _indexes[Array.IndexOf(_keys, column)].Find(value) : _read.TryGetValue((column, value), out List<int>? read) ? read : [];

    private static Row? Keyed(CsvRow row, TableKeys keys, Func<CsvRow, T?> read) =>
        read(row) is { } made ? new(made, [.. keys.Keys.Select(key => (key, row.Text(key)))]) : null;

    private T File((string, string)[] keys, T made, int at)
    {
        foreach ((string, string) key in keys)
        {
            (_read.TryGetValue(key, out List<int>? rows) ? rows : _read[key] = []).Add(at);
        }

        return made;
    }

    private sealed record Row(T Made, (string, string)[] Keys);
}
