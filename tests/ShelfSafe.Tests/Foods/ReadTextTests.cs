using ShelfSafe.Foods;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>A text that is looked at once must answer as one that is read anew each time.</summary>
public sealed class ReadTextTests
{
    private static readonly LineWordTable Words = LineWordTable.Of(RulePack.Default, []);
    private static readonly FoodCatalogue Catalogue = FoodCatalogue.Create(RulePack.Default, [], Words, string.Empty);

    [Theory]
    [InlineData("Don\u2019t add the cr\u00E8me fra\u00EEche, or 5% cream.")]
    [InlineData("  Stra\u00DFe's \u0153uf\u2122 -- half-and-half\u00AD! ")]
    [InlineData("' '' a'b' ")]
    [InlineData("")]
    public void Before_EveryOffset_IsWhatTheTextUpToItSays(string text)
    {
        ReadText read = new(text, Catalogue, Words);
        for (int offset = 0; offset <= text.Length; offset++)
        {
            Assert.Equal(WordFolding.Words(text[..offset]), read.Before(offset).ToArray());
        }
    }

    [Fact]
    public void HasBefore_AWordFurtherBackThanAsked_IsNotHeard()
    {
        ReadText read = new("Add the sliced carrots to the pot", Catalogue, Words);
        int pot = read.Text.IndexOf("pot", StringComparison.Ordinal);
        Assert.True(read.HasBefore("step-add", pot));
        Assert.False(read.HasBefore("step-add", pot, within: 3));
        Assert.False(read.HasBefore("step-add", 0));
    }

    [Fact]
    public void Singulars_Plurals_AreBroughtToOne()
    {
        ReadText read = new("Peel the Carrots and tomatoes", Catalogue, Words);
        Assert.Equal(["peel", "the", "carrots", "and", "tomatoes"], read.Folded);
        Assert.Equal(["peel", "the", "carrot", "and", "tomato"], read.Singulars);
    }

    [Fact]
    public void Of_TheSameText_IsLookedAtOnce()
    {
        ReadTexts texts = new(Catalogue, Words);
        ReadText first = texts.Of("Brown the beef.");
        Assert.Same(first, texts.Of("Brown the beef."));
        Assert.Equal("beef", Assert.Single(first.Mentions).Words);
    }
}
