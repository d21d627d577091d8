using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Tests.Steps;

/// <summary>Makes a dish of bare sentences, parted by " / ".</summary>
internal static class StepParts
{
    public static RecipePart Of(string sentences)
    {
        List<StepSentence> steps = [];
        int at = 0;
        foreach (string sentence in sentences.Split(" / "))
        {
            steps.Add(new(Mapped(sentence, at), null, StepRole.Step));
            at += sentence.Length + 3;
        }

        return new(null, new(0, at), [], [.. steps]);
    }

    private static MappedText Mapped(string text, int start) =>
        new(text, [.. Enumerable.Range(start, text.Length)], [.. Enumerable.Range(start + 1, text.Length)]);
}
