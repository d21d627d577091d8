namespace ShelfSafe.Pack;

/// <summary>One list of <c>rules/lists.csv</c>, read when it is first asked for.</summary>
/// <param name="read">Reads its words.</param>
internal sealed class RuleList(Func<IEnumerable<string>> read)
{
    // Of two threads that ask at the same time both read the same words, and one set stays.
    private HashSet<string>? _words;

    /// <summary>All words in no order that anything may rest on.</summary>
    public IReadOnlyCollection<string> Words => Set;

    private HashSet<string> Set => _words ??= new(read(), StringComparer.Ordinal);

    /// <summary>Whether a word is in the list.</summary>
    public bool Contains(string word) => Set.Contains(word);
}
