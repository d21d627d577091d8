using ShelfSafe.Reading;
using Xunit;
using static ShelfSafe.Tests.Reading.ReadingCases;

namespace ShelfSafe.Tests.Reading;

public sealed class SentenceTests
{
    [Theory]
    [InlineData("Boil it. Stir in salt.", 2)]
    [InlineData("Add 1.5 cups. Stir.", 2)]
    [InlineData("Add 2 tbsp. Dijon mustard and stir.", 1)]
    [InlineData("Boil 5 min. Add salt.", 2)]
    [InlineData("Use herbs, e.g. thyme. Stir.", 2)]
    [InlineData("Pressure can? Yes!", 2)]
    [InlineData("Boil it in a pot\nthat is wide.", 1)]
    [InlineData("Boil the jars\nAdd the fruit", 2)]
    [InlineData("Boil the jars  \nadd the fruit", 2)]
    public void Split_Prose_CutsAtTheEndsOfSentences(string prose, int count) =>
        Assert.Equal(count, Sentences($"- 2 kg plums\n\n## Method\n\n{prose}\n").Length);

    [Theory]
    [InlineData("> Turn the jars upside down.")]
    [InlineData("```\nTurn the jars upside down.\n```")]
    [InlineData("<p>Turn the jars upside down.</p>")]
    [InlineData("<details><summary>Turn the jars upside down.</summary></details>")]
    [InlineData("- Turn the jars upside down.")]
    [InlineData("1. - Turn the jars upside down.")]
    [InlineData("Fill.[^1]\n\n[^1]: Turn the jars upside down.")]
    [InlineData("[^9]: Turn the jars upside down.")]
    [InlineData("**Note:** Turn the jars upside down.")]
    [InlineData("*Turn the jars upside down.*")]
    [InlineData("## Notes\n\nTurn the jars upside down.")]
    [InlineData("| Do |\n|---|\n| Turn the jars upside down. |")]
    public void Read_ProseAnywhere_IsASentence(string prose) =>
        Assert.Contains("Turn the jars upside down.", Sentences($"## Ingredients\n\n- 2 kg plums\n\n## Method\n\n{prose}\n"));

    [Fact]
    public void Read_Headings_GiveTheRole()
    {
        RecipePart part = Part("# Jam\n\nOld recipe.\n\n## Ingredients\n\n- 2 kg plums\n\n## Method\n\nBoil.\n\n## Notes\n\nKeep cool.\n\n## To serve\n\nSpread it on bread.\n");
        Assert.Equal([StepRole.Introduction, StepRole.Step, StepRole.Note, StepRole.Serving], part.Steps.Select(step => step.Role));
    }

    [Fact]
    public void Read_ProseAfterAServingList_IsReadAsDirections()
    {
        RecipePart part = Part("## Ingredients\n\n- 2 kg beans\n\n**To serve**\n\n- parsley\n\nBoil the beans with flour.\n");
        Assert.Equal(StepRole.Step, Assert.Single(part.Steps).Role);
    }

    [Fact]
    public void Read_DishNamedTips_IsNoNote()
    {
        RecipePart part = Part("## Ingredients\n\n- 1 kg beef\n\n## Method\n\n**Beef tips in gravy**\n\n1. Stir in the flour.\n");
        Assert.Equal(StepRole.Step, Assert.Single(part.Steps).Role);
    }
}
