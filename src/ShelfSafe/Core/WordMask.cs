using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>A set of words as 64 bits, so that most words that are not in it are told apart without comparing letters.</summary>
/// <remarks>Several words may share a bit: two masks without a common bit have no common word, and that alone may be concluded.</remarks>
internal static class WordMask
{
    /// <summary>The bit of a word.</summary>
    public static ulong Of(string word) => word.Length == 0 ? 1
        : 1UL << (((word.Length * 11) + (word[0] * 7) + (word[^1] * 3) + word[word.Length / 2]) & 63);

    /// <summary>The bits of some words.</summary>
    public static ulong Of(ImmutableArray<string> words)
    {
        ulong mask = 0;
        foreach (string word in words.IsDefault ? [] : words)
        {
            mask |= Of(word);
        }

        return mask;
    }
}
