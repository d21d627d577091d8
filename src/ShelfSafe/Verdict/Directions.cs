using ShelfSafe.Foods;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Whether a dish has any direction: a sentence that says what is done, not a list of foods and not a remark.</summary>
/// <remarks>Known gap: a remark that uses a word of the kitchen ("Granny cooked it so") counts as a direction.</remarks>
internal sealed class Directions(LineWordTable words, ReadTexts texts)
{
    private readonly TextNote<bool> _directs = texts.Note(text => !IsOnlyFoods(text.Text) && text.Folded.Any(word => words.Is("direction", word)));

    /// <summary>Whether any sentence of the steps directs.</summary>
    public bool Has(RecipePart part) => part.Steps.Any(step => step.Role == StepRole.Step && _directs.Of(texts.Of(step.Text)));

    // "20 pounds of carrots, peeled, 1 tsp salt."
    private static bool IsOnlyFoods(string sentence) =>
        AmountScan.StartsWithAmount(sentence) && sentence.AsSpan().TrimEnd('.').IndexOfAny('.', ':') < 0 && ParagraphLines.IsListOfAmounts(sentence);
}
