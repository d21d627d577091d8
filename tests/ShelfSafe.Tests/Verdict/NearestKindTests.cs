using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>A dish is set beside the published recipe of its own kind.</summary>
// Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 6, p. 6-7 to 6-10 (fermented and fresh-pack dill pickles); Guide 3, p. 3-16 to 3-24 (hot sauces and salsas).
public class NearestKindTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("Dill spears")]
    [InlineData("Dill pickle spears")]
    [InlineData("What we put up in July")]
    public void Vet_PicklesInVinegar_AreSetBesideAVinegarPickle(string title)
    {
        VettingReport report = Vetter.Vet(
            $"""
            # {title}

            - 8 lb pickling cucumbers
            - 4 cups white vinegar, 5 percent
            - 4 cups water
            - 1/2 cup pickling salt
            - 14 heads fresh dill
            - 14 cloves garlic

            Boil vinegar, water and salt. Pack the rest in hot pint jars and cover with the hot brine. Process pints 10 minutes in boiling water.
            """,
            Kitchen.Unknown);

        Assert.Equal(Outcome.TestedRecipeOnly, report.Outcome);
        Assert.Equal("quick-dill-pickles", report.Category?.Id);
        Assert.DoesNotContain(report.Nearest, near => near.Id == "dill-pickles-fermented");
        Assert.True(report.Process.IsEmpty);
    }

    [Fact]
    public void Vet_FermentedPickles_AreSetBesideTheFermentedOnes()
    {
        VettingReport report = Vetter.Vet(
            """
            # Crock dills

            - 4 lb pickling cucumbers
            - 1/2 cup pickling salt
            - 1 cup cream
            - 8 cups water
            - 2 tbsp dill seed

            Cover the cucumbers with the brine and ferment 4 weeks at 70 F. Fill hot pint jars and process pints 10 minutes in boiling water.
            """,
            Kitchen.Unknown);

        Assert.Equal("dill-pickles-fermented", report.Category?.Id);
    }

    [Fact]
    public void Vet_Salsa_IsSetBesideASalsaAndNotASauce()
    {
        VettingReport report = Vetter.Vet(
            """
            # Black bean salsa

            - 6 cups chopped tomatoes
            - 1 can (15 oz) black beans, rinsed
            - 2 cups corn kernels
            - 1 cup diced onions
            - 1/2 cup bottled lime juice
            - 1/4 cup cilantro

            Simmer all 10 minutes. Fill hot pint jars.
            """,
            Kitchen.Unknown);

        Assert.NotEmpty(report.Nearest);
        Assert.All(report.Nearest.Select(near => near.Name).Append(report.Category?.Name ?? string.Empty), name => Assert.Contains("salsa", name, StringComparison.OrdinalIgnoreCase));
        Assert.True(report.Process.IsEmpty);
    }

    // Guide 3, p. 3-24, counts peeled and chopped tomatoes by the cup; from a tin they are another food.
    [Theory]
    [InlineData("6 cups chopped tomatoes", Outcome.BoilingWater)]
    [InlineData("6 cups diced tomatoes", Outcome.BoilingWater)]
    [InlineData("4 cans (14 oz) diced tomatoes", Outcome.TestedRecipeOnly)]
    [InlineData("1440 g tinned chopped tomatoes", Outcome.TestedRecipeOnly)]
    public void Vet_ChoppedTomatoes_AreFreshUnlessTheyComeFromATin(string tomatoes, Outcome outcome)
    {
        VettingReport report = Vetter.Vet(
            $"""
            # Choice salsa

            - {tomatoes}
            - 9 cups diced onions and/or peppers of any variety
            - 1 1/2 cups bottled lime juice
            - 3 tsp canning salt

            Boil 3 minutes. Fill hot pints, leaving half an inch. Process pints 15 minutes in boiling water.
            """,
            Kitchen.Unknown);

        Assert.Equal(outcome, report.Outcome);
    }

    // Common practice: what a title calls the dish. Guide 2, p. 2-28 to 2-29, has the mincemeat; Guide 3, p. 3-5, the juice that is sieved.
    [Theory]
    [InlineData("Carrot cake jam", "2 cups grated carrots|2 cups chopped pears|6 cups sugar", "Boil and fill jars.", Outcome.FreezeOrChill)]
    [InlineData("Green tomato mincemeat", "10 lb green tomatoes|5 lb apples|2 lb raisins|1 cup vinegar", "Cook until thick. Fill jars.", Outcome.TestedRecipeOnly)]
    [InlineData("Vanilla extract", "6 vanilla beans|2 cups vodka", "Split the beans and cover with vodka. Store in the dark.", Outcome.NotAJarFood)]
    [InlineData("Bruschetta in a jar", "9 cups chopped tomatoes|5 cloves garlic|1 cup white vinegar, 5%", "Pack and process 20 minutes.", Outcome.TestedRecipeOnly)]
    [InlineData("Elderberry syrup", "1 cup dried elderberries|4 cups water|1 cup honey|1 knob of ginger", "Simmer, strain, bottle.", Outcome.FreezeOrChill)]
    public void Vet_ADishCalledByItsTitle_IsOfThatKind(string title, string lines, string steps, Outcome outcome)
    {
        VettingReport report = Vetter.Vet($"# {title}\n\n- {lines.Replace("|", "\n- ", StringComparison.Ordinal)}\n\n{steps}\n", Kitchen.Unknown);

        Assert.Equal(outcome, report.Outcome);
        Assert.NotEqual("soup", report.Category?.Id);
    }

    // Guide 4, p. 4-6: dry beans with tomato or molasses sauce; Guide 6, p. 6-7 to 6-10 and 6-20 to 6-21. Chips of pickles are not fried.
    [Theory]
    [InlineData("Pork and beans in tomato sauce", "1 lb dry navy beans|1 quart tomato juice|3 tbsp sugar|2 tsp salt|1 tbsp chopped onion", "beans-tomato-sauce")]
    [InlineData("Garlic dill pickle chips", "4 lb cucumbers, sliced|3 cups cider vinegar|3 cups water|3 tbsp kosher salt|8 cloves garlic|1 tsp dill seed", "quick-dill-pickles")]
    [InlineData("Marinated roasted peppers", "4 lb bell peppers|1 cup bottled lemon juice|2 cups white vinegar, 5%|1 tbsp oregano|1 cup olive oil|1/2 cup chopped onions|2 tbsp prepared horseradish", "marinated-peppers")]
    public void Vet_ADishOfAPublishedKind_IsSetBesideIt(string title, string lines, string formula)
    {
        VettingReport report = Vetter.Vet($"# {title}\n\n- {lines.Replace("|", "\n- ", StringComparison.Ordinal)}\n\nHeat and fill hot jars.\n", Kitchen.Unknown);

        Assert.Equal(formula, report.Category?.Id);
    }

    [Theory]
    [InlineData("Sieve.", Outcome.BoilingWater)]
    [InlineData("Keep the pulp.", Outcome.PressureAfterChanges)]
    public void Vet_TomatoJuice_IsSieved(string step, Outcome outcome)
    {
        VettingReport report = Vetter.Vet(
            $"# Tomato juice\n\n- 23 lb tomatoes\n- bottled lemon juice, 2 tbsp per quart\n\nCrush and simmer 5 minutes. {step} Add 2 tbsp lemon juice to each quart. Heat to boiling, fill leaving 1/2 inch. Process quarts 45 minutes in boiling water.\n",
            Kitchen.Unknown);

        Assert.Equal(outcome, report.Outcome);
    }

    [Fact]
    public void Vet_FindingWithoutAFood_IsNotToldOfThis()
    {
        VettingReport report = Vetter.Vet("# Roasted peppers in oil\n\n- 6 red bell peppers\n- 1 cup olive oil\n- 3 cloves garlic\n\nRoast, peel, cover with oil.\n", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == "oil-infusion");
        Assert.DoesNotContain(report.Findings, finding => finding.Message.StartsWith("\"this\"", StringComparison.Ordinal));
    }
}
