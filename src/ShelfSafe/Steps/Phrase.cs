using System.Collections.Immutable;

namespace ShelfSafe.Steps;

/// <summary>One place of a phrase: the words or numbers that may stand there.</summary>
/// <param name="Words">Words of the vocabulary.</param>
/// <param name="Least">Smallest number that fits, NaN where numbers do not fit.</param>
/// <param name="Most">Largest number that fits, NaN where numbers do not fit.</param>
/// <param name="Optional">Whether the place may be empty.</param>
/// <param name="Gap">How many other words may stand before it.</param>
internal sealed record PhrasePlace(WordBits Words, double Least, double Most, bool Optional, int Gap)
{
    /// <summary>Whether a token may stand here.</summary>
    public bool Fits(in Token token) =>
        Words.Has(token.Stem) || Words.Has(token.Exact) || Words.Has(token.Prefix) || (token.Number >= Least && token.Number <= Most);

    /// <summary>Whether a sentence may have a token for the place; where it may not, none fits.</summary>
    public bool MayFit(TokenMask sentence) => (Words.Mask & sentence.Words) != 0 || (sentence.Numbers && !double.IsNaN(Least));
}

/// <summary>A compiled sequence of places.</summary>
internal sealed class Phrase(ImmutableArray<PhrasePlace> places)
{
    /// <summary>The places in order; the first is never optional.</summary>
    public ImmutableArray<PhrasePlace> Places => places;

    /// <summary>Index after the last token of the shortest match that begins at a token, or -1.</summary>
    /// <remarks>Gaps are bounded, so the work for one token is bounded as well.</remarks>
    public int MatchAt(List<Token> tokens, int at) => places[0].Fits(tokens[at]) ? Rest(tokens, at + 1, 1) : -1;

    /// <summary>Whether a sentence may hold the phrase; where it may not, nothing need be compared.</summary>
    public bool MayMatch(TokenMask sentence)
    {
        foreach (PhrasePlace place in places)
        {
            if (!place.Optional && !place.MayFit(sentence))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>First match anywhere, or (-1, -1).</summary>
    public (int Start, int End) Find(List<Token> tokens)
    {
        for (int at = 0; at < tokens.Count; at++)
        {
            if (MatchAt(tokens, at) is int end and >= 0)
            {
                return (at, end);
            }
        }

        return (-1, -1);
    }

    private int Rest(List<Token> tokens, int at, int place)
    {
        if (place == places.Length)
        {
            return at;
        }

        PhrasePlace here = places[place];
        int last = Math.Min(tokens.Count - 1, at + here.Gap);
        for (int i = at; i <= last; i++)
        {
            if (here.Fits(tokens[i]) && Rest(tokens, i + 1, place + 1) is int end and >= 0)
            {
                return end;
            }
        }

        return here.Optional ? Rest(tokens, at, place + 1) : -1;
    }
}
