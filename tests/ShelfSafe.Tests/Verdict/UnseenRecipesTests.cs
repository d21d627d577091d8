using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Ways of writing that cooks use and the samples do not: each is read as a person would read it, and its dangerous neighbour is not let through.</summary>
public sealed class UnseenRecipesTests
{
    private const string Relish = "# Pickle relish\n\n- 3 qts chopped cucumbers\n- 3 cups each of chopped sweet green and red peppers\n- 1 cup chopped onions\n- 3/4 cup canning salt\n- 4 cups ice\n- 8 cups water\n- 2 cups sugar\n- 4 tsp each of mustard seed, turmeric, whole allspice, and whole cloves\n- 6 cups white vinegar (5%)\n\n1. Add cucumbers, peppers, onions, salt and ice to the water and let stand 4 hours. Drain and cover with fresh ice water for another hour. Drain again.\n2. Combine spices in a bag. Add spices to sugar and vinegar. Heat to boiling and pour over the vegetables. Refrigerate 24 hours.\n3. Heat to boiling and fill hot into hot half-pint jars, leaving 1/2-inch headspace. Process in a boiling-water canner.\n";
    private const string Gherkins = "# Sweet gherkins\n\n- 7 lb cucumbers (1-1/2 inch or less)\n- 1/2 cup canning salt\n- 8 cups sugar\n- 6 cups vinegar (5%)\n- 3/4 tsp turmeric\n- 2 tsp celery seeds\n- 2 tsp whole mixed pickling spice\n- 2 cinnamon sticks\n\n1. Wash cucumbers. Cut 1/16-inch slice off blossom end.\n2. Cover with boiling water and the salt and let stand 8 hours. Drain. Combine the vinegar, sugar, turmeric and spices, bring to a boil and pour over the cucumbers.\n3. Next day heat to boiling, fill pint jars with pickles and syrup, leaving 1/2-inch headspace. Process in a boiling-water canner.\n";
    private const string GreenTomatoRelish = "# Green tomato relish\n\n- 10 lb small, hard green tomatoes\n- 1 1/2 lb red bell peppers\n- 1 1/2 lb green bell peppers\n- 2 lb onions\n- 1/2 cup canning salt\n- 1 quart water\n- 4 cups sugar\n- 1 qt vinegar (5%)\n- 1/3 cup prepared yellow mustard\n- 2 tbsp cornstarch\n\n1. Chop the tomatoes, peppers and onions finely. Dissolve salt in water and pour over the vegetables. Heat to boiling and simmer 5 minutes. Drain in colander.\n2. Add sugar, vinegar, mustard, and cornstarch. Stir to mix. Heat to boil and simmer 5 minutes.\n3. Fill hot pint jars, leaving 1/2-inch headspace. Process in a boiling-water canner.\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18; K-State 2016: pasta, grain and butter stay out and are added when serving, and the rest is soup.
    [Theory]
    [InlineData("Beef and barley soup", "2 lb lean beef, cubed\n1 cup pearl barley\n4 carrots, sliced\n2 onions, chopped\n1 cup chopped tomatoes\n4 quarts beef broth", "grain")]
    [InlineData("Chicken noodle soup", "1 tbsp butter\n1 onion, diced\n2 carrots, sliced\n2 celery stalks, sliced\n8 cups chicken broth\n2 cups cooked chicken\n2 cups egg noodles", "pasta")]
    public void Vet_SoupWithOneThingToLeaveOut_AsksForThatAlone(string title, string list, string rule)
    {
        VettingReport report = Vet($"# {title}\n\n- {list.Replace("\n", "\n- ", StringComparison.Ordinal)}\n\n1. Bring everything to a boil and boil 5 minutes.\n2. Fill jars, leaving 1 inch headspace, and process in a pressure canner.\n");

        Assert.Equal(Outcome.PressureAfterChanges, report.Outcome);
        Assert.Contains(report.Findings, finding => finding.Rule == rule && finding.Level == FindingLevel.Change);
    }

    // Source: Codex CXS 306R-2011, 2.1 and NCHFP, Barbecue Sauce (2017): a chilli sauce is a seasoning; USDA AIB 539 (2015) Guide 4 p. 4-18: what a soup is made of has a process of its own.
    [Theory]
    [InlineData("1 tsp chilli sauce", Outcome.Pressure)]
    [InlineData("120 ml chilli sauce", Outcome.PressureAfterChanges)]
    [InlineData("1 tbsp soy sauce", Outcome.Pressure)]
    [InlineData("500 ml soy sauce", Outcome.PressureAfterChanges)]
    [InlineData("1 cup red wine", Outcome.PressureAfterChanges)]
    [InlineData("1 tsp sweet chilli sauce", Outcome.PressureAfterChanges)]
    public void Vet_SoupWithABoughtSauce_TakesItBySpoonAlone(string sauce, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Island soup\n\n- 700 g boneless chicken breast, cubed\n- 350 g carrots, sliced\n- 450 g potatoes, peeled and cubed\n- 2.8 l chicken broth\n- {sauce}\n\nSimmer the chicken in water until tender and drain it. Boil everything 5 minutes. Fill the hot jars half full of solids and top up with the hot broth, leaving 1 inch headspace. Process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-10 to 3-12: tomatoes are packed with acid, salt, and water or tomato juice.
    [Theory]
    [InlineData("2 tsp salt", Outcome.BoilingWater)]
    [InlineData("1 tbsp soy sauce", Outcome.BoilingWater)]
    [InlineData("1 cup soy sauce", Outcome.BoilingWaterAfterChanges)]
    [InlineData("1 cup capers", Outcome.BoilingWaterAfterChanges)]
    [InlineData("2 quarts vegetable juice", Outcome.BoilingWaterAfterChanges)]
    public void Vet_TomatoesWithSomethingSalty_TakeTheSaltAlone(string salty, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Tomatoes for the winter\n\n- 20 lb tomatoes, peeled\n- {salty}\n- 2 tbsp bottled lemon juice for each quart\n\nPeel the tomatoes and boil them 5 minutes in their juice with all but the lemon juice. Put 2 tablespoons of bottled lemon juice in each quart jar and fill with the hot tomatoes. Process in a boiling water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-31: low-acid vegetables are not put up as purees.
    [Theory]
    [InlineData("Roast the peppers and peel them.", Outcome.PressureAfterChanges)]
    [InlineData("Roast and peel the peppers. Grind them.", Outcome.FreezeOrChill)]
    [InlineData("Put the boiled peppers through the mincer.", Outcome.FreezeOrChill)]
    public void Vet_PeppersMadeToPaste_AreNoVegetableInPieces(string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Red peppers\n\n- 3 kg red bell peppers\n- 2 tsp salt\n\n{step} Fill into pint jars, add the salt and cover with boiling water. Process in a pressure canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: no noodles, no milk.
    [Fact]
    public void Vet_SoupThatIsMostlyNoodles_IsAnotherDishWithoutThem() =>
        Assert.Equal(Outcome.FreezeOrChill, Vet("# Noodle soup\n\n- 1 lb egg noodles\n- 1 carrot, sliced\n- 1 cup milk\n- 4 cups broth\n\n1. Boil all.\n").Outcome);

    // A finding about the whole pot stands at no single food: the broth that is there is not at fault.
    [Fact]
    public void Vet_TooLittleLiquid_IsNotBlamedOnTheBroth()
    {
        VettingReport report = Vet("# Lamb stew\n\n- 1 kg lamb, cubed\n- 1 kg potatoes, cubed\n- 1 kg carrots, sliced\n- some beef stock\n\n1. Brown the lamb and drain it.\n2. Add the rest and boil 5 minutes.\n");

        Finding finding = Assert.Single(report.Findings, static one => one.Rule == "too-little-liquid");
        Assert.Null(finding.Ingredient);
        Assert.Equal(1, finding.Places[0].Line);
    }

    // Source: NCHFP, Strawberry jam with powdered pectin (2005): 5 1/2 cups crushed strawberries (about 3 quart boxes), 1 package powdered pectin, 8 cups sugar.
    [Theory]
    [InlineData("5 1/2 cups crushed strawberries (about 3 quart boxes)", Outcome.BoilingWater)]
    [InlineData("5 1/2 cups crushed strawberries (about 3 quarts)", Outcome.TestedRecipeOnly)]
    [InlineData("7 cups crushed strawberries (about 3 quart boxes)", Outcome.TestedRecipeOnly)]
    public void Vet_StrawberryJamAsPrinted_BoxesAreWhatToBuy(string berries, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Strawberry jam\n\n- {berries}\n- 1 package powdered pectin\n- 8 cups sugar\n\n1. Measure the crushed berries into a kettle. Add pectin and stir well. Bring quickly to a full boil.\n2. Add sugar, return to a full rolling boil, boil hard 1 minute. Remove from heat and skim.\n3. Fill hot half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-8 to 6-9 (sauerkraut), p. 6-15 (the tops of beets are trimmed off).
    [Theory]
    [InlineData("# Sauerkraut\n\n- 25 lb cabbage\n- 3/4 cup canning salt\n\n1. Shred the cabbage, mix with the salt and pack firmly in a crock.\n2. Ferment at 70 F for 3 to 4 weeks.\n3. Bring kraut and liquid slowly to a boil. Fill jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n", Outcome.BoilingWater)]
    [InlineData("# Canned beets\n\n- 20 lb beets\n- boiling water\n\n1. Trim the beet tops, leaving an inch of stem. Boil until the skins slip, peel and slice.\n2. Fill hot jars, cover with fresh boiling water, leaving 1 inch headspace. Process in a pressure canner.\n", Outcome.Pressure)]
    [InlineData("# Canned beets\n\n- 20 lb beets\n- boiling water\n\n1. Boil the beets until the skins slip, peel and slice.\n2. Add the beet tops. Fill hot jars, cover with fresh boiling water, leaving 1 inch headspace. Process in a pressure canner.\n", Outcome.PressureAfterChanges)]
    public void Vet_PartsAndProductsOfTheListedFood_AreTraced(string recipe, Outcome outcome) => Assert.Equal(outcome, Vet(recipe).Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-17: cubes are boiled 2 minutes in water, and the jars are filled with cubes and cooking liquid.
    [Fact]
    public void Vet_WaterThatOnlyTheStepsName_CoversThePumpkin() =>
        Assert.Equal(Outcome.Pressure, Vet("# Pumpkin cubes\n\n- 16 pounds pie pumpkins\n\n1. Wash, seed and peel the pumpkin. Cut it into 1-inch cubes. Do not mash or puree.\n2. Boil the cubes 2 minutes in water.\n3. Fill the jars with cubes and cover with the cooking liquid, leaving 1-inch headspace.\n4. Process in a pressure canner.\n").Outcome);

    // Source: University of Wisconsin-Madison Extension, dry soup mixes: the liquid is added on the day.
    [Theory]
    [InlineData("To make: simmer with 8 cups water and a pound of ground beef.", Outcome.DryStorage)]
    [InlineData("To serve, simmer the contents in 2 litres of water.", Outcome.DryStorage)]
    [InlineData("Simmer it all with 8 cups water.", Outcome.FreezeOrChill)]
    [InlineData("To make: simmer with 8 cups water. Fill jars and process in a pressure canner.", Outcome.FreezeOrChill)]
    public void Vet_DrySoupMix_StaysDryUntilItIsMade(string step, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Soup mix in a jar\n\nLayer in a dry jar:\n\n- 1/2 cup green split peas\n- 1/4 cup pearl barley\n- 1/2 cup red lentils\n- 1/4 cup dried minced onion\n\nClose tightly. {step}\n").Outcome);

    // Source: ISO 2255, Coriander (Coriandrum sativum L.), whole or ground: among dry spices the word is the seed.
    [Theory]
    [InlineData("4 tbsp coriander", "dry-storage")]
    [InlineData("4 tbsp fresh coriander, chopped", "freeze-or-chill")]
    [InlineData("1 bunch coriander", "freeze-or-chill")]
    public void Vet_CorianderAmongDrySpices_IsTheSeed(string line, string outcome) =>
        Assert.Equal(outcome, Names.Of(Vet($"# Curry powder\n\n- {line}\n- 2 tbsp cumin\n- 1 tbsp turmeric\n- 1 tsp ground ginger\n\n1. Mix and keep in a dry jar.\n").Outcome));

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-10 (sweet gherkins: soaks are drained), p. 6-28 (relish), p. 6-29 (cornstarch stands in the tested relish).
    [Theory]
    [InlineData(Relish, "", "", Outcome.BoilingWater)]
    [InlineData(Relish, "3 cups each of chopped", "6 cups each of chopped", Outcome.TestedRecipeOnly)]
    [InlineData(Gherkins, "", "", Outcome.BoilingWater)]
    [InlineData(Gherkins, "Drain. Combine", "Combine", Outcome.TestedRecipeOnly)]
    [InlineData(GreenTomatoRelish, "", "", Outcome.BoilingWater)]
    [InlineData(GreenTomatoRelish, "mustard, and cornstarch", "mustard, and flour", Outcome.TestedRecipeOnly)]
    public void Vet_PublishedPickleInItsOwnWords_IsRecognised(string recipe, string words, string other, Outcome outcome) =>
        Assert.Equal(outcome, Vet(words.Length == 0 ? recipe : recipe.Replace(words, other, StringComparison.Ordinal)).Outcome);

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-12: tomatoes packed raw without added liquid, 85 minutes, with acid in each jar.
    [Theory]
    [InlineData("tomatoes", "- 1/2 tsp citric acid per quart", "Add citric acid to the jars.", false)]
    [InlineData("green beans", "- 1 tsp salt per quart", "Add salt to the jars.", true)]
    public void Vet_EightyFiveMinutesInBoilingWater_SuitAcidifiedTomatoesAlone(string food, string line, string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Raw packed {food}\n\n- 21 lb {food}\n{line}\n\n1. {step} Fill with raw {food}, leaving 1/2 inch headspace.\n2. Boiling water canner, 85 minutes.\n").Findings.Any(static finding => finding.Rule == "unsafe-method"));

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-16: sweet potatoes are covered with boiling water or syrup (medium: 3 3/4 cups of sugar to 17 1/2 lb).
    [Theory]
    [InlineData("17 lb sweet potatoes", "3 cups sugar", Outcome.Pressure)]
    [InlineData("17 lb sweet potatoes", "3 lb sugar", Outcome.PressureAfterChanges)]
    [InlineData("17 lb carrots", "3 cups sugar", Outcome.PressureAfterChanges)]
    public void Vet_SyrupOverVegetables_FitsSweetPotatoesAlone(string vegetable, string sugar, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Put up for winter\n\n- {vegetable}\n- {sugar}\n- 9 cups water\n\n1. Boil 15 minutes, remove the skins and cut in pieces.\n2. Fill hot jars and cover with the boiling syrup, leaving 1-inch headspace. Process in a pressure canner.\n").Outcome);

    // Source: ISO 7925 (dried oregano); USDA AIB 539 (2015) Guide 1 p. 1-27: fresh herbs are no dry spice.
    [Theory]
    [InlineData("1/4 tsp each garlic powder, onion powder, oregano", Outcome.DryStorage)]
    [InlineData("1/4 tsp each garlic powder, onion powder, fresh oregano", Outcome.FreezeOrChill)]
    public void Vet_OreganoAmongDrySpices_IsDried(string line, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Taco seasoning\n\n- 1 tbsp chili powder\n- 1 tsp cumin\n- {line}\n\n1. Mix and keep in a dry jar.\n").Outcome);

    [Theory]
    [InlineData("Simmer another 20 minutes, until the tomatoes are soft.", false)]
    [InlineData("Simmer 20 minutes with another 4 tomatoes.", true)]
    public void Vet_AnotherTwentyMinutes_IsNoMoreFood(string step, bool more) =>
        Assert.Equal(more, Vet($"# Easy hot sauce\n\n- 8 cups canned diced tomatoes, undrained\n- 1 1/2 cups seeded, chopped serrano peppers\n- 4 cups distilled white vinegar (5%)\n- 2 tsp canning salt\n- 2 tbsp mixed pickling spice\n\n1. Tie the spices in a bag. Mix all and bring to a boil. {step}\n2. Press through a food mill. Boil 15 minutes.\n3. Fill hot half-pint jars, leaving 1/4-inch headspace. Process in a boiling-water canner.\n").Findings.Any(static finding => finding.Rule == "more-in-steps"));

    [Fact]
    public void Vet_TheSizeOfARiceGrain_IsNoRice() =>
        Assert.DoesNotContain(Vet("# Beef soup\n\n- 1 kg ground beef\n- 3 l beef broth\n\n1. Break the meat into bits about the size of a rice grain, brown it and drain.\n2. Boil with the broth.\n").Findings, static finding => finding.Rule == "rice");

    [Fact]
    public void Vet_ChuckInTheOnions_NamesNoBeef() =>
        Assert.DoesNotContain(Vet("# Carrot soup\n\n- 4 carrots\n- 2 onions\n- 2 l water\n\n1. Boil the carrots in the water.\n2. Chuck in the onions.\n").Findings, static finding => finding.Rule == "step-food");

    [Fact]
    public void Vet_BrownTheChuck_IsBeefThatTheListLacks() =>
        Assert.Contains(Vet("# Carrot soup\n\n- 4 carrots\n- 2 onions\n- 2 l water\n\n1. Brown the chuck in the pan.\n2. Add the rest and boil.\n").Findings, static finding => finding.Rule == "step-food");

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-13: wild mushrooms are not put up; drying does not tame them.
    [Theory]
    [InlineData("20 g dried porcini", true)]
    [InlineData("20 g dried shiitake mushrooms", false)]
    public void Vet_DriedWildMushroomInSoup_MayNotBeJarred(string line, bool wild) =>
        Assert.Equal(wild, Vet($"# Beef soup\n\n- 1 kg beef, cubed\n- 3 l water\n- {line}\n\n1. Boil all.\n").Findings.Any(static finding => finding.Rule == "wild-mushroom" && finding.Level == FindingLevel.Stop));

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: the soup process is for pieces, whatever the cook calls what goes into the blender.
    [Theory]
    [InlineData("Blend the lot.")]
    [InlineData("Blitz the whole pan until it pours.")]
    public void Vet_BlendTheLot_IsNoSoupOfPieces(string step) =>
        Assert.NotEqual(Outcome.PressureAfterChanges, Vet($"# Tomato soup\n\n- 1 kg tomatoes, chopped\n- 1 kg carrots, sliced\n- 3 l vegetable broth\n\n1. Boil 5 minutes. {step}\n2. Fill jars and process in a pressure canner.\n").Outcome);

    private static VettingReport Vet(string recipe) => Vetter.Vet(recipe, Kitchen.Unknown);
}
