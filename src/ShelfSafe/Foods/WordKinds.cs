using System.Collections.Frozen;
using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Every little word with the kinds it is of as bits, so that one look-up answers for all kinds.</summary>
internal sealed class WordKinds
{
    private const int Most = 128; // bits of a set
    private readonly FrozenDictionary<string, UInt128>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly FrozenDictionary<string, UInt128> _kinds;

    /// <summary>Gathers the words of all kinds.</summary>
    public WordKinds(IReadOnlyDictionary<string, PackWords> kinds)
    {
        if (kinds.Count > Most)
        {
            throw new InvalidDataException($"line-words.csv: more than {Most} kinds of words");
        }

        Dictionary<string, UInt128> bits = new(StringComparer.Ordinal);
        Dictionary<string, UInt128> all = new(StringComparer.Ordinal);
        foreach ((string kind, PackWords words) in kinds)
        {
            UInt128 bit = UInt128.One << bits.Count;
            bits.Add(kind, bit);
            foreach (string word in words.All)
            {
                all[word] = all.GetValueOrDefault(word) | bit;
            }
        }

        _kinds = bits.ToFrozenDictionary(StringComparer.Ordinal);
        _lookup = all.ToFrozenDictionary(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether a word is of a kind.</summary>
    public bool Is(string kind, ReadOnlySpan<char> word) => _lookup.TryGetValue(word, out UInt128 kinds) && Has(kinds, kind);

    /// <summary>Whether a set of kinds has one.</summary>
    public bool Has(UInt128 kinds, string kind) => _kinds.TryGetValue(kind, out UInt128 bit) && (kinds & bit) != 0;

    /// <summary>All kinds that some of the words are of.</summary>
    public UInt128 Of(ReadOnlySpan<string> words)
    {
        UInt128 all = 0;
        foreach (string word in words)
        {
            all |= _lookup.TryGetValue(word, out UInt128 kinds) ? kinds : 0;
        }

        return all;
    }
}
