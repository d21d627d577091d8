using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Published procedures, and faults in them, in the words of people who know no published book.</summary>
public class StrangersWordingTests
{
    private static VettingReport Vet(string recipe) => Vetter.Vet(recipe, Kitchen.Unknown);

    private const string Relish = "# {0}\n\n- 5 cups chopped tomatillos\n- 2 cups chopped long green chiles\n- 4 cups chopped onions\n- 1 cup bottled lemon juice\n- 6 cloves garlic, chopped\n- 1 tbsp salt\n\nBoil everything together in a pot, then simmer 20 minutes. {1} Ladle hot into pint jars, leaving 1/2 inch of headspace. Process 15 minutes in a boiling-water canner.\n";

    private const string Pickles = "# Bread and butter pickles\n\n- 6 lb pickling cucumbers\n- 8 cups sliced onions\n- 1/2 cup canning salt\n- 4 cups vinegar (5%)\n- 4 1/2 cups sugar\n- 2 tbsp mustard seed\n- 1 tbsp ground turmeric\n\nSlice the cucumbers 3/16 inch thick, mix with the onions and salt, chill under ice 3 hours and drain. Boil the vinegar, sugar and spices 10 minutes, add the vegetables and bring back to a boil. {0} Fill hot pint jars, 1/2 inch headspace. Process 10 minutes in a boiling-water canner. {1}\n";

    // Source: USDA AIB 539 (rev. 2015), Guide 3, p. 3-24 (tomatillo green salsa: simmered 20 minutes, in pieces, pints 15 minutes).
    [Theory]
    [InlineData("Salsa verde for the pantry", "", Outcome.BoilingWater)]
    [InlineData("Mushroom soup salsa", "", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Salsa verde", "Mash everything with a potato masher.", Outcome.TestedRecipeOnly)]
    [InlineData("Salsa verde", "Put half of it through the food mill.", Outcome.TestedRecipeOnly)]
    [InlineData("Salsa verde", "Boil it down until it is thick.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Salsa verde", "Fill litre bottles.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Salsa verde", "Use the juice of real lemons, not the bottle.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_APublishedSalsa_KeepsItsOwnNameAndItsPieces(string title, string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet(Relish.Replace("{0}", title, StringComparison.Ordinal).Replace("{1}", step, StringComparison.Ordinal)).Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 6, p. 6-14 (bread-and-butter pickles); Guide 1, p. 1-10 to 1-30 (methods not recommended, cooling, seals, spoilage).
    [Theory]
    [InlineData("", "", Outcome.BoilingWater)]
    [InlineData("Mash the lot with a masher.", "", Outcome.TestedRecipeOnly)]
    [InlineData("Boil it down by half.", "", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Cook it to a pulp.", "", Outcome.TestedRecipeOnly)]
    [InlineData("Taste, and water it down if it is too sour.", "", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Process only until the lids ping.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "If the lids do not seal, just tighten them.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "The dishwasher's sanitize cycle does the job too.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "At my altitude I still use the same time.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "I go by my gut on the time.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "My aunt never timed it and nobody died.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Then turn them lid-down on a towel.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "If the lid flexes, give it a day or two and it will suck down.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Screw the bands as tight as you can before they go in.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_AFaultToldInPassing_TakesTheYesBack(string before, string after, Outcome outcome) =>
        Assert.Equal(outcome, Vet(Pickles.Replace("{0}", before, StringComparison.Ordinal).Replace("{1}", after, StringComparison.Ordinal)).Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 7, p. 7-7 (berry jam of fresh fruit); Guide 1, p. 1-13 to 1-25 (headspace, canner, seals).
    [Theory]
    [InlineData("", "", Outcome.BoilingWater)]
    [InlineData("Let it ferment on the counter for three days first.", "", Outcome.TestedRecipeOnly)]
    [InlineData("", "Don't worry about the headspace.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "I stack three layers of jars without water between.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Jars that did not seal get a second go next weekend.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "A 20 minute bath does for everything I can.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Boil the sealed jars on a wood fire for as long as the kids stay interested.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_AJamWithAFaultToldInPassing_IsNotCoveredAsWritten(string before, string after, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Hedgerow blackberry jam\n\n- 4 cups crushed blackberries\n- 4 cups white sugar\n\nPut the berries and sugar in a wide pan. {before} Warm slowly until the sugar has gone, then boil fast until it jells. Ladle into hot sterilized half-pint jars with 1/4 inch headspace, and process 5 minutes in a boiling-water canner. {after}\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 1, p. 1-26 to 1-30 (a jar that spurts or foams is destroyed, never eaten).
    [Fact]
    public void Vet_AFizzingJarThatIsEaten_IsStopped() =>
        Assert.Contains(
            Vet(Pickles.Replace("{0}", string.Empty, StringComparison.Ordinal).Replace("{1}", "If it fizzes when you open it, boil it and eat it anyway.", StringComparison.Ordinal)).Findings,
            finding => finding is { Rule: "unsafe-method", Level: FindingLevel.Stop });

    // Source: USDA AIB 539 (rev. 2015), Guide 5, p. 5-6 (cubes of meat: pints 75, quarts 90 minutes; 10 pounds weighted to 1,000 feet), p. 5-3 (packed loosely).
    [Theory]
    [InlineData("Pressure canner: 90 min for quarts, 10 lb weighted gauge below 1000 ft.", Outcome.Pressure)]
    [InlineData("Pressure canner: 60 min for quarts, 10 lb weighted gauge below 1000 ft.", Outcome.PressureAfterChanges)]
    [InlineData("Pressure canner: 90 min for quarts, 5 lb weighted gauge below 1000 ft.", Outcome.PressureAfterChanges)]
    [InlineData("Pack it down hard so that there are no gaps. Pressure canner: 90 min for quarts, 10 lb weighted gauge.", Outcome.PressureAfterChanges)]
    [InlineData("Pressure canner: 90 min for quarts, 10 lb weighted gauge. I leave the second lot on the side till evening.", Outcome.PressureAfterChanges)]
    public void Vet_MeatWithItsFiguresInAnyOrder_IsHeldAgainstTheTable(string process, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Venison in broth\n\n- 20 lb venison, trimmed of fat, in 1-inch cubes\n- 4 quarts beef broth, boiling\n- salt, 1 tsp/quart\n\nBrown the cubes in a dry pan until rare. Fill hot quart jars loosely, cover with boiling broth, 1 inch of headspace. {process}\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 3, p. 3-5 (tomato juice: acid into each jar, the juice heated again, quarts 40 minutes).
    [Theory]
    [InlineData("Process quarts 40 minutes in a boiling water canner.", Outcome.BoilingWater)]
    [InlineData("Boil the jars for a quarter of an hour in a boiling water canner.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("Bake the jars. Process quarts 40 minutes in a boiling water canner.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_JuiceHeatedAgainBehindTheAcid_IsNoHeatForJars(string process, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Tomato juice\n\n- 23 pounds tomatoes\n- 1/2 teaspoon citric acid for each quart jar\n\n1. Quarter the tomatoes into the pot and crush while they boil. Simmer 5 minutes.\n2. Press through a sieve.\n3. Put citric acid in each hot quart jar. Heat the juice to boiling again, fill, 1/2-inch headspace.\n4. {process}\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-8 (applesauce: quarts 20 minutes).
    [Theory]
    [InlineData("21 lb apples, mixed sweet and tart", Outcome.BoilingWater)]
    [InlineData("21 lb apples, a pie crust", Outcome.BoilingWaterAfterChanges)]
    public void Vet_KindsOfTheFoodBehindAComma_AreNoFoods(string apples, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Applesauce\n\n- {apples}\n- water\n\nPeel, core and slice. Heat with half a cup of water until tender. Run through a food mill. Bring back to a boil, fill hot quart jars, leaving 1/2 inch. Process quarts 20 minutes in a boiling water canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 6, p. 6-20 (pickled dilled beans: pints 5 minutes).
    [Fact]
    public void Vet_DirectionsUnderAYieldAsHeading_AreSteps()
    {
        VettingReport report = Vet("# Dilly beans\n\n#### Makes 8 pints\n\n- 4 lbs fresh tender green or yellow beans (5 to 6 inches long)\n- 8 to 16 heads fresh dill\n- 8 cloves garlic\n- 1/2 cup canning salt\n- 4 cups white vinegar (5%)\n- 4 cups water\n\nTrim the beans to 4-inch lengths. Put dill and a garlic clove in each hot pint jar. Stand the beans upright. Bring the salt, vinegar and water to a boil and pour over, 1/2 inch from the top. Process 5 minutes in a boiling-water canner.\n");

        Assert.Equal(Outcome.BoilingWater, report.Outcome);
        Assert.DoesNotContain(report.Findings, finding => finding.Rule == "no-steps");
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 5, p. 5-7 (stock of beef bones, strained, the fat lifted off).
    [Theory]
    [InlineData("- 2 onions", "", Outcome.Pressure)]
    [InlineData("- 1/4 cup miso", "", Outcome.PressureAfterChanges)]
    [InlineData("- 2 onions", "Mash the marrow into it.", Outcome.PressureAfterChanges)]
    public void Vet_ABrownStock_IsNamedForItsColour(string other, string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Brown stock\n\n- 10 lb beef bones, sawn\n{other}\n- water to cover\n\nRoast the bones 40 minutes. Cover with water and simmer 3 hours. {step} Strain and throw out the bones. Chill, take off the fat. Reheat to a boil, fill pint jars with 1 inch space. 20 minutes, 11 PSI, pressure canner.\n").Outcome);

    // Source: University of Wisconsin-Madison Extension, dry soup mixes (kept dry; liquid is added on the day).
    [Theory]
    [InlineData("# Golden milk powder\n\n- 1/2 cup ground turmeric\n- 3 tbsp ground cinnamon\n- 2 tbsp ground ginger\n\nWhisk. Keep in a small jar away from light.\n\nTo use: 1 tsp in a mug of hot milk with some honey.\n", Outcome.DryStorage)]
    [InlineData("# Ranch powder\n\n- 1/2 cup buttermilk powder\n- 1 tbsp dried parsley\n- 2 tsp garlic powder\n- 1 tsp salt\n\nCombine in a jar. For dressing mix 2 tbsp with 1/2 c mayo and 1/2 c milk.\n", Outcome.DryStorage)]
    [InlineData("# Ranch powder\n\n- 1/2 cup buttermilk\n- 1 tbsp dried parsley\n- 2 tsp garlic powder\n- 1 tsp salt\n\nCombine in a jar.\n", Outcome.FreezeOrChill)]
    public void Vet_APowderNamedForWhatItMakes_StaysDry(string recipe, Outcome outcome) =>
        Assert.Equal(outcome, Vet(recipe).Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-12 (cherries, sour, in water or syrup: pints 15 minutes) and Guide 4, p. 4-18 (thicken at serving).
    [Theory]
    [InlineData("When you open a jar for pie, thicken the juice with cornstarch.", Outcome.BoilingWater)]
    [InlineData("When you want pie, thicken the juice with cornstarch.", Outcome.FreezeOrChill)]
    public void Vet_PieCherries_AreNoPie(string later, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Pie cherries\n\n- 11 lb sour cherries, pitted\n- 4 cups sugar\n- 6 cups water\n\nBoil the water and sugar. Add the cherries and bring to a boil again. Ladle the hot cherries and liquid into hot pint jars, 1/2 inch of headspace. Process 15 minutes in a boiling water canner. {later}\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-18 (soups: no thickener, no dense food); 21 CFR 114.3 (a sauce with low-acid foods).
    [Theory]
    [InlineData("# Chilli\n\n- 2 lb ground beef\n- 1 quart crushed tomatoes\n- 1/2 cup masa harina to bind\n\nBrown the beef, add the rest and simmer.\n", "masa harina", "thickener")]
    [InlineData("# Stew\n\n- 1 kg floury potatoes, boiled & mashed\n- 250 g beef\n- 1 litre water\n\nSimmer.\n", "potatoes", "dense")]
    [InlineData("# Teriyaki sauce\n\n- 120 ml soy sauce\n- 120 ml mirin\n- 2 tbsp sugar\n\nBubble for 5 minutes.\n", "soy sauce", "untested-food")]
    [InlineData("# Chai concentrate\n\n- 8 black tea bags\n- 6 cups water\n- 8 cloves\n\nBoil the spices, steep the tea, strain.\n", "tea", "untested-food")]
    public void Vet_AFoodThatNoProcessCovers_IsNamed(string recipe, string words, string rule) =>
        Assert.Contains(Vet(recipe).Findings, finding => finding.Rule == rule && finding.Level > FindingLevel.Note && finding.Ingredient?.Contains(words, StringComparison.Ordinal) is true);

    // Source: USDA AIB 539 (rev. 2015), Guide 2, p. 2-21 (rhubarb: 1/2 cup sugar for each quart of fruit, 15 minutes).
    [Theory]
    [InlineData("1/2 cup sugar for each quart of fruit", Outcome.BoilingWater)]
    [InlineData("1/2 cup sugar for each quart of cream", Outcome.FreezeOrChill)]
    public void Vet_WhatAnAmountIsMeasuredBy_IsTheListedFood(string sugar, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Stewed rhubarb\n\n- 10 1/2 lb rhubarb, in 1-inch pieces\n- {sugar}\n\nToss the rhubarb with the sugar until juice shows. Heat gently to a boil. Fill hot pint jars, 1/2 inch headspace. Process 15 minutes in a boiling water canner.\n").Outcome);

    // Source: USDA AIB 539 (rev. 2015), Guide 3, p. 3-8 to 3-9 (whole tomatoes in water: quarts 45 minutes).
    [Theory]
    [InlineData("the hot tomatoes and the liquid they cooked in", Outcome.BoilingWater)]
    [InlineData("the hot tomatoes, then leave them where the jars cooked in the sun", Outcome.BoilingWaterAfterChanges)]
    public void Vet_TheLiquidThatFoodCookedIn_IsNoHeatForJars(string filling, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Tomatoes in water\n\n- 21 lb tomatoes\n- 2 Tbsp bottled lemon juice per quart jar\n- water to cover\n\nDip in boiling water and slip off the skins. Put the lemon juice in each jar. Cover the tomatoes with water and boil gently 5 minutes. Fill hot quart jars with {filling}, half an inch of headspace. Process 45 minutes in a boiling-water canner.\n").Outcome);

    // Source: NCHFP, pickled eggs (refrigerated; botulism from pickled eggs at room temperature).
    [Fact]
    public void Vet_EggsOnTheBarTop_AreKeptWithoutAProcess() =>
        Assert.Contains(
            Vet("# Pub eggs\n\n- 12 hard boiled eggs\n- 2 cups malt vinegar\n\nBoil the vinegar and pour it over the eggs in a big jar. They keep on the bar top for a month, no fridge.\n").Findings,
            static finding => finding is { Rule: "unsafe-method", Level: >= FindingLevel.Change });

    // Source: USDA AIB 539 (rev. 2015), Guide 4, p. 4-18 (what thickens or is dairy waits for serving).
    [Theory]
    [InlineData("cream, for the table", Outcome.Pressure)]
    [InlineData("cream for the table, stirred into the pot", Outcome.PressureAfterChanges)]
    public void Vet_FoodForTheTable_StaysOutUnlessItGoesIntoThePot(string cream, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Garden soup\n\n- 2 lb carrots, sliced\n- 2 lb green beans, cut\n- 2 lb potatoes, cubed\n- 6 quarts beef broth\n- {cream}\n\nBoil the vegetables in the broth 5 minutes. Fill hot jars half full with the pieces, top up with the hot liquid, and process in a pressure canner.\n").Outcome);

    // Source: general English usage; an extract keeps by its alcohol and is no food for a canner.
    [Fact]
    public void Vet_VanillaExtract_IsNoJarFood() =>
        Assert.Equal(Outcome.NotAJarFood, Vet("# Vanilla extract\n\n- 6 vanilla beans\n- 1 cup vodka\n\nSplit the beans, cover with vodka and wait 8 weeks.\n").Outcome);
}
