using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Words in which published recipes and procedures are written down at home, and what stands beside them.</summary>
public class ComposedCaseTests
{
    private const string Peaches = "# Peaches in syrup\n\n- 17 lb yellow peaches, peeled, halved\n- 2 cups sugar\n- 9 cups water\n\nHeat the halves in the syrup. Fill hot quarts with the fruit and the syrup. {0}\n";

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-19 (peaches: quarts 25 minutes, longer from 1,001 feet).
    [Theory]
    [InlineData("Process quarts 25 minutes in boiling water, longer above 1,000 ft.", Outcome.BoilingWater)]
    [InlineData("Process quarts 25 minutes in boiling water. Process 5 minutes longer above 1,000 ft.", Outcome.BoilingWater)]
    [InlineData("Process quarts 25 minutes in boiling water; add 5 minutes above 1,000 ft.", Outcome.BoilingWater)]
    [InlineData("Process quarts 25 minutes in boiling water. Add 5 minutes for altitudes of 1,001-3,000 feet.", Outcome.BoilingWater)]
    [InlineData("Process quarts 10 minutes in boiling water, longer above 1,000 ft.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Process quarts 20 minutes in boiling water. Add 5 minutes above 1,000 ft.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_MinutesForAnAltitude_AreNoProcessOfTheirOwn(string words, Outcome outcome) =>
        Assert.Equal(outcome, VetPints(Peaches.Replace("{0}", words, StringComparison.Ordinal)).Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-16 and 4-18 (no time for summer squash; foods of a soup need their own).
    [Theory]
    [InlineData("1 courgette, diced", Outcome.PressureAfterChanges)]
    [InlineData("4 lb zucchini, diced", Outcome.FreezeOrChill)]
    [InlineData("zucchini", Outcome.FreezeOrChill)]
    public void Vet_SummerSquashInASoup_IsLeftOutWhereItIsLittle(string squash, Outcome outcome)
    {
        VettingReport report = VetPints($"# Garden soup\n\n- 2 lb carrots, sliced\n- 2 lb green beans, cut\n- 2 lb potatoes, cubed\n- {squash}\n- 6 quarts beef broth\n\nBoil everything together 5 minutes. Fill hot jars half full with the pieces, top up with the hot liquid, and process in a pressure canner.\n");

        Assert.Equal(outcome, report.Outcome);
        Assert.Contains(report.Findings, finding => finding is { Rule: "untested-food" or "dense", Level: >= FindingLevel.Change });
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 6, p. 6-8 (25 pounds of cabbage take 3/4 cup of salt).
    [Theory]
    [InlineData("3 Tbsp", Outcome.BoilingWater)]
    [InlineData("1 Tbsp", Outcome.TestedRecipeOnly)]
    public void Vet_Kraut_RestsOnItsSalt(string salt, Outcome outcome)
    {
        VettingReport report = VetPints($"# Crock kraut\n\n- 5 lb cabbage\n- {salt} canning salt\n\nShred the cabbage and mix it with the salt. Press it into a crock, weigh it down and ferment it for 4 weeks. Bring it slowly to a boil, fill hot pints, and process in a boiling-water canner.\n");

        Assert.Equal((outcome, Acidity.Acidified), (report.Outcome, report.Acidity));
        Assert.Equal(outcome == Outcome.BoilingWater, !report.Findings.Any(finding => finding is { Rule: "proportions", Ingredient: "canning salt" or "salt" }));
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-6 (apple butter takes apple cider, which is sweet and not fermented).
    [Theory]
    [InlineData("apple cider", Outcome.BoilingWater)]
    [InlineData("cider", Outcome.BoilingWaterAfterChanges)]
    [InlineData("hard cider", Outcome.TestedRecipeOnly)]
    public void Vet_AWordWithTwoMeaningsOfWhichTheRecipeTakesOne_IsAsked(string cider, Outcome outcome)
    {
        VettingReport report = VetPints($"# Apple butter\n\n- 8 lb apples\n- 2 cups {cider}\n- 2 cups cider vinegar (5 %)\n- 2 1/4 cups white sugar\n- 2 1/4 cups brown sugar\n- 2 tbsp ground cinnamon\n- 1 tbsp ground cloves\n\nCook the apples in the cider and vinegar until soft. Press them through a food mill. Cook the pulp with the sugar and spices until it rounds on a spoon. Fill hot pints and process in a boiling-water canner.\n");

        Assert.Equal(outcome, report.Outcome);
        Assert.Equal(cider == "cider", report.Findings.Any(finding => finding is { Rule: "regional-word", Level: FindingLevel.Change }));
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-20 (Asian pears keep by the lemon juice that is added).
    [Fact]
    public void Vet_FruitThatKeepsByAddedAcid_IsCalledAcidified() =>
        Assert.Equal(Acidity.Acidified, VetPints("# Asian pears\n\n- 11 lb Asian pears, peeled and halved\n- 6 cups water\n- 1 tbsp bottled lemon juice for each pint jar\n\nBoil the pears in the water for 5 minutes. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot pears and the water, and process in a boiling-water canner.\n").Acidity);

    // Source: USDA AIB 539 (rev. 2015), Guide 5, p. 5-5 (chicken with bones) and p. 5-7 (stock of bones, strained).
    [Theory]
    [InlineData("- 14 lb bone-in hens, jointed, chilled 6 to 12 hours after dressing", "Fill hot pints loosely with the raw pieces.")]
    [InlineData("- 1 roast turkey carcass\n- 6 quarts water", "Simmer the carcass 45 minutes. Strain and throw away the bones. Chill, lift off the fat. Heat the stock to boiling and fill hot pints.")]
    public void Vet_WordsOfTheWork_AreNoFood(string list, string steps) =>
        Assert.Equal(Outcome.Pressure, VetPints($"# Put up\n\n{list}\n- 1 tsp salt\n\n{steps} Process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 3, p. 3-7 to 3-8 (crushed tomatoes).
    [Fact]
    public void Vet_ATableWhoseHeadSaysForHowManyJars_ReadsOnlyFoods()
    {
        VettingReport report = VetPints("# Crushed tomatoes\n\n| for 7 pints | |\n|:--|:--|\n| ripe tomatoes | 11 lb |\n| bottled lemon juice | 1 tbsp per pint |\n| salt if wanted | 1/2 tsp per pint |\n\nScald, peel and quarter the tomatoes. Crush a few as they boil, add the rest bit by bit and boil 5 minutes. Put the lemon juice into each hot pint, fill with the hot tomatoes, and process in a boiling-water canner.\n");

        Assert.Equal(Outcome.BoilingWater, report.Outcome);
        Assert.DoesNotContain(report.Ingredients, ingredient => ingredient.Line == 3);
    }

    private const string Soup = "# Garden soup\n\n{0}- 2 lb carrots, sliced\n- 2 lb green beans, cut\n- 2 lb potatoes, cubed\n- 6 quarts beef broth\n\nBoil everything together 5 minutes. {1} Fill hot jars half full with the pieces, top up with the hot liquid, and process in a pressure canner. {2}\n";

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-18 (each food of a soup has a process of its own; no cured meat: NCHFP, Simply Soup, 2015).
    [Theory]
    [InlineData("", "", "", Outcome.Pressure)]
    [InlineData("", "Stir in a cup of soya mince.", "", Outcome.PressureAfterChanges)]
    [InlineData("", "Add the soya mince.", "", Outcome.PressureAfterChanges)]
    [InlineData("", "", "For vegetarians use soya mince.", Outcome.PressureAfterChanges)]
    [InlineData("*Everyone loves this, and Uncle wants bacon in his.*\n\n", "", "", Outcome.PressureAfterChanges)]
    [InlineData("", "", "My husband will only eat it with bacon in his.", Outcome.PressureAfterChanges)]
    public void Vet_FoodThatAnAsidePutsIn_IsAsked(string before, string step, string after, Outcome outcome) =>
        Assert.Equal(outcome, VetPints(Soup.Replace("{0}", before, StringComparison.Ordinal).Replace("{1}", step, StringComparison.Ordinal).Replace("{2}", after, StringComparison.Ordinal)).Outcome);

    // Source: NCHFP, Using atmospheric steam canners (minutes of boiling water, 45 at most); USDA AIB 539 (rev. 2015), Guide 2, p. 2-8 (applesauce: 20 minutes a pint at 1,345 feet).
    [Theory]
    [InlineData("20 minutes", Outcome.BoilingWater)]
    [InlineData("10 minutes", Outcome.BoilingWaterAfterChanges)]
    public void Vet_ASteamCanner_IsHeldAgainstBoilingWater(string time, Outcome outcome) =>
        Assert.Equal(outcome, VetPints($"# Applesauce\n\n- 20 lb apples, peeled, cored\n- 1 cup water\n\nHeat the apples in the water until tender. Press them through a food mill. Bring the sauce back to a boil and fill hot pints. Process pints {time} in the atmospheric steam canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-12 to 4-13 (mixed vegetables with crushed tomatoes).
    [Theory]
    [InlineData("4 cups", Outcome.Pressure)]
    [InlineData("24 cups", Outcome.PressureAfterChanges)]
    public void Vet_MixedVegetables_TakeAFewTomatoes(string tomatoes, Outcome outcome) =>
        Assert.Equal(outcome, VetPints($"# Mixed vegetables\n\n- 6 cups sliced carrots\n- 6 cups whole-kernel corn\n- 6 cups cut green beans\n- 6 cups shelled lima beans\n- {tomatoes} crushed tomatoes\n- water\n\nBoil everything 5 minutes in water to cover. Fill hot pints with the vegetables and the liquid. Process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-27 (blueberry pie filling with cook-type modified starch).
    [Theory]
    [InlineData("2 1/4 cups Clear Jel", Outcome.BoilingWater)]
    [InlineData("2 1/4 cups instant Clear Jel", Outcome.TestedRecipeOnly)]
    [InlineData("2 1/4 cups cornstarch", Outcome.TestedRecipeOnly)]
    public void Vet_PieFilling_RestsOnItsStarch(string starch, Outcome outcome) =>
        Assert.Equal(outcome, VetPints($"# Blueberry pie filling\n\n- 6 quarts blueberries\n- 6 cups sugar\n- {starch}\n- 7 cups cold water\n- 1/2 cup bottled lemon juice\n\nBlanch the berries for 1 minute and drain them. Cook the sugar, starch and water until thick and bubbling. Add the lemon juice and boil 1 minute. Fold in the berries, fill hot pints, and process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-8 to 4-9 (snap beans and carrots: pints 20 and 25 minutes, quarts 25 and 30).
    [Theory]
    [InlineData("Fill hot quarts with the carrots and their water. Process in a pressure canner 30 minutes.", Outcome.Pressure, "quart")]
    [InlineData("Fill hot quarts with the carrots and their water. Process in a pressure canner 25 minutes.", Outcome.PressureAfterChanges, "quart")]
    [InlineData("Fill hot pints with the carrots and their water. Process in a pressure canner 25 minutes.", Outcome.Pressure, "pint")]
    [InlineData("Fill hot jars with the carrots and their water. Pressure canner: 30 min for quarts at 15 lb.", Outcome.Pressure, "quart")]
    public void Vet_ATimeWithoutAJar_IsForTheJarThatIsFilled(string steps, Outcome outcome, string jar)
    {
        VettingReport report = VetPints($"# Carrots in water\n\n- 11 lb carrots, sliced\n- water\n\nBoil the carrots in water for 5 minutes. {steps}\n");

        Assert.Equal(outcome, report.Outcome);
        Assert.Contains(report.Findings, finding => finding.Rule == "own-process" && finding.Message.Contains($"the {jar} jar", StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-6 and 2-15 to 2-16 (apple and grape juice have a time for half gallons); Guide 1, p. 1-15 (nothing else has).
    [Theory]
    [InlineData("Fill hot half-gallon jars.", Outcome.BoilingWater)]
    [InlineData("Fill hot gallon jars.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_JuiceInHalfGallons_HasItsTime(string fill, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Grape juice\n\n- 25 lb grapes\n- water to cover\n\nCover the grapes with boiling water and simmer 10 minutes. Strain the juice through a cloth and let it settle in the refrigerator for a day. Strain it again. Heat the juice to a boil. {fill} Process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 2 p. 2-19: peaches in pints and quarts alone.
    [Fact]
    public void Vet_PeachesInHalfGallons_HaveNone() =>
        Assert.NotEqual(Outcome.BoilingWater, Vet("# Peaches\n\n- 17 lb yellow peaches, peeled, halved\n- 2 cups sugar\n- 9 cups water\n\nHeat the halves in the syrup. Fill hot half-gallon jars with the fruit and the syrup. Process in a boiling-water canner.\n").Outcome);

    private static VettingReport Vet(string text) => BuiltIn.Vetter.Vet(text, new Kitchen(600));
}
