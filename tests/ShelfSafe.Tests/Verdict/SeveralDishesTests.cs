using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Several dishes in one file. Source: USDA AIB 539 (2015) Guide 1 p. 1-8 to 1-9 (acid food in boiling water, low-acid food under pressure); Guide 2 and Guide 4 for the two packs.</summary>
public sealed class SeveralDishesTests
{
    private const string Peaches = "## Peaches\n\n- 10 lb yellow peaches\n- 3 cups sugar\n- 6 cups water\n\nBoil the syrup, add the peaches, fill hot jars. Boiling-water canner, pints 20 minutes.\n\n";
    private const string Beans = "## Green beans\n\n- 9 lb green beans\n- 4 quarts water\n\nBoil 5 minutes, fill hot jars with the beans and the water, pressure can pints 20 minutes.\n\n";
    private const string Pears = "## Pears\n\n- 10 lb pears\n- 3 cups sugar\n- 6 cups water\n\nBoil the syrup, add the pears, boil 5 minutes, fill hot jars. Boiling-water canner, pints 20 minutes.\n\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Fact]
    public void Vet_DishesOfTwoMethods_AsksForFilesOfTheirOwn()
    {
        VettingReport report = Vetter.Vet("# Canning day: peaches + green beans\n\n" + Peaches + Beans, Kitchen.Unknown);

        Assert.Equal(2, report.Parts.Length);
        Assert.Equal(Outcome.CannotTell, report.Outcome);
        Finding finding = Assert.Single(report.Findings, one => one.Rule == "several-methods");
        Assert.Equal(FindingLevel.Change, finding.Level);
        Assert.Equal("Green beans", finding.Part);
        Assert.Empty(report.Process);
        Assert.Empty(report.ProcessAfterChanges);
    }

    [Fact]
    public void Vet_DishesOfOneMethod_AreNotAskedApart()
    {
        VettingReport report = Vetter.Vet("# Canning day: peaches + pears\n\n" + Peaches + Pears, Kitchen.Unknown);

        Assert.Equal(2, report.Parts.Length);
        Assert.DoesNotContain(report.Findings, one => one.Rule == "several-methods");
    }
}
