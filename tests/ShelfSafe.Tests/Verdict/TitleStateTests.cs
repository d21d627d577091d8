using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>A title that calls plain food smoked, fried, roasted or stuffed is asked about in words of its own. Source: USDA AIB 539 (2015) Guide 4 p. 4-9 (carrots), whose process is for plain pieces.</summary>
public sealed class TitleStateTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("Smoked carrots", "Smoked")]
    [InlineData("Roasted carrots", "Roasted")]
    [InlineData("Stuffed carrots", "Stuffed")]
    [InlineData("Creamed carrots", "Creamed")]
    public void Vet_StateOfTheTitle_IsToldAsTheTitles(string title, string word)
    {
        VettingReport report = Vet(title);

        Finding finding = Assert.Single(report.Findings, static one => one.Rule == "title-state");
        Assert.Equal(FindingLevel.Change, finding.Level);
        Assert.Contains($"The title calls the food \"{word}\"", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Outcome.PressureAfterChanges, report.Outcome);
        Assert.DoesNotContain(report.Findings, static one => one.Rule == "step-food");
    }

    [Fact]
    public void Vet_PlainTitle_IsNotAskedAbout() => Assert.Empty(Vet("Carrots").Findings.Where(static one => one.Level >= FindingLevel.Change));

    [Fact]
    public void Vet_FoodThatOnlyTheTitleNames_IsNotSaidToStandInTheSteps() =>
        Assert.Contains(Vet("Carrots and barley").Findings, static one => one.Rule == "step-food" && one.Message.StartsWith("The recipe uses \"barley\"", StringComparison.Ordinal));

    private static VettingReport Vet(string title) =>
        Vetter.Vet($"# {title}\n\n- 11 lb carrots, peeled and sliced\n- 4 quarts water\n\n1. Peel and slice the carrots. Cover with boiling water and simmer for 5 minutes.\n2. Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace.\n3. Process in a pressure canner.\n", Kitchen.Unknown);
}
