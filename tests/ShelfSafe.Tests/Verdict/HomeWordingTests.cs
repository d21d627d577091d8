using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Published procedures in the words of home cooks, each beside a neighbour that one word makes dangerous.</summary>
public sealed class HomeWordingTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-14: 4 pounds of beans, 4 cups of vinegar to 4 cups of water.
    [Fact]
    public void Vet_DilledBeansWithHalfTheVinegar_AreHeldAgainstDilledBeans()
    {
        VettingReport report = Vet("# Dilly beans\n\n- 4 lb green beans\n- 8 dill heads\n- 8 cloves garlic\n- 1/2 cup canning salt\n- 2 cups white vinegar (5%)\n- 6 cups water\n\n1. Stand the beans in pint jars with dill and garlic. Boil vinegar, water and salt and pour over.\n2. Process in a boiling-water canner.\n");

        Assert.Equal("dilled-beans", report.Category?.Id);
        Assert.Equal("white vinegar", Assert.Single(report.Findings, static one => one.Rule == "proportions" && one.Message.Contains("less", StringComparison.Ordinal)).Ingredient);
    }

    // Source: USDA AIB 539 (2015) Guide 2 p. 2-6 to 2-7 (apple juice) and p. 2-15 to 2-16 (grape juice): strained juice has a time of its own.
    [Theory]
    [InlineData("25 lb grapes", "Grape juice", "Strain through a jelly bag.", "grape-juice")]
    [InlineData("25 lb apples", "Apple juice", "Strain through a jelly bag.", "apple-juice")]
    [InlineData("25 lb grapes", "Grapes", "Leave them whole.", "fruit")]
    public void Vet_StrainedJuice_HasTheTimeOfJuice(string fruit, string title, string step, string category) =>
        Assert.Equal(category, Vet($"# {title}\n\n- {fruit}\n- boiling water\n- sugar to taste\n\n1. Cover the fruit with boiling water and simmer 10 minutes. {step}\n2. Add sugar and bring to a boil. Fill quart jars. Process in a boiling-water canner.\n").Category?.Id);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-8 to 1-23: filled jars take their heat in a canner.
    [Theory]
    [InlineData("Pour the juice into clean bottles and chill it 24 hours. Heat the juice again, fill jars and process in a boiling-water canner 5 minutes.", false)]
    [InlineData("Fill the jars. Steam 20 minutes, then seal the jars.", true)]
    public void Vet_FoodHeatedForTheNextFilling_IsNoHeatForFilledJars(string step, bool other) =>
        Assert.Equal(other, Vet($"# Grape juice\n\n- 25 lb grapes\n- boiling water\n\n1. Simmer the grapes in the water and strain.\n2. {step}\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: NCHFP, Choice salsa: 9 cups of onions and peppers of any kind, 1 1/2 cups of bottled juice.
    [Theory]
    [InlineData("4 cups diced sweet and hot peppers", Outcome.BoilingWater)]
    [InlineData("4 cups diced sweet potatoes and hot peppers", Outcome.TestedRecipeOnly)]
    public void Vet_SweetAndHotPeppers_AreTwoKindsOfOneFood(string line, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Mixed salsa\n\n- 6 cups peeled, cored, chopped tomatoes\n- 5 cups diced onions\n- {line}\n- 1 1/2 cups bottled lime juice\n- 3 tsp canning salt\n\n1. Bring to a boil, stirring, then simmer 3 minutes.\n2. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-5: a quarter teaspoon of citric acid for a pint, half a teaspoon for a quart.
    [Theory]
    [InlineData("1/4 teaspoon to each 500 ml (pint) jar", Outcome.BoilingWater)]
    [InlineData("1/4 teaspoon to the pint", Outcome.BoilingWater)]
    [InlineData("1/4 teaspoon to each 1 litre (quart) jar", Outcome.BoilingWaterAfterChanges)]
    [InlineData("1/4 teaspoon to each hot jar", Outcome.BoilingWaterAfterChanges)]
    public void Vet_AcidForEachJar_IsReadByTheJarItNames(string amount, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Crushed tomatoes\n\n- 22 lb tomatoes, peeled and cored\n- citric acid, {amount}\n\n1. Crush the tomatoes and boil 5 minutes. Put the citric acid in the jars.\n2. Fill with the hot tomatoes, 1/2 inch headspace. Process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-5: dried beans are soaked or boiled and stood before they are packed.
    [Theory]
    [InlineData("5 lb dried black beans\n- salt, 1 teaspoon a quart", "Soak the beans 12 hours and drain. Cover with fresh water and boil 30 minutes. Fill quart jars with beans and cooking water.", false)]
    [InlineData("3 cups dry pinto beans (1/2 cup for each jar)\n- boiling water", "Put the dry beans in the jars and fill up with boiling water.", true)]
    [InlineData("3 cups pinto beans\n- boiling water", "Tip the beans straight from the bag into the jars and fill up with boiling water.", true)]
    public void Vet_DryBeansForEachJar_AreNoBeansFromAJar(string list, string step, bool unsoaked)
    {
        VettingReport report = Vet($"# Beans put up\n\n- {list}\n\n1. {step}\n2. Leave 1 inch headspace. Process in a pressure canner.\n");

        Assert.Equal(unsoaked, report.Findings.Any(static one => one.Rule == "unsoaked-beans"));
        Assert.Equal(unsoaked ? Outcome.PressureAfterChanges : Outcome.Pressure, report.Outcome);
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-17: cubes are not mashed or pureed; for pies they are drained and strained on the day.
    [Theory]
    [InlineData("Process in a pressure canner; mash when you open the jar.", Outcome.Pressure)]
    [InlineData("Mash before you fill the jars. Process in a pressure canner.", Outcome.FreezeOrChill)]
    public void Vet_MashedWhenTheJarIsOpened_IsPutUpInCubes(string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Pumpkin\n\n- 16 lb pumpkin\n- boiling water\n\n1. Peel the pumpkin, cut in cubes and boil 2 minutes in water. Fill jars with cubes and cooking liquid, 1 inch headspace.\n2. {step}\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-8: dry food keeps on the shelf while it stays dry; Guide 1 p. 1-26: no doubtful jar is tasted.
    [Theory]
    [InlineData("Write on the tag: brown 1 lb ground beef, add the mix, 6 cups water and a can of tomatoes.", Outcome.DryStorage)]
    [InlineData("Add 6 cups water and a can of tomatoes, and close the jar.", Outcome.PressureAfterChanges)]
    public void Vet_TagOfADryMix_SpeaksOfAnotherDay(string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Bean soup mix\n\nLayer in a pint jar:\n\n- 1/2 cup dried pinto beans\n- 1/2 cup dried corn\n- 2 tbsp dried onion\n- 1 tsp cumin\n\n{step}\n").Outcome);

    [Theory]
    [InlineData("Toast the seeds in a dry pan until they smell good, cool and grind. Keep in a tight jar.", false)]
    [InlineData("Grind the seeds and keep in a jar. Smell the jar to see if it is still good.", true)]
    public void Vet_SeedsThatSmellGoodInThePan_AreNoTest(string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Curry powder\n\n- 4 tbsp coriander seed\n- 2 tbsp cumin seed\n- 2 tbsp turmeric\n\n1. {step}\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-14: jars made for shop food break in the canner.
    [Theory]
    [InlineData("Fill the jars that the sauce came in", true)]
    [InlineData("Fill the jar the tomatoes came in with water, shake it and pour that into the pot", false)]
    public void Vet_JarThatFoodCameIn_IsRefilledOrRinsed(string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Carrot soup\n\n- 2 lb carrots, sliced\n- 1 jar tomatoes\n- 2 quarts vegetable broth\n\n1. Boil all 5 minutes. {step}.\n2. Lower the heat and simmer 10 minutes.\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-5 to 6-6: vinegar of 5 percent, white or cider.
    [Theory]
    [InlineData("1 pint vinegar", "does not say")]
    [InlineData("1 pint white wine vinegar (6 %)", "is not the white or cider vinegar")]
    public void Vet_VinegarOfAFruitPickle_IsAskedForWhatItLacks(string line, string words) =>
        Assert.Contains(words, Assert.Single(Vet($"# Pickled cherries\n\n- 7 lb sour cherries\n- 4 lb sugar\n- {line}\n- 1 tbsp cloves\n\n1. Boil vinegar, sugar and cloves, and pour over the cherries.\n").Findings, static one => one.Rule == "weak-vinegar").Message, StringComparison.Ordinal);

    // Source: USDA AIB 539 (2015) Guide 5 p. 5-6: rabbit is soaked an hour in salt water, and packed with hot broth.
    [Fact]
    public void Vet_RabbitSoakedInSaltedWater_IsPackedInItsBroth() =>
        Assert.Equal(Outcome.Pressure, Vet("# Rabbit on the bone\n\n- 2 rabbits, jointed, soaked 1 hour in salted water and rinsed\n- hot rabbit broth to cover\n- salt, 1 tsp per quart\n\n1. Boil the joints until two-thirds done.\n2. Fill hot quart jars with the joints and hot broth, leaving 1 1/4 inch headspace. Process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18 to 4-19: jars are half filled with solids and topped up with the hot liquid.
    [Fact]
    public void Vet_HalfFilledJarsAndTheListedHerbs_LeaveNoDoubt() =>
        Assert.Equal(Outcome.Pressure, Vet("# Vegetable beef soup\n\n- 2 lb lean beef, cubed\n- 4 carrots, sliced\n- 2 cups whole-kernel corn\n- 8 quarts beef broth\n- 1 tsp dried thyme\n- 1 bay leaf\n\n1. Simmer the beef in the broth until tender, chill and lift off the fat.\n2. Add the vegetables and herbs and boil 5 minutes. Half-fill the jars with solids, top up with the hot liquid, 1 inch headspace, and process in a pressure canner.\n").Outcome);

    // Source: University of Illinois Extension 2020: the cook type of the modified starch alone, never the instant one.
    [Theory]
    [InlineData("1 1/2 cups cook-type clear gel (not instant)", Outcome.BoilingWater)]
    [InlineData("1 1/2 cups waxy maize cook starch", Outcome.BoilingWater)]
    [InlineData("1 1/2 cups instant clear gel", Outcome.TestedRecipeOnly)]
    public void Vet_StarchOfPieFillings_IsKnownByItsTradeWords(string line, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Apple pie filling\n\n- 6 quarts sliced apples\n- 5 1/2 cups sugar\n- {line}\n- 1 tbsp cinnamon\n- 2 1/2 cups cold water\n- 5 cups apple juice\n- 3/4 cup bottled lemon juice\n\n1. Blanch the apples 1 minute. Cook sugar, starch, cinnamon, water and apple juice until it thickens. Add lemon juice and boil 1 minute.\n2. Fold in the apples and fill quart jars, 1 inch headspace. Process in a boiling-water canner.\n").Outcome);

    // Source: K-State Extension 2016: rice is cooked fresh and served with the dish.
    [Theory]
    [InlineData("Basil on top, jasmine rice alongside.", false)]
    [InlineData("Stir in the jasmine rice.", true)]
    public void Vet_RiceAlongside_IsNotInTheJar(string step, bool rice) =>
        Assert.Equal(rice, Vet($"# Chicken curry\n\n- 500 g chicken breast, sliced\n- 1 tbsp curry powder\n- 1 l chicken broth\n\n1. Simmer the chicken in the broth.\n2. {step}\n").Findings.Any(static one => one.Rule == "rice" && one.Level >= FindingLevel.Change));

    [Theory]
    [InlineData("1 glass of milk (optional)", "milk")]
    [InlineData("200 g cream [the thick kind]", "cream")]
    public void Vet_BracketBehindAFood_IsNoPartOfItsName(string line, string quoted) =>
        Assert.Contains(Vet($"# Meat sauce\n\n- 500 g beef mince\n- 800 g tomatoes\n- {line}\n\n1. Brown the mince. Add the rest and simmer.\n").Findings, one => one.Rule == "dairy" && one.Ingredient == quoted);

    [Fact]
    public void Vet_GoodInASaladLikeAnyPreserve_NamesNoFood() =>
        Assert.DoesNotContain(Vet("# Plain peaches\n\n- 17 lb yellow peaches, peeled and halved\n- 2 cups sugar\n- 9 cups water\n\n1. Simmer the peaches in the syrup. Fill jars, 1/2 inch headspace. Process in a boiling-water canner.\n2. Nice in a salad, and keeps like any preserve. Dont dilute the syrup.\n").Findings, static one => one.Level >= FindingLevel.Change);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: nothing that thickens, no milk, no cream; what the tail of a line names is in the pot.
    [Theory]
    [InlineData("2 lb stew beef, dredged in 3 tbsp flour", "thickener")]
    [InlineData("3 carrots, softened in butter", "dairy")]
    [InlineData("1 lb peas, with 2 tbsp cream", "dairy")]
    [InlineData("2 lb stew beef, bread crumbs, the yolks of two eggs", "egg")]
    [InlineData("2 lb stew beef, without flour", null)]
    [InlineData("2 lb stew beef, as for the custard", null)]
    public void Vet_HazardInTheTailOfALine_IsFoundInEveryDish(string line, string? rule)
    {
        VettingReport report = Vet($"# Beef soup\n\n- {line}\n- 2 quarts beef broth\n\n1. Boil all.\n");

        Assert.Equal(rule is not null, report.Findings.Any(finding => finding.Rule == (rule ?? "thickener") || (rule is null && finding.Rule is "dairy" or "egg")));
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-17 to 4-18: cubes in water; a sweet preserve of pumpkin has no published process.
    [Theory]
    [InlineData("1 kg sugar", Outcome.FreezeOrChill)]
    [InlineData("100 g sugar", Outcome.PressureAfterChanges)]
    public void Vet_PumpkinInMuchSugar_IsNoPlainPack(string sugar, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Pumpkin pieces\n\n- 3 kg pumpkin\n- {sugar}\n- 1 litre water\n\n1. Cut the pumpkin in cubes and boil with sugar and water. Fill jars and process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: the soup process is for pieces in thin broth.
    [Theory]
    [InlineData("Chop, blend, sieve.", true)]
    [InlineData("Cook, blend and season.", true)]
    [InlineData("Add the spice blend and boil.", false)]
    public void Vet_BareBlend_MakesADishSmooth(string step, bool smooth) =>
        Assert.Equal(smooth, Vet($"# Tomato soup\n\n- 1 kg tomatoes\n- 1 kg carrots\n- 3 l vegetable broth\n\n1. {step}\n").Findings.Any(static finding => finding.Rule == "dense" && finding.Level >= FindingLevel.Change));

    private static VettingReport Vet(string recipe) => Vetter.Vet(recipe, Kitchen.Unknown);
}
