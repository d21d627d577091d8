using ShelfSafe.Foods;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>Things no table knows that a step puts in: "half a cup of tiny stars", "stir in the stars".</summary>
/// <remarks>
/// A thing counts as put in where an amount with a unit stands before it, or where it is the object of a verb of adding.
/// It is traced where one of its words stands in a line or group heading of the list, or names a food or a plain thing of the kitchen.
/// </remarks>
internal sealed class StepThings
{
    private readonly LineWordTable _words;
    private readonly Denials _denials;
    private readonly TextNote<Thing[]> _things;

    /// <summary>Prepares the notes that it takes of sentences.</summary>
    public StepThings(LineWordTable words, ReadTexts texts)
    {
        (_words, _denials) = (words, new(words));
        _things = texts.Note<Thing[]>(text => [.. In(text)]);
    }

    // A thing that no table knows, with the words by which the list may name it.
    private sealed record Thing(int Start, int End, string[] Words);

    /// <summary>The places of untraced things in a sentence, as offsets in its text.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="known">Made when first asked for: folded singular words that the ingredient list itself names, its group headings included.</param>
    public IEnumerable<(int Start, int End)> Find(ReadText sentence, Lazy<HashSet<string>> known)
    {
        foreach (Thing thing in _things.Of(sentence))
        {
            if (!Array.Exists(thing.Words, known.Value.Contains))
            {
                yield return (thing.Start, thing.End);
            }
        }
    }

    private IEnumerable<Thing> In(ReadText sentence)
    {
        string text = sentence.Text;
        int covered = 0;
        int at = 0;
        while (at < text.Length)
        {
            if (!char.IsLetterOrDigit(text[at]) && NumberAt(text, at) == at)
            {
                at++;
                continue;
            }

            int thing = at < covered ? -1 : Opened(sentence, at);
            if (thing >= 0 && Phrase(text, thing) is { } phrase)
            {
                if (Untraced(text, phrase, sentence.Mentions) is { } untraced)
                {
                    yield return untraced;
                }

                covered = phrase.End;
            }

            at = EndOfWord(text, at);
        }
    }

    // Where the name of a thing put in begins, or -1.
    private int Opened(ReadText sentence, int at)
    {
        string text = sentence.Text;
        ReadOnlySpan<char> word = WordLook.At(text, at, out int end);
        bool puts = _words.Is("step-puts", word);
        int measured = puts ? -1 : AfterMeasure(text, at);
        if (measured >= 0)
        {
            return measured;
        }

        if (!puts || _denials.OfAdding(sentence.Before(at)))
        {
            return -1;
        }

        int next = NumberScan.Skip(text, end);
        ReadOnlySpan<char> second = WordLook.At(text, next, out int after);
        if (second is "in" or "through" or "together" or "also")
        {
            return Name(text, NumberScan.Skip(text, after));
        }

        return word.StartsWith("add") ? Name(text, next) : -1;
    }

    // The name begins behind articles and counts: "the stars", "a few stars", "two of the stars". A measure is found where it stands.
    private int Name(string text, int at)
    {
        int next = at;
        while (next < text.Length)
        {
            ReadOnlySpan<char> word = WordLook.At(text, next, out int end);
            int number = NumberAt(text, next);
            if (!_words.Is("step-article", word) && number == next)
            {
                break;
            }

            if (AfterMeasure(text, next) >= 0)
            {
                return -1;
            }

            next = NumberScan.Skip(text, Math.Max(end, number));
        }

        return next;
    }

    // "half a cup of tiny stars", "2 handfuls stars": a count of a bare letter or article needs "of" after its unit.
    private int AfterMeasure(string text, int at)
    {
        bool article = WordLook.At(text, at, out int end) is "a" or "an" or "another" or "some";
        int next = article ? end : NumberAt(text, at);
        if (next == at)
        {
            return -1;
        }

        next = NumberScan.Skip(text, next);
        next = WordLook.At(text, next, out int inner) is "a" or "an" or "good" or "small" or "large" or "big" or "heaped" ? NumberScan.Skip(text, inner) : next;
        string? unit = _words.Unit(text, next, out int after);
        if (unit is null || _words.Is("step-no-measure", unit))
        {
            return -1;
        }

        int behind = NumberScan.Skip(text, after);
        bool of = WordLook.At(text, behind, out int ofEnd) is "of";
        bool needed = article || WordLook.At(text, next, out int unitEnd).Length < 2 || unitEnd != after;
        return of ? NumberScan.Skip(text, ofEnd) : needed ? -1 : behind;
    }

    // The words up to a mark, a small word that ends a name, or six words.
    private (int Start, int End)? Phrase(string text, int start)
    {
        int at = start;
        int end = start;
        for (int count = 0; count < 6; count++)
        {
            string word = NumberScan.Word(text, at, out int after);
            if (word.Length == 0 || _words.Is("step-ends", word) || (word.Length > 4 && word.EndsWith("ly", StringComparison.Ordinal)))
            {
                break;
            }

            end = after;
            at = after;
            if (at >= text.Length || text[at] is not (' ' or '\u00A0' or '-' or '\u2019' or '\''))
            {
                break;
            }

            at++;
        }

        return end > start ? (start, end) : null;
    }

    private Thing? Untraced(string text, (int Start, int End) phrase, IReadOnlyList<FoodMention> mentions)
    {
        if (mentions.Any(mention => mention.Start < phrase.End && mention.End > phrase.Start))
        {
            return null;
        }

        string[] all = [.. WordFolding.Words(text[phrase.Start..phrase.End]).Select(WordFolding.Singular)];
        int head = all.Length - 1;
        while (head > 0 && !IsPlain(all[head]) && (IsEmpty(all[head]) || all[head].Length < 3))
        {
            head--;
        }

        bool thing = !IsEmpty(all[head]) && all[head].Length > 2 && char.IsLetter(all[head][0])
            && !IsPlain(all[head])
            && !_words.Is("step-puts", all[head]) // "for each 300 ml add 200 g sugar"
            && _words.Unit(all[head], 0, out _) is null;
        return thing ? new(phrase.Start, phrase.End, Array.FindAll(all, word => !IsEmpty(word))) : null;
    }

    // A plain thing of the kitchen, or a word for what is in the pot.
    private bool IsPlain(string word) => _words.Is("step-thing", word) || _words.Is("equipment", word) || _words.Is("step-tool", word);

    // A word that says what something is like, and not what it is.
    private bool IsEmpty(string word) => _words.Is("filler", word) || _words.Is("size", word) || _words.Is("prep", word) || _words.Is("step-article", word);

    private static int NumberAt(string text, int at) => !char.IsWhiteSpace(text[at]) && NumberScan.TryRange(text, at, out int end, out _) ? end : at;

    private static int EndOfWord(string text, int at)
    {
        int end = at;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '\'' or '\u2019'))
        {
            end++;
        }

        return Math.Max(end, at + 1);
    }
}
