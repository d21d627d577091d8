using System.Globalization;
using ShelfSafe.Pack;

namespace ShelfSafe.Reports;

/// <summary>The fixed words of the reports for people, from <c>rules/words.csv</c>, so that they can be read through and translated.</summary>
public sealed class Words
{
    private const string File = "rules/words.csv";

    private static readonly string[] _header = ["key", "text"];

    private readonly Dictionary<string, string> _texts;

    private Words(Dictionary<string, string> texts) => _texts = texts;

    /// <summary>All keys.</summary>
    internal IEnumerable<string> Keys => _texts.Keys;

    /// <summary>The words under a key; a key that the table lacks is a fault of the program, which a test guards.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string this[string key] => _texts[key];

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
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        _ = CsvTable.Read(
            File,
            text,
            _header,
            row =>
            {
                string key = row.Text("key");
                if (!texts.TryAdd(key, row.Text("text")))
                {
                    row.Fault("key", $"\"{key}\" stands twice; each key once");
                }

                return key;
            },
            found);
        faults = found;
        return new(texts);
    }

    /// <summary>The words under a key, or <see langword="null"/> where the table has none.</summary>
    public string? Find(string key) => _texts.GetValueOrDefault(key);

    /// <summary>The words under a key with their blanks filled.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string With(string key, params ReadOnlySpan<object?> values) =>
        string.Format(CultureInfo.InvariantCulture, this[key], values);

    /// <summary>The words for an id from the data, or the id itself where the table has none.</summary>
    internal string Named(string group, string id) => _texts.GetValueOrDefault($"{group}.{id}", id);
}
