using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>Every word that a phrase of the rule pack uses, numbered, so that a sentence is compared by numbers.</summary>
/// <remarks>Filled while phrases are compiled and only read afterwards.</remarks>
internal sealed class Vocabulary : WordNumbers
{
    private readonly Dictionary<string, int> _stems = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _exact = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _prefixes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _stemLookup;
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _exactLookup;
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _prefixLookup;
    private int _shortestPrefix = int.MaxValue;
    private int _longestPrefix;
    private int _count;

    /// <summary>Makes an empty vocabulary.</summary>
    public Vocabulary()
    {
        _stemLookup = _stems.GetAlternateLookup<ReadOnlySpan<char>>();
        _exactLookup = _exact.GetAlternateLookup<ReadOnlySpan<char>>();
        _prefixLookup = _prefixes.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Number of the stem of a word, made where it is new.</summary>
    public int AddStem(string word)
    {
        Span<char> buffer = stackalloc char[WordStem.LongestWord];
        int length = WordStem.Fold(word, buffer);
        return Add(_stems, WordStem.Stem(buffer[..length]).ToString());
    }

    /// <summary>Number of a word as it stands, made where it is new.</summary>
    public int AddExact(string word) => Add(_exact, word);

    /// <summary>Number of a beginning, made where it is new.</summary>
    public int AddPrefix(string prefix)
    {
        _shortestPrefix = Math.Min(_shortestPrefix, prefix.Length);
        _longestPrefix = Math.Max(_longestPrefix, prefix.Length);
        return Add(_prefixes, prefix);
    }

    /// <summary>Every known beginning that itself begins with the given one.</summary>
    public IEnumerable<int> PrefixesUnder(string prefix) =>
        _prefixes.Where(pair => pair.Key.StartsWith(prefix, StringComparison.Ordinal)).Select(pair => pair.Value);

    /// <summary>Greatest number of a word.</summary>
    public int Count => _count;

    /// <inheritdoc/>
    public override (int Stem, int Exact, int Prefix) Find(Span<char> folded)
    {
        _exactLookup.TryGetValue(folded, out int exact);
        int prefix = 0;
        for (int length = Math.Min(_longestPrefix, folded.Length); length >= _shortestPrefix && prefix == 0; length--)
        {
            _prefixLookup.TryGetValue(folded[..length], out prefix);
        }

        _stemLookup.TryGetValue(WordStem.Stem(folded), out int stem);
        return (stem, exact, prefix);
    }

    /// <summary>Writes the words for <see cref="ImageVocabulary"/>.</summary>
    public void Write(PackImageWriter writer, ImageSection section)
    {
        const int Header = 20;
        ImageSection body = new();
        section.Add(_shortestPrefix);
        section.Add(_longestPrefix);
        foreach (Dictionary<string, int> words in (ReadOnlySpan<Dictionary<string, int>>)[_stems, _exact, _prefixes])
        {
            section.Add(Header + body.Length);
            ImageMap.Write(writer, body, [.. words.Select(pair => (pair.Key, pair.Value))]);
        }

        section.Add(body.ToArray());
    }

    private int Add(Dictionary<string, int> words, string word)
    {
        if (!words.TryGetValue(word, out int number))
        {
            number = ++_count;
            words.Add(word, number);
        }

        return number;
    }
}
