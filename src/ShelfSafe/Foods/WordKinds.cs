using System.Collections.Frozen;
using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Every little word with the kinds it is of as bits, so that one look-up answers for all kinds.</summary>
internal sealed class WordKinds
{
    private readonly FrozenDictionary<string, KindBits>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly FrozenDictionary<string, KindBits> _kinds;

    /// <summary>Gathers the words of all kinds.</summary>
    public WordKinds(IReadOnlyDictionary<string, PackWords> kinds)
    {
        if (kinds.Count > KindBits.Most)
        {
            throw new InvalidDataException($"line-words.csv: more than {KindBits.Most} kinds of words");
        }

        Dictionary<string, KindBits> bits = new(StringComparer.Ordinal);
        Dictionary<string, KindBits> all = new(StringComparer.Ordinal);
        foreach ((string kind, PackWords words) in kinds)
        {
            KindBits bit = KindBits.At(bits.Count);
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
    public bool Is(string kind, ReadOnlySpan<char> word) => _lookup.TryGetValue(word, out KindBits kinds) && Has(kinds, kind);

    /// <summary>Whether a set of kinds has one.</summary>
    public bool Has(KindBits kinds, string kind) => _kinds.TryGetValue(kind, out KindBits bit) && kinds.Meets(bit);

    /// <summary>All kinds that some of the words are of.</summary>
    public KindBits Of(ReadOnlySpan<string> words)
    {
        KindBits all = default;
        foreach (string word in words)
        {
            all |= _lookup.TryGetValue(word, out KindBits kinds) ? kinds : default;
        }

        return all;
    }
}
