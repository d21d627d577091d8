using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Two vegetables in one jar have the time of mixed vegetables. Source: USDA AIB 539 (2015) Guide 4, Mixed Vegetables: pints 75 minutes, quarts 90.</summary>
public sealed class SeveralVegetablesTests
{
    private const string Carrots = "# Carrots\n\n- 8 lb carrots\n- 3 quarts water\n- 2 tsp salt\n\nSlice the carrots, boil them 5 minutes in the water with the salt, and fill hot jars. Process in a pressure canner.\n";
    private const string Both = "# Carrots and green beans\n\n- 4 lb carrots\n- 4 lb green beans\n- 3 quarts water\n- 2 tsp salt\n\nSlice the carrots and the beans, boil them 5 minutes in the water with the salt, and fill hot jars. Process in a pressure canner.\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;
    private static readonly Kitchen Kitchen = new(AltitudeFeet: 500, Gauge: "weighted", Jar: "pint");

    [Fact]
    public void Vet_OneVegetable_HasItsOwnTime()
    {
        VettingReport report = Vetter.Vet(Carrots, Kitchen);

        Assert.Equal(Outcome.Pressure, report.Outcome);
        Assert.All(report.Process, line => Assert.Equal(25, line.Minutes));
    }

    [Fact]
    public void Vet_TwoVegetables_HaveTheMixedTime()
    {
        VettingReport report = Vetter.Vet(Both, Kitchen);

        Assert.Equal(Outcome.Pressure, report.Outcome);
        Assert.Equal("mixed-vegetables", report.Category?.Id);
        Assert.All(report.Process, line => Assert.Equal(75, line.Minutes));
    }

    [Theory]
    [InlineData(25, false)]
    [InlineData(74, false)]
    [InlineData(75, true)]
    public void Judge_TwoVegetables_TakesTheWholeMixedTime(int minutes, bool published) =>
        Assert.Equal(published, PublishedJudge.Judge(Vetter.Vet(Both, Kitchen), new("pressure", "pint", "hot", minutes, "weighted", 10, null), RulePack.Default).Published);

    [Fact]
    public void Judge_AReportOfTwoProducts_AsksForBothTimes()
    {
        VettingReport one = Vetter.Vet(Carrots, Kitchen);
        VettingReport two = one with { Process = [.. one.Process, .. Vetter.Vet(Both, Kitchen).Process] };

        Assert.True(PublishedJudge.Judge(one, new("pressure", "pint", "hot", 25, "weighted", 10, null), RulePack.Default).Published);
        Assert.False(PublishedJudge.Judge(two, new("pressure", "pint", "hot", 25, "weighted", 10, null), RulePack.Default).Published);
    }
}
