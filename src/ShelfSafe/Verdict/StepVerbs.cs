using ShelfSafe.Foods;

namespace ShelfSafe.Verdict;

/// <summary>Tells where a word for a food stands for no food.</summary>
internal sealed class StepVerbs(LineWordTable words)
{
    /// <summary>Whether the word is what is done, a tool, or a way to cut: "butter the tin", "fish out the leaf", "an old yoghurt tub", "across the grain".</summary>
    public bool Is(string text, FoodMention mention)
    {
        ReadOnlySpan<char> before = text.AsSpan(0, mention.Start).TrimEnd();
        ReadOnlySpan<char> after = text.AsSpan(mention.End);
        if (EndsIn(before, "size of a") || EndsIn(before, "size of an") || EndsIn(before, "big as a") || EndsIn(before, "shape of a") || EndsIn(before, " like any") || EndsIn(before, " like any other"))
        {
            return true; // "about the size of a rice grain", "keeps like any preserve"
        }

        if (mention.Words.EndsWith("ing", StringComparison.Ordinal) && words.Is("gerund-lead", LastWord(before)))
        {
            return true; // "chilled for 6 hours after dressing"
        }

        if (after.Length == 0 || after[0] != ' ')
        {
            return EndsIn(before, "across the") || EndsIn(before, "against the");
        }

        string next = FirstWord(after.TrimStart());
        if (words.Is("step-tool", next))
        {
            return true;
        }

        if (words.Is("step-throw", mention.Words) && next == "in" && (before.Length == 0 || words.Is("step-then", LastWord(before))))
        {
            return true; // "Chuck in the onions", but not "brown the chuck in the oil"
        }

        if (next is "down" or "up" or "side" && mention.Words.EndsWith("skin", StringComparison.Ordinal))
        {
            return true; // "Fry the chicken skin down": how it lies
        }

        // What is stirred in is a food, whatever stands behind it.
        return words.Is("step-object", next) && !words.Is("step-lead", LastWord(before));
    }

    private static bool EndsIn(ReadOnlySpan<char> text, string end) => text.EndsWith(end, StringComparison.OrdinalIgnoreCase);

    private static string FirstWord(ReadOnlySpan<char> text)
    {
        int end = 0;
        while (end < text.Length && char.IsLetter(text[end]))
        {
            end++;
        }

        return text[..end].ToString().ToLowerInvariant();
    }

    private static string LastWord(ReadOnlySpan<char> text)
    {
        int start = text.Length;
        while (start > 0 && char.IsLetter(text[start - 1]))
        {
            start--;
        }

        return text[start..].ToString().ToLowerInvariant();
    }
}
