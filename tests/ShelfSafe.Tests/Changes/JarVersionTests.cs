using ShelfSafe.Changes;
using ShelfSafe.Core;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Changes;

/// <summary>Ordinary stews, soups and stocks come to a jar version by what the published directions themselves tell to do.</summary>
public class JarVersionTests
{
    private const string Floured = """
        # Beef and potato stew

        ## Ingredients

        - 2 lb beef chuck, cut in 1-inch cubes
        - 1/4 cup flour
        - 2 tbsp oil
        - 1 onion, chopped
        - 4 carrots, sliced
        - 4 potatoes, peeled and cubed
        - 6 cups beef broth
        - 1 tsp salt

        ## Directions

        1. Toss the beef in the flour and brown it in the oil.
        2. Add the onion and cook for 5 minutes.
        3. Pour in the broth, add the salt, and simmer for 1 hour.
        4. Add the carrots and potatoes and simmer until everything is tender and the gravy has thickened.
        """;

    private const string Curry = """
        # Chicken curry

        - 1 kg boneless chicken thighs, cut into pieces
        - 2 tablespoons butter
        - 2 tablespoons curry powder
        - 750 ml chicken stock
        - 200 ml cream
        - 2 potatoes, cubed

        1. Melt the butter in a large pot, add the chicken and brown it on all sides.
        2. Add the curry powder, stock and potatoes and simmer for 25 minutes.
        3. Stir in the cream and simmer for 5 more minutes until the sauce has thickened.
        """;

    private const string Stock = """
        # Chicken stock

        - 3 kg chicken bones
        - 5 litres water
        - 2 carrots

        1. Put everything into a large pot and bring to a boil.
        2. Simmer for 3 hours.
        3. Strain through a fine sieve.
        4. Ladle the hot stock into jars.
        """;

    // Source: USDA Guide 4, p. 4-18: no flour, half solids and half liquid, meat cooked first; Guide 5, p. 5-6: excess fat off.
    [Fact]
    public void Adapt_AFlouredStew_BrownsTheBeefWithoutFlourAndOil()
    {
        Adaptation done = Jar(Floured);

        Assert.Contains("1. Brown the beef.\n2. Add the onion and cook for 5 minutes.", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("simmer until everything is tender.\n", done.Recipe, StringComparison.Ordinal);
        Assert.Contains(done.Changes, change => change is { Kind: "leave-out", What: "2 tbsp oil" });
        Assert.Contains("### To serve\n\n- 1/4 cup flour\n", done.Recipe, StringComparison.Ordinal);
    }

    // Source: USDA Guide 4, p. 4-18; University of Wisconsin Extension, Canning mixtures (2015): what has no time of its own only seasons.
    [Fact]
    public void Adapt_MoreOnionThanASeasoning_IsCutDownToOne()
    {
        Adaptation done = Jar(Floured);

        AdaptChange less = Assert.Single(done.Changes, change => change is { Kind: "amount", What: "1 onion, chopped" });
        Assert.Matches("^up to [0-9]+ g \\([0-9.]+ oz\\) onion, chopped$", less.Now);
        Assert.Contains($"- {less.Now}\n", done.Recipe, StringComparison.Ordinal);
    }

    // Source: USDA Guide 4, p. 4-18: broth, water or tomatoes to cover.
    [Theory]
    [InlineData("- 6 cups beef broth", "broth", "beef broth")]
    [InlineData("- 6 cups plain tomato juice", "tomato juice", "tomato juice")]
    [InlineData("- 6 cups water", "water", "water")]
    public void Adapt_TooLittleLiquid_IsFilledUpWithTheDishsOwn(string line, string word, string liquid)
    {
        Adaptation done = Jar(Floured.Replace("- 6 cups beef broth", line, StringComparison.Ordinal).Replace("the broth", $"the {word}", StringComparison.Ordinal));

        AdaptChange more = Assert.Single(done.Changes, change => change.Kind == "liquid");
        Assert.EndsWith($") {liquid}", more.What, StringComparison.Ordinal);
        Assert.Contains($"Stir in the remaining {liquid} and bring everything to a boil.", done.Recipe, StringComparison.Ordinal);
    }

    // A reason that falls away with a change is none: the thick sauce went with its cream. Source: USDA Guide 4, p. 4-18 (no cream).
    [Fact]
    public void Adapt_ASauceThatCreamThickens_GoesToServingWithIt()
    {
        Adaptation done = Jar(Curry);

        Assert.Contains("1. Add the chicken and brown it on all sides.\n", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("- 200 ml cream\n", done.Recipe.Split("### To serve")[1], StringComparison.Ordinal);
        Assert.DoesNotContain("thickened", done.Recipe.Split("## To serve")[0], StringComparison.Ordinal);
    }

    // Source: USDA Guide 5, p. 5-7: strain, chill, lift off the fat, boil again.
    [Fact]
    public void Adapt_AStockThatIsNotSkimmed_IsSkimmedBeforeTheJars()
    {
        string recipe = Jar(Stock).Recipe;

        Assert.Contains("3. Strain through a fine sieve.\n4. Chill the liquid, lift off the fat that sets on top, and bring it back to a boil.\n5. Ladle", recipe, StringComparison.Ordinal);
    }

    // A step that leaves the fat in is the cook's to change. Source: as above.
    [Fact]
    public void Adapt_AStockThatKeepsItsFat_IsNotSkimmedAgainstItsWords() =>
        Assert.NotEqual(AdaptationKind.Jar, Adapter.Adapt(Stock.Replace("3. Strain through a fine sieve.", "3. Strain through a fine sieve and do not skim off the fat.", StringComparison.Ordinal), Hall).Kind);

    // Blended is blended, with the cream or without: pieces in thin broth were tested. Source: USDA Guide 4, p. 4-18.
    [Theory]
    [InlineData("Blend the curry until smooth.")]
    [InlineData("Mash the potatoes into the sauce.")]
    [InlineData("Boil the sauce down until it is thick.")]
    public void Adapt_ADishThatIsSmooth_GetsNoJarVersion(string step) =>
        Assert.NotEqual(AdaptationKind.Jar, Adapter.Adapt(Curry + "\n4. " + step, Hall).Kind);

    // The recipe itself calls it optional: without it, it is the same dish. Source: USDA Guide 4, p. 4-18 (what has no process stays out).
    [Fact]
    public void Vet_AnOptionalFoodWithoutAnAmount_DoesNotMakeItAnotherDish()
    {
        string recipe = Floured.Replace("- 1 tsp salt", "- 1 tsp salt\n- chilli sauce (optional)", StringComparison.Ordinal);

        Assert.Equal(Outcome.PressureAfterChanges, Vet(recipe).Outcome);
        Assert.Equal(Outcome.FreezeOrChill, Vet(recipe.Replace("- chilli sauce (optional)", "- 2 kg cabbage, sliced", StringComparison.Ordinal)).Outcome);
    }

    // "Top up" fills a jar and names no headspace; the published filling stands in its place.
    [Fact]
    public void Adapt_JarsHalfFilledAndToppedUp_GetThePublishedFilling()
    {
        string plain = Floured.Replace("- 1/4 cup flour\n- 2 tbsp oil\n", string.Empty, StringComparison.Ordinal)
            .Replace("Toss the beef in the flour and brown it in the oil.", "Brown the beef in a dry pan and drain it.", StringComparison.Ordinal)
            .Replace(" and the gravy has thickened", string.Empty, StringComparison.Ordinal);

        string recipe = Jar($"{plain}\n5. Half-fill the jars with solids, top up with the hot liquid and pressure can.").Recipe;

        Assert.Contains("top it up with the boiling liquid.\n", recipe, StringComparison.Ordinal);
        Assert.DoesNotContain("Half-fill", recipe, StringComparison.Ordinal);
    }

    // Source: National Center for Home Food Preservation, Using atmospheric steam canners: the time of boiling water, acid food alone.
    [Fact]
    public void Adapt_ForASteamCannerAlone_NamesIt()
    {
        Adaptation done = Adapter.Adapt(Sample("plum-and-cardamom-jam.md"), Hall with { Canners = ["atmospheric-steam"] });

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Contains("Process the jars in an atmospheric steam canner by the published process.", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("10 minutes in pure steam", done.Recipe, StringComparison.Ordinal);
        Assert.DoesNotContain("boiling-water", done.Recipe, StringComparison.Ordinal);
    }

    // Source: USDA, Institutional Meat Purchase Specifications, series 100: a chuck roast is a raw cut.
    [Theory]
    [InlineData("2 lb chuck roast, cut in 1-inch cubes", true)]
    [InlineData("2 lb roast beef, cut in 1-inch cubes", false)]
    [InlineData("2 lb pot roast, cut in 1-inch cubes", false)]
    public void Adapt_ACutCalledRoast_IsRaw(string line, bool raw) =>
        Assert.Equal(raw, Adapter.Adapt(Floured.Replace("2 lb beef chuck, cut in 1-inch cubes", line, StringComparison.Ordinal), Hall).Kind == AdaptationKind.Jar);

    [Fact]
    public void Adapt_AQuestionAboutTheText_QuotesIt()
    {
        Adaptation done = Adapter.Adapt(Curry.Replace("2 potatoes, cubed", "2 potatoes, grated", StringComparison.Ordinal), Hall);

        Assert.Equal(AdaptationKind.Question, done.Kind);
        Assert.Contains(done.Questions, note => note.Text.Contains("\"grated\"", StringComparison.Ordinal));
    }
}
