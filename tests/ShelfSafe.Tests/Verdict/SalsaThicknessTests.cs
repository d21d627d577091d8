using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>
/// A tested salsa is thickened after the jar is opened. Source: University of Minnesota Extension, To thicken or not to thicken canned tomato products (2012): a thick
/// product may not let the heat through; tomato paste or draining chopped tomatoes makes a thicker salsa. USDA AIB 539 (2015) Guide 3 p. 3-19 to 3-26: tested salsas.
/// </summary>
public sealed class SalsaThicknessTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("Boil down to half.")]
    [InlineData("Boil until reduced by half.")]
    [InlineData("Cook until thick.")]
    [InlineData("Let it cook down until most of the liquid is gone.")]
    [InlineData("Simmer uncovered until the volume is halved.")]
    [InlineData("Simmer to the thickness you like.")]
    public void Vet_TestedSalsaBoiledDown_IsToBeThickenedAfterOpening(string step)
    {
        VettingReport report = Choice(step);

        Assert.Equal(Outcome.BoilingWaterAfterChanges, report.Outcome);
        Finding finding = Assert.Single(report.Findings, static one => one.Rule == "dense");
        Assert.Equal(FindingLevel.Change, finding.Level);
        Assert.Contains("after you open the jar", finding.Instead, StringComparison.Ordinal);
        Assert.DoesNotContain(report.Findings, static one => one.Rule == "unsafe-method");
    }

    [Theory]
    [InlineData("")]
    [InlineData("Drain the chopped tomatoes first.")]
    public void Vet_TestedSalsaAsPublished_StaysAsItWas(string step) => Assert.Equal(Outcome.BoilingWater, Choice(step).Outcome);

    [Fact]
    public void Vet_TestedSalsaBoiledDownAfterOpening_StaysAsItWas() => Assert.Equal(Outcome.BoilingWater, Choice("", "After opening, boil it down in the pan until thick.").Outcome);

    [Fact]
    public void Vet_UntestedSalsaBoiledDown_StaysATestedRecipesOnly() =>
        Assert.Equal(Outcome.TestedRecipeOnly, Vet("Corn salsa", "- 6 cups peeled, chopped tomatoes\n- 3 cups corn\n- 3 cups chopped onions\n- 1/2 cup bottled lemon juice\n", "Boil down to half.").Outcome);

    // Source: USDA AIB 539 (2015) Guide 3 p. 3-25: tomato taco sauce simmers until it is thick.
    [Fact]
    public void Vet_PublishedSauceThatIsItselfBoiledDown_IsNotAsked() =>
        Assert.DoesNotContain(Vet("Tomato taco sauce", "- 8 quarts peeled, cored, finely chopped paste tomatoes\n- 2 cloves garlic, crushed\n- 5 cups chopped onions\n- 4 jalapeno peppers, seeded, chopped\n- 4 long green chiles, seeded, chopped\n- 2 1/2 cups vinegar (5%)\n- 2 tbsp salt\n", "Simmer until thick, about 1 hour.").Findings, static one => one.Rule == "dense");

    // Source: USDA AIB 539 (2015) Guide 6 p. 6-27 (piccalilli) and p. 6-30 (pepper-onion relish): boil until the volume is reduced by one-half.
    [Theory]
    [InlineData("Piccalilli", "- 6 cups chopped green tomatoes\n- 1 1/2 cups chopped sweet red peppers\n- 1 1/2 cups chopped green peppers\n- 2 1/4 cups chopped onions\n- 7 1/2 cups chopped cabbage\n- 1/2 cup canning salt\n- 3 tbsp mixed pickling spice\n- 4 1/2 cups vinegar (5%)\n- 3 cups brown sugar\n", "Boil gently 30 minutes or until the volume of the mixture is reduced by one-half.")]
    [InlineData("Pickled pepper-onion relish", "- 6 cups finely chopped onions\n- 3 cups finely chopped sweet red peppers\n- 3 cups finely chopped green peppers\n- 1 1/2 cups sugar\n- 6 cups white distilled vinegar (5%)\n- 2 tbsp canning salt\n", "Boil gently until the mixture thickens and the volume is reduced by one-half.")]
    public void Vet_PublishedRelishThatIsBoiledDown_HasItsProcess(string title, string list, string step) =>
        Assert.Equal(Outcome.BoilingWater, Vetter.Vet($"# {title}\n\n{list}\n1. Combine all ingredients. {step}\n2. Fill hot half-pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n", Kitchen.Unknown).Outcome);

    private static VettingReport Choice(string step, string later = "") => Vet("Choice salsa", "- 6 cups peeled, cored, chopped tomatoes\n- 9 cups chopped onions and peppers of any variety\n- 1 1/2 cups bottled lemon juice\n- 3 tsp canning salt\n", step, later);

    private static VettingReport Vet(string title, string list, string step, string later = "") =>
        Vetter.Vet($"# {title}\n\n{list}\n1. Combine all ingredients in a large pot.\n2. Bring to a boil, stirring, then simmer 3 minutes. {step}\n3. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n4. Label the jars. {later}\n", Kitchen.Unknown);
}
