using System.Text;
using ShelfSafe.Reading;
using Xunit;
using static ShelfSafe.Tests.Reading.ReadingCases;

namespace ShelfSafe.Tests.Reading;

public sealed class HostileTextTests
{
    [Theory]
    [InlineData("- ", 10_000, "2 kg plums", "nesting")]
    [InlineData("> ", 10_000, "2 kg plums", "nesting")]
    [InlineData("a", 100_000, "", "line-too-long")]
    [InlineData("- 2 kg plums\n", 400_000, "", "too-large")]
    public void Read_MonstrousText_ReportsTheProblemAndGoesOn(string piece, int times, string end, string problem)
    {
        Recipe recipe = Read("## Ingredients\n\n- 1 egg\n\n" + Repeat(piece, times) + end);
        Assert.Contains(recipe.Problems, found => found.Kind == problem);
        Assert.Contains(recipe.Parts.SelectMany(part => part.Ingredients), line => line.Text.Text == "1 egg");
    }

    [Theory]
    [InlineData("[", 19_000)]
    [InlineData("*a ", 6_000)]
    [InlineData("![", 9_000)]
    [InlineData("<div>", 3_000)]
    [InlineData("<!--", 4_000)]
    [InlineData("|", 19_000)]
    [InlineData("\0\u0001\uFFFD", 5_000)]
    [InlineData("`", 19_000)]
    [InlineData("# Dish of x\n- 1 cup y\n\nStir.\n\n", 3_000)]
    [InlineData("Ingredients:\nx\n", 1_200)]
    [InlineData("1 ", 9_000)]
    public void Read_RepeatedMarks_GrowsWithTheTextAlone(string piece, int times)
    {
        long once = Allocated(Repeat(piece, times));
        long twice = Allocated(Repeat(piece, 2 * times));

        // Twice the text may cost about twice the memory; a reader that goes back over its text costs four times as much.
        Assert.InRange(twice, 0, (3 * once) + 2_000_000);
    }

    [Fact]
    public void Read_ThousandIndentedLevels_KeepsEveryLine()
    {
        StringBuilder text = new("## Ingredients\n\n");
        for (int i = 0; i < 1_000; i++)
        {
            text.Append(' ', i * 2).Append("- 1 egg\n");
        }

        Recipe recipe = Read(text.ToString());
        Assert.Contains(recipe.Problems, problem => problem.Kind == "nesting");
        Assert.Equal(1_000, recipe.Parts.Sum(part => part.Ingredients.Length));
    }

    [Fact]
    public void Read_UnclosedHtml_LosesNoWords() =>
        Assert.Contains(Sentences("- 2 kg plums\n\n<div class=\"x\n\nTurn the jars upside down.\n"), sentence => sentence.Contains("upside down", StringComparison.Ordinal));

    private static long Allocated(string text)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        Read(text);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static string Repeat(string piece, int times) => new StringBuilder(piece.Length * times).Insert(0, piece, times).ToString();
}
