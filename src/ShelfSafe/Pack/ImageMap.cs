using System.Runtime.CompilerServices;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>A table of strings in an image, found by their hash, each with a number.</summary>
/// <remarks>
/// Layout: number of keys, number of places (a power of two, at least twice as many), the places (0, or one more than the key's
/// index; a taken place leads to the next), then for each key its string and its number.
/// </remarks>
internal readonly struct ImageMap(PackImage image, int at)
{
    private const int LongestOnStack = 80;

    /// <summary>Number of keys.</summary>
    public int Count => image.Int32(at);

    private int Places => image.Int32(at + 4);

    /// <summary>A key by its index, in the order in which they were written.</summary>
    public string Key(int index) => image.String(image.Int32(Entry(index)));

    /// <summary>The number that stands with a key.</summary>
    public int Value(int index) => image.Int32(Entry(index) + 4);

    /// <summary>Index of a key, or -1.</summary>
    [SkipLocalsInit]
    public int Find(ReadOnlySpan<char> key)
    {
        Span<byte> buffer = key.Length <= LongestOnStack ? stackalloc byte[3 * LongestOnStack] : new byte[3 * key.Length];
        ReadOnlySpan<byte> wanted = buffer[..Encoding.UTF8.GetBytes(key, buffer)];
        int mask = Places - 1;
        int entries = Entry(0);
        for (int place = (int)(Hash(wanted) & (uint)mask); ; place = (place + 1) & mask)
        {
            int index = image.Int32(at + 8 + (4 * place)) - 1;
            if (index < 0 || image.Utf8(image.Int32(entries + (8 * index))).SequenceEqual(wanted))
            {
                return index;
            }
        }
    }

    /// <summary>Writes a map; the keys must differ.</summary>
    public static void Write(PackImageWriter writer, ImageSection section, IReadOnlyList<(string Key, int Value)> pairs)
    {
        int places = 4;
        while (places < 2 * pairs.Count)
        {
            places *= 2;
        }

        int[] taken = new int[places];
        for (int i = 0; i < pairs.Count; i++)
        {
            int place = (int)(Hash(Encoding.UTF8.GetBytes(pairs[i].Key)) & (uint)(places - 1));
            while (taken[place] != 0)
            {
                place = (place + 1) & (places - 1);
            }

            taken[place] = i + 1;
        }

        section.Add(pairs.Count);
        section.Add(places);
        foreach (int index in taken)
        {
            section.Add(index);
        }

        foreach ((string key, int value) in pairs)
        {
            section.Add(writer.Id(key));
            section.Add(value);
        }
    }

    private int Entry(int index) => at + 8 + (4 * Places) + (8 * index);

    // FNV-1a: short, and the same on every machine.
    private static uint Hash(ReadOnlySpan<byte> bytes)
    {
        uint hash = 2166136261;
        foreach (byte one in bytes)
        {
            hash = unchecked((hash ^ one) * 16777619);
        }

        return hash;
    }
}
