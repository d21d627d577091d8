namespace ShelfSafe.Changes;

/// <summary>Takes the words of one food out of a sentence that also speaks of food that stays.</summary>
/// <remarks>
/// Only two shapes are cut: "in the oil" or "with the oil" as a phrase of its own, and one item of a plain list ("the carrots,
/// onions and garlic"). Anything else is left to the cook.
/// </remarks>
internal static class SentenceCut
{
    private static readonly HashSet<string> Leads = new(StringComparer.Ordinal) { "in", "with", "using", "to" };
    private static readonly HashSet<string> Follows = new(StringComparer.Ordinal) { "until", "for", "over", "in", "on", "then", "to", "at", "while", "till" };

    /// <summary>The sentence without the food, or <see langword="null"/> where it cannot be told apart word by word.</summary>
    public static string? Without(string sentence, Mentions mentions)
    {
        string text = sentence;
        for (int i = 0; i < 12; i++)
        {
            List<WordToken> tokens = WordToken.Cut(text);
            int phrase = Enumerable.Range(1, Math.Max(0, tokens.Count - 1)).FirstOrDefault(one => mentions.IsGone(tokens[one - 1].Word, tokens[one].Word), -1);
            int at = tokens.FindIndex(token => mentions.IsGone(token.Word));
            at = phrase >= 0 && (at < 0 || phrase <= at + 1) ? phrase : at; // the whole name, not its first word
            if (at < 0)
            {
                return mentions.NamesKept(text) ? text : null;
            }

            // A word that stands for both sides cannot be cut.
            if ((at != phrase && mentions.IsKept(tokens[at].Word)) || Once(text, tokens, at == phrase ? at - 1 : at, at, mentions) is not { } shorter)
            {
                return null;
            }

            text = shorter;
        }

        return null;
    }

    private static string? Once(string text, List<WordToken> tokens, int first, int at, Mentions mentions)
    {
        while (first > 0 && WordToken.Gap(text, tokens, first) == " " && mentions.Known.Describing.Contains(tokens[first - 1].Word))
        {
            first--;
        }

        string before = first > 0 ? WordToken.Gap(text, tokens, first) : string.Empty;
        string after = at + 1 < tokens.Count ? WordToken.Gap(text, tokens, at + 1) : text[tokens[at].End..];
        string next = at + 1 < tokens.Count ? tokens[at + 1].Word : string.Empty;
        if (first > 0 && before == " " && Leads.Contains(tokens[first - 1].Word) && (after.Length == 0 || after[0] is '.' or ',' or ';' || Follows.Contains(next) || (next == "and" && ClauseCut.IsVerb(tokens, at + 2, mentions.Known))))
        {
            return WordToken.Join(text[..tokens[first - 1].Start], text[tokens[at].End..]);
        }

        bool listBefore = first > 0 && (IsComma(before) || (before == " " && tokens[first - 1].Word == "and"));
        int previous = listBefore && tokens[first - 1].Word == "and" ? first - 2 : first - 1;
        bool ends = after.Length == 0 || after[0] is '.' or ',' or ';' || next is "and" || Follows.Contains(next);
        if (listBefore && ends && previous >= 0 && mentions.IsKept(tokens[previous].Word))
        {
            return WordToken.Join(text[..tokens[previous].End], text[tokens[at].End..]);
        }

        bool listAfter = IsComma(after) || (after == " " && next == "and");
        int item = next == "and" ? at + 2 : at + 1;
        if (listAfter && item < tokens.Count && NextIsKept(text, tokens, item, mentions))
        {
            return WordToken.Join(text[..tokens[first].Start], text[tokens[item].Start..]);
        }

        return null;
    }

    // The next item of the list: at most two describing words and then a food that stays.
    private static bool NextIsKept(string text, List<WordToken> tokens, int item, Mentions mentions)
    {
        for (int i = item; i < tokens.Count && i < item + 3; i++)
        {
            if (mentions.IsKept(tokens[i].Word))
            {
                return true;
            }

            if (!mentions.Known.Describing.Contains(tokens[i].Word) || (i + 1 < tokens.Count && WordToken.Gap(text, tokens, i + 1) != " "))
            {
                return false;
            }
        }

        return false;
    }

    private static bool IsComma(string gap) => gap.Trim() == ",";
}
