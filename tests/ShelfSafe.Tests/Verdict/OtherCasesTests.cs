using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Holds the words of findings to the verdict: no line gets two orders, and no advice contradicts a stop.</summary>
public class OtherCasesTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    private const string OilPaste = "# Garlic in oil\n\n- 200 g garlic cloves\n- 300 g basil leaves\n- 500 ml olive oil\n\n1. Cover the garlic and the basil with the oil.\n2. Keep the jars in the pantry.\n";

    // Source: NCHFP, Garlic-in-oil (reviewed 2015); Penn State Extension, Do not can in oil (2012): neither canner mends food under oil.
    [Fact]
    public void Vet_FoodUnderOil_SendsNothingToACanner()
    {
        VettingReport report = Vetter.Vet(OilPaste, Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding is { Rule: "oil-infusion", Level: FindingLevel.Stop });
        Assert.DoesNotContain(report.Findings, finding => finding.Rule == "low-acid" && finding.Message.Contains("pressure canner", StringComparison.Ordinal));
        Assert.All(report.Findings, finding =>
        {
            Assert.DoesNotContain("pressure process", finding.Instead, StringComparison.Ordinal);
            Assert.DoesNotContain("opened jar", finding.Instead, StringComparison.Ordinal);
            Assert.DoesNotContain("Trim", finding.Instead, StringComparison.Ordinal);
        });
    }

    // Source: Penn State Extension, Do not can in oil (2012): fatty meat in a sauce is not food under oil.
    [Fact]
    public void Vet_AFattyMeatSauce_IsNotToldOfFoodUnderOil()
    {
        VettingReport report = Vetter.Vet("# Meat sauce\n\n- 500 g pork mince\n- 200 g pancetta\n- 2 tbsp olive oil\n- 800 g tomatoes\n- 2 carrots\n\n1. Brown the meat and simmer everything.\n", Kitchen.Unknown);

        Assert.All(report.Findings, finding => Assert.DoesNotContain("under oil", finding.Message, StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 3 p. 3-5: the acid is that of plain tomatoes, not of a mixture.
    [Fact]
    public void Vet_AMixtureWithTomatoes_DoesNotOfferLemonJuiceAsACure()
    {
        VettingReport report = Vetter.Vet("# Tomato relish\n\n- 1 kg tomatoes, chopped\n- 600 g onions, chopped\n- 400 g bell peppers, chopped\n- 100 ml vinegar (5%)\n\n1. Boil for 30 minutes.\n", Kitchen.Unknown);

        Assert.Equal(Outcome.TestedRecipeOnly, report.Outcome);
        Finding borderline = Assert.Single(report.Findings, finding => finding.Rule == "borderline-acid");
        Assert.DoesNotContain("tablespoon", borderline.Instead, StringComparison.Ordinal);
        Assert.Contains("does not make this mixture fit", borderline.Instead, StringComparison.Ordinal);
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 4 p. 4-18: thickener stays out; flour is one food and gets one order.
    [Fact]
    public void Vet_FlourInAStew_IsAThickenerAndNoGrainBesides()
    {
        VettingReport report = Vetter.Vet("# Beef stew\n\n- 1 kg beef, cubed\n- 2 l water\n- 3 tbsp flour\n\n1. Brown the beef and drain it.\n2. Boil with the water.\n", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding is { Rule: "thickener", Level: FindingLevel.Change });
        Assert.DoesNotContain(report.Findings, finding => finding.Rule == "grain");
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 4 p. 4-18 to 4-19: onion is a seasoning of soup; one order a line.
    [Fact]
    public void Vet_OnionsAboveASeasoning_GetOneOrder()
    {
        VettingReport report = Vetter.Vet("# Beef soup\n\n- 1.5 kg beef, cubed\n- 2 large onions, chopped\n- 4 carrots, sliced\n- 4 l beef broth\n\n1. Brown the beef and drain it.\n2. Add the onions and carrots.\n3. Add the broth and boil 5 minutes.\n", Kitchen.Unknown);

        Finding onion = Assert.Single(report.Findings, finding => finding is { Rule: "untested-food", Ingredient: "large onions" });
        Assert.Equal(FindingLevel.Change, onion.Level);
        Assert.Contains("\"large onions\" are", onion.Message, StringComparison.Ordinal);
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 4 p. 4-16 to 4-17: potatoes wait in an ascorbic acid solution; Guide 4, mushrooms.
    [Theory]
    [InlineData("# Potatoes\n\n- 3 kg potatoes, peeled and cubed\n- 1 tsp ascorbic acid\n- 3 l water\n\n1. Keep the potatoes in the water with the ascorbic acid and drain them.\n2. Boil them 2 minutes, drain, and fill the jars with fresh boiling water.\n", false)]
    [InlineData("# Potatoes\n\n- 3 kg potatoes, peeled and cubed\n- 200 g ascorbic acid\n- 3 l water\n\n1. Keep the potatoes in the water with the ascorbic acid and drain them.\n2. Boil them 2 minutes, drain, and fill the jars with fresh boiling water.\n", true)]
    public void Vet_AscorbicAcid_IsAskedOutUnlessItIsThePublishedDip(string text, bool asked) =>
        Assert.Equal(asked, Vetter.Vet(text, Kitchen.Unknown).Findings.Any(finding => finding is { Rule: "untested-food", Ingredient: "ascorbic acid" }));

    [Theory]
    [InlineData("Basic bolognese sauce.", false)]
    [InlineData("Basic white sauce.", true)]
    [InlineData("This is a basic recipe for bolognese sauce.", false)]
    [InlineData("Use the recipe for the white one.", true)]
    public void Vet_ADescriptionOfTheDish_IsNoOtherRecipe(string description, bool other)
    {
        string text = $"# Bolognese sauce\n\n{description}\n\n## Ingredients\n\n- 1 kg ground beef\n- 2 kg tomatoes\n\n## Directions\n\n1. Brown the beef and boil everything.\n";

        Assert.Equal(other, Vetter.Vet(text, Kitchen.Unknown).Findings.Any(finding => finding.Rule == "sub-recipe"));
    }

    [Fact]
    public void Vet_AFreshDish_IsNotToldOfOpenedJars()
    {
        VettingReport report = Vetter.Vet("# Cucumber salad\n\n- 2 cucumbers, sliced\n- 200 ml sour cream\n\n1. Stir and serve at once.\n", Kitchen.Unknown);

        Assert.Equal(Outcome.NotAJarFood, report.Outcome);
        Assert.All(report.Findings, finding => Assert.DoesNotContain("opened jar", finding.Instead, StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 2 p. 2-13, 2-16: chutneys of cranberry and of mango, whose main foods a green tomato chutney lacks.
    [Fact]
    public void Vet_ADishWithoutAFormulasMainFood_IsNotSentToIt()
    {
        VettingReport report = Vetter.Vet("# Green tomato chutney\n\n- 2 kg green tomatoes\n- 500 g onions\n- 300 g raisins\n- 500 g brown sugar\n- 600 ml vinegar (5%)\n\n1. Boil until thick.\n", Kitchen.Unknown);

        Assert.NotEmpty(report.Nearest);
        Assert.All(report.Nearest, near => Assert.DoesNotContain("chutney", near.Name, StringComparison.OrdinalIgnoreCase));
    }

    // Words of the kitchen, as English uses them: the knife is no butter, and what garlic is for is no food of its own.
    [Theory]
    [InlineData("- 1 kg strawberries\n\n1. Halve the berries with a butter knife.\n", "dairy")]
    [InlineData("- 1 kg peas\n\n1. Shell the peas.\n", "pasta")]
    [InlineData("- 2 cloves of garlic for aioli, don't include for mayonnaise\n\n1. Chop it.\n", "egg")]
    public void Vet_WordsThatOnlySoundLikeAFood_AreNone(string text, string rule) =>
        Assert.DoesNotContain(Vetter.Vet("# Dish\n\n" + text, Kitchen.Unknown).Findings, finding => finding.Rule == rule);

    [Theory]
    [InlineData("- 1 kg strawberries\n\n1. Stir in the butter.\n", "dairy")]
    [InlineData("- 1 kg peas\n\n1. Stir in the pasta shells.\n", "pasta")]
    [InlineData("- 1 kg beef\n\n1. Stir in the rice grains and simmer.\n", "rice")]
    [InlineData("- 1 kg beef\n\n1. Stir in the rice and simmer.\n", "rice")]
    [InlineData("- 2 cloves of garlic\n- 3 tbsp aioli\n\n1. Chop it.\n", "egg")]
    public void Vet_TheFoodItself_IsFoundAllTheSame(string text, string rule) =>
        Assert.Contains(Vetter.Vet("# Dish\n\n" + text, Kitchen.Unknown).Findings, finding => finding.Rule == rule);

    // A finding may only fall out where another one says it.
    [Theory]
    [InlineData("| beside: thickener | - |", false)]
    [InlineData("| stopped by: oil-infusion | - |", false)]
    [InlineData("| outcome: tested-recipe-only | Freeze it. |", false)]
    [InlineData("| outcome: tested-recipe-only | - |", true)]
    [InlineData("| always |  |", true)]
    [InlineData("| nonsense: x | Freeze it. |", true)]
    public void Card_OtherCases_NameWhatSpeaksInstead(string row, bool faulty)
    {
        List<PackFault> faults = [];

        CardReader.Hazard("hazards/x.md", $"# x\n\n| level | check | source |\n| --- | --- | --- |\n| change | always | usda-g4-soup |\n\n## Message\nA.\n## Why\nB.\n## Instead\nC.\n\n## Other cases\n| check | instead |\n| --- | --- |\n{row}\n", RulePack.Default.Tables.Lists, faults);

        Assert.Equal(faulty, faults.Count > 0);
    }

    [Theory]
    [InlineData("\"{ingredient}\" {is|are} low, and {it needs|they need} heat.", "\"{ingredient}\" is low, and it needs heat.")]
    [InlineData("No choice {words} here", "No choice {words} here")]
    [InlineData("{open", "{open")]
    public void Singular_AChoiceOfNumber_IsSettled(string text, string expected) => Assert.Equal(expected, NumberChoice.Singular(text));
}
