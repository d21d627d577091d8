using ShelfSafe.Foods;

namespace ShelfSafe.Changes;

/// <summary>A word of a sentence where it stands.</summary>
/// <param name="Start">Offset of its first letter.</param>
/// <param name="End">Offset behind its last.</param>
/// <param name="Word">Folded and singular.</param>
/// <param name="Plain">As written, in lower case.</param>
internal readonly record struct WordToken(int Start, int End, string Word, string Plain)
{
    /// <summary>The words of a sentence in order.</summary>
    public static List<WordToken> Cut(string text) =>
        [.. PlacedWord.Of(text).Select(static word => new WordToken(word.Start, word.End, string.Concat(WordFolding.Words(word.Plain).Select(WordFolding.Singular)), word.Plain))];

    /// <summary>What stands between a word and the one before it.</summary>
    public static string Gap(string text, List<WordToken> tokens, int at) => text[tokens[at - 1].End..tokens[at].Start];

    /// <summary>Two ends of a cut sentence brought together: one blank between words, none before a stop, a capital first.</summary>
    public static string Join(string left, string right)
    {
        string head = left.TrimEnd();
        string tail = head.Length == 0 ? right.TrimStart(' ', ',', ';') : right.TrimStart();
        return tail.Length == 0 || tail[0] is '.' or ',' or ';' ? head + tail : head.Length == 0 ? char.ToUpperInvariant(tail[0]) + tail[1..] : $"{head} {tail}";
    }
}
