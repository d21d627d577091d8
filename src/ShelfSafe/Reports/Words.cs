using ShelfSafe.Pack;

namespace ShelfSafe.Reports;

/// <summary>The fixed words of the reports for people, from <c>rules/words.csv</c>, so that they can be read through and translated.</summary>
public sealed class Words
{
    private readonly WordTable _table;

    private Words(WordTable table) => _table = table;

    /// <summary>All keys.</summary>
    internal IEnumerable<string> Keys => _table.Keys;

    /// <summary>The words under a key; a key that the table lacks is a fault of the program, which a test guards.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string this[string key] => _table[key];

    /// <summary>Reads the words that came with the program.</summary>
    public static Words Read() => new(WordTable.BuiltIn);

    /// <summary>Reads the words from a table.</summary>
    /// <param name="text">The table.</param>
    /// <param name="faults">What is wrong with it.</param>
    internal static Words Parse(PackText text, out IReadOnlyList<PackFault> faults)
    {
        List<PackFault> found = [];
        faults = found;
        return new(new WordTable(text, found));
    }

    /// <summary>The words under a key, or <see langword="null"/> where the table has none.</summary>
    public string? Find(string key) => _table.Find(key);

    /// <summary>The words under a key with their blanks filled.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such key.</exception>
    public string With(string key, params ReadOnlySpan<object?> values) => _table.With(key, values);

    /// <summary>The words for an id from the data, or the id itself where the table has none.</summary>
    internal string Named(string group, string id) => Find($"{group}.{id}") ?? id;
}
