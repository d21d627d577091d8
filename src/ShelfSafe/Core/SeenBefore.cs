namespace ShelfSafe.Core;

/// <summary>Tells whether a text was most likely noted before, in little room: two bits for its hash, so now and then a new one passes for a known one.</summary>
/// <remarks>Source: common practice (a filter after B. H. Bloom).</remarks>
internal sealed class SeenBefore<TKey>
    where TKey : notnull
{
    private const int Bits = 1 << 20;
    private const int MostNoted = Bits / 16;
    private int[]? _bits;
    private int _noted;

    /// <summary>Whether the key was most likely noted.</summary>
    public bool Has(TKey key)
    {
        int[]? bits = _bits;
        if (bits is null)
        {
            return false;
        }

        (int one, int other) = Places(key);
        return IsSet(bits, one) && IsSet(bits, other);
    }

    /// <summary>Notes keys; once many are noted, all earlier ones are forgotten.</summary>
    public void Note(ICollection<TKey> keys)
    {
        int[] bits = _bits is { } known && _noted < MostNoted ? known : new int[Bits >> 5];
        _noted = ReferenceEquals(bits, _bits) ? _noted + keys.Count : keys.Count;
        foreach (TKey key in keys)
        {
            (int one, int other) = Places(key);
            Set(bits, one);
            Set(bits, other);
        }

        _bits = bits;
    }

    private static bool IsSet(int[] bits, int place) => (bits[place >> 5] & (1 << (place & 31))) != 0;

    private static void Set(int[] bits, int place) => Interlocked.Or(ref bits[place >> 5], 1 << (place & 31));

    // A hash has 32 bits and a place takes 20, so the two share a few.
    private static (int One, int Other) Places(TKey key)
    {
        int hash = key.GetHashCode();
        return (hash & (Bits - 1), (hash >>> 12) & (Bits - 1));
    }
}
