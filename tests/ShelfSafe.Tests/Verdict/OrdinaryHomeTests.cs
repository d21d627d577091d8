using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Ordinary recipes of many kitchens: what is used, served or named beside is told from what goes into the jar.</summary>
public sealed class OrdinaryHomeTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    // Source: University of Wisconsin-Madison Extension, dry soup mixes: a dry mix keeps dry, the rest is added on the day.
    [Theory]
    [InlineData("Beef rub", "Mix. Rub on a brisket the night before. Store what is left in a tight jar.", Outcome.DryStorage)]
    [InlineData("Beef rub", "Mix. Rub on a brisket, roast it 3 hours, shred it and fill jars.", Outcome.FreezeOrChill)]
    [InlineData("Beef rub", "Mix. Rub all over 2 lb pork. Roast, shred, and store in jars in the cellar.", Outcome.FreezeOrChill)]
    [InlineData("Beef rub", "Mix. Rub on a brisket, pack it raw and process in a pressure canner.", Outcome.FreezeOrChill)]
    [InlineData("Taco seasoning", "Shake in a jar. Use 2 tbsp and half a cup of water for 1 lb of ground beef.", Outcome.DryStorage)]
    [InlineData("Family supper", "Mix. Rub on 2 lb chicken and fry.", Outcome.FreezeOrChill)]
    [InlineData("Beef rub", "Mix. Massage into the beef, dry it in the oven, and keep the beef in a tin.", Outcome.FreezeOrChill)]
    [InlineData("Beef rub", "Mix. Sprinkle on the tomatoes and dry them.", Outcome.CannotTell)]
    [InlineData("Taco seasoning", "Mix. Add 2 cups water to the rice and keep it.", Outcome.FreezeOrChill)]
    [InlineData("Taco seasoning", "Mix. Shake with fresh herbs and keep airtight.", Outcome.CannotTell)]
    [InlineData("Taco seasoning", "Mix and keep airtight. Use 2 tbsp for 1 lb of ground beef.", Outcome.DryStorage)]
    public void Vet_WhatADryMixIsUsedOn_IsNotInItsJar(string title, string steps, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# {title}\n\n- 1/2 cup brown sugar\n- 1/4 cup paprika\n- 1 tbsp salt\n\n1. {steps}\n").Outcome);

    // Source: Oregon State University Extension, canning nuts: dry nuts keep dry; NCHFP, green peanuts: boiled ones are a low-acid food for the pressure canner.
    [Theory]
    [InlineData("roasted peanuts", true)]
    [InlineData("red lentils", true)]
    [InlineData("soaked lentils", false)]
    [InlineData("chickpeas, drained", false)]
    [InlineData("dried chickpeas, rinsed", false)]
    [InlineData("boiled peanuts", false)]
    [InlineData("soaked almonds", false)]
    [InlineData("chestnuts", false)]
    public void Vet_NutsOfADryMix_AreDryWhereTheyAreKeptDry(string nuts, bool dry) =>
        Assert.Equal(dry, Vet($"# Cocoa mix\n\n- 2 cups sugar\n- 1 cup cocoa powder\n- 1 cup {nuts}\n\nMix, fill a dry jar and close it.\n").Outcome == Outcome.DryStorage);

    // Source: University of Wisconsin-Madison Extension, dry soup mixes.
    [Theory]
    [InlineData("When you want scones", Outcome.DryStorage)]
    [InlineData("The wet part", Outcome.FreezeOrChill)]
    public void Vet_HeadingOfAnotherDay_EndsTheDryMix(string heading, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Scone mix\n\n- 6 cups flour\n- 3 tbsp baking powder\n- 1 tsp salt\n\nWhisk together and keep airtight.\n\n## {heading}\n\nTake 2 cups, add 1 cup milk and 1 egg, and bake.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-7: carrots are boiled and packed hot, or packed raw; without any step nobody can tell.
    [Theory]
    [InlineData("20 lb carrots, sliced, 10 tsp salt, 5 quarts water.")]
    [InlineData("- 20 lb carrots, sliced\n- 10 tsp salt\n- 5 quarts water\n\nEnjoy!")]
    [InlineData("- 20 lb carrots, sliced\n- 10 tsp salt\n- 5 quarts water\n\nMy granny loved these.")]
    [InlineData("- 20 lb carrots, sliced\n- 10 tsp salt\n- 5 quarts water\n\n20 lb carrots, 10 tsp salt.")]
    public void Vet_NoDirectionButTheFoodsOrARemark_IsAskedForSteps(string text)
    {
        VettingReport report = Vet($"# Carrots\n\n{text}\n");
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
        Assert.Contains(report.Findings, finding => finding.Rule == "no-steps" && finding.Level == FindingLevel.Change);
    }

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10: jars that are only filled hot and closed had no process.
    [Theory]
    [InlineData("Pour into warm sterilised jars and seal. Keeps 2 weeks, in the fridge once opened.", true)]
    [InlineData("Pour into warm jars and seal. Keep in the fridge.", false)]
    public void Vet_FridgeOnceOpened_IsNoColdStorageOfFullJars(string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Gooseberry jam\n\n- 1 kg gooseberries\n- 1 kg sugar\n\n1. Boil to the setting point.\n2. {step}\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-14 (jars of shop food), Guide 6 p. 6-8 (a bag of brine keeps a ferment under).
    [Theory]
    [InlineData("Put a weight on it (a zip bag of water does).", false)]
    [InlineData("Pour it in zip bags and seal.", true)]
    public void Vet_BagThatWeighsAFermentDown_IsNoJar(string step, bool unsafeMethod) =>
        Assert.Equal(unsafeMethod, Vet($"# Chilli mash\n\n- 400 g fresh chillies\n- 12 g salt\n\n1. Chop, salt and press into a jar.\n2. {step}\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    // Source: K-State Extension 2016: dairy and sides are added when serving.
    [Theory]
    [InlineData("Simmer. Sour cream and cheese on the table.", "dairy", false)]
    [InlineData("Simmer. Stir in sour cream and cheese.", "dairy", true)]
    [InlineData("Simmer. Serve with mashed potatoes.", "dense", false)]
    [InlineData("Simmer, then mash the potatoes into it.", "dense", true)]
    public void Vet_ServedBeside_IsNotInTheJar(string steps, string rule, bool found) =>
        Assert.Equal(found, Vet($"# Beef stew\n\n- 2 lb beef, cubed\n- 2 potatoes, cubed\n- 2 quarts beef broth\n\n1. {steps}\n").Findings.Any(one => one.Rule == rule && one.Level >= FindingLevel.Change));

    // General English usage: how a piece lies, what the dish is called, what the bones of a carcass are, until.
    [Theory]
    [InlineData("# Chicken soup\n\n- 4 chicken thighs\n- 2 quarts chicken broth\n\n1. Fry the chicken skin down, drain, and boil in the broth.\n", "chicken skin")]
    [InlineData("# Tacos\n\n- 1 kg pork\n- 2 cups water\n\n1. Boil the pork. Build the tacos.\n", "tacos")]
    [InlineData("When there are 3 carcasses the bones go in the pot.\n\n# Chicken broth\n\n- 3 chicken carcasses\n- water\n\n1. Boil and strain.\n", "bones")]
    [InlineData("# Salsa\n\n- 1 lb tomatoes\n- 1 onion\n\n1. Broil til black.\n", "til")]
    [InlineData("# Raspberry vinegar\n\n- 450 g raspberries\n- 500 ml vinegar\n- sugar\n\n1. Strain. For each 300 ml add 200 g sugar.\n", "add")]
    public void Vet_WordThatIsNoFoodHere_IsNotAskedAbout(string recipe, string words) =>
        Assert.DoesNotContain(Vet(recipe).Findings, one => one.Ingredient == words || one.Message.Contains($"\"{words}\"", StringComparison.Ordinal));

    // Source: Penn State Extension, Ways with applesauce: lemon juice does it no harm; USDA AIB 539 (2015) Guide 2 p. 2-7 to 2-8.
    [Theory]
    [InlineData("1 tbsp lemon juice", Outcome.BoilingWater)]
    [InlineData("1 tbsp butter", Outcome.BoilingWaterAfterChanges)]
    [InlineData("2 lb dates", Outcome.TestedRecipeOnly)]
    public void Vet_ApplesauceWithAnotherThing_TakesLemonAlone(string line, Outcome outcome) =>
        Assert.Equal(outcome, Vet($"# Applesauce\n\n- 4 lb apples\n- 1 cup water\n- {line}\n\n1. Peel, core and simmer the apples in the water 20 minutes. Mash, and bring to a boil.\n2. Fill hot pint jars, 1/2 inch headspace. Process in a boiling-water canner.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: each hazard is said once.
    [Fact]
    public void Vet_MashedSoup_IsToldOnce() =>
        Assert.Single(Vet("# Bean soup\n\n- 2 cans pinto beans\n- 1 quart broth\n\n1. Boil, and mash them well.\n").Findings, static one => one.Rule == "dense" && one.Ingredient is null);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: the main foods are plain pieces; a seasoning is free.
    [Theory]
    [InlineData("1 tsp grated ginger", false)]
    [InlineData("2 lb carrots, grated", true)]
    public void Vet_GratedSeasoning_IsNoPreparedFood(string line, bool asked) =>
        Assert.Equal(asked, Vet($"# Chicken soup\n\n- 2 lb boneless chicken, cubed\n- {line}\n- 3 quarts chicken broth\n\n1. Boil the chicken in the broth 30 minutes. Add the rest and boil 5 minutes.\n").Findings.Any(static one => one.Rule == "prepared-food"));

    // Source: 21 CFR 182.10: black cumin (Nigella sativa) is a spice.
    [Fact]
    public void Vet_NigellaSeed_IsNoNut() =>
        Assert.DoesNotContain(Vet("# Flatbread\n\n- 500 g bread flour\n- 7 g yeast\n- 300 ml water\n- 1 tsp nigella seeds\n\n1. Knead, prove and bake.\n").Findings, static one => one.Rule == "nut");

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: nothing blended; leftovers of the dish itself are no leftovers in it.
    [Theory]
    [InlineData("Simmer. Remove the bay leaf, blend with the basil.", "dense", true)]
    [InlineData("Simmer. Season with the herb blend.", "dense", false)]
    [InlineData("Simmer. Leftovers go in the fridge for a week.", "leftovers", false)]
    [InlineData("Simmer. Chop the leftovers and stir them in.", "leftovers", true)]
    public void Vet_WordsOfTheLastStep_AreReadAsMeant(string steps, string rule, bool found) =>
        Assert.Equal(found, Vet($"# Tomato soup\n\n- 2 lb tomatoes\n- 2 lb carrots, sliced\n- 2 quarts vegetable broth\n- 1 bay leaf\n- basil\n\n1. {steps}\n").Findings.Any(one => one.Rule == rule && one.Level >= FindingLevel.Change));

    // Source: Penn State Extension, lemon juice or citric acid: fresh juice has no known strength.
    [Fact]
    public void Vet_JuiceAndZestOfALemon_AreStillFreshJuice() =>
        Assert.Contains(Vet("# Fig jam\n\n- 1.5 kg fresh figs\n- 800 g sugar\n- 1 lemon, zest and juice\n\n1. Boil until thick.\n").Findings, static one => one.Rule == "fresh-citrus");

    // General English usage: what is preserved in salt is no preserve.
    [Theory]
    [InlineData("Preserved lemons", "jam")]
    [InlineData("Ginger beer", "soup")]
    public void Vet_TitleOfAnotherThing_IsNotJudgedAsThat(string title, string kind) =>
        Assert.DoesNotContain(Vet($"# {title}\n\n- 8 lemons\n- 150 g ginger\n- 150 g salt\n- 2 l water\n\n1. Put it in a jar and leave it a month.\n").Findings, one => one.Message.Contains($"this {kind}", StringComparison.Ordinal));

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-6: pressed through a sieve or mill it is tomato juice or sauce, and no whole tomatoes.
    [Theory]
    [InlineData("Put through the passata machine.", false)]
    [InlineData("Leave them whole.", true)]
    public void Vet_TomatoesThroughTheMachine_AreNotWhole(string step, bool whole) =>
        Assert.Equal(whole, Vet($"# Tomato day\n\n- 20 kg tomatoes\n- water\n\n1. Wash and peel the tomatoes. Simmer 5 minutes in water.\n2. {step}\n3. Fill jars and process in a boiling-water canner.\n").Category?.Id == "tomatoes");

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10; general English usage: drums, tools and verbs are no food.
    [Theory]
    [InlineData("Boil. Into sterilised jars, seal, and into the cupboard.", "unsafe-method", true)]
    [InlineData("Boil. Into jars, seal, and into the fridge.", "unsafe-method", false)]
    [InlineData("Boil. Stand the jars in an oil drum of water.", "oil-infusion", false)]
    [InlineData("Zest of two lemons into the pan. Boil.", "step-food", false)]
    public void Vet_JarsOfJam_AreReadAsMeant(string steps, string rule, bool found) =>
        Assert.Equal(found, Vet($"# Gooseberry jam\n\n- 1 kg gooseberries\n- 1 kg sugar\n- 2 lemons\n\n1. {steps}\n").Findings.Any(one => one.Rule == rule));

    // General English usage: what all is toasted is no bread.
    [Fact]
    public void Vet_ToastAllButOne_NamesNoBread() =>
        Assert.Equal(Outcome.DryStorage, Vet("# Curry powder\n\n- 4 tbsp coriander seeds\n- 2 tbsp cumin seeds\n- 1 tbsp turmeric\n\n1. Toast all but the turmeric in a dry pan. Cool, grind and keep airtight.\n").Outcome);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10 to 1-18: filled jars get the heat of a canner; clean jars are filled like others, and a cloth wipes their rims.
    [Theory]
    [InlineData("Ladle into hot, sterilized half-pint jars, leaving 1/4 inch headspace.", true)]
    [InlineData("Fill clean jars, leaving 1/4 inch headspace.", true)]
    [InlineData("Sterilize the jars and fill them with the jam, leaving 1/4 inch headspace.", true)]
    [InlineData("Ladle into hot jars, leaving 1/4 inch headspace; wipe the rims with a clean damp cloth.", true)]
    [InlineData("Place clean jars on a rack.", false)]
    [InlineData("Wash the jars and warm them in the water.", false)]
    [InlineData("Pour boiling water into clean jars to warm them.", false)]
    public void Vet_CleanJars_AreFilledAsOthersAre(string step, bool filled) =>
        Assert.Equal(filled, Vet($"# Raspberry jam\n\n- 4 cups crushed raspberries\n- 4 cups sugar\n\n1. Boil to the jelly point.\n2. {step}\n3. Simmer, do not boil, the jars.\n4. Process in a boiling-water canner 10 minutes.\n").Findings.Any(static one => one.Rule == "unsafe-method"));

    private static VettingReport Vet(string recipe) => Vetter.Vet(recipe, Kitchen.Unknown);
}
