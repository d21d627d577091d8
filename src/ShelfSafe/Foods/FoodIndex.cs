using System.Numerics;
using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Every name of every food, folded and ready for look-up; of the built-in pack it is made by the build.</summary>
/// <remarks>
/// Layout of the section: where its four parts begin, counted from the section. First the keys, each leading to its rows (their number,
/// then food and region of each). Then the first words with the most words that a key with them has; every word of a key with the regions
/// whose keys have it (none: a key of all regions has it); and the keys by length with a set of their letters, for spelling.
/// </remarks>
internal sealed class FoodIndex
{
    private readonly PackImage _image;
    private readonly int _at;
    private readonly ImageMap _keys;
    private readonly ImageMap _firstWords;
    private readonly ImageMap _words;
    private readonly int _lengths;
    private readonly Func<int, FoodRow> _food;
    private readonly string _region;
    private readonly FoodMatch?[][] _matches;

    /// <summary>Opens the index of an image.</summary>
    /// <param name="image">The image that holds the section.</param>
    /// <param name="food">Gives the food at a place of the food table.</param>
    /// <param name="region">Country code that settles words with regional meanings, or empty.</param>
    public FoodIndex(PackImage image, Func<int, FoodRow> food, string region)
    {
        (_image, _food, _region) = (image, food, region);
        _at = image.Section(FoodIndexWriter.Section);
        _keys = new(image, _at + image.Int32(_at));
        _firstWords = new(image, _at + image.Int32(_at + 4));
        _words = new(image, _at + image.Int32(_at + 8));
        _lengths = _at + image.Int32(_at + 12);
        _matches = new FoodMatch?[(_keys.Count >> 8) + 1][];
    }

    /// <summary>Every key that has a food in the region.</summary>
    public IEnumerable<string> Keys => Enumerable.Range(0, _keys.Count).Where(key => Match(key) is not null).Select(key => _keys.Key(key));

    /// <summary>Makes the index of tables in memory.</summary>
    public static FoodIndex Of(IReadOnlyList<FoodRow> foods, IReadOnlyList<AliasRow> aliases, string region)
    {
        return new(PackImage.Of(writer => FoodIndexWriter.Write(foods, aliases, writer)), row => foods[row], region);
    }

    /// <summary>What a key means, or <see langword="null"/>.</summary>
    public FoodMatch? Find(ReadOnlySpan<char> key) => _keys.Find(key) is int found and >= 0 ? Match(found) : null;

    /// <summary>Most words of a key that begins with a word; 0 where none does.</summary>
    public int LongestFrom(ReadOnlySpan<char> firstWord) => _firstWords.Find(firstWord) is int found and >= 0 ? _firstWords.Value(found) : 0;

    /// <summary>Whether a word stands in any key of the region.</summary>
    public bool Knows(string word)
    {
        if (_words.Find(word) is not (int found and >= 0))
        {
            return false;
        }

        int at = _at + _words.Value(found);
        int regions = _image.Int32(at);
        bool known = regions == 0 || _region.Length == 0;
        for (int i = 1; i <= regions && !known; i++)
        {
            known = _image.String(_image.Int32(at + (4 * i))) == _region;
        }

        return known;
    }

    /// <summary>Keys whose length and letters allow for so many edits: each edit changes at most two letters of the set.</summary>
    public IEnumerable<string> Alike(string key, int edits)
    {
        ulong letters = FoodIndexWriter.Letters(key);
        for (int length = Math.Max(FoodIndexWriter.Shortest, key.Length - edits); length <= Math.Min(FoodIndexWriter.Longest, key.Length + edits); length++)
        {
            int end = _image.Int32(_lengths + (4 * (length - FoodIndexWriter.Shortest + 1)));
            for (int i = _image.Int32(_lengths + (4 * (length - FoodIndexWriter.Shortest))); i < end; i++)
            {
                int entry = _lengths + (4 * (FoodIndexWriter.Longest - FoodIndexWriter.Shortest + 2)) + (12 * i);
                if (BitOperations.PopCount(_image.UInt64(entry) ^ letters) <= 2 * edits && Match(_image.Int32(entry + 8)) is not null)
                {
                    yield return _keys.Key(_image.Int32(entry + 8));
                }
            }
        }
    }

    // Two threads may make the same match at the same time; both are equal, and one of them stays.
    private FoodMatch? Match(int key)
    {
        FoodMatch?[] page = _matches[key >> 8] ??= new FoodMatch?[256];
        return page[key & 255] ??= Make(_at + _keys.Value(key));
    }

    private FoodMatch? Make(int at)
    {
        FoodEntry? entry = null;
        int count = _image.Int32(at);
        for (int i = 0; i < count; i++)
        {
            string own = _image.String(_image.Int32(at + 8 + (8 * i)));
            if (own.Length > 0 && _region.Length > 0 && own != _region)
            {
                continue;
            }

            FoodRow food = _food(_image.Int32(at + 4 + (8 * i)));
            if (entry is null)
            {
                entry = new(food, own.Length > 0, own: false);
            }
            else
            {
                entry.Add(food, own.Length > 0, settled: own.Length > 0 && own == _region);
            }
        }

        return entry?.Match;
    }
}
