using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Candidates;

/// <summary>
/// Food that keeps its skin where the published pack is peeled. Source: USDA AIB 539 (2015) Guide 1 p. 1-6 to 1-7 (peeling roots and tomatoes), Guide 2 p. 2-7 (apples),
/// p. 2-9 (apricots: peeling optional), p. 2-18 to 2-19 (nectarines with skins, peaches, pears), Guide 3 p. 3-7 to 3-12 (tomatoes), Guide 4 p. 4-6 to 4-18 (roots, squash, soups).
/// </summary>
public sealed class SkinsKeptTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("11 lb peaches, halved and pitted, unpeeled", true)]
    [InlineData("11 lb unpeeled peaches, halved and pitted", true)]
    [InlineData("11 lb pears, halved and cored (skin on)", true)]
    [InlineData("13 lb apples, sliced, skins on", true)]
    [InlineData("11 lb peaches, peeled, halved and pitted", false)]
    [InlineData("11 lb nectarines, halved and pitted, skins on", false)]
    [InlineData("11 lb apricots, halved, not peeled", false)]
    [InlineData("11 lb plums, skins on", false)]
    public void Vet_FruitWithItsSkin_IsAskedWhereThePackIsPeeled(string line, bool asked) =>
        Is(asked, Outcome.BoilingWaterAfterChanges, Vet("Fruit in syrup", $"{line}\n- 9 cups water\n- 2 1/4 cups sugar", "Boil the water and sugar. Add the fruit and bring to a boil. Fill hot quart jars with the fruit and syrup, leaving 1/2 inch headspace. Process in a boiling-water canner."));

    [Theory]
    [InlineData("11 lb carrots, not peeled, sliced", true)]
    [InlineData("13 lb potatoes, cubed, skins on", true)]
    [InlineData("11 lb carrots, sliced", false)]
    public void Vet_RootsWithTheirSkin_AreAsked(string line, bool asked) =>
        Is(asked, Outcome.PressureAfterChanges, Vet("Put up", $"{line}\n- 4 quarts water", "Boil 5 minutes in the water. Fill hot pint jars with the vegetable and the liquid, leaving 1 inch headspace. Process in a pressure canner."));

    [Theory]
    [InlineData("10 lb tomatoes, unpeeled, quartered", "Boil and crush 5 minutes.", true)]
    [InlineData("10 lb tomatoes, unpeeled", "Dip in boiling water and slip off the skins. Boil 5 minutes.", false)]
    public void Vet_TomatoesWithTheirSkin_AreAskedUnlessAStepPeelsThem(string line, string step, bool asked) =>
        Is(asked, Outcome.BoilingWaterAfterChanges, Vet("Tomatoes", $"{line}\n- bottled lemon juice, 1 tbsp per pint", $"{step} Put the lemon juice in each hot pint, fill with hot tomatoes, leaving 1/2 inch headspace. Process in a boiling-water canner."));

    [Theory]
    [InlineData("11 lb pears, halved and cored", "Do not peel the pears.")]
    [InlineData("10 lb winter squash, cut in 1 inch cubes", "Leave the rind on. Cut the squash in cubes.")]
    public void Vet_StepThatLeavesTheSkinOn_IsTold(string line, string step) =>
        Assert.Contains(Vet("Put up", line, $"{step} Boil 5 minutes. Fill hot jars.").Findings, static one => one.Rule == "unsafe-method" && one.Message.StartsWith("The food keeps its skin", StringComparison.Ordinal));

    // Juice and sauce are sieved, and a chutney or jam is judged by recipes of its own.
    [Theory]
    [InlineData("Applesauce", "20 lb apples, quartered, skins on", "Cook until soft, press through a sieve, boil. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.")]
    [InlineData("Peach jam", "4 cups crushed peaches, skins on\n- 4 cups sugar", "Boil to the setting point. Fill hot half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner.")]
    [InlineData("Apple chutney", "2 kg apples, unpeeled\n- 500 g onions\n- 1 l vinegar (5%)\n- 1 kg sugar", "Simmer until thick. Fill hot jars.")]
    public void Vet_SkinsInSauceJamAndChutney_AreNotAsked(string title, string list, string steps) =>
        Assert.DoesNotContain(Vet(title, list, steps).Findings, static one => one.Message.Contains("the published pack is peeled", StringComparison.Ordinal));

    private static void Is(bool asked, Outcome outcome, VettingReport report)
    {
        Assert.Equal(asked, report.Findings.Any(static one => one.Rule == "prepared-food" && one.Level == FindingLevel.Change && one.Message.Contains("the published pack is peeled", StringComparison.Ordinal)));
        Assert.True(!asked || report.Outcome == outcome, report.Outcome.ToString());
    }

    private static VettingReport Vet(string title, string list, string steps) => Vetter.Vet($"# {title}\n\n- {list}\n\n1. {steps}\n", Kitchen.Unknown);
}
