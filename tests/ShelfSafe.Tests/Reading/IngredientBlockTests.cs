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
    [InlineData("2 kg plums, 500 g sugar, ginger, salt. Slice. Layer in a pan. Boil 20 minutes.")]
    [InlineData("2 kg plums; 500 g sugar; ginger; salt. Stand the plums in the sugar overnight, boil them; fill jars.")]
    [InlineData("2 kg plums / 500 g sugar / 1 thumb ginger / salt. Boil and fill jars.")]
    [InlineData("2 kg plums. 500 g sugar. 1 thumb ginger. Salt. Stand overnight and boil.")]
    public void Read_ListAndDirectionsInOneParagraph_ArePartedAtTheSentence(string paragraph)
    {
        RecipePart part = Part($"# Plums\n\n{paragraph}\n");
        Assert.Equal(4, part.Ingredients.Length);
        Assert.Equal("salt", part.Ingredients[^1].Text.Text.TrimEnd('.'), ignoreCase: true);
        Assert.Contains(part.Steps, step => step.Text.Text.Contains("oil", StringComparison.Ordinal));
        Assert.DoesNotContain(part.Steps, step => step.Text.Text.Contains("kg", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_AmountInTheDirectionsBehindAList_CountsAsIn() =>
        Assert.Equal(["2 kg beans", "1 onion", "3 cups broth"], Lines("# Beans\n\n2 kg beans, 1 onion. Boil the beans with 3 cups broth.\n"));

    [Theory]
    [InlineData("1 cup milk / 240 ml")]
    [InlineData("1 cup milk / 1 cup cream")]
    public void Read_SlashBetweenTwo_IsOneLine(string line) =>
        Assert.Equal([line, "2 eggs"], Lines($"# Custard\n\n## Ingredients\n\n{line}\n2 eggs\n"));

    [Theory]
    [InlineData("**To serve:** lettuce, radishes, 2 avocados", 3)]
    [InlineData("**To serve:** Heap in bowls, pass the lettuce, eat.", 0)]
    public void Read_ServingNamesInAParagraph_AreListedAtServing(string paragraph, int named) =>
        Assert.Equal(named, Part($"# Stew\n\n- 2 kg pork\n- 1 onion\n\n{paragraph}\n\nStew it.\n").Ingredients.Count(line => line.AtServing));

    [Fact]
    public void Read_SizeBehindAFood_IsNoFood() =>
        Assert.Equal(["Twenty pounds of beets, an inch or two across", "1 tsp salt"], Lines("# Beets\n\nTwenty pounds of beets, an inch or two across, 1 tsp salt. Boil them, fill jars.\n"));

    [Fact]
    public void Read_TableWithAFoodInEveryCell_GivesEachCell() =>
        Assert.Equal(["4 cups berries", "3 cups sugar", "1 tbsp lemon juice"], Lines("| Fruit | Sweet | Sour |\n|---|---|---|\n| 4 cups berries | 3 cups sugar | 1 tbsp lemon juice |\n"));

    [Theory]
    [InlineData("2 qts. sm. onions, 1 qt. med. beets, 1 lg. cabbage.")]
    [InlineData("Take 2 qts. sm. onions, 1 qt. med. beets, 1 lg. cabbage.")]
    public void Read_ShortenedSize_EndsNoFood(string text) =>
        Assert.Equal(["2 qts. sm. onions", "1 qt. med. beets", "1 lg. cabbage"], Lines($"# Relish\n\n{text}\n").Select(line => line.TrimEnd('.')));

    [Theory]
    [InlineData("Take three pounds and a half of sugar and a pint of water.", "three pounds and a half of sugar")]
    [InlineData("Take one and one-half pints of vinegar, and boil.", "one and one-half pints of vinegar")]
    public void Read_AmountWithAHalfBehindIt_StaysOnePhrase(string text, string phrase) =>
        Assert.Equal(phrase, Lines($"# Syrup\n\n{text}\n")[0]);

    [Theory]
    [InlineData("")]
    [InlineData("   \n\n")]
    [InlineData("# A poem\n\nThe sea is wide.\n")]
    public void Read_NothingToCook_SaysSo(string text) => Assert.Contains(Read(text).Problems, problem => problem.Kind == "no-ingredients");
}
