using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Words of the steps that no table knows, in sentences that do something to the food.</summary>
internal sealed class UnreadWords
{
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly PlainWords _plain;
    private readonly TextNote<Unread[]> _unread;

    /// <summary>Prepares the note that it takes of sentences.</summary>
    public UnreadWords(LineWordTable words, ReadTexts texts, PlainWords plain)
    {
        (_words, _texts, _plain) = (words, texts, plain);
        _unread = texts.Note<Unread[]>(text => [.. In(text)]);
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

    private IEnumerable<Unread> In(ReadText read)
    {
        foreach (PlacedWord word in read.Placed.Any(word => _words.Is("step-acts", word.Plain) || _words.Is("direction", word.Plain)) ? read.Placed : []) // "crockpot, 75 minutes" does something too
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
