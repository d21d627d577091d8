using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Words of jam, fruit and pickle makers, each beside a neighbour that means something else.</summary>
public sealed class SweetKitchenWordsTests
{
    private static readonly RecipeVetter Vetter = RecipeVetter.Create(RulePack.Default);

    // Source: USDA AIB 539 (2015) Guide 7 p. 7-6: jam of berries and sugar, boiled to a set; a title in another language names no kind.
    [Theory]
    [InlineData("Himbeeren wie von Trudl", "boil hard to the setting point", "jam")]
    [InlineData("Himbeeren wie von Trudl", "simmer 5 minutes", "fruit-puree")]
    [InlineData("Marmelade", "boil hard 20 minutes", "jam")]
    public void Vet_FruitAndSugarBoiledToASet_IsAJam(string title, string step, string category) =>
        Assert.Equal(category, Vet($"# {title}\n\n- 1 kg raspberries\n- 1 kg sugar\n\n1. Mash the raspberries with the sugar and {step}.\n2. Fill hot jars. Process 10 minutes in a boiling-water canner.\n").Category?.Id);

    // Source: general English usage: a jelly glass is a jar, jelly poured into a pot is food.
    [Theory]
    [InlineData("Pour into jelly glasses.", false)]
    [InlineData("Stir a packet of jelly into the pot.", true)]
    public void Vet_JellyGlasses_AreNoJelly(string step, bool gelatin) =>
        Assert.Equal(gelatin, Vet($"# Strawberry preserves\n\n- 2 quarts strawberries\n- 6 cups sugar\n\n1. Boil 25 minutes. {step}\n2. Process in a boiling-water canner.\n").Findings.Any(static one => one.Rule == "gelatin"));

    // Source: general English usage: at the head of a sentence "spread" is what is done.
    [Theory]
    [InlineData("Blend. Spread thinly on a tray.", false)]
    [InlineData("Blend. Stir in the spread.", true)]
    public void Vet_SpreadAtTheHeadOfASentence_IsNoFat(string step, bool fat) =>
        Assert.Equal(fat, Vet($"# Strawberry sheet\n\n- 2 cups strawberries\n- 2 tbsp sugar\n\n1. {step}\n").Findings.Any(static one => one.Rule == "fat"));

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-5: "An average of 23 pounds is needed per canner load of 7 quarts".
    [Theory]
    [InlineData("23 pounds of tomatoes for 7 quarts")]
    [InlineData("23 pounds tomatoes for about 7 quarts")]
    public void Vet_WhatTheJarsTake_IsNoPartOfTheFood(string line)
    {
        VettingReport report = Vet($"# Tomato juice\n\n- {line}\n\n1. Crush and simmer the tomatoes, press them through a sieve.\n");

        Assert.Equal("tomato", Assert.Single(report.Ingredients).FoodId);
    }

    // Source: So Easy to Preserve: watermelon rind pickles use the white rind by the cup; melon pH 5.2 to 6.7 (FDA, Approximate pH of foods). The peel of citrus alone is a zest.
    [Theory]
    [InlineData("rind of 2 watermelons", "watermelon-rind", 1000)]
    [InlineData("rind of 2 cantaloupes", "cantaloupe", 300)]
    [InlineData("juice of 3 watermelons", "watermelon", 10_000)]
    [InlineData("rind of 2 lemons", "lemon-zest", 2)]
    [InlineData("zest of 2 clementines", "orange-zest", 2)]
    public void Vet_TheRindOfAMelon_WeighsAsAMelonDoes(string line, string food, double least)
    {
        IngredientReport entry = Assert.Single(Vet($"# Rind\n\n- {line}\n\n1. Boil.\n").Ingredients);

        Assert.Contains(food, entry.FoodId, StringComparison.Ordinal);
        Assert.True(entry.Grams is null || entry.Grams.Value.High >= least);
        Assert.Equal(least > 100, entry.Grams is null || entry.Grams.Value.High > 100);
    }

    // Source: USDA AIB 539 (2015) Guide 2 p. 2-22: half a cup of sugar to a quart of rhubarb.
    [Theory]
    [InlineData("rhubarb", false)]
    [InlineData("cream", true)]
    public void Vet_SugarForEachQuartOfTheListedFruit_NamesNoOtherFood(string food, bool asked) =>
        Assert.Equal(asked, Vet($"# Stewed rhubarb\n\n- 10 lb rhubarb\n- 5 cups sugar (1/2 cup for each quart of {food})\n\n1. Let stand until juice appears, then heat to boiling.\n2. Fill pint jars right away, 1/2\" headspace. Process 15 minutes in a boiling-water canner.\n").Findings.Any(static one => one.Level >= FindingLevel.Change));

    // Source: NCHFP: uncooked jams and fruit leathers go to the refrigerator, the freezer or stay dry; garlic and vegetables in oil are kept cold at most 4 days (Penn State Extension 2012).
    [Theory]
    [InlineData("Freezer strawberry jam (no cook)", "4 cups sugar", "Stir and fill boxes, then the freezer.")]
    [InlineData("Strawberry leather", "2 tbsp sugar", "Blend, spread on trays and dry at 140 F.")]
    public void Vet_FreezerJamAndLeather_AreSentToTheFreezer(string title, string sugar, string step) =>
        Assert.Equal(Outcome.FreezeOrChill, Vet($"# {title}\n\n- 2 cups strawberries\n- {sugar}\n\n1. {step}\n").Outcome);

    // Source: NCHFP, Drying: dried food is packed dry and airtight; USDA AIB 539 (2015) Guide 2 p. 2-7: sliced apples are boiled and packed in hot syrup or water.
    [Theory]
    [InlineData("Dried apple rings", "Dip the slices in the water. Dry at 135 F for 8 hours until leathery.", true)]
    [InlineData("Winter rings", "Dip the slices in the water. Dry in a dehydrator for 8 hours.", true)]
    [InlineData("Apples for winter", "Boil the slices in the water 5 minutes. Dry the hot jars with a towel and fill them. Process in a boiling-water canner.", false)]
    public void Vet_FruitThatIsDried_GetsNoCanner(string title, string step, bool dried)
    {
        VettingReport report = Vet($"# {title}\n\n- 5 lb apples, peeled and sliced\n- 4 cups water\n\n1. {step}\n");

        Assert.Equal(dried, report.Findings.Any(static one => one.Rule == "dried"));
        Assert.Equal(dried, report.Outcome is Outcome.FreezeOrChill or Outcome.TestedRecipeOnly);
    }

    // Source: USDA AIB 539 (2015) Guide 7 p. 7-6: fruit and sugar are boiled rapidly until the mixture thickens.
    [Theory]
    [InlineData("Mash with the sugar and boil hard to the setting point.", Outcome.BoilingWater)]
    [InlineData("Mash with the sugar and stir until it dissolves.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_JamThatIsNotBoiled_IsAskedToBe(string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Raspberry jam\n\n- 1 kg raspberries\n- 1 kg sugar\n\n1. {step}\n2. Fill hot sterile half-pint jars, 1/4 inch headspace. Process 5 minutes in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10: open kettle canning is not recommended.
    [Theory]
    [InlineData("Pour into small hot jars and cover.", true)]
    [InlineData("Pour into small hot jars and cover with the boiling syrup. Process 10 minutes in a boiling-water canner.", false)]
    public void Vet_JarsFilledAndCovered_MeetNoCanner(string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Currant jam\n\n- 1 kg redcurrants\n- 1 kg sugar\n\n1. Boil to the setting point.\n2. {step}\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-10: quick dill pickles; a short line of its own at the top is the title, as a heading is.
    [Fact]
    public void Vet_ALineOfItsOwnAtTheTop_IsTheTitle()
    {
        VettingReport report = Vet("Pickled Beets My Way\n\n5 lb beets\n1 cup vinegar\n3 cups water\n\nCook the beets, slip the skins and slice. Boil the rest. Fill quart jars.\n");

        Assert.Equal("Pickled Beets My Way", report.Title);
        Assert.Equal("pickled-beets", report.Category?.Id);
    }

    [Theory]
    [InlineData("My neighbour gave me these beets last year, so I had to find a use for them all")]
    [InlineData("We have a garden.")]
    public void Vet_TalkAtTheTop_IsNoTitle(string line) =>
        Assert.Null(Vet($"{line}\n\n- 5 lb beets\n- 1 tsp salt\n\n1. Boil.\n").Title);

    private static VettingReport Vet(string text) => Vetter.Vet(text, Kitchen.Unknown);
}
