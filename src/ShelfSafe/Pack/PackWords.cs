namespace ShelfSafe.Pack;

/// <summary>Words of an image, each with a number: looked up where they lie, and once they are asked for often copied into memory, where a look-up is quicker.</summary>
/// <remarks>So a run over one recipe copies nothing, and a run over many pays for the copy once.</remarks>
internal sealed class PackWords(PackImage image, int at)
{
    private const int Often = 2_000;
    private readonly ImageMap _map = new(image, at);
    private Dictionary<string, int>? _copy;
    private int _asked;

    /// <summary>All words in the order in which they were written.</summary>
    public IEnumerable<string> All
    {
        get
        {
            for (int i = 0; i < _map.Count; i++)
            {
                yield return _map.Key(i);
            }
        }
    }

    /// <summary>How many there are.</summary>
    public int Count => _map.Count;

    /// <summary>Whether a word is among them.</summary>
    public bool Has(ReadOnlySpan<char> word) => Index(word) >= 0;

    /// <summary>The number that stands with a word.</summary>
    public bool TryGet(ReadOnlySpan<char> word, out int value)
    {
        int index = Index(word);
        value = index < 0 ? 0 : _map.Value(index);
        return index >= 0;
    }

    private int Index(ReadOnlySpan<char> word) =>
        _copy is not { } copy ? Look(word)
        : copy.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word, out int index) ? index : -1;

    // Two threads may copy at the same time; both copies are equal, and one of them stays.
    private int Look(ReadOnlySpan<char> word)
    {
        if (++_asked > Often)
        {
            Dictionary<string, int> copy = new(_map.Count, StringComparer.Ordinal);
            for (int i = 0; i < _map.Count; i++)
            {
                copy.Add(_map.Key(i), i);
            }

            _copy = copy;
        }

        return _map.Find(word);
    }
}
