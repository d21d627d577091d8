using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Water that only the steps or the line of another food measure out: it makes the acid of a published recipe weaker.</summary>
/// <param name="texts">Sentences that were looked at.</param>
/// <param name="measures">Measured foods of a sentence.</param>
internal sealed class DilutingWater(ReadTexts texts, StepMeasures measures)
{
    /// <summary>
    /// Each place where the line of another food has measured water, and where the steps take some of which the list has none, at most one a line or sentence.
    /// Of listed water <see cref="TextFoods"/> tells where the steps take more.
    /// </summary>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch)
    {
        foreach (IngredientLine line in part.Ingredients)
        {
            BatchItem[] own = [.. batch.InJar.Where(item => ReferenceEquals(item.Ingredient.Line, line))];
            ReadText read = texts.Of(line.Text);
            if (own.Length > 0 && !own.Any(static item => item.Has("water")) && !IsAside(read) && Measured(read) is { } within && (IsSour(read) || !IsInBrackets(read.Text, within.Start)))
            {
                yield return (line.Text.Map(within.Start, within.End), line.Text.Text[within.Start..within.End]); // "4 cups vinegar in 6 cups water"
            }
        }

        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in batch.InJar.Any(static item => item.Has("water") && !item.FromSteps) ? [] : part.Steps)
        {
            if (serving.Outside(sentence))
            {
                continue;
            }

            ReadText read = texts.Of(sentence.Text);
            bool aside = IsAside(read) || (!IsSour(read) && StepWater.IsPouredOff(sentence, batch.Facts)); // "Dissolve the salt in a gallon of water. Soak overnight. Drain."
            if (!aside && Measured(read) is { } more)
            {
                yield return (sentence.Text.Map(more.Start, more.End), sentence.Text.Text[more.Start..more.End]);
            }
        }
    }

    /// <summary>Whether the water of a sentence goes into no jar: that of a soak, of the canner; never beside an acid.</summary>
    public static bool IsAside(ReadText sentence) => sentence.Has("water-aside") && !IsSour(sentence);

    /// <summary>Whether a word means water alone.</summary>
    public static bool IsWater(FoodMention mention) => mention.Match.Candidates is [_, ..] all && all.All(static food => food.Has("water"));

    private static bool IsSour(ReadText sentence) => sentence.Mentions.Any(static mention => mention.Match.Candidates.Any(AcidWords.IsAcid));

    // "5 cups grape juice (3 1/2 pounds grapes, 1 cup water)": what the food was made with.
    private static bool IsInBrackets(string text, int at) => text.LastIndexOf('(', at) > text.LastIndexOf(')', at);

    private FoodMention? Measured(ReadText read) => measures.Of(read).FirstOrDefault(static own => IsWater(own.Mention))?.Mention;
}
