using System.Collections.Concurrent;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>The words that phrases use, each with a number, so that a sentence is compared by numbers.</summary>
internal abstract class WordNumbers
{
    /// <summary>The numbers of a folded word: stem, whole word, longest beginning; 0 where no phrase uses it. The buffer is used up.</summary>
    public abstract (int Stem, int Exact, int Prefix) Find(Span<char> folded);
}

/// <summary>Words that were numbered before and stand in an image.</summary>
/// <remarks>Layout: length of the shortest and of the longest beginning, where the maps begin (counted from here), the maps of stems, words and beginnings.</remarks>
internal sealed class ImageVocabulary : WordNumbers
{
    private readonly ImageMap _stems;
    private readonly ImageMap _exact;
    private readonly ImageMap _prefixes;
    private readonly int _shortestPrefix;
    private readonly int _longestPrefix;

    // Cooks use few words again and again. A full memory is left as it is: the words that came first are the common ones.
    private const int MostRemembered = 8_192;
    private readonly ConcurrentDictionary<string, (int, int, int)> _known = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, (int, int, int)>.AlternateLookup<ReadOnlySpan<char>> _knownLookup;
    private int _remembered;

    /// <summary>Opens the words.</summary>
    public ImageVocabulary(PackImage image, int at)
    {
        (_shortestPrefix, _longestPrefix) = (image.Int32(at), image.Int32(at + 4));
        _stems = new(image, at + image.Int32(at + 8));
        _exact = new(image, at + image.Int32(at + 12));
        _prefixes = new(image, at + image.Int32(at + 16));
        _knownLookup = _known.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <inheritdoc/>
    public override (int Stem, int Exact, int Prefix) Find(Span<char> folded)
    {
        if (_knownLookup.TryGetValue(folded, out (int, int, int) known))
        {
            return known;
        }

        string word = folded.ToString();
        known = LookUp(folded);
        if (_remembered < MostRemembered)
        {
            Interlocked.Increment(ref _remembered);
            _known[word] = known;
        }

        return known;
    }

    private (int Stem, int Exact, int Prefix) LookUp(Span<char> folded)
    {
        int exact = Number(_exact, folded);
        int prefix = 0;
        for (int length = Math.Min(_longestPrefix, folded.Length); length >= _shortestPrefix && prefix == 0; length--)
        {
            prefix = Number(_prefixes, folded[..length]);
        }

        return (Number(_stems, WordStem.Stem(folded)), exact, prefix);
    }

    private static int Number(ImageMap words, ReadOnlySpan<char> word) => words.Find(word) is int found and >= 0 ? words.Value(found) : 0;
}
