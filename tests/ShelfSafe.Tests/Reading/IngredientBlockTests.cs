using ShelfSafe.Reading;
using Xunit;
using static ShelfSafe.Tests.Reading.ReadingCases;

namespace ShelfSafe.Tests.Reading;

public sealed class IngredientBlockTests
{
    private static readonly string[] _two = ["2 kg plums", "500 g sugar"];

    [Theory]
    [InlineData("## Ingredients")]
    [InlineData("#### INGREDIENTS:")]
    [InlineData("## 🛒 Ingredients")]
    [InlineData("## What you need")]
    [InlineData("## You’ll need")]
    [InlineData("## Shopping list")]
    [InlineData("## Zutaten")]
    [InlineData("Ingredients\n-----------")]
    [InlineData("**Ingredients**")]
    [InlineData("__What goes in__")]
    [InlineData("Ingredients:")]
    [InlineData("### Harvest plums")]
    public void Read_HeadingOfAnyWording_FindsTheList(string heading) =>
        Assert.Equal(_two, Lines($"# Plum jam\n\n{heading}\n\n- 2 kg plums\n- 500 g sugar\n\n## Method\n\n1. Boil 20 minutes.\n"));

    [Theory]
    [InlineData("- 2 kg plums\n- 500 g sugar")]
    [InlineData("* 2 kg plums\n* 500 g sugar")]
    [InlineData("+ 2 kg plums\n+ 500 g sugar")]
    [InlineData("1. 2 kg plums\n2. 500 g sugar")]
    [InlineData("1) 2 kg plums\n2) 500 g sugar")]
    [InlineData("- [ ] 2 kg plums\n- [x] 500 g sugar")]
    [InlineData("- **2 kg** plums\n- *500 g* [sugar](/sugar)")]
    [InlineData("- 2 kg ~~plums~~\n- `500 g` sugar")]
    [InlineData("2 kg plums  \n500 g sugar")]
    [InlineData("2 kg plums\\\n500 g sugar")]
    [InlineData("2 kg plums<br>500 g sugar")]
    [InlineData("2 kg plums\n500 g sugar")]
    [InlineData("2 kg plums, 500 g sugar")]
    [InlineData("2 kg plums and 500 g sugar.")]
    [InlineData("• 2 kg plums\n• 500 g sugar")]
    [InlineData("    2 kg plums\n    500 g sugar")]
    [InlineData("```\n2 kg plums\n500 g sugar\n```")]
    [InlineData("| Amount | What |\n|---|---|\n| 2 kg | plums |\n| 500 g | sugar |")]
    [InlineData("<ul><li>2 kg plums</li><li>500 g sugar</li></ul>")]
    [InlineData("- 2 kg plums[^1]\n- 500 g sugar\n\n[^1]: Ripe ones.")]
    [InlineData("- ![](p.png) 2 kg plums\n- 500 g <b>sugar</b>")]
    public void Read_StyleOfList_GivesTheSameLines(string list)
    {
        Assert.Equal(_two, Lines($"# Plum jam\n\n## Ingredients\n\n{list}\n\n## Method\n\nBoil 20 minutes.\n"));
        Assert.Equal(_two, Lines($"# Plum jam\n\n**Ingredients**\n\n{list}\n\n**Method**\n\nBoil 20 minutes.\n"));
    }

    [Fact]
    public void Read_TableWithFoodFirst_JoinsCellsAsPrinted() =>
        Assert.Equal(["plums 2 kg 4.4 lb", "salt"], Lines("| Food | Metric | US |\n|---|--:|--:|\n| plums | 2 kg | 4.4 lb |\n| salt | | |\n"));

    [Fact]
    public void Read_TableWithGroupRow_LabelsTheRowsBelow()
    {
        RecipePart part = Part("| Amount | Food |\n|---|---|\n| **For the sauce:** | |\n| 2 kg | plums |\n| 500 g | sugar |\n");
        Assert.All(part.Ingredients, line => Assert.Equal("For the sauce", line.Group));
    }

    [Fact]
    public void Read_TableOfSteps_IsProse()
    {
        RecipePart part = Part("## Ingredients\n\n- 2 kg plums\n\n## Method\n\n| Step | Do |\n|---|---|\n| First | Stone the plums. |\n| Then | Boil them. |\n");
        Assert.Single(part.Ingredients);
        Assert.Contains(part.Steps, step => step.Text.Text == "Stone the plums.");
    }

    [Fact]
    public void Read_NoHeadingAndNoAmounts_TakesTheFirstListBeforeTheSteps() =>
        Assert.Equal(["plums", "sugar"], Lines("# Jam\n\n- plums\n- sugar\n\n1. Stone the plums.\n2. Boil them with the sugar.\n"));

    [Fact]
    public void Read_TimingsAboveTheList_AreIntroduction()
    {
        RecipePart part = Part("# Jam\n\n- ⏲️ Prep time: 10 min\n- Servings: 4\n- Calories: 250\n\n## Ingredients\n\n- 2 kg plums\n");
        Assert.Equal("2 kg plums", Assert.Single(part.Ingredients).Text.Text);
        Assert.All(part.Steps, step => Assert.Equal(StepRole.Introduction, step.Role));
    }

    [Theory]
    [InlineData("## Equipment\n\n- a big pot\n- 6 jars\n\n## Ingredients\n\n- 2 kg plums\n")]
    [InlineData("## Ingredients\n\n- 2 kg plums\n\n**Tools:**\n\n- a big pot\n")]
    [InlineData("You will need: a big pot.\n\n## Ingredients\n\n- 2 kg plums\n")]
    [InlineData("## You will need\n\n- a big pot\n- a sieve\n\n## Ingredients\n\n- 2 kg plums\n")]
    public void Read_Equipment_IsNoIngredient(string text) => Assert.Equal(["2 kg plums"], Lines(text));

    [Theory]
    [InlineData("### For the sauce", "For the sauce")]
    [InlineData("**Sauce**", "Sauce")]
    [InlineData("*For the sauce:*", "For the sauce")]
    [InlineData("For the sauce:", "For the sauce")]
    [InlineData("Sauce", "Sauce")]
    public void Read_GroupLabel_BelongsToItsLinesAndStaysOneDish(string label, string group)
    {
        RecipePart part = Part($"# Stew\n\n## Ingredients\n\n- 2 kg venison\n\n{label}\n\n- 500 g tomatoes\n\n## Method\n\nStew it.\n");
        Assert.Equal([null, group], part.Ingredients.Select(line => line.Group));
    }

    [Fact]
    public void Read_NestedGroups_AreLinesOfTheirOwn()
    {
        RecipePart part = Part("## Ingredients\n\n- For the pot:\n  - 2 kg venison\n  - 1 onion\n- **Spices**\n  - 2 tsp paprika\n- salt\n");
        Assert.Equal(["2 kg venison", "1 onion", "2 tsp paprika", "salt"], part.Ingredients.Select(line => line.Text.Text));
        Assert.Equal(["For the pot", "For the pot", "Spices", null], part.Ingredients.Select(line => line.Group));
    }

    [Fact]
    public void Read_ItemWithAmountAndNestedItems_KeepsBoth() =>
        Assert.Equal(["500 g greens", "chard"], Lines("## Ingredients\n\n- 500 g greens\n  - chard\n"));

    [Theory]
    [InlineData("### To serve", true)]
    [InlineData("**For serving**", true)]
    [InlineData("### On the day you eat it", true)]
    [InlineData("### Garnish (at serving)", true)]
    [InlineData("### Topping", false)]
    [InlineData("### Garnish", false)]
    public void Read_LabelForServing_MarksOnlyClearOnes(string label, bool atServing)
    {
        RecipePart part = Part($"## Ingredients\n\n- 2 kg beans\n\n{label}\n\n- 1 bunch parsley\n\n## Method\n\nCook.\n");
        Assert.Equal([false, atServing], part.Ingredients.Select(line => line.AtServing));
    }

    [Fact]
    public void Read_GroupAfterServingLabel_GoesIntoTheJarAgain()
    {
        RecipePart part = Part("**Ingredients**\n\n- 2 kg beans\n\n**To serve**\n\n- parsley\n\n**Sauce**\n\n- 500 g tomatoes\n");
        Assert.Equal([false, true, false], part.Ingredients.Select(line => line.AtServing));
    }

    [Fact]
    public void Read_OnlySentences_CutsThePhrasesWithAmounts()
    {
        RecipePart part = Part("# Jam\n\nTake 2 kg of ripe plums, stone them and cook them with 1.5 kg of sugar and the juice of 2 lemons for 20 minutes at 104 °C.\n");
        Assert.Equal(["2 kg of ripe plums", "1.5 kg of sugar", "the juice of 2 lemons"], part.Ingredients.Select(line => line.Text.Text));
        Assert.All(part.Ingredients, line => Assert.True(line.FromProse));
        Assert.Single(part.Steps);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n\n")]
    [InlineData("# A poem\n\nThe sea is wide.\n")]
    public void Read_NothingToCook_SaysSo(string text) => Assert.Contains(Read(text).Problems, problem => problem.Kind == "no-ingredients");
}
