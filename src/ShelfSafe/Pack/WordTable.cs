using System.Globalization;

namespace ShelfSafe.Pack;

/// <summary>The fixed words of reports, verdicts and lessons (<c>rules/words.csv</c>), so that they can be read through and translated.</summary>
/// <remarks>They belong to the program, not to a pack: code fills their blanks. A key that the table lacks is a fault of the program, which a test guards.</remarks>
internal sealed class WordTable
{
    private static readonly Lazy<WordTable> Opened = new(static () => Open(RulePack.Default));
    private readonly RowTable<Row> _rows;

    /// <summary>Opens the table.</summary>
    /// <param name="text">The table.</param>
    /// <param name="faults">Receives what is wrong with a table that is text.</param>
    public WordTable(PackText text, List<PackFault> faults)
    {
        HashSet<string>? seen = text.Cells is null ? new(StringComparer.Ordinal) : null; // of the built-in table a test has made sure
        _rows = new(
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
            faults);
    }

    /// <summary>The words that came with the program.</summary>
    public static WordTable BuiltIn => Opened.Value;

    /// <summary>All keys in the order of the table.</summary>
    public IEnumerable<string> Keys => _rows.All.Select(static row => row.Key);

    /// <summary>The words under a key.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string this[string key] => Find(key) ?? throw new KeyNotFoundException($"rules/words.csv has no words under \"{key}\"");

    /// <summary>The words under a key, or <see langword="null"/> where the table has none.</summary>
    public string? Find(string key) => _rows.First("key", key)?.Text;

    /// <summary>The words under a key with their blanks filled, the same in every culture.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string With(string key, params ReadOnlySpan<object?> values) => string.Format(CultureInfo.InvariantCulture, this[key], values);

    private static WordTable Open(RulePack pack)
    {
        List<PackFault> faults = [];
        WordTable words = new(pack.Text(TableKeys.Words.File), faults);
        return faults.Count == 0 ? words : throw new InvalidOperationException(faults[0].ToString());
    }

    private sealed record Row(string Key, string Text);
}
