using ShelfSafe.Core;
using ShelfSafe.Reading;
using Xunit;

namespace ShelfSafe.Tests.Reading;

/// <summary>Short ways to read a text and to look at what came out.</summary>
internal static class ReadingCases
{
    public static Recipe Read(string text, bool plainText = false) => new RecipeReader().Read(text, plainText);

    /// <summary>Texts of all ingredient lines.</summary>
    public static string[] Lines(string text, bool plainText = false) =>
        [.. Read(text, plainText).Parts.SelectMany(part => part.Ingredients).Select(line => line.Text.Text)];

    /// <summary>Texts of all sentences.</summary>
    public static string[] Sentences(string text) =>
        [.. Read(text).Parts.SelectMany(part => part.Steps).Select(step => step.Text.Text)];

    /// <summary>The only part.</summary>
    public static RecipePart Part(string text) => Assert.Single(Read(text).Parts);

    /// <summary>Every span of a recipe.</summary>
    public static IEnumerable<SourceSpan> Spans(Recipe recipe)
    {
        foreach (ReadingProblem problem in recipe.Problems)
        {
            yield return problem.Span;
        }

        foreach (RecipePart part in recipe.Parts)
        {
            yield return part.Span;
            foreach (MappedText text in part.Ingredients.Select(line => line.Text).Concat(part.Steps.Select(step => step.Text)))
            {
                for (int i = 0; i < text.Text.Length; i++)
                {
                    yield return text.Map(i, i + 1);
                }
            }
        }
    }
}
