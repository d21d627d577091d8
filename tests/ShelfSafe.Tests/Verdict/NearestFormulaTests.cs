using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Only a published recipe that is made of the dish's own main food is named as the nearest.</summary>
public sealed class NearestFormulaTests
{
    private static readonly RecipeVetter Vetter = RecipeVetter.Create(RulePack.Default);

    // Source: NCHFP, blog on pickled eggs: no home canning directions exist; USDA AIB 539 (2015) Guide 6 p. 6-20 to 6-22 (peppers), p. 6-26 (cucumbers), Guide 7 p. 7-6 (jam).
    [Theory]
    [InlineData("Pickled eggs", "24 eggs, boiled and peeled\n- 3 cups white vinegar (5%)\n- 1 jalapeno")]
    [InlineData("Pickled garlic", "12 heads garlic\n- 2 1/2 cups white vinegar (5%)\n- 1 tbsp salt")]
    [InlineData("Red onion marmalade", "2 kg red onions\n- 140 g sugar\n- 350 ml white vinegar (5%)")]
    public void Vet_AKindWithoutARecipeOfItsMainFood_NamesNone(string title, string foods)
    {
        VettingReport report = Vet($"# {title}\n\n- {foods}\n\n1. Boil everything 10 minutes.\n2. Fill hot pint jars.\n");

        Assert.Null(report.Category);
        Assert.Empty(report.Nearest);
        Assert.Contains(report.Reasons, static reason => reason.Contains("made of these main foods", StringComparison.Ordinal));
        Assert.Contains(report.Findings, static one => one.Level >= FindingLevel.Change);
    }

    // Source: NCHFP, Choice Salsa: 1 1/2 cups bottled lemon or lime juice; vinegar is weaker and may not stand in for it.
    [Fact]
    public void Vet_VinegarForLimeJuice_IsSetBesideTheSalsaItWasMadeFrom()
    {
        VettingReport report = Vet(
            "# Salsa\n\n- 6 cups peeled, chopped tomatoes\n- 5 cups chopped onions\n- 4 cups chopped green bell peppers\n- 1 1/2 cups white vinegar (5%)\n- 3 tsp salt\n\n1. Boil, then simmer 3 minutes.\n2. Fill hot pint jars. Process 15 minutes in a boiling-water canner.\n");

        Assert.Equal(Outcome.TestedRecipeOnly, report.Outcome);
        Assert.Equal("choice-salsa", report.Category?.Id);
        Assert.Equal("choice-salsa", report.Nearest[0].Id);
        Assert.Contains("bottled lemon or lime juice", report.Nearest[0].Swap, StringComparison.Ordinal);
    }

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-14: fresh tomatoes; tinned ones are another food, and the dish is a meat sauce all the same.
    [Fact]
    public void Vet_TinnedTomatoesInAMeatSauce_StillNameTheMeatSauceFirst()
    {
        VettingReport report = Vet(
            "# Ragu\n\n- 2 lb ground beef\n- 3 cans (28 oz) crushed tomatoes\n- 1 onion\n- 2 carrots\n\n1. Brown the beef and drain it. Simmer everything 2 hours.\n2. Fill hot quart jars.\n");

        Assert.Equal("spaghetti-sauce-with-meat", report.Category?.Id);
        Assert.Equal("spaghetti-sauce-with-meat", report.Nearest[0].Id);
    }

    // Source: USDA AIB 539 (2015) Guide 2 p. 2-26 and 2-28: apple pie filling holds no meat, mincemeat is made of it.
    [Fact]
    public void Vet_ApplePieFilling_IsNotToldToBecomeAMincemeat()
    {
        VettingReport report = Vet(
            "# Apple pie filling\n\n- 6 quarts sliced apples\n- 5 1/2 cups sugar\n- 1 1/2 cups cornstarch\n- 2 1/2 cups water\n- 5 cups apple juice\n- 3/4 cup bottled lemon juice\n\n1. Cook the sugar, cornstarch, water and juice until thick. Fold in the apples.\n2. Fill hot quart jars.\n");

        Assert.Equal("apple-pie-filling", report.Nearest[0].Id);
        Assert.DoesNotContain(report.Nearest, static near => near.Id == "festive-mincemeat");
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18 to 4-19: soup holds no vinegar; Guide 6 p. 6-15: pickled beets.
    [Fact]
    public void Vet_SourVegetables_AreNotSetBesideTheSoup()
    {
        VettingReport beets = Vet("Beets for winter\n\n- 5 lb beets, sliced\n- 2 cups vinegar\n- 2 cups water\n\n1. Boil the beets. Add vinegar and water, fill jars.\n");

        Assert.NotEqual("soup", beets.Category?.Id);
        Assert.DoesNotContain(beets.Findings, static one => one.Rule == "too-little-liquid");
    }

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-29: pickled green tomato relish; So Easy to Preserve: apple chutney has no green tomatoes.
    [Fact]
    public void Vet_AChutneyOfGreenTomatoes_NamesWhatTheyAreMadeIntoFirst()
    {
        VettingReport report = Vet(
            "# Green tomato chutney\n\n- 2 kg green tomatoes\n- 500 g apples\n- 400 g onions\n- 300 g raisins\n- 300 g brown sugar\n- 500 ml malt vinegar\n\n1. Simmer 2 hours.\n2. Fill hot jars.\n");

        Assert.Contains("reen tomato", report.Nearest[0].Name, StringComparison.Ordinal);
        Assert.Equal(report.Category?.Id, report.Nearest[^1].Id);
    }

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-13: vegetables in a tomato sauce are those of spaghetti sauce; only plain sauce has the boiling-water time.
    [Fact]
    public void Vet_TomatoAndVegetableSauce_IsSetBesideSpaghettiSauceAndGetsNoTime()
    {
        VettingReport report = Vet(
            "# Tomato and pepper sauce\n\n- 3 kg tomatoes\n- 2 onions\n- 2 green peppers\n- 100 ml olive oil\n\n1. Cook an hour. Press through a sieve.\n2. Fill hot jars.\n");

        Assert.Equal(Outcome.TestedRecipeOnly, report.Outcome);
        Assert.Equal("spaghetti-sauce-without-meat", report.Category?.Id);
    }

    // Source: So Easy to Preserve, 6th ed. 2014: Spiced tomato jam with powdered pectin, 5 minutes in sterile half-pint or pint jars.
    [Theory]
    [InlineData("3 cups", "1/4 cup bottled lemon juice", Outcome.BoilingWater)]
    [InlineData("3 cups", "2 tbsp bottled lemon juice", Outcome.TestedRecipeOnly)]
    [InlineData("4 cups", "1/4 cup bottled lemon juice", Outcome.TestedRecipeOnly)]
    public void Vet_SpicedTomatoJam_IsCoveredAtItsOwnAmountsAlone(string tomatoes, string lemon, Outcome outcome)
    {
        VettingReport report = Vet(
            $"# Spiced tomato jam\n\n- {tomatoes} peeled, chopped, cooked tomatoes\n- 1 1/2 tsp grated lemon rind\n- 1/2 tsp ground allspice\n- 1/2 tsp ground cinnamon\n- 1/4 tsp ground cloves\n- 4 1/2 cups sugar\n- 1 box powdered pectin\n- {lemon}\n\n1. Stir the pectin into the tomatoes, lemon juice and spices and bring to a boil. Stir in the sugar and boil hard 1 minute.\n2. Fill hot sterile half-pint jars, leaving 1/4 inch headspace. Process 5 minutes in a boiling-water canner.\n");

        Assert.Equal(outcome, report.Outcome);
        Assert.Equal("tomato-jam-powdered-pectin", report.Category?.Id);
    }

    private static VettingReport Vet(string text) => Vetter.Vet(text, Kitchen.Unknown);
}
