using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Words that judge the process instead of telling it: "a formality", "eight pounds is fine", "any old pot will do".</summary>
/// <remarks>
/// The published process needs no opinion, so a word of doubt in a sentence about canner, time, pressure, lids or seals is asked.
/// Looked at are the steps from the filling on, and notes that name the canner, its pressure or the lids; a kitchen time alone is none of it. Source: USDA AIB 539 (2015) Guide 1 p. 1-10 to 1-22, the process as published.
/// </remarks>
internal sealed class ProcessDoubts
{
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly TextNote<Signs> _signs;

    /// <summary>Prepares the note that it takes of sentences.</summary>
    public ProcessDoubts(LineWordTable words, ReadTexts texts)
    {
        (_words, _texts) = (words, texts);
        _signs = texts.Note(SignsOf);
    }

    // Whether a sentence names a part of the process, or its time and measure, and the word of doubt beside.
    private sealed record Signs(bool Noun, bool Measure, PlacedWord? Doubt);

    /// <summary>The first word of doubt of each sentence, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch)
    {
        StepSentence? filled = batch.Fact(JarSteps.Filled)?.Sentence;
        bool after = false;
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in part.Steps)
        {
            after |= ReferenceEquals(sentence, filled);
            if ((sentence.Role == StepRole.Step && !after) || sentence.Role == StepRole.Serving || serving.Outside(sentence))
            {
                continue;
            }

            Signs signs = _signs.Of(_texts.Of(sentence.Text));
            if ((signs.Noun || (sentence.Role == StepRole.Step && signs.Measure)) && signs.Doubt is { } doubt)
            {
                yield return (sentence.Text.Map(doubt.Start, doubt.End), sentence.Text.Text[doubt.Start..doubt.End]);
            }
        }
    }

    private Signs SignsOf(ReadText text)
    {
        IReadOnlyList<PlacedWord> all = text.Placed;
        bool Any(string kind) => all.Any(word => _words.Is(kind, word.Plain));
        return new(Any("process-noun"), Any("process-measure"), Any("process-kept") ? null : Doubt(all));
    }

    // "Not enough", "never skip", "half an inch", "enough headspace" are no doubt.
    private PlacedWord? Doubt(IReadOnlyList<PlacedWord> all)
    {
        for (int i = 0; i < all.Count; i++)
        {
            bool denied = Enumerable.Range(Math.Max(0, i - 2), Math.Min(i, 2)).Any(at => _words.Is("denied", all[at].Plain) || _words.Is("food-denied", all[at].Plain));
            bool taken = i + 1 < all.Count && _words.Is("process-doubt-not", all[i + 1].Plain);
            if (_words.Is("process-doubt", all[i].Plain) && !denied && !taken)
            {
                return all[i];
            }
        }

        return null;
    }
}
