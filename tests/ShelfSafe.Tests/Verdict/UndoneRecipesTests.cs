using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Published recipes at their own proportions, undone by one sentence.</summary>
/// <remarks>Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015): Guide 3 (tomato salsa with slicing tomatoes), Guide 4 p. 4-17 (chile con carne, carrots), Guide 7 (berry jam without added pectin), Guide 1 p. 1-8 to 1-25 (the procedure).</remarks>
public sealed class UndoneRecipesTests
{
    private const string Salsa = "# Tomato salsa\n\n- 4 cups peeled, cored, chopped tomatoes\n- 2 cups seeded, chopped long green chiles\n- 1/2 cup seeded, chopped jalapeno peppers\n- 3/4 cup chopped onion\n- 4 cloves garlic, finely chopped\n- 2 cups vinegar (5 percent)\n- 1 tsp ground cumin\n- 1 tbsp dried oregano\n- 1 1/2 tsp salt\n\n1. Combine all the ingredients in a large pot, bring to a boil and simmer 20 minutes.\n2. {0}\n3. Ladle the hot salsa into hot pint jars, leaving 1/2 inch headspace.\n4. Process in a boiling-water canner 15 minutes.\n5. {1}\n";
    private const string Jam = "# Raspberry jam\n\n- 4 cups crushed raspberries\n- 4 cups sugar\n\n1. Boil the berries and sugar, stirring, to 220 F, the jelly point.\n2. {0}\n3. Fill hot sterilized half-pint jars with the hot jam, leaving 1/4 inch headspace.\n4. Process in a boiling-water canner 10 minutes.\n5. {1}\n";
    private const string Carrots = "# Carrots in water\n\n- 11 lb carrots, peeled and sliced\n- 1 tsp salt per quart\n- water\n\n1. Cover with boiling water, bring to a boil and simmer 5 minutes.\n2. {0}\n3. Fill hot pint jars with the hot carrots and the cooking water, leaving 1 inch headspace.\n4. Process in the pressure canner 25 minutes.\n5. {1}\n";
    private const string Chili = "# Chile con carne\n\n- 3 cups dried pinto beans\n- 5 1/2 cups water\n- 5 tsp salt\n- 3 lb ground beef\n- 1 1/2 cups chopped onion\n- 1 cup chopped green bell pepper\n- 1 tsp black pepper\n- 4 tbsp chili powder\n- 2 quarts crushed tomatoes\n\n1. Cover the beans with cold water and soak 12 hours. Drain.\n2. Boil the beans in the fresh water 30 minutes. Drain and discard the water.\n3. Brown the beef, onion and pepper. Drain off the fat, add the rest and the drained beans and simmer 5 minutes.\n4. {0}\n5. Fill hot pint jars, leaving 1 inch headspace.\n6. Process in the pressure canner 75 minutes.\n7. {1}\n";
    private const string Mix = "# Barbecue rub\n\n- 1/2 cup brown sugar\n- 1/4 cup paprika\n- 1 tbsp salt\n- 1 tbsp garlic powder\n\n1. Mix well.\n2. {0}\n3. Keep it in an airtight jar.\n4. {1}\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData(Salsa)]
    [InlineData(Jam)]
    [InlineData(Carrots)]
    [InlineData(Chili)]
    [InlineData(Mix)]
    public void Vet_ThePublishedRecipe_IsPermitted(string recipe)
    {
        Assert.True(IsPermitted(recipe, "Taste it.", "Label the jars."));
        Assert.True(IsPermitted(recipe, "Stir now and then.", "Store the jars in a cool, dry place."));
    }

    [Theory]
    [InlineData(Salsa, "Use 4 percent vinegar.")]
    [InlineData(Salsa, "Use rice vinegar from the shop.")]
    [InlineData(Salsa, "Use homemade vinegar.")]
    [InlineData(Salsa, "Double the peppers.")]
    [InlineData(Salsa, "Add a cup of chopped garlic.")]
    [InlineData(Salsa, "Let it cool to room temperature before filling.")]
    [InlineData(Chili, "No need to precook the meat.")]
    [InlineData(Chili, "Leave the fat on top.")]
    [InlineData(Chili, "Skim nothing, the fat gives flavour.")]
    [InlineData(Chili, "Add a can of kidney beans.")]
    [InlineData(Chili, "Add ketchup.")]
    [InlineData(Carrots, "Add a jar of salsa.")]
    [InlineData(Jam, "Use half the sugar.")]
    [InlineData(Jam, "Use honey for the sugar.")]
    [InlineData(Jam, "Use stevia for the sugar.")]
    [InlineData(Mix, "Add 3 more onions.")]
    [InlineData(Mix, "Add 2 cups of broth to the mix and jar it.")]
    [InlineData(Mix, "Rub it with 2 crushed fresh garlic cloves and keep it in the jar.")]
    [InlineData(Mix, "Add 1/2 cup instant potato flakes and a can of beans.")]
    public void Vet_WithOneStepMore_IsNotPermitted(string recipe, string step) => Assert.False(IsPermitted(recipe, step, "Label the jars."));

    [Theory]
    [InlineData(Carrots, "Use a water bath if you have no pressure canner.")]
    [InlineData(Carrots, "Quarts take the same time.")]
    [InlineData(Carrots, "Open the canner right away.")]
    [InlineData(Carrots, "If the lid pops up, press it down.")]
    [InlineData(Carrots, "Process until it looks done.")]
    [InlineData(Carrots, "I run mine at 5 pounds for 30 minutes.")]
    [InlineData(Carrots, "Stack quarts and pints and time them as pints.")]
    [InlineData(Carrots, "If you live high up it does not matter.")]
    [InlineData(Carrots, "Jars that fail to seal can be put on the shelf and eaten first.")]
    [InlineData(Carrots, "If a lid bulges just push it back.")]
    [InlineData(Carrots, "If it looks fine, eat it.")]
    [InlineData(Carrots, "Taste a bit to see if it is still good.")]
    [InlineData(Salsa, "At 5,000 feet use the same time.")]
    [InlineData(Salsa, "After processing, add a spoon of oil to each jar and close it again.")]
    [InlineData(Salsa, "After processing, open and add cream, then reseal.")]
    [InlineData(Salsa, "Store at room temperature even if not sealed.")]
    [InlineData(Salsa, "It keeps for years on the shelf even unsealed.")]
    [InlineData(Jam, "A pressure cooker will do.")]
    [InlineData(Jam, "You can steam them in a pot for 20 minutes instead.")]
    [InlineData(Jam, "Simmer, do not boil, the jars.")]
    public void Vet_WithOneSentenceBehindTheCanner_IsNotPermitted(string recipe, string step) => Assert.False(IsPermitted(recipe, "Taste it.", step));

    // Source: USDA AIB 539 (rev. 2015) Guide 3, crushed tomatoes: bottled lemon juice, whose acid is known.
    [Fact]
    public void Vet_TomatoesWithTheJuiceOfLemons_AreNotPermitted() =>
        Assert.False(IsPermitted(
            "# Crushed tomatoes\n\n- 22 lb tomatoes\n- 2 tbsp bottled lemon juice per quart\n\n1. Dip the tomatoes in boiling water, slip off the skins and quarter them.\n2. Heat them, crushing them with a mallet, and boil gently 5 minutes.\n3. {0}\n4. Add the lemon juice to the jars. Fill hot pint jars with the hot tomatoes, leaving 1/2 inch headspace.\n5. Process in a boiling-water canner 35 minutes.\n6. {1}\n",
            "Use the juice of 4 lemons instead of bottled.", "Label the jars."));

    // Source: USDA AIB 539 (rev. 2015) Guide 6 (pickled beets, 7 lb to 4 cups of vinegar), Guide 7 (4 cups of crushed berries to 4 cups of sugar).
    [Theory]
    [InlineData("# Pickled beets\n\n- beets, 2 to 2 1/2 inches across\n- 4 cups vinegar (5 percent)\n- 1 1/2 tsp canning salt\n- 2 cups sugar\n- 2 cups water\n\n1. Trim the beets, boil until tender, drain, slip off the skins and slice.\n2. Boil the vinegar, salt, sugar and water. Add the beets and simmer 5 minutes.\n3. {0} Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner 30 minutes. {1}\n")]
    [InlineData("# Raspberry jam\n\n- 4 cups crushed raspberries\n- 2 cups sugar\n\n1. Boil to the jelly point.\n2. {0} Fill hot half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner 10 minutes. {1}\n")]
    public void Vet_SizeForAnAmountOrBerriesByTheWholeCup_AreNotPermitted(string recipe) => Assert.False(IsPermitted(recipe, "Taste it.", "Label the jars."));

    // Source: USDA AIB 539 (rev. 2015) Guide 4 p. 4-18: a seasoning is a small part of a soup.
    [Fact]
    public void Vet_OnionsWithoutAnAmount_AreAskedAbout() =>
        Assert.Contains(Vetter.Vet("# Beef and carrot soup\n\n- 2 lb lean beef, cubed\n- 2 lb carrots, sliced\n- onions, chopped\n- 4 quarts beef broth\n\n1. Boil 30 minutes.\n", Kitchen.Unknown).Findings, static one => one.Rule == "unmeasured");

    // General English usage: "cream of tartar" is no cream that the list has.
    [Theory]
    [InlineData("- 1 tsp cream of tartar", "Add a cup of cream.")]
    [InlineData("- 1 tsp red pepper flakes", "Add a cup of potato flakes.")]
    public void Vet_HazardNamedByAWordOfAnotherFood_IsFound(string line, string step) =>
        Assert.Contains(
            Vetter.Vet($"# Carrots in water\n\n- 11 lb carrots, sliced\n- water\n{line}\n\n1. Simmer 5 minutes in the water.\n2. {step}\n3. Fill hot pint jars and process in the pressure canner 25 minutes.\n", Kitchen.Unknown).Findings,
            static one => one.Rule is "dairy" or "thickener" && one.Level >= FindingLevel.Change);

    private static bool IsPermitted(string recipe, string before, string after) =>
        Vetter.Vet(string.Format(System.Globalization.CultureInfo.InvariantCulture, recipe, before, after), Kitchen.Unknown).Outcome is Outcome.Pressure or Outcome.BoilingWater or Outcome.DryStorage;
}
