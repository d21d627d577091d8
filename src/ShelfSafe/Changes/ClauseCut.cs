using System.Text;

namespace ShelfSafe.Changes;

/// <summary>Takes whole clauses out of a sentence: what is done with food that goes, and not what is done with food that stays.</summary>
/// <remarks>
/// "Heat the oil and brown the beef" becomes "Brown the beef"; "toss the beef in the flour and brown it" becomes "Brown the beef".
/// A clause begins with a verb of the kitchen after a comma, "and" or "then". Where a word such as "it" would lose what it stands
/// for, nothing is cut.
/// </remarks>
internal static class ClauseCut
{
    private static readonly HashSet<string> Pronouns = new(StringComparer.Ordinal) { "it", "them", "this", "these", "that" };

    // "Brown the beef" against "brown sugar".
    private static readonly HashSet<string> AfterBrown = new(StringComparer.Ordinal) { "the", "your", "it", "them", "all", "both", "on", "in", "over", "for", "well", "lightly", "until", "with" };

    private readonly record struct Clause(int First, int End);

    /// <summary>Whether a clause begins at a word.</summary>
    public static bool IsVerb(List<WordToken> tokens, int at, AdaptWords words) => at < tokens.Count && words.Verbs.Contains(tokens[at].Plain)
        && (tokens[at].Plain != "brown" || at + 1 == tokens.Count || AfterBrown.Contains(tokens[at + 1].Plain));

    /// <summary>The sentence without the clauses, or <see langword="null"/> where none can be cut.</summary>
    public static string? Without(string sentence, Mentions mentions)
    {
        List<WordToken> tokens = WordToken.Cut(sentence);
        List<Clause> clauses = Clauses(sentence, tokens, mentions.Known);
        List<string> kept = [];
        string? thing = null; // what "it" stands for after a clause that was cut; empty where that is gone as well
        foreach (Clause clause in clauses)
        {
            List<WordToken> own = tokens[clause.First..clause.End];
            bool gone = own.Exists(token => mentions.IsGone(token.Word));
            bool named = thing is null ? kept.Count > 0 : thing.Length > 0; // "it" stands for food that stays
            bool stays = own.Exists(token => mentions.IsKept(token.Word) || (named && Pronouns.Contains(token.Plain)));
            if (gone && !stays)
            {
                thing = string.Empty;
            }
            else if (gone && Coated(sentence, own, mentions) is { } coated)
            {
                thing = coated;
            }
            else if (Text(sentence, own, clause.First == 0, ref thing) is { } text)
            {
                kept.Add(text);
                thing = stays ? null : thing;
            }
            else
            {
                return null;
            }
        }

        return kept.Count == clauses.Count ? null : Joined(kept, sentence);
    }

    /// <summary>Whether a sentence does nothing but coat food that stays with food that goes: "toss the beef in the flour".</summary>
    public static bool IsCoating(string sentence, Mentions mentions)
    {
        List<WordToken> tokens = WordToken.Cut(sentence);
        bool coats = false;
        foreach (Clause clause in Clauses(sentence, tokens, mentions.Known))
        {
            List<WordToken> own = tokens[clause.First..clause.End];
            bool coated = own.Exists(token => mentions.IsGone(token.Word)) && Coated(sentence, own, mentions) is not null;
            coats |= coated;
            if (!coated && own.Exists(token => mentions.IsKept(token.Word) || Pronouns.Contains(token.Plain)))
            {
                return false;
            }
        }

        return coats;
    }

    /// <summary>Whether a word such as "it" stands for something that a sentence before names.</summary>
    public static bool PointsBack(string sentence, Mentions mentions)
    {
        List<WordToken> tokens = WordToken.Cut(sentence);
        int pronoun = tokens.FindIndex(token => Pronouns.Contains(token.Plain));
        return pronoun >= 0 && !tokens[..pronoun].Exists(token => mentions.IsKept(token.Word));
    }

    private static List<Clause> Clauses(string text, List<WordToken> tokens, AdaptWords words)
    {
        List<Clause> clauses = [];
        int first = 0;
        for (int at = 1; at < tokens.Count; at++)
        {
            int end = at;
            while (end > first && tokens[end - 1].Plain is "and" or "then")
            {
                end--;
            }

            bool parted = end < at || WordToken.Gap(text, tokens, at).Trim() is "," or ";";
            if (parted && end > first && IsVerb(tokens, at, words))
            {
                clauses.Add(new(first, end));
                first = at;
            }
        }

        clauses.Add(new(first, tokens.Count));
        return clauses;
    }

    // "Toss the beef in the flour": the words between the verb and "in", where only they stay.
    private static string? Coated(string text, List<WordToken> own, Mentions mentions)
    {
        int lead = own.FindIndex(token => token.Plain is "in" or "with");
        bool shape = lead > 1 && mentions.Known.Coating.Contains(own[0].Plain)
            && own[1..lead].TrueForAll(token => !mentions.IsGone(token.Word) && !Pronouns.Contains(token.Plain))
            && own[(lead + 1)..].TrueForAll(token => !mentions.IsKept(token.Word));
        return shape ? text[own[1].Start..own[lead - 1].End] : null;
    }

    // A clause that stays, with the name in place of the first "it" after a cut; null where "it" would stand for nothing.
    private static string? Text(string text, List<WordToken> own, bool first, ref string? thing)
    {
        int start = first ? 0 : own[0].Start;
        int end = own[^1].End;
        while (end < text.Length && text[end] is ')' or '"' or '”' or '%' or '°')
        {
            end++;
        }

        int at = thing is null ? -1 : own.FindIndex(token => Pronouns.Contains(token.Plain));
        if (at < 0)
        {
            return text[start..end];
        }

        if (thing!.Length > 0)
        {
            string named = thing;
            thing = null;
            return text[start..own[at].Start] + named + text[own[at].End..end];
        }

        return at == own.Count - 1 && at > 1 && own[at - 1].Plain is "in" or "with" or "to" ? text[start..own[at - 2].End] : null;
    }

    private static string? Joined(List<string> clauses, string sentence)
    {
        if (clauses.Count == 0)
        {
            return null;
        }

        StringBuilder text = new();
        for (int i = 0; i < clauses.Count; i++)
        {
            text.Append(i == 0 ? string.Empty : i == clauses.Count - 1 ? " and " : ", ").Append(clauses[i]);
        }

        text[0] = char.ToUpperInvariant(text[0]);
        return sentence.TrimEnd().EndsWith('.') ? text.Append('.').ToString() : text.ToString();
    }
}
