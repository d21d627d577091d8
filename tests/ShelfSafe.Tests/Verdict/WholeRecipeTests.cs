using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Whole recipes close to published ones, with one thing in them that no published process covers. Invented for these tests.</summary>
public class WholeRecipeTests
{
    private const string Hot = "Boil the sugar and water. Add the fruit and boil 2 minutes. Fill the hot jars with the hot fruit and syrup, leaving 1/2 inch headspace. Process in a boiling-water canner.";
    private const string Raw = "Pack the meat in hot jars, leaving 1 inch headspace. Cover with boiling broth. Process in a pressure canner.";
    private const string Stock = "Cover the bones with the water and simmer 4 hours. Strain. Chill and lift off the fat. Bring to a boil and fill hot jars, leaving 1 inch headspace. Process in a pressure canner.";
    private const string Soup = "Boil everything 5 minutes. Fill the hot jars half full of solids and top up with the hot broth. Process in a pressure canner.";

    private readonly RecipeVetter _vetter = RecipeVetter.Create(RulePack.Default);

    // Source: USDA AIB 539 (2015) Guides 2, 4 and 5: plain packs hold their own food, liquid, salt, sugar, and seasonings by the spoon.
    [Theory]
    [InlineData("Peaches", "8 kg peaches, peeled\n- 5 cups sugar\n- 10 cups water", "200 g honey", Hot, true)]
    [InlineData("Peaches", "8 kg peaches, peeled\n- 5 cups sugar\n- 10 cups water", "1 kg fudge", Hot, false)]
    [InlineData("Peaches", "8 kg peaches, peeled\n- 5 cups sugar\n- 10 cups water", "200 g marshmallows", Hot, false)]
    [InlineData("Beef", "6 kg beef, cubed\n- 3 l beef broth", "2 tsp black pepper", Raw, true)]
    [InlineData("Beef", "6 kg beef, cubed\n- 3 l beef broth", "1 kg anchovies", Raw, false)]
    [InlineData("Beef", "6 kg beef, cubed\n- 3 l beef broth", "1 kg honey", Raw, false)]
    [InlineData("Beef stock", "3 kg beef bones\n- 6 l water", "2 onions", Stock, true)]
    [InlineData("Beef stock", "3 kg beef bones\n- 6 l water", "1 kg pumpkin puree", Stock, false)]
    [InlineData("Beef stock", "3 kg beef bones\n- 6 l water", "1 l maple syrup", Stock, false)]
    [InlineData("Carrot soup", "1 kg carrots, peeled and sliced\n- 4 l vegetable broth", "2 tsp dried thyme", Soup, true)]
    [InlineData("Carrot soup", "1 kg carrots, peeled and sliced\n- 4 l vegetable broth", "500 g honey", Soup, false)]
    [InlineData("Carrot soup", "1 kg carrots, peeled and sliced\n- 4 l vegetable broth", "zorblatt, 1 bag", Soup, false)]
    [InlineData("Carrot soup", "1 kg carrots, peeled and sliced\n- 4 l vegetable broth", "1 package \U0001F383", Soup, false)]
    public void Vet_AFoodMore_IsPermittedOnlyAsASeasoning(string title, string list, string more, string steps, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# {title}\n\n## Ingredients\n\n- {list}\n- {more}\n\n## Method\n\n{steps}\n"));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-8: food keeps on the shelf only while it stays dry.
    [Theory]
    [InlineData("1 tsp mustard powder", "Mix and keep in an airtight jar.", true)]
    [InlineData("1 cup honey", "Mix and keep in an airtight jar.", false)]
    [InlineData("1 lb turkey", "Mix and keep in an airtight jar.", false)]
    [InlineData("1 tsp mustard powder", "Mix, fill jars and process 20 minutes in a boiling-water canner.", false)]
    public void Vet_ADryMix_StaysDryAndGoesThroughNoCanner(string more, string steps, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# Rub\n\n## Ingredients\n\n- 1/2 cup paprika\n- 1/4 cup salt\n- {more}\n\n## Method\n\n{steps}\n"));

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-14: 8 pints of dilled beans take 8 cloves of garlic.
    [Theory]
    [InlineData("1 clove garlic per jar", true)]
    [InlineData("3 cloves garlic per jar", false)]
    public void Vet_AmountForEachJar_CountsForAllJars(string garlic, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# Dilled beans\n\n## Ingredients\n\n- 4 lb green beans\n- {garlic}\n- 1/2 cup canning salt\n- 4 cups white vinegar (5%)\n- 4 cups water\n\n## Method\n\nCombine salt, vinegar and water and bring to a boil. Place the beans and garlic in hot pint jars. Pour the hot solution over the beans, leaving 1/2 inch headspace. Process in a boiling-water canner.\n"));

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-8 to 6-9: 3 tablespoons of salt to 5 pounds of cabbage, no more and no less.
    [Theory]
    [InlineData("3/4 cup", true)]
    [InlineData("15 tbsp", true)]
    [InlineData("1/2 cup", false)]
    [InlineData("3 cups", false)]
    public void Vet_Kraut_TakesItsSaltBothWays(string salt, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# Sauerkraut\n\n## Ingredients\n\n- 25 lb cabbage\n- {salt} canning salt\n\n## Method\n\nShred the cabbage and mix it with the salt in a crock. Ferment 3 to 4 weeks. Bring the kraut and liquid slowly to a boil. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n"));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10: jars that are filled are processed; the boil of a brine is no process.
    [Theory]
    [InlineData("Process in a boiling-water canner.", true)]
    [InlineData("Store in a cool place.", false)]
    [InlineData("Label them.", false)]
    public void Vet_JarsFilledAfterABoil_NeedTheirCanner(string last, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# Applesauce\n\n## Ingredients\n\n- 21 lb apples\n- 2 cups water\n\n## Method\n\nPeel, core and slice the apples. Heat with the water until tender. Press through a food mill. Bring back to a boil and fill hot quart jars, leaving 1/2 inch headspace. {last}\n"));

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: every food of a jar needs a process; what a title names behind "with" is in the jar.
    [Theory]
    [InlineData("Granny Zorblatt's applesauce", true)]
    [InlineData("Applesauce with zorblatt", false)]
    [InlineData("Applesauce with 1 cup butter", false)]
    public void Vet_TitleWithAFood_IsAsked(string title, bool permitted) =>
        Assert.Equal(permitted, IsPermitted($"# {title}\n\n## Ingredients\n\n- 21 lb apples\n- 2 cups water\n\n## Method\n\nPeel, core and slice the apples. Heat with the water until tender. Press through a food mill. Bring back to a boil and fill hot quart jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n"));

    private bool IsPermitted(string text) => _vetter.Vet(text, Kitchen.Unknown).Outcome is Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage;
}
