namespace ShelfSafe.Reading.Amounts;

/// <summary>Looks at a word of a text where it stands, for one that is only compared.</summary>
internal static class WordLook
{
    /// <summary>The word at an offset, lower case; empty where none stands there.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where the word may begin.</param>
    /// <param name="end">Offset after it.</param>
    public static ReadOnlySpan<char> At(ReadOnlySpan<char> text, int at, out int end)
    {
        end = at;
        while (end < text.Length && (char.IsLetter(text[end]) || text[end] is '\'' or '\u2019'))
        {
            end++;
        }

        return Lower(text[at..end]);
    }

    // Most words are lower case as they stand, and then need no copy.
    private static ReadOnlySpan<char> Lower(ReadOnlySpan<char> word)
    {
        foreach (char letter in word)
        {
            if (!char.IsAsciiLetterLower(letter) && char.ToLowerInvariant(letter) != letter)
            {
                return word.ToString().ToLowerInvariant();
            }
        }

        return word;
    }
}
