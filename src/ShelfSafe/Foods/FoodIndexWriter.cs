using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Writes the section that <see cref="FoodIndex"/> reads.</summary>
internal static class FoodIndexWriter
{
    /// <summary>Name of the section.</summary>
    public const string Section = "food-index";

    /// <summary>Shorter keys are no spelling of another word.</summary>
    public const int Shortest = 4;

    /// <summary>Longer keys are never corrected.</summary>
    public const int Longest = 42;

    private const int Parts = 4;

    /// <summary>Adds the section to an image.</summary>
    /// <param name="foods">The food table; a food is known by its place in it.</param>
    /// <param name="aliases">Words for its foods.</param>
    /// <param name="writer">Takes the section.</param>
    public static void Write(IReadOnlyList<FoodRow> foods, IReadOnlyList<AliasRow> aliases, PackImageWriter writer)
    {
        List<(string Key, List<(int Food, string Region)> Rows)> keys = Keys(foods, aliases);
        ImageParts parts = new(Parts);
        List<(string, int)> places = [];
        foreach ((string key, List<(int Food, string Region)> rows) in keys)
        {
            places.Add((key, parts.Here));
            parts.Body.Add(rows.Count);
            foreach ((int food, string region) in rows)
            {
                parts.Body.Add(food);
                parts.Body.Add(writer.Id(region));
            }
        }

        List<(string, int)> words = Words(keys, parts, writer);
        parts.Map(writer, places);
        parts.Map(writer, FirstWords(keys));
        parts.Map(writer, words);
        parts.Begin();
        WriteLengths(keys, parts.Body);
        writer.Add(Section, parts.ToSection());
    }

    /// <summary>The letters of a key as a set.</summary>
    public static ulong Letters(string key)
    {
        ulong letters = 0;
        foreach (char letter in key)
        {
            letters |= 1UL << (letter % 64);
        }

        return letters;
    }

    private static List<(string Key, List<(int Food, string Region)> Rows)> Keys(IReadOnlyList<FoodRow> foods, IReadOnlyList<AliasRow> aliases)
    {
        List<(string Key, List<(int, string)> Rows)> keys = [];
        Dictionary<string, List<(int, string)>> known = new(StringComparer.Ordinal);
        Dictionary<string, int> byId = new(StringComparer.Ordinal);
        for (int i = 0; i < foods.Count; i++)
        {
            byId[foods[i].Id] = i;
            Add(foods[i].Name, i, string.Empty);
        }

        foreach (AliasRow alias in aliases)
        {
            if (byId.TryGetValue(alias.Food, out int food))
            {
                Add(alias.Alias, food, alias.Region);
            }
        }

        return keys;

        void Add(string name, int food, string region)
        {
            string key = WordFolding.Key(name);
            if (key.Length > 0)
            {
                if (!known.TryGetValue(key, out List<(int, string)>? rows))
                {
                    known.Add(key, rows = []);
                    keys.Add((key, rows));
                }

                rows.Add((food, region));
            }
        }
    }

    private static List<(string, int)> FirstWords(List<(string Key, List<(int Food, string Region)> Rows)> keys)
    {
        Dictionary<string, int> most = new(StringComparer.Ordinal);
        foreach ((string key, _) in keys)
        {
            string[] words = key.Split(' ');
            most[words[0]] = Math.Max(most.GetValueOrDefault(words[0]), words.Length);
        }

        return [.. most.Select(pair => (pair.Key, pair.Value))];
    }

    private static List<(string, int)> Words(List<(string Key, List<(int Food, string Region)> Rows)> keys, ImageParts parts, PackImageWriter writer)
    {
        Dictionary<string, SortedSet<string>> regions = new(StringComparer.Ordinal);
        foreach ((string key, List<(int Food, string Region)> rows) in keys)
        {
            foreach (string word in key.Split(' '))
            {
                (regions.TryGetValue(word, out SortedSet<string>? own) ? own : regions[word] = new(StringComparer.Ordinal)).UnionWith(rows.Select(row => row.Region));
            }
        }

        List<(string, int)> words = [];
        foreach ((string word, SortedSet<string> own) in regions)
        {
            words.Add((word, parts.Here));
            parts.Body.Add(own.Contains(string.Empty) ? [] : [.. own.Select(writer.Id)]);
        }

        return words;
    }

    private static void WriteLengths(List<(string Key, List<(int Food, string Region)> Rows)> keys, ImageSection body)
    {
        ILookup<int, int> byLength = Enumerable.Range(0, keys.Count).ToLookup(index => keys[index].Key.Length);
        int begin = 0;
        for (int length = Shortest; length <= Longest + 1; length++)
        {
            body.Add(begin);
            begin += length <= Longest ? byLength[length].Count() : 0;
        }

        for (int length = Shortest; length <= Longest; length++)
        {
            foreach (int index in byLength[length])
            {
                body.Add(Letters(keys[index].Key));
                body.Add(index);
            }
        }
    }
}
