using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Cuts prose into sentences; decimals and abbreviations do not end one.</summary>
internal static class SentenceSplitter
{
    private static bool NeverEnds(ReadOnlySpan<char> word) => word is
        "tbsp" or "tbs" or "tsp" or "oz" or "lb" or "lbs" or "approx" or "ca" or "e.g" or "i.e" or "eg" or "ie" or "no" or "nos" or "pkg" or "vs"
        or "mr" or "mrs" or "dr" or "st" or "fl" or "qt" or "pt" or "gal" or "incl" or "esp" or "max" or "temp" or "fig" or "cf" or "bzw" or "z.b"
        or "evtl" or "usw" or "doz" or "pkt" or "tblsp";

    private static bool EndsBeforeCapital(ReadOnlySpan<char> word) => word is
        "min" or "mins" or "hr" or "hrs" or "sec" or "secs" or "etc" or "in" or "a.m" or "p.m" or "g" or "kg" or "ml" or "cm" or "c" or "f" or "l";

    /// <summary>Adds the sentences of a row's text to <paramref name="sentences"/>.</summary>
    public static void Split(MappedText text, IReadOnlyList<LineBreak> breaks, List<MappedText> sentences)
    {
        if (breaks.Count > 0)
        {
            Cut(text, breaks, sentences);
            return;
        }

        foreach (TextPiece piece in text.Look.Sentences ??= Pieces(text))
        {
            sentences.Add(piece.Text.Length == text.Text.Length ? text : text.Slice(piece));
        }
    }

    // Recipes share whole directions, so the cuts are kept with the words.
    private static TextPiece[] Pieces(MappedText text)
    {
        MappedText words = new(text.Text, 0);
        List<MappedText> sentences = [];
        Cut(words, [], sentences);
        return [.. sentences.Select(sentence => new TextPiece(sentence.Span.Start, sentence.Text, sentence.Look))];
    }

    private static void Cut(MappedText text, IReadOnlyList<LineBreak> breaks, List<MappedText> sentences)
    {
        string words = text.Text;
        int from = 0;
        int next = 0;
        for (int i = 0; i < words.Length; i++)
        {
            if (next < breaks.Count && breaks[next].Index == i)
            {
                bool ends = breaks[next].Hard || StartsDirection(words, i + 1);
                next++;
                if (ends)
                {
                    Add(text, from, i, sentences);
                    from = i + 1;
                }

                continue;
            }

            if (words[i] is '.' or '!' or '?' or '。' or '…' && EndsAt(words, i, out int end))
            {
                Add(text, from, end, sentences);
                from = end;
            }
        }

        Add(text, from, words.Length, sentences);
    }

    /// <summary>A wrapped line that begins with a capital verb is a direction of its own: people forget the full stop.</summary>
    private static bool StartsDirection(string words, int at)
    {
        int end = at;
        while (end < words.Length && char.IsLetter(words[end]))
        {
            end++;
        }

        return end > at && char.IsUpper(words[at]) && LineWords.IsPlainVerb(words[at..end].ToLowerInvariant());
    }

    private static bool EndsAt(string words, int at, out int end)
    {
        end = at + 1;
        while (end < words.Length && words[end] is '.' or '!' or '?' or '"' or '\'' or '”' or '’' or ')' or ']' or '…')
        {
            end++;
        }

        if (end >= words.Length || words[at] == '。')
        {
            return true;
        }

        if (!TextMarks.IsBlank(words[end]))
        {
            return false;
        }

        int next = end;
        while (next < words.Length && (TextMarks.IsBlank(words[next]) || words[next] is '(' or '"' or '“' or '‘' or '\''))
        {
            next++;
        }

        if (next >= words.Length)
        {
            return true;
        }

        return !char.IsLower(words[next]) && (words[at] != '.' || !IsAbbreviation(words, at, next));
    }

    private static bool IsAbbreviation(string words, int dot, int next)
    {
        int start = dot;
        while (start > 0 && dot - start < 12 && (char.IsLetterOrDigit(words[start - 1]) || words[start - 1] == '.'))
        {
            start--;
        }

        string word = words[start..dot].ToLowerInvariant();
        if (NeverEnds(word))
        {
            return word is not "no" || char.IsDigit(words[next]);
        }

        bool number = word.Length > 0 && word.Length <= 2 && char.IsDigit(word[0]) && (start == 0 || words[start - 1] is '\n');
        return number || (EndsBeforeCapital(word) && !char.IsUpper(words[next]));
    }

    private static void Add(MappedText text, int from, int to, List<MappedText> sentences)
    {
        MappedText sentence = text.Cut(from, to);
        if (HasLetterOrDigit(sentence.Text))
        {
            sentences.Add(sentence);
        }
    }

    private static bool HasLetterOrDigit(string text)
    {
        foreach (char c in text)
        {
            if (char.IsLetterOrDigit(c))
            {
                return true;
            }
        }

        return false;
    }
}
