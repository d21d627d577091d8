using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Words that no table knows: of the steps, in sentences that do something to the food, and of the ingredient lines.</summary>
internal sealed class UnreadWords
{
    private const int Few = 3; // words

    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly PlainWords _plain;
    private readonly TextNote<Unread[]> _unread;
    private readonly TextNote<Unread[]> _inLine;

    /// <summary>Prepares the notes that it takes of sentences and lines.</summary>
    public UnreadWords(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, PlainWords plain)
    {
        (_catalogue, _words, _texts, _plain) = (catalogue, words, texts, plain);
        _unread = texts.Note<Unread[]>(text => Acts(text) ? [.. In(text)] : []);
        _inLine = texts.Note<Unread[]>(text => [.. In(text).Where(unread => !IsKnownToLines(text, unread.Word))]);
    }

    // A word that no table knows, with the word by which the list may know it; null where it may not.
    private sealed record Unread(PlacedWord Word, string? Listed);

    /// <summary>Each unknown word once, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch, Lazy<HashSet<string>> listed)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || serving.Outside(sentence))
            {
                continue;
            }

            foreach (((int start, int end, string word), string? known) in _unread.Of(_texts.Of(sentence.Text)))
            {
                if (!(known is not null && listed.Value.Contains(known)) && seen.Add(word))
                {
                    yield return (sentence.Text.Map(start, end), sentence.Text.Text[start..end]);
                }
            }
        }
    }

    /// <summary>"Beef mixed with zorblatt", "7 cwt beets": words of a line that goes into the jar, by which it may name another food or another amount.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> InLine(IngredientLine line, Batch batch)
    {
        Unread[] unread = _inLine.Of(_texts.Of(line.Text));
        bool filled = unread.Length > 0 && batch.Items.Any(item => ReferenceEquals(item.Ingredient.Line, line) && item is { InJar: true, Food: not null });
        return filled ? unread.Select(one => (line.Text.Map(one.Word.Start, one.Word.End), line.Text.Text[one.Word.Start..one.Word.End])) : [];
    }

    /// <summary>"Pears with zorblatt": what a title names behind "with" is in the jar. Other unknown words there are names of people and places.</summary>
    public IEnumerable<(int Start, int End)> InTitle(string title)
    {
        ReadText read = _texts.Of(title);
        return _inLine.Of(read).Where(unread => read.Before(unread.Word.Start).Contains("with")).Select(static unread => (unread.Word.Start, unread.Word.End));
    }

    // Any word of the tables of lines and foods, spelled as it may be; and a name with a capital ("Yukon"), but where other food may be named.
    private bool IsKnownToLines(ReadText read, PlacedWord word)
    {
        string singular = WordFolding.Singular(word.Plain);
        bool name = char.IsUpper(read.Text[word.Start]) && !read.Before(word.Start).ContainsAny("with", "and", "plus");
        return name || _words.Knows(word.Plain) || _words.Knows(singular) || _catalogue.Knows(singular);
    }

    // A few words alone name what goes in as well as a sentence does.
    private bool Acts(ReadText read) => read.Placed.Count <= Few || read.Placed.Any(word => _words.Is("step-acts", word.Plain) || _words.Is("direction", word.Plain)); // "crockpot, 75 minutes" does something too

    private IEnumerable<Unread> In(ReadText read)
    {
        foreach (PlacedWord word in read.Placed)
        {
            bool mentioned = read.Mentions.Any(mention => mention.Start < word.End && mention.End > word.Start);
            if (!mentioned && word.Plain.Length >= 3 && char.IsLetter(word.Plain[0]) && !word.Plain.Any(char.IsAsciiDigit) && !IsAHeight(read.Text, word) && Look(word) is { } unread)
            {
                yield return unread;
            }
        }
    }

    // "1,001-3,000 feet" is an altitude; "4 feet" may be a pig's.
    private static bool IsAHeight(string text, PlacedWord word) =>
        word.Plain is "feet" or "foot" && text.AsSpan(0, word.Start).TrimEnd() is [.., var hundreds, var tens, var ones] && char.IsAsciiDigit(hundreds) && char.IsAsciiDigit(tens) && char.IsAsciiDigit(ones);

    private Unread? Look(PlacedWord place)
    {
        string word = place.Plain;
        string singular = WordFolding.Singular(WordFolding.Words(word) is [var folded, ..] ? folded : word);
        return _words.Is("not-plain", word) ? new(place, null)
            : IsPlain(word) || IsPlain(singular) || (_words.Unit(word, 0, out int end) is not null && end == word.Length) ? null
            : new(place, singular);
    }

    private bool IsPlain(string word) => _plain.Has(word) || _words.Is("equipment", word) || _words.Is("step-tool", word) || _words.Is("step-thing", word) || _words.Is("step-ends", word);
}
