namespace ShelfSafe.Foods;

/// <summary>A word of a text with its place, not folded: "don't" stays one word, and "jars" several.</summary>
/// <param name="Start">Offset in the text.</param>
/// <param name="End">Offset after it.</param>
/// <param name="Plain">The word in lower case, with a straight apostrophe, as <c>rules/line-words.csv</c> spells words.</param>
internal readonly record struct PlacedWord(int Start, int End, string Plain)
{
    /// <summary>The words of a text: runs of letters, digits and apostrophes.</summary>
    public static List<PlacedWord> Of(string text)
    {
        List<PlacedWord> all = [];
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool inside = i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '\'' or '\u2019');
            if (inside && start < 0)
            {
                start = i;
            }
            else if (!inside && start >= 0)
            {
                all.Add(new(start, i, text[start..i].ToLowerInvariant().Replace('\u2019', '\'')));
                start = -1;
            }
        }

        return all;
    }
}
