using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Fish and shellfish have processes of their own, each for its own food, jar and pack.</summary>
/// <remarks>Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 5, p. 5-9 to 5-15; Guide 4, p. 4-18 to 4-19.</remarks>
public class SeafoodTests
{
    [Theory]
    [InlineData("8 lb boneless trout", "Pack the raw trout into pint jars. Add no liquid.", "fish", Outcome.Pressure)]
    [InlineData("8 lb trout", "Brine the trout and smoke lightly. Pack the smoked trout into pint jars without liquid.", "smoked-fish", Outcome.Pressure)]
    [InlineData("8 lb trout", "Brine the trout and smoke lightly. Pack the smoked trout into quart jars without liquid.", "smoked-fish", Outcome.PressureAfterChanges)]
    [InlineData("8 lb smoked salmon", "Pack the smoked salmon into pint jars without liquid.", "smoked-fish", Outcome.Pressure)]
    [InlineData("8 lb tuna, skinned, in chunks", "Pack the raw tuna into pint jars. Cover with boiling water.", "tuna", Outcome.Pressure)]
    [InlineData("8 lb shucked oysters", "Fill pint jars with the raw oysters. Cover with boiling water.", "oysters", Outcome.Pressure)]
    [InlineData("8 lb shucked clams", "Boil the clams 2 minutes. Fill hot pint jars with the clams and fresh boiling water.", "clams", Outcome.PressureAfterChanges)]
    public void Vet_APlainPackOfSeafood_IsJudgedByItsOwnProcess(string food, string steps, string category, Outcome outcome)
    {
        VettingReport report = VetPints($"# Put up\n\n- {food}\n- salt\n\n{steps} Process in a pressure canner.\n");

        Assert.Equal((category, outcome), (report.Category?.Id, report.Outcome));
    }

    [Theory]
    [InlineData("8 lb cod", "Pack the raw cod into pint jars.")]
    [InlineData("8 lb smoked mackerel", "Pack the smoked mackerel into pint jars.")]
    [InlineData("8 lb blue crab", "Pack the raw crab into pint jars.")]
    public void Vet_SeafoodWithoutAProcess_IsNotPermitted(string food, string steps)
    {
        VettingReport report = VetPints($"# Put up\n\n- {food}\n- salt\n\n{steps} Process in a pressure canner.\n");

        Assert.Equal(Outcome.FreezeOrChill, report.Outcome);
    }

    private const string Chowder = "# Clear fish soup\n\n- 2 lb {0}, in pieces\n- 2 lb potatoes, cubed\n- 3 quarts water\n- 1 tsp salt\n\nBoil everything for 5 minutes. Fill hot pint jars half full with the drained pieces, top up with the liquid, and process in a pressure canner.\n";

    [Fact]
    public void Vet_ASoupWithFish_TakesTheTimeOfSeafoodSoup()
    {
        VettingReport report = VetPints(Chowder.Replace("{0}", "trout", StringComparison.Ordinal));

        Assert.Equal("soup", report.Category?.Id);
        Assert.Equal(Outcome.Pressure, report.Outcome);
        Assert.All(report.Process, line => Assert.Equal(100, line.Minutes));
    }

    [Fact]
    public void Vet_ASoupWithAFishThatHasNoProcess_AsksToLeaveItOut()
    {
        VettingReport report = VetPints(Chowder.Replace("{0}", "cod", StringComparison.Ordinal));

        Assert.NotEqual(Outcome.Pressure, report.Outcome);
        Assert.Contains(report.Findings, finding => finding is { Rule: "seafood", Level: >= FindingLevel.Change });
    }
}
