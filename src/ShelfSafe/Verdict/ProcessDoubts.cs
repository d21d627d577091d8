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
internal sealed class ProcessDoubts(LineWordTable words)
{
    /// <summary>The first word of doubt of each sentence, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch)
    {
        StepSentence? filled = batch.Fact(JarSteps.Filled)?.Sentence;
        bool after = false;
        foreach (StepSentence sentence in part.Steps)
        {
            after |= ReferenceEquals(sentence, filled);
            if ((sentence.Role == StepRole.Step && !after) || sentence.Role == StepRole.Serving || ServingSteps.Outside(sentence, batch.Facts))
            {
                continue;
            }

            List<PlacedWord> all = PlacedWord.Of(sentence.Text.Text);
            if (all.Exists(word => words.Is("process-noun", word.Plain) || (sentence.Role == StepRole.Step && words.Is("process-measure", word.Plain))) && !all.Exists(word => words.Is("process-kept", word.Plain))
                && Doubt(all) is { } doubt)
            {
                yield return (sentence.Text.Map(doubt.Start, doubt.End), sentence.Text.Text[doubt.Start..doubt.End]);
            }
        }
    }

    // "Not enough", "never skip", "half an inch", "enough headspace" are no doubt.
    private PlacedWord? Doubt(List<PlacedWord> all)
    {
        for (int i = 0; i < all.Count; i++)
        {
            bool denied = Enumerable.Range(Math.Max(0, i - 2), Math.Min(i, 2)).Any(at => words.Is("denied", all[at].Plain) || words.Is("food-denied", all[at].Plain));
            bool taken = i + 1 < all.Count && words.Is("process-doubt-not", all[i + 1].Plain);
            if (words.Is("process-doubt", all[i].Plain) && !denied && !taken)
            {
                return all[i];
            }
        }

        return null;
    }
}
