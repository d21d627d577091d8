using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>How home cooks end a recipe, compare, deny and dry: what only goes with the dish is no part of it, and what changes the dish bars the plain processes.</summary>
public sealed class MessyHomeTests
{
    private static readonly RecipeVetter Vetter = RecipeVetter.Create(RulePack.Default);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: what is added when serving is no part of the soup in the jar. The second of each pair puts it in.
    [Theory]
    [InlineData("Corn bread at the side.", "bread", false)]
    [InlineData("Push the corn bread to the side of the pan and stir.", "bread", true)]
    [InlineData("For the bowls: rice noodles and bean sprouts.", "pasta", false)]
    [InlineData("Add the rice noodles.", "pasta", true)]
    [InlineData("Coriander on top, basmati underneath.", "rice", false)]
    [InlineData("Stir the basmati in underneath.", "rice", true)]
    [InlineData("Soda bread and butter with it.", "dairy", false)]
    [InlineData("Stir bread and butter with it.", "dairy", true)]
    [InlineData("A yellow risotto is obligatory.", "rice", false)]
    [InlineData("On tacos, on everything.", "leftovers", false)]
    [InlineData("The soup should be loose, not a porridge.", "grain", false)]
    [InlineData("Stir in the porridge.", "grain", true)]
    [InlineData("It should look like thick double cream.", "dairy", false)]
    [InlineData("If you like, double cream is nice in it.", "dairy", true)]
    [InlineData("Stir in something like double cream.", "dairy", true)]
    [InlineData("Jasmine rice next to it.", "rice", false)]
    [InlineData("Cook it to the thickness of double cream.", "dairy", false)]
    [InlineData("Finish with a spoon of double cream.", "dairy", true)]
    public void Vet_LastSentence_TellsWhatGoesWithTheDish(string sentence, string rule, bool inIt) =>
        Assert.Equal(inIt, Rules($"# Beef soup\n\n- 1 kg beef, cubed\n- 4 carrots\n- 3 l beef broth\n\n1. Simmer everything for an hour.\n2. {sentence}\n").Contains(rule));

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18 to 4-19.
    [Theory]
    [InlineData("Lime wedges and herbs.", false)]
    [InlineData("Put the lime wedges in the pot.", true)]
    public void Vet_CitrusWedges_AreServedBesideUnlessAStepPutsThemIn(string sentence, bool asked) =>
        Assert.Equal(asked, Vet($"# Beef soup\n\n- 1 kg beef, cubed\n- 4 carrots\n- 3 l beef broth\n\n1. Simmer everything for an hour.\n2. {sentence}\n").Findings.Any(one => one.Rule == "step-food"));

    // Source: general English usage; USDA AIB 539 (2015) Guide 4 p. 4-18 knows no added fat.
    [Theory]
    [InlineData("Fry the carrots in a dry pan, you won't need oil.", false)]
    [InlineData("There is no need for any oil.", false)]
    [InlineData("You won't need the oil yet.", true)]
    [InlineData("You will need oil.", true)]
    public void Vet_OilThatIsNotNeeded_IsNotInTheDish(string sentence, bool fat) =>
        Assert.Equal(fat, Rules($"# Peas and carrots\n\n- 500 g peas\n- 500 g carrots\n- 1 l water\n\n1. {sentence}\n2. Simmer with the water.\n").Contains("fat"));

    // Source: Penn State Extension, Do not can in oil (2012); the fat of frying is added fat, and no food that is kept under oil.
    [Theory]
    [InlineData("1. Fry the carrots in oil.\n2. Simmer with the peas and water.", false)]
    [InlineData("1. Simmer the peas and carrots in the water.\n2. Put them in a jar and cover with oil.", true)]
    [InlineData("1. Simmer the peas and carrots in the water.\n2. Pack in a jar and fill up with olive oil.", true)]
    public void Vet_OilWithoutAnAmount_IsAnInfusionOnlyOverTheFood(string steps, bool infusion)
    {
        HashSet<string> rules = Rules($"# Peas and carrots\n\n- 500 g peas\n- 500 g carrots\n- 1 l water\n\n{steps}\n");
        Assert.Equal(infusion, rules.Contains("oil-infusion"));
        Assert.Contains("fat", rules);
    }

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-5 to 3-12 (fresh tomatoes), Guide 4 p. 4-5 to 4-19 (plain pieces in water or thin broth).
    [Theory]
    [InlineData("Summer tomatoes", "- 1 kg tomatoes\n- 1 tsp salt", "1. Halve them. 100 °C oven for 3 hours, till leathery.\n2. Put them in jars.")]
    [InlineData("Summer tomatoes", "- 1 kg tomatoes\n- 500 g carrots\n- 1 tsp salt", "1. Roast in the oven for an hour until charred.\n2. Put them in jars.")]
    [InlineData("Filled peppers", "- 4 peppers\n- 10 tomatoes\n- 1 onion", "1. Mix it all, stuff it in.\n2. Simmer 30 minutes.")]
    [InlineData("Stuffed peppers", "- 4 peppers\n- 10 tomatoes\n- 1 l water", "1. Simmer 30 minutes.")]
    [InlineData("Gołąbki (cabbage rolls)", "- 1 kg ground beef\n- 10 tomatoes\n- 1 l water", "1. Simmer 30 minutes.")]
    [InlineData("Ajvar", "- 3 kg red peppers\n- 1 tsp salt", "1. Roast, peel and mince.\n2. Cook for 3 hours.")]
    [InlineData("Winter peppers", "- 3 kg red peppers\n- 1 tsp salt", "1. Cook for 3 hours till the spoon leaves a path.")]
    public void Vet_DriedStuffedOrBoiledDown_FitsNoPlainProcess(string title, string list, string steps) =>
        Assert.Contains(Vet($"# {title}\n\n{list}\n\n{steps}\n").Outcome, (Outcome[])[Outcome.FreezeOrChill, Outcome.TestedRecipeOnly]);

    // Source: NCHFP, jerky: meat dried until it cracks when bent keeps by dryness; it is still no food for a canner. Oregon State, storing nuts: dry and airtight.
    [Theory]
    [InlineData("Biltong", "- 2 kg beef, in strips along the grain\n- 1/2 cup vinegar\n- 40 g salt", "1. Rub the meat. 12 hours in the fridge.\n2. Hang the strips in the box.\n3. Leave them for 4 to 7 days.", Acidity.Dry, Outcome.FreezeOrChill)]
    [InlineData("Biltong", "- 2 kg beef, in strips along the grain\n- 1/2 cup vinegar\n- 40 g salt", "1. Rub the meat and cook it.", Acidity.LowAcid, Outcome.FreezeOrChill)]
    [InlineData("Granola", "- 4 cups oats\n- 1 cup pecans\n- 1/3 cup maple syrup", "1. Bake for 35 minutes.", Acidity.Dry, Outcome.NotAJarFood)]
    [InlineData("Granola", "- 4 cups oats\n- 1 cup pecans\n- 1/3 cup maple syrup", "1. Mix.", Acidity.LowAcid, Outcome.NotAJarFood)]
    [InlineData("Dukkah", "- 100 g hazelnuts\n- 50 g sesame seeds\n- 2 tbsp coriander seed", "1. Toast nuts and seeds. Pound.\n2. Dip bread into olive oil and then in this.", Acidity.Dry, Outcome.DryStorage)]
    [InlineData("Dukkah", "- 100 g hazelnuts\n- 50 g sesame seeds\n- 1/2 cup water", "1. Toast nuts and seeds. Pound.", Acidity.LowAcid, Outcome.FreezeOrChill)]
    [InlineData("Peanut butter", "- 500 g peanuts\n- 1 tsp salt", "1. Grind.", Acidity.LowAcid, Outcome.FreezeOrChill)]
    public void Vet_DriedFood_IsDryAndNoMore(string title, string list, string steps, Acidity acidity, Outcome outcome)
    {
        VettingReport report = Vet($"# {title}\n\n{list}\n\n{steps}\n");
        Assert.Equal((acidity, outcome), (report.Acidity, report.Outcome));
        Assert.DoesNotContain(report.Findings, finding => finding.Rule == "grain" && finding.Ingredient == "grain");
    }

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-7 to 6-8: cabbage ferments in a stoneware crock.
    [Theory]
    [InlineData("Kimchi", "Pack in a crock, two days on the counter, burp it.", false)]
    [InlineData("Stewed beef", "Pack in a crock and seal.", true)]
    public void Vet_CrockOfAFerment_IsNoJarOfShopFood(string title, string step, bool shop) =>
        Assert.Equal(shop, Vet($"# {title}\n\n- 2 kg cabbage\n- 50 g salt\n\n1. {step}\n").Findings.Any(one => one.Message.Contains("shop food", StringComparison.Ordinal)));

    // A listed food by a short name is the fruit of the title. Source: general English usage.
    [Theory]
    [InlineData("2 lb strawbs, hulled", false)]
    [InlineData("2 lb raspberries", true)]
    public void Vet_TitleOfAJam_NamesItsListedFruit(string line, bool asked) =>
        Assert.Equal(asked, Vet($"# Rhubarb & Strawberry Jam\n\n- 2 lb rhubarb\n- {line}\n- 3 1/2 lb sugar\n\n1. Boil to the setting point.\n2. Fill hot jars, 1/4 inch headspace, process half-pints 10 minutes in a boiling-water canner.\n").Findings.Any(one => one.Rule == "step-food"));

    private static HashSet<string> Rules(string text) => [.. Vet(text).Findings.Where(static one => one.Level is FindingLevel.Stop or FindingLevel.Change).Select(static one => one.Rule)];

    private static VettingReport Vet(string text) => Vetter.Vet(text, Kitchen.Unknown);
}
