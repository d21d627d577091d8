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
        if (IsLikened(before))
        {
            return true; // "about the size of a rice grain", "keeps like any preserve", "soft as porridge"
        }

        if (after.StartsWith("-size", StringComparison.OrdinalIgnoreCase) || IsLikeness(before) || IsGrainOfMeat(before, mention)) // "walnut-sized lump"
        {
            return true;
        }

        if (words.Is("step-result", mention.Words) && IsResult(before))
        {
            return true; // "cook it to a thick butter"
        }

        if (mention.Words.EndsWith("ing", StringComparison.Ordinal) && words.Is("gerund-lead", LastWord(before)))
        {
            return true; // "chilled for 6 hours after dressing"
        }

        if (after.Length == 0 || after[0] != ' ')
        {
            return false;
        }

        string next = FirstWord(after.TrimStart());
        if (words.Is("step-tool", next))
        {
            return true;
        }

        if (before.Length == 0 && next.Length > 0 && words.Is("first-verb", mention.Words) && !words.Is("step-then", next) && next is not ("with" or "on"))
        {
            return true; // "Toast nuts and seeds", but not "Toast with butter"
        }

        if (words.Is("step-throw", mention.Words) && words.Is("throw-to", next) && (before.Length == 0 || before[^1] is ',' or ';' or ':' || words.Is("step-then", LastWord(before))))
        {
            return true; // "Chuck in the onions", "spread on a tray", but not "brown the chuck in the oil"
        }

        if (next is "down" or "up" or "side" && mention.Words.EndsWith("skin", StringComparison.Ordinal))
        {
            return true; // "Fry the chicken skin down": how it lies
        }

        // What is stirred in is a food, whatever stands behind it.
        return words.Is("step-object", next) && !words.Is("step-lead", LastWord(before));
    }

    // "It should be like soft ice cream", "loose, not a porridge", "the thickness of double cream": how the dish looks, and nothing in it.
    private bool IsLikeness(ReadOnlySpan<char> before)
    {
        bool article = false;
        string word = LastWord(before);
        for (int passed = 0; passed < 3 && word is not ("of" or "like") && (words.Is("filler", word) || words.Is("size", word)); passed++)
        {
            article |= word is "a" or "an";
            before = before[..^word.Length].TrimEnd();
            word = LastWord(before);
        }

        string lead = LastWord(before[..^word.Length].TrimEnd());
        return word switch
        {
            "like" => words.Is("likeness-lead", lead),
            "of" => words.Is("likeness-of", lead),
            _ => word == "not" && article,
        };
    }

    // "Cut it along the grain".
    private bool IsGrainOfMeat(ReadOnlySpan<char> before, FoodMention mention) =>
        mention.Words == "grain" && EndsIn(before, " the") && words.Is("grain-lead", LastWord(before[..^4].TrimEnd()));

    private bool IsLikened(ReadOnlySpan<char> before)
    {
        foreach (string phrase in words.Of("likeness"))
        {
            if (EndsIn(before, phrase) && (before.Length == phrase.Length || !char.IsLetter(before[^(phrase.Length + 1)])))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsResult(ReadOnlySpan<char> before)
    {
        string last = LastWord(before);
        before = words.Is("step-result-kind", last) ? before[..^last.Length].TrimEnd() : before;
        return EndsIn(before, " to a") || EndsIn(before, " into a") || EndsIn(before, " like a");
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
