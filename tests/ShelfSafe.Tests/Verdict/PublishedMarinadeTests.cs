using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Recipes written as they are published, and what a word of the steps means in them.</summary>
public sealed class PublishedMarinadeTests
{
    private const string List = "7 lb small whole mushrooms\n- 1/2 cup bottled lemon juice\n- 2 cups olive or salad oil\n- 2 1/2 cups white vinegar (5%)\n- 1 Tbsp dried basil\n- 1 Tbsp canning salt\n- 1/2 cup finely chopped onions\n- 2 cloves garlic";

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-18 to 6-19, marinated whole mushrooms: cooked in water with lemon juice, drained, packed with hot oil and vinegar.
    [Theory]
    [InlineData("Add the lemon juice and water to cover. Boil and simmer 5 minutes. Drain. Heat oil, vinegar, basil, salt and onions to boiling.", Outcome.BoilingWater)]
    [InlineData("Add the vinegar and water to cover. Boil and simmer 5 minutes. Drain. Heat oil, lemon juice, basil, salt and onions to boiling.", Outcome.TestedRecipeOnly)]
    [InlineData("Add the lemon juice. Simmer 5 minutes. Drain. Heat oil, vinegar, 1 cup water, basil, salt and onions to boiling.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_WaterThatIsDrainedOff_IsNotInTheMarinade(string steps, Outcome outcome)
    {
        VettingReport report = Vet($"# Marinated whole mushrooms\n\n- {List}\n\n1. {steps}\n2. Put garlic in half-pint jars, fill with mushrooms and hot oil/vinegar solution, leaving 1/2-inch headspace. Remove bubbles, adjust lids.\n3. Process half-pints 20 minutes in a boiling-water canner.\n");

        Assert.Equal(outcome, report.Outcome);
        Assert.DoesNotContain(report.Findings, static finding => finding.Rule == "unsafe-method");
    }

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-14, pickled dilled beans: 4 cups of vinegar to 4 cups of water.
    [Theory]
    [InlineData("- 4 cups water\n", "Combine salt, vinegar, water and pepper flakes.", Outcome.BoilingWater)]
    [InlineData("- 4 cups water\n", "Combine salt, vinegar, 4 cups water and pepper flakes.", Outcome.BoilingWater)]
    [InlineData("- 4 cups water\n", "Combine salt, vinegar, 6 cups water and pepper flakes.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Combine salt, vinegar, 6 cups water and pepper flakes.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Bring 2 litres of water to a boil with the salt. Add the vinegar and the pepper flakes.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("- 4 cups water\n", "Soak the beans in 2 gallons of ice water. Combine salt, vinegar, water and pepper flakes.", Outcome.BoilingWater)]
    [InlineData("- 4 cups water\n", "Heat 5 quarts of water in the canner. Combine salt, vinegar, water and pepper flakes.", Outcome.BoilingWater)]
    [InlineData("- 1/2 tsp turmeric in 6 cups water\n", "Combine salt, vinegar and pepper flakes.", Outcome.BoilingWaterAfterChanges)]
    [InlineData("", "Bring 6 cups of water to a boil with the salt. Add the vinegar. Drain the jars.", Outcome.BoilingWaterAfterChanges)]
    public void Vet_MoreWaterThanListed_IsAsked(string water, string steps, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Pickled dilled beans\n\n- 4 lb fresh green beans\n- 8 heads fresh dill\n- 8 cloves garlic\n- 1/2 cup canning salt\n- 4 cups white vinegar (5%)\n- 1 tsp hot red pepper flakes\n{water}\nTrim the beans to 4-inch lengths. In each pint jar place dill and garlic and stand the beans upright. {steps} Bring to a boil. Cover the beans with the hot solution, leaving 1/2 inch. Process pints in a boiling-water canner.\n").Outcome);

    // Source: as above.
    [Theory]
    [InlineData("4 cups white vinegar (5%)", false)]
    [InlineData("4 cups white vinegar (5%) in 6 cups water", true)]
    [InlineData("4 cups white vinegar (5%), with 6 cups water", true)]
    public void Vet_WaterInTheLineOfTheVinegar_IsAsked(string vinegar, bool asked)
    {
        VettingReport report = Vet($"# Pickled dilled beans\n\n- 4 lb fresh green beans\n- 8 heads fresh dill\n- 8 cloves garlic\n- 1/2 cup canning salt\n- {vinegar}\n\nTrim the beans to 4-inch lengths. In each pint jar place dill and garlic and stand the beans upright. Boil the vinegar and the salt. Cover the beans with the hot solution, leaving 1/2 inch. Process pints in a boiling-water canner.\n");

        Assert.Equal(asked, report.Outcome != Outcome.BoilingWater);
    }

    // Source: NCHFP, garlic in oil: food under oil without acid is kept cold for a few days.
    [Fact]
    public void Vet_OilAloneOverMushrooms_IsStillStopped() =>
        Assert.Contains(Vet("# Mushrooms\n\n- 2 lb mushrooms\n- 2 cups olive oil\n\nSimmer the mushrooms, pack into jars and cover with hot oil. Keep in the cupboard.\n").Findings, static finding => finding is { Rule: "unsafe-method", Level: FindingLevel.Stop });

    // Source: general English usage.
    [Theory]
    [InlineData("Cook to a thick butter.", false)]
    [InlineData("Cook down into a smooth butter.", false)]
    [InlineData("Cook until thick and stir in butter.", true)]
    [InlineData("Cook to a thick cream, with butter.", true)]
    public void Vet_WhatTheFruitBecomes_IsNoDairy(string steps, bool dairy) =>
        Assert.Equal(dairy, Vet($"# Plum spread\n\n- 2 kg plums\n- 500 g sugar\n\n{steps} Fill half-pint jars.\n").Findings.Any(static finding => finding.Rule is "dairy" or "fat"));

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-6 to 5-7: meat in strips, raw pack, 90 minutes for quarts at 11 pounds on a dial gauge.
    [Fact]
    public void Vet_PoundsOfADialGauge_AreNoFood()
    {
        VettingReport report = Vet("# Canned venison\n\nCut 10 pounds of venison into 1-inch strips, and trim all fat. Pack raw in quart jars to 1 inch from the top, 1 tsp salt per quart, no liquid. Process at 11 pounds dial gauge for 90 minutes in a pressure canner.\n");

        Assert.Equal(Outcome.Pressure, report.Outcome);
        Assert.Equal(["venison", "salt"], report.Ingredients.Select(static line => line.FoodId));
    }

    // Source: NCHFP, pickled eggs: no home canning directions; they are kept in the refrigerator.
    [Theory]
    [InlineData("Bar eggs", Outcome.FreezeOrChill)]
    [InlineData("Eggs in vinegar", Outcome.FreezeOrChill)]
    [InlineData("Scrambled eggs", Outcome.NotAJarFood)]
    public void Vet_EggsThatAreKept_AreColdFood(string title, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# {title}\n\n- 12 hard boiled eggs, peeled\n- 2 cups white vinegar (5%)\n- 1 onion\n\nCover the eggs with boiling vinegar.\n").Outcome);

    private static VettingReport Vet(string text) => BuiltIn.Vetter.Vet(text, new Kitchen(300, null, null));
}
