namespace ShelfSafe.Changes;

/// <summary>Takes "until the sauce has thickened" out of a sentence: without the food that thickens, the liquid stays thin.</summary>
internal static class ThickeningCut
{
    private static readonly HashSet<string> Degrees = new(StringComparer.Ordinal) { "slightly", "nicely", "well", "little", "bit", "a", "lightly", "has", "have", "is", "are", "becomes", "gets", "starts", "begins", "to", "up" };
    private static readonly HashSet<string> Begins = new(StringComparer.Ordinal) { "until", "till", "and" };

    /// <summary>The sentence without it, or <see langword="null"/> where it says nothing of the kind, or more.</summary>
    public static string? Without(string sentence, AdaptWords words)
    {
        List<WordToken> tokens = WordToken.Cut(sentence);
        int thick = tokens.FindIndex(token => words.Thick.Contains(token.Plain));
        int first = thick - 1;
        while (first >= 0 && Degrees.Contains(tokens[first].Plain))
        {
            first--;
        }

        if (first >= 0 && words.Liquids.Contains(tokens[first].Plain))
        {
            first--;
            first -= first >= 0 && tokens[first].Plain is "the" or "your" ? 1 : 0;
        }

        if (thick < 1 || first < 1 || !Begins.Contains(tokens[first].Plain))
        {
            return null;
        }

        int last = thick;
        while (last + 1 < tokens.Count && Degrees.Contains(tokens[last + 1].Plain))
        {
            last++;
        }

        string after = last + 1 < tokens.Count ? WordToken.Gap(sentence, tokens, last + 1) : sentence[tokens[last].End..];
        bool more = last + 2 < tokens.Count && tokens[last + 1].Plain == "and" && !ClauseCut.IsVerb(tokens, last + 2, words);
        return more && tokens[first].Plain != "and" ? WordToken.Join(sentence[..tokens[first].End], sentence[tokens[last + 2].Start..])
            : more || (after.Length > 0 && after[0] is not ('.' or ',' or ';') && tokens[last + 1].Plain is not ("and" or "then")) ? null
            : WordToken.Join(sentence[..tokens[first - 1].End], sentence[tokens[last].End..]);
    }
}
