using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Words of the steps that no table knows, in sentences that do something to the food.</summary>
internal sealed class UnreadWords(LineWordTable words, ReadTexts texts, PlainWords plain)
{
    /// <summary>Each unknown word once, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        HashSet<string> listed = StepFoods.Known(part);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || ServingSteps.Outside(sentence, batch.Facts))
            {
                continue;
            }

            string text = sentence.Text.Text;
            ReadText read = texts.Of(text);
            if (!read.Placed.Any(word => words.Is("step-acts", word.Plain)))
            {
                continue;
            }

            foreach ((int start, int end, string word) in read.Placed)
            {
                bool mentioned = read.Mentions.Any(mention => mention.Start < end && mention.End > start);
                if (!mentioned && !IsKnown(word, listed) && seen.Add(word))
                {
                    yield return (sentence.Text.Map(start, end), text[start..end]);
                }
            }
        }
    }

    private bool IsKnown(string word, HashSet<string> listed)
    {
        if (word.Length < 3 || !char.IsLetter(word[0]) || word.Any(char.IsAsciiDigit))
        {
            return true;
        }

        string singular = WordFolding.Singular(WordFolding.Words(word) is [var folded, ..] ? folded : word);
        return !words.Is("not-plain", word) && (IsPlain(word) || IsPlain(singular) || listed.Contains(singular)
            || words.Unit(word, 0, out int end) is not null && end == word.Length);
    }

    private bool IsPlain(string word) => plain.Has(word) || words.Is("equipment", word) || words.Is("step-tool", word) || words.Is("step-thing", word) || words.Is("step-ends", word);
}
