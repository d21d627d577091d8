using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>
/// A plain yes is given back for anything in the text that was not understood. Each base recipe follows its published directions; each change is one that
/// they do not have. Source: USDA AIB 539 (2015) Guide 1 p. 1-8 to 1-23 (canners, packs, headspace), Guide 3 (choice salsa, tomatoes), Guide 4 p. 4-18
/// (soup, vegetables), Guide 5 (meat, stock), Guide 6 (quick dill pickles).
/// </summary>
public sealed class LastLookTests
{
    private const string Carrots = "# Canned carrots\n\n- 11 lb carrots, peeled and sliced\n- 4 quarts water\n- 3 tbsp canning salt\n\n1. Wash, peel and slice the carrots.\n2. Cover with boiling water, bring to a boil and simmer for 5 minutes.\n3. Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace.\n4. Adjust lids and process in a pressure canner.\n";
    private const string Soup = "# Vegetable beef soup\n\n- 2 lb lean stewing beef, cut in 1 inch cubes\n- 2 lb carrots, sliced\n- 2 lb potatoes, peeled and cut in 1/2 inch cubes\n- 5 quarts beef broth\n- 2 tbsp salt\n\n1. Brown the beef and drain off the fat.\n2. Put everything in a large pot, bring to the boil and boil for 5 minutes.\n3. Fill hot jars half full with the solids, then top up with hot broth leaving 1 inch headspace.\n4. Process in a pressure canner.\n";
    private const string Salsa = "# Choice salsa\n\n- 6 cups peeled, cored, chopped tomatoes\n- 9 cups chopped onions and peppers of any variety\n- 1 1/2 cups bottled lemon juice\n- 3 tsp canning salt\n\n1. Combine all ingredients in a large pot.\n2. Bring to a boil, stirring, then simmer 3 minutes.\n3. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n";
    private const string Peaches = "# Peaches in light syrup\n\n- 11 lb peaches, peeled, halved and pitted\n- 9 cups water\n- 2 1/4 cups sugar\n\n1. Boil the water and sugar.\n2. Add the peach halves and bring to the boil.\n3. Pack hot in quart jars with the syrup, leaving 1/2 inch headspace.\n4. Process in a boiling-water canner.\n";
    private const string Jam = "# Blackberry jam\n\n- 4 cups crushed blackberries\n- 4 cups sugar\n\n1. Crush the berries. Combine with the sugar in a large pan.\n2. Bring slowly to boiling, stirring until sugar dissolves. Cook rapidly to the setting point.\n3. Pour hot into hot half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner.\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData(Carrots)]
    [InlineData(Soup)]
    [InlineData(Salsa)]
    [InlineData(Peaches)]
    [InlineData(Jam)]
    public void Vet_PublishedDirections_ArePermittedAsWritten(string recipe) => Assert.True(Of(recipe) is Outcome.Pressure or Outcome.BoilingWater, Of(recipe).ToString());

    [Theory]
    [InlineData(Carrots, "process in a pressure canner", "steam the jars for an hour")]
    [InlineData(Carrots, "process in a pressure canner", "microwave the jars for 10 minutes")]
    [InlineData(Carrots, "process in a pressure canner", "put the jars in the dishwasher on the hot cycle")]
    [InlineData(Carrots, "process in a pressure canner", "process in a pressure saucepan or a multi-cooker")]
    [InlineData(Carrots, "process in a pressure canner", "bake the jars for 1 hour")]
    [InlineData(Carrots, "process in a pressure canner", "leave to cool")]
    [InlineData(Carrots, "process in a pressure canner", "there is no need to process")]
    [InlineData(Peaches, "Process in a boiling-water canner", "Lids on, and leave them on the bench")]
    [InlineData(Peaches, "Process in a boiling-water canner", "Wrap the jars in blankets overnight")]
    public void Vet_HeatThatIsNoCanners_IsNoProcess(string recipe, string step, string other) => Refuses(recipe, step, other);

    // A pan or a shop's tin is no jar: such steps say nothing of what is done with filled jars.
    [Theory]
    [InlineData("# Stew\n\n- 1 kg beef\n- 2 l water\n\n1. Add the beef to the pot.\n2. Fill the pot with water.\n3. Heat and simmer for an hour.\n")]
    [InlineData("# Beans\n\n- 1 can black beans\n- 1 onion\n\n1. Open the can and pour the beans into the pan.\n2. Let them fry for 5 minutes.\n")]
    [InlineData("# Stew\n\n- 1 kg beef\n- 2 l broth\n\n1. Boil a bone for filling the crock pot.\n2. Cook for 8 hours.\n")]
    public void Vet_APanThatIsFilled_IsNoJar(string recipe) =>
        Assert.DoesNotContain(Vetter.Vet(recipe, Kitchen.Unknown).Findings, static finding => finding.Rule is "unsafe-method" or "no-canner");

    [Theory]
    [InlineData("Fill hot pint jars with hot carrots", "Fill hot tins with hot carrots")]
    [InlineData("Fill hot pint jars with hot carrots", "Fill the pots with hot carrots")]
    public void Vet_TinsAndPotsMadeReady_AreJars(string step, string other) =>
        Assert.Contains(Vetter.Vet(Carrots.Replace(step, other, StringComparison.Ordinal).Replace("process in a pressure canner", "bake for an hour", StringComparison.Ordinal), Kitchen.Unknown).Findings, static finding => finding.Rule == "unsafe-method");

    [Theory]
    [InlineData(Carrots, "peeled and sliced", "peeled and mashed")]
    [InlineData(Carrots, "peeled and sliced", "fried")]
    [InlineData(Soup, "carrots, sliced", "carrots, sliced (plus a cup of pearl barley)")]
    [InlineData(Soup, "carrots, sliced", "carrots (with barley)")]
    [InlineData(Soup, "5 quarts beef broth", "5 quarts beef broth, reduced")]
    [InlineData(Jam, "crushed blackberries", "crushed blackberries (in a poor year make it up with elderberries)")]
    [InlineData(Salsa, "1 1/2 cups bottled lemon juice", "1 1/2 cups bottled lemon juice (or the same of white vinegar (5 percent))")]
    public void Vet_TheTailOfALine_Counts(string recipe, string words, string other) => Refuses(recipe, words, other);

    [Theory]
    [InlineData("Combine all ingredients in a large pot", "Combine all ingredients in a large pot, but use only half the lemon juice")]
    [InlineData("Combine all ingredients in a large pot", "Combine all ingredients except the lemon juice in a large pot")]
    [InlineData("Combine all ingredients in a large pot", "Combine all ingredients in a large pot, leaving out the lemon juice if you don't like it sour")]
    [InlineData("Combine all ingredients in a large pot", "Combine all ingredients, with 1 cup lemon juice")]
    [InlineData("Combine all ingredients in a large pot", "Combine all ingredients with another 3 cups of onions")]
    [InlineData("# Choice salsa", "# Black bean and corn salsa")]
    public void Vet_LessAcidOrMoreFoodThanListed_IsNoTestedRecipe(string words, string other) => Refuses(Salsa, words, other);

    [Theory]
    [InlineData(Soup, "boil for 5 minutes", "boil for 5 minutes; bind with an Einbrenn")]
    [InlineData(Soup, "half full with the solids", "three quarters full with the solids")]
    [InlineData(Soup, "1. Brown", "*Update: now with a handful of barley!*\n\n1. Brown")]
    [InlineData(Soup, "# Vegetable beef soup", "# Beef noodle soup")]
    [InlineData(Soup, "2. Put everything in a large pot, bring to the boil and boil for 5 minutes.\n", "")]
    [InlineData(Soup, "- 2 tbsp salt", "- 2 tbsp salt\n\n**To serve**\n\n- 300 g ditali\n")]
    [InlineData(Carrots, "# Canned carrots", "# Canned carrots\n\nMakes three 2-litre jars.")]
    [InlineData(Peaches, "quart jars", "64-ounce jars")]
    public void Vet_WhatNobodyUnderstood_IsAsked(string recipe, string words, string other) =>
        Refuses(recipe.Replace("boil for 5 minutes.", other.Contains("ditali", StringComparison.Ordinal) ? "boil for 5 minutes, then in go the ditali." : "boil for 5 minutes.", StringComparison.Ordinal), words, other);

    [Fact]
    public void Vet_TwoColumnsOfAmounts_CannotBothBeTheBatch()
    {
        const string table = "# Choice salsa\n\n| | Single | Big |\n|---|---|---|\n| tomatoes, peeled, cored, chopped | 6 cups | 12 cups |\n| onions and peppers, chopped | 9 cups | 20 cups |\n| bottled lemon juice | 1 1/2 cups | 1 1/2 cups |\n\n1. Combine all ingredients in a large pot.\n2. Bring to a boil and simmer 3 minutes.\n3. Fill hot pint jars. Process in a boiling-water canner.\n";

        Assert.NotEqual(Outcome.BoilingWater, Of(table));
    }

    private static void Refuses(string recipe, string words, string other)
    {
        Assert.Contains(words, recipe, StringComparison.Ordinal);
        VettingReport report = Vetter.Vet(recipe.Replace(words, other, StringComparison.Ordinal), Kitchen.Unknown);

        Assert.False(report.Outcome is Outcome.Pressure or Outcome.BoilingWater, report.Outcome.ToString());
        Assert.Contains(report.Findings, finding => finding.Level >= FindingLevel.Change);
    }

    private static Outcome Of(string recipe) => Vetter.Vet(recipe, Kitchen.Unknown).Outcome;
}
