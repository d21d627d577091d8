using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Verdict;

/// <summary>What a text says behind the canner of the day the jar is opened changes nothing; what goes into the jar does.</summary>
/// <remarks>Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 4, p. 4-17 to 4-18 (mash and thicken after opening).</remarks>
public class ServedLaterTests
{
    private static VettingReport Vet(string before, string after, string notes = "") => VetPints(
        "# Carrots in water\n\n- 11 lb carrots, sliced\n- 1 tsp salt per quart\n- water\n\nSimmer the carrots 5 minutes." + before
        + " Fill hot pints with the carrots and the cooking water, 1 inch headspace. Process in the pressure canner 30 minutes." + after + notes + "\n");

    [Theory]
    [InlineData("Good as a base for stew or pot pie.")]
    [InlineData("With grilled cheese sandwiches.")]
    [InlineData("Mash with butter for a side dish.")]
    [InlineData("Drain and mash with butter when you open the jar.")]
    [InlineData("Kids like it with crackers.")]
    [InlineData("For a thicker dish, add a roux when you reheat it.")]
    [InlineData("Makes a quick supper with dumplings.")]
    [InlineData("Thicken with flour at serving time.")]
    [InlineData("Double the batch, the proportions stay the same.")]
    public void Vet_ANoteOnServingBehindTheCanner_ChangesNothing(string note)
    {
        Assert.Equal(Outcome.Pressure, Vet(string.Empty, " " + note).Outcome);
        Assert.Equal(Outcome.Pressure, Vet(string.Empty, string.Empty, "\n\n## Notes\n\n" + note).Outcome);
    }

    [Theory]
    [InlineData("Mash with butter for a side dish.")]
    [InlineData("Thicken with flour at serving time.")]
    [InlineData("Good with a cup of cream.")]
    public void Vet_TheSameWordsBeforeTheJarsAreFilled_Count(string words) =>
        Assert.NotEqual(Outcome.Pressure, Vet(" " + words, string.Empty).Outcome);

    [Theory]
    [InlineData("Good with a cup of cream in it.")]
    [InlineData("Great with a spoon of butter added before you close the jars.")]
    [InlineData("Next time add butter to each jar, good for a side dish.")]
    [InlineData("Double the carrots.")]
    [InlineData("Half the recipe does not do.")]
    [InlineData("Stir butter into the jars for a side dish.")]
    [InlineData("Best with noodles boiled along in the pot.")]
    [InlineData("Try it with barley cooked in.")]
    [InlineData("We like it with flour in.")]
    [InlineData("Heat the second batch with flour for the next pie.")]
    [InlineData("Blend the second half before it goes in, good for a side dish.")]
    [InlineData("Makes a good base for chowder if you use milk for the broth.")]
    [InlineData("Mash the potatoes first for a thicker supper.")]
    [InlineData("Serve it with the noodles cooked in the broth beforehand.")]
    [InlineData("Serve with cream stirred in before you fill the jars.")]
    [InlineData("Serve with dumplings, simmered in the pot, then jar.")]
    [InlineData("We eat it with rice that cooks in the pot.")]
    public void Vet_WhatGoesIntoTheJarBehindTheCanner_Counts(string words) =>
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, " " + words).Outcome);

    [Theory]
    [InlineData("A knob of butter in each jar makes it taste better at dinner.")]
    [InlineData("I stir in a splash of cream so it is ready for supper.")]
    [InlineData("Serve with rice, which I stir into the pot at the end.")]
    [InlineData("When you open the jar the noodles will be soft.")]
    [InlineData("Plate some for dinner and add cream to the rest before it goes back into the pot.")]
    [InlineData("Serve up into pints with butter.")]
    [InlineData("The family recipe has cream.")]
    [InlineData("To serve at Christmas, add a cup of cream to each quart and seal.")]
    [InlineData("Serving suggestion: replace the water with cream.")]
    [InlineData("The secret of a good supper is a cup of cream per quart.")]
    [InlineData("For a richer dinner, cook it all in cream.")]
    [InlineData("Cream and brandy go in for serving at Christmas.")]
    [InlineData("Season to taste with cream and butter.")]
    [InlineData("Great with lentils stirred in for body.")]
    [InlineData("Eat these with butter melted in as they cook.")]
    public void Vet_ServingWordsThatPutSomethingIntoTheJar_Count(string words)
    {
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, " " + words).Outcome);
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, string.Empty, "\n\n## Notes\n\n" + words).Outcome);
    }

    [Theory]
    [InlineData("Top with butter, then the lid.")]
    [InlineData("Put a pat of butter in each jar.")]
    public void Vet_PartAboutServingThatFillsTheJar_Counts(string words) =>
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, string.Empty, "\n\n## Serving\n\n" + words).Outcome);

    [Theory]
    [InlineData("After opening, thicken with flour or cornstarch.")]
    [InlineData("Once opened, heat with a spoonful of butter.")]
    [InlineData("Stir in sour cream at the table.")]
    [InlineData("For supper, heat a jar with a little butter.")]
    [InlineData("For dinner, open a jar and add cooked pasta.")]
    [InlineData("Goes well with roast beef.")]
    [InlineData("Spread on toast with butter.")]
    [InlineData("Never put cream or noodles in the jar; add them when you serve it.")]
    [InlineData("Each jar serves four with cornbread.")]
    [InlineData("Serve with a little cream stirred in.")]
    [InlineData("Grandma served these with ham at Easter.")]
    public void Vet_OrdinaryServingWords_ChangeNothing(string words)
    {
        Assert.Equal(Outcome.Pressure, Vet(string.Empty, " " + words).Outcome);
        Assert.Equal(Outcome.Pressure, Vet(string.Empty, string.Empty, "\n\n## Notes\n\n" + words).Outcome);
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 4, p. 4-18: what a dish holds beside the tested foods makes another dish of it.
    [Theory]
    [InlineData("Add onion soup.")]
    [InlineData("Add a can of carrots.")]
    [InlineData("I add a glass of wine.")]
    [InlineData("I add honey.")]
    public void Vet_ReadyDishCanOrDrinkThatTheListHasNot_Counts(string words)
    {
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, " " + words).Outcome);
        Assert.NotEqual(Outcome.Pressure, Vet(string.Empty, string.Empty, "\n\n## Notes\n\n" + words).Outcome);
    }

    [Theory]
    [InlineData("1 cup cream, for serving", true)]
    [InlineData("2 cups cooked noodles, to serve", true)]
    [InlineData("1 jar sour cream, for serving", true)]
    [InlineData("1 cup cream, for serving (stir in before filling)", false)]
    [InlineData("2 cups noodles for serving or to put in the jars", false)]
    [InlineData("2 eggs, to serve, beaten in", false)]
    public void Vet_LineForServing_StaysOutOfTheJarUnlessItSaysMore(string line, bool outside) =>
        Assert.Equal(outside, VetPints("# Carrots in water\n\n- 11 lb carrots, sliced\n- water\n- " + line + "\n\nSimmer the carrots 5 minutes. Fill hot pints with the carrots and the cooking water, 1 inch headspace. Process in the pressure canner 30 minutes.\n").Outcome == Outcome.Pressure);

    [Fact]
    public void Vet_ButterSavedForLast_Counts() =>
        Assert.NotEqual(Outcome.Pressure, Vet(" Save the butter for last, and work it through.", string.Empty).Outcome);
}
