using System.Globalization;
using ShelfSafe.Pack;

namespace ShelfSafe.Reports;

/// <summary>The fixed words of the reports for people, from <c>rules/words.csv</c>, so that they can be read through and translated.</summary>
public sealed class Words
{
    private readonly RowTable<Row> _rows;

    private Words(RowTable<Row> rows) => _rows = rows;

    /// <summary>All keys.</summary>
    internal IEnumerable<string> Keys => _rows.All.Select(static row => row.Key);

    /// <summary>The words under a key; a key that the table lacks is a fault of the program, which a test guards.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string this[string key] => Find(key) ?? throw new KeyNotFoundException($"rules/words.csv has no words under \"{key}\"");

    /// <summary>Reads the words that came with the program.</summary>
    public static Words Read()
    {
        Words words = Parse(RulePack.Default.Text("words.csv"), out IReadOnlyList<PackFault> faults);
        return faults.Count == 0 ? words : throw new InvalidOperationException(faults[0].ToString());
    }

    /// <summary>Reads the words from a table.</summary>
    /// <param name="text">The table.</param>
    /// <param name="faults">What is wrong with it.</param>
    internal static Words Parse(PackText text, out IReadOnlyList<PackFault> faults)
    {
        List<PackFault> found = [];
        HashSet<string>? seen = text.Cells is null ? new(StringComparer.Ordinal) : null; // of the built-in table a test has made sure
        RowTable<Row> rows = new(
            text,
            TableKeys.Words,
            row =>
            {
                string key = row.Text("key");
                if (seen?.Add(key) == false)
                {
                    row.Fault("key", $"\"{key}\" stands twice; each key once");
                }

                return new Row(key, row.Text("text"));
            },
            found);
        faults = found;
        return new(rows);
    }

    /// <summary>The words under a key, or <see langword="null"/> where the table has none.</summary>
    public string? Find(string key) => _rows.First("key", key)?.Text;

    /// <summary>The words under a key with their blanks filled.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string With(string key, params ReadOnlySpan<object?> values) =>
        string.Format(CultureInfo.InvariantCulture, this[key], values);

    /// <summary>The words for an id from the data, or the id itself where the table has none.</summary>
    internal string Named(string group, string id) => Find($"{group}.{id}") ?? id;

    private sealed record Row(string Key, string Text);
}
