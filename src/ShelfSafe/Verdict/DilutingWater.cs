using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Water that only the steps measure out: it makes the acid of a published recipe weaker.</summary>
/// <param name="texts">Sentences that were looked at.</param>
/// <param name="measures">Measured foods of a sentence.</param>
internal sealed class DilutingWater(ReadTexts texts, StepMeasures measures)
{
    /// <summary>Each place where the steps take measured water of which the list has none, at most one a sentence. Of listed water <see cref="TextFoods"/> tells where the steps take more.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch)
    {
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in batch.InJar.Any(static item => item.Has("water") && !item.FromSteps) ? [] : part.Steps)
        {
            if (serving.Outside(sentence))
            {
                continue;
            }

            ReadText read = texts.Of(sentence.Text);
            bool aside = IsAside(read) || (!IsSour(read) && IsDrained(sentence, batch));
            if (!aside && measures.Of(read).FirstOrDefault(static own => IsWater(own.Mention)) is { } more)
            {
                yield return (sentence.Text.Map(more.Mention.Start, more.Mention.End), sentence.Text.Text[more.Mention.Start..more.Mention.End]);
            }
        }
    }

    /// <summary>Whether the water of a sentence goes into no jar: that of a soak, of the canner; never beside an acid.</summary>
    public static bool IsAside(ReadText sentence) => sentence.Has("water-aside") && !IsSour(sentence);

    /// <summary>Whether a word means water alone.</summary>
    public static bool IsWater(FoodMention mention) => mention.Match.Candidates is [_, ..] all && all.All(static food => food.Has("water"));

    private static bool IsSour(ReadText sentence) => sentence.Mentions.Any(static mention => mention.Match.Candidates.Any(AcidWords.IsAcid));

    // "Dissolve the salt in a gallon of water. Soak overnight. Drain."
    private static bool IsDrained(StepSentence sentence, Batch batch) =>
        batch.Facts.Any(fact => fact.Id == "drained" && fact.Span.Start > sentence.Text.Map(0, 1).Start);
}
