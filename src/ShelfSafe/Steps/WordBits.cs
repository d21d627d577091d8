namespace ShelfSafe.Steps;

/// <summary>A set of vocabulary numbers as bits, from the first group of 64 that holds one to the last.</summary>
internal readonly struct WordBits
{
    private readonly int _from;
    private readonly ulong[]? _groups;

    /// <summary>Makes the set.</summary>
    /// <param name="words">Vocabulary numbers, in rising order.</param>
    public WordBits(ReadOnlySpan<int> words)
    {
        if (words.IsEmpty)
        {
            return;
        }

        _from = words[0] >> 6;
        _groups = new ulong[(words[^1] >> 6) - _from + 1];
        foreach (int word in words)
        {
            _groups[(word >> 6) - _from] |= 1UL << (word & 63);
            Mask |= 1UL << (word & 63);
        }
    }

    /// <summary>The last six bits of every number in the set, as <see cref="TokenMask"/> takes them.</summary>
    public ulong Mask { get; }

    /// <summary>Every number that may be in the set, and some that are not.</summary>
    public IEnumerable<int> Range => _groups is null ? [] : Enumerable.Range(_from * 64, _groups.Length * 64);

    /// <summary>Whether a vocabulary number is in the set; 0 is none.</summary>
    public bool Has(int word)
    {
        int group = (word >> 6) - _from;
        return word > 0 && group >= 0 && _groups is not null && group < _groups.Length && (_groups[group] >> (word & 63) & 1) != 0;
    }
}
