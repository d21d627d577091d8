using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Soups, meat, fish, vegetables, eggs and oil as a home cook writes them, each beside its neighbour that turns the answer.</summary>
public sealed class HomePacksTests
{
    private const string Beef = "# Raw-packed beef cubes\n\n- 7 lb lean beef round, chilled, in 1-inch cubes, fat trimmed\n- 1/2 teaspoon salt per pint\n\nAdd salt to hot pint jars. Fill loosely with raw beef, leaving 1 inch headspace. Do not add liquid. Wipe rims, adjust lids. {0}\n";

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-16 to 1-23; NCHFP 2014, electric multi-cookers: filled jars of meat get a pressure canner and nothing else.
    [Theory]
    [InlineData("Process pints 75 minutes in a pressure canner.", Outcome.Pressure)]
    [InlineData("Stand 4 jars on the trivet of my 8-quart electric multicooker, 1 cup water, manual high, 75 minutes, natural release.", Outcome.PressureAfterChanges)]
    [InlineData("Pints go in the instapot for 75 minutes.", Outcome.PressureAfterChanges)]
    [InlineData("Crockpot, 8 hours.", Outcome.PressureAfterChanges)]
    [InlineData("Zorgblat, 75 minutes.", Outcome.PressureAfterChanges)]
    [InlineData("75 minutes.", Outcome.PressureAfterChanges)]
    [InlineData("", Outcome.PressureAfterChanges)]
    public void Vet_FilledJars_MustMeetAPressureCanner(string heat, Outcome outcome) =>
        Assert.Equal(outcome, Vet(Beef.Replace("{0}", heat, StringComparison.Ordinal)).Outcome);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-8 and 1-10: low-acid food is not boiled, baked or vacuum-packed for the shelf.
    [Theory]
    [InlineData("Pack in quarts. Boil 3 hours.", "only boiled")]
    [InlineData("Pack in quarts and cover with boiling water. Boil in the wash copper 3 hours.", "only boiled")]
    [InlineData("Pack into jars and cover with water. Boil the jars 40 minutes.", "only boiled")]
    [InlineData("Into hot jars with boiling water, and into the oven at 120 C for an hour.", "oven")]
    [InlineData("Fill the jars. Suck out the air with the jar attachment and keep in the pantry.", "vacuum")]
    [InlineData("Fill the jars. 2 weeks on the counter and then anywhere.", "room temperature")]
    public void Vet_CarrotsByAnotherMethod_AreToldWhatIsWrong(string method, string told)
    {
        VettingReport report = Vet($"# Carrots\n\n- 12 lb carrots, peeled and sliced\n- 1 tsp salt per jar\n\n{method}\n");

        Assert.NotEqual(Outcome.Pressure, report.Outcome);
        Assert.Contains(report.Findings, finding => finding is { Rule: "unsafe-method", Level: >= FindingLevel.Change } && finding.Message.Contains(told, StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-9 (fish: pints 100 minutes), p. 5-8 (clams: boiled with lemon juice), Guide 4 p. 4-18 (greens: washed until grit free).
    [Theory]
    [InlineData("# Salmon\n\n25 pounds fresh salmon, canning salt, 1 teaspoon a pint.\n\nRemove head, tail, fins and scales. Cut into 3 1/2-inch lengths. Fill hot pint jars, leaving 1 inch headspace. Process pints 100 minutes in a pressure canner: 11 pounds dial gauge to 2,000 feet.", Outcome.Pressure)]
    [InlineData("# Greens\n\n- 28 lb spinach\n- water\n\nWash until free of grit. Steam 3 to 5 minutes. Fill jars loosely with greens and boiling water, leaving 1 inch headspace. Pressure canner, pints 70, quarts 90.", Outcome.Pressure)]
    [InlineData("# Greens\n\n- 28 lb spinach\n- water\n\nSteam 3 to 5 minutes. Stir in the grits. Fill jars loosely with greens and boiling water, leaving 1 inch headspace. Pressure canner, pints 70, quarts 90.", Outcome.FreezeOrChill)]
    [InlineData("# Clams\n\n5 qt clam meat, 3 tbsp bottled lemon juice, 3 tbsp salt, water\n\nScrub shells, steam 5 minutes, and open. Boil the meat 2 minutes in water with the lemon juice, drain. Fill hot pint jars with the meat and hot water, 1-inch headspace. Pressure canner, pints 70 minutes.", Outcome.Pressure)]
    [InlineData("# Clams\n\n5 qt clam meat, 3 tbsp lemon juice, 3 tbsp salt, water\n\nScrub shells, steam 5 minutes, and open. Boil the meat 2 minutes in water with the lemon juice, drain. Fill hot pint jars with the meat and hot water, 1-inch headspace. Pressure canner, pints 70 minutes.", Outcome.PressureAfterChanges)]
    [InlineData("# Clams\n\n5 qt clam meat, 3 tbsp bottled lemon juice, 3 tbsp salt, water\n\nBoil the meat 2 minutes in water with the lemon juice, drain. Add the shells. Fill hot pint jars with the meat and hot water, 1-inch headspace. Pressure canner, pints 70 minutes.", Outcome.FreezeOrChill)]
    public void Vet_WordsOfThePublishedDirections_NameNoOtherFood(string recipe, Outcome outcome) =>
        Assert.Equal(outcome, Vet(recipe + "\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-13: lightly smoked salmon, packed loosely or tightly, pints or half-pints, no liquid.
    [Theory]
    [InlineData("8 lb salmon fillets, lightly smoked", "smoked-fish")]
    [InlineData("8 lb salmon fillets", "fish")]
    public void Vet_SmokedSalmonOfTheList_IsASmokedFishPack(string salmon, string category)
    {
        VettingReport report = Vet($"# Salmon pack\n\n- {salmon}\n\nCut the fish to fit pint jars and pack it upright, leaving 1-inch headspace. Do not add liquid. Process pints 110 minutes at 11 psi in a pressure canner.\n");

        Assert.Equal((Outcome.Pressure, category), (report.Outcome, report.Category!.Id));
    }

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-7: the published stock is made of chicken carcasses; what the title calls it is no further food.
    [Fact]
    public void Vet_StockNamedByItsTitle_NeedsNoStockInItsList()
    {
        VettingReport report = Vet("# Chicken stock\n\n- 3 chicken carcasses\n- water to cover\n\nCover the carcasses with the water and simmer 45 minutes. Remove the bones, strain the broth, cool it, and take off the fat. Reheat to boiling and fill hot quart jars, leaving 1 inch headspace. Process quarts 25 minutes in a pressure canner.\n");

        Assert.Equal(Outcome.Pressure, report.Outcome);
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-14 (peppers: half-pints and pints alone), p. 4-5 (dried beans: pints and quarts).
    [Theory]
    [InlineData("1 cup chopped green bell pepper", "green bell pepper")]
    [InlineData("1 cup green beans", null)]
    public void Vet_QuartsOfSoup_NameTheFoodThatAllowsNone(string food, string? named)
    {
        VettingReport report = Vet($"# Bean soup\n\n- 1 lb dried black beans\n- 3 quarts chicken broth\n- {food}\n- 1 cup sliced carrots\n\n1. Cover the beans with water, boil 2 minutes, soak 1 hour. Drain. Cover with fresh water, boil 30 minutes and drain.\n2. Add the rest and boil 5 minutes.\n3. Fill hot jars halfway with the solids. Add hot broth, leaving 1 inch headspace.\n4. Process in a pressure canner: quarts 90 minutes.\n");

        Finding? finding = report.Findings.FirstOrDefault(static one => one.Rule == "jar-too-large");
        Assert.Equal(named is not null, finding is not null);
        Assert.True(named is null || finding!.Message.Contains($"pint jar, and of \"{named}\"", StringComparison.Ordinal) || finding.Message.Contains(named, StringComparison.Ordinal));
    }

    // Source: NCHFP, How do you like your eggs?; Kansas State University Extension, Storing eggs safely (2020): eggs are kept cold, pickled or fresh.
    [Theory]
    [InlineData("# Pickled eggs\n\n- 12 hard boiled eggs, peeled\n- 1 1/2 cups white vinegar (5%)\n- 1/2 cup sugar\n\nBoil the vinegar and sugar 5 minutes and pour over the eggs in a jar.")]
    [InlineData("# Water glassing eggs\n\n- 36 fresh unwashed eggs\n- 2 oz pickling lime\n- 2 quarts water\n\nStir the lime into the water. Set the eggs in a crock and pour over the lime water. Use within a year.")]
    public void Vet_EggsInALiquid_BelongInTheRefrigerator(string recipe)
    {
        VettingReport report = Vet(recipe + "\n");

        Assert.Equal(Outcome.FreezeOrChill, report.Outcome);
        Assert.Contains(report.Findings, static finding => finding.Rule == "egg" && finding.Instead!.Contains("refrigerator", StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-6: ground venison, by whatever name; a burger with its bun is no food for jars.
    [Theory]
    [InlineData("Canned deer burger", Outcome.Pressure)]
    [InlineData("Venison burgers with a bun", Outcome.NotAJarFood)]
    public void Vet_Burger_IsGroundMeatOrASandwich(string title, Outcome outcome)
    {
        string bun = outcome == Outcome.NotAJarFood ? "- 4 burger buns\n" : string.Empty;

        Assert.Equal(outcome, Vet($"# {title}\n\n- 10 lb ground venison\n- 1 tsp salt per quart\n- boiling broth to cover\n{bun}\nBrown the ground venison and drain off the fat. Fill hot jars, add boiling broth, leaving 1 inch headspace. Quarts 90 minutes in a pressure canner.\n").Outcome);
    }

    // Source: University of Georgia Extension, Drying guide: dried food is kept dry; no canning process is meant.
    [Fact]
    public void Vet_DriedVegetables_AreToldThatNothingIsCanned()
    {
        VettingReport report = Vet("# Dried soup vegetables\n\n1 kg carrots, 500 g onions, 300 g peas\n\nBlanch carrots and peas 3 min, cool, pat dry. Dice small. Dry at 52 °C 8 to 12 hours until brittle. Store airtight.\n");

        Assert.Contains(report.Findings, static finding => finding.Message.Contains("no canning process is for dried food", StringComparison.Ordinal));
        Assert.DoesNotContain(report.Findings, static finding => finding.Rule == "too-little-liquid");
    }

    // A likeness, a verb or a bar is no food. Source: general English usage.
    [Theory]
    [InlineData("Boil the carrots until soft as porridge.", "porridge")]
    [InlineData("Spread on a tray to cool.", "Spread")]
    public void Vet_AFoodNamedAsALikenessOrVerb_IsNotInTheJar(string step, string word) =>
        Assert.DoesNotContain(Vet($"# Carrots\n\n- 12 lb carrots, peeled\n- water\n\n{step} Fill jars with the carrots and boiling water. Process in a pressure canner.\n").Findings, finding => finding.Ingredient == word);

    [Fact]
    public void Vet_FoodsBetweenBars_AreEachRead()
    {
        VettingReport report = Vet("# Pumpkin\n\n16 lb pie pumpkins | water\n\nCut into 1-inch cubes. Boil 2 minutes in the water. Fill hot jars with cubes and liquid, leaving 1-inch headspace. Process quarts 90 minutes in a pressure canner.\n");

        Assert.Equal(["pumpkin", "water"], report.Ingredients.Select(static entry => entry.FoodId));
    }

    private static VettingReport Vet(string text) => BuiltIn.Vetter.Vet(text, Kitchen.Unknown);
}
