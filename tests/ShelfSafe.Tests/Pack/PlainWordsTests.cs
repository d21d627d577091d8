using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Pack;

public sealed class PlainWordsTests
{
    [Fact]
    public void Has_EveryWordOfTheTable_IsFound()
    {
        PlainWords words = new("word\nadd\nboil\ncut\nstir\n");

        Assert.All(["add", "boil", "cut", "stir"], word => Assert.True(words.Has(word)));
        Assert.All(["aa", "word", "bo", "boils", "stirs", "z", ""], word => Assert.False(words.Has(word)));
    }

    [Theory]
    [InlineData("word\nadd\nboil\n", 0)]
    [InlineData("word\nboil\nadd\n", 1)]
    [InlineData("word\nadd\nadd\n", 1)]
    public void Check_WordsOutOfOrder_AreAFault(string text, int faults)
    {
        List<PackFault> found = [];
        PlainWords.Check(text, found);

        Assert.Equal(faults, found.Count);
    }
}
