using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Words that deny what follows them. What is wrongly heard as denied would be missed, so each kind has a near miss.</summary>
public sealed class DenialsTests
{
    private static readonly LineWordTable Words = LineWordTable.Of(RulePack.Default, []);
    private static readonly ReadTexts Texts = new(FoodCatalogue.Create(RulePack.Default, [], Words, string.Empty), Words);
    private static readonly Denials Built = new(Words);

    [Theory]
    [InlineData("2 lb carrots, no ", true)]
    [InlineData("chicken thighs without the ", true)]
    [InlineData("beans, not ", true)]
    [InlineData("don't peel the ", true)]
    [InlineData("not too many of the ", false)] // four words away
    [InlineData("chicken with the ", false)]
    public void LeavesOut_AnIngredientLine_NeedsADenialWithinThreeWords(string before, bool expected) => Assert.Equal(expected, Built.LeavesOut(WordFolding.Words(before)));

    [Theory]
    [InlineData("This one has no ", true)]
    [InlineData("Do not forget the ", false)]
    [InlineData("I never do it without ", false)]
    public void LeavesOutForGood_TheDenialIsTakenBack_PutsItIn(string before, bool expected) => Assert.Equal(expected, Built.LeavesOutForGood(WordFolding.Words(before)));

    [Theory]
    [InlineData("There is no bacon", "bacon", true)]
    [InlineData("Don\u2019t add the bacon", "bacon", true)]
    [InlineData("Never put in any bacon", "bacon", true)]
    [InlineData("Do not add the bacon until the end", "bacon", false)]
    [InlineData("Do not skip the bacon", "bacon", false)]
    [InlineData("Add the bacon", "bacon", false)]
    [InlineData("Bacon comes first", "Bacon", false)]
    public void OfFood_OnlyAVerbOfAddingOrAPlainNo_LeavesItOut(string sentence, string food, bool expected) =>
        Assert.Equal(expected, Built.OfFood(Texts.Of(sentence), sentence.IndexOf(food, StringComparison.Ordinal)));

    [Theory]
    [InlineData("Do not ", true)]
    [InlineData("Serve without ", true)]
    [InlineData("You cannot ", false)]
    [InlineData("", false)]
    public void OfAdding_TheWordRightBefore_Decides(string before, bool expected) => Assert.Equal(expected, Built.OfAdding(WordFolding.Words(before)));

    [Theory]
    [InlineData("never use the oven", "oven", true)]
    [InlineData("keep out of the oven", "oven", true)]
    [InlineData("do not stack the jars in the oven", "oven", false)] // five words away
    [InlineData("bake in the oven", "oven", false)]
    public void OfHeat_ADenialWithinFourWords_IsHeard(string sentence, string device, bool expected) =>
        Assert.Equal(expected, Built.OfHeat(PlacedWord.Of(sentence), PlacedWord.Of(sentence).FindIndex(word => word.Plain == device)));

    [Theory]
    [InlineData("put up without a canner", true)]
    [InlineData("lift out of the canner", false)] // "out" denies heat, not that a canner is there
    public void OfDevice_OnlyWithout_DeniesIt(string sentence, bool expected) =>
        Assert.Equal(expected, Built.OfDevice(PlacedWord.Of(sentence), PlacedWord.Of(sentence).FindIndex(word => word.Plain == "canner")));

    [Theory]
    [InlineData("not", true)]
    [InlineData("cannot", true)]
    [InlineData("without", false)]
    public void OfLess_OnlyAPlainNo_TakesItBack(string before, bool expected) => Assert.Equal(expected, Built.OfLess(before));
}
