using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>A thing that a step puts in and no line names is untested food. Source: Ohio State University Extension HYG-5338, do not add what the tested recipe does not have.</summary>
public sealed class StepThingsTests
{
    private const string Broth = "# Broth\n\n- 2 kg beef bones\n- 4 l water\n\n1. Simmer the bones in the water for 4 hours.\n2. Strain through muslin, chill, and skim off the fat.\n3. {0}\n4. Fill hot jars and process in a pressure canner.\n";
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("Boil again with half a cup of tiny stars.", "tiny stars")]
    [InlineData("Stir in the stars.", "stars")]
    [InlineData("Add a few wobbles and boil.", "wobbles")]
    [InlineData("Add wobbles.", "wobbles")]
    [InlineData("Tip in 2 handfuls of wobbles.", "wobbles")]
    [InlineData("Boil, adding some more of the grumbles.", "grumbles")]
    [InlineData("Pour in 1/2 cup wobblesauce.", "wobblesauce")]
    [InlineData("Mix in your favourite wobble dots.", "favourite wobble dots")]
    public void Vet_AThingNobodyKnows_IsAsked(string step, string words)
    {
        VettingReport report = Vet(step);

        Finding finding = Assert.Single(report.Findings, one => one.Rule == "step-food");
        Assert.Contains($"\"{words}", finding.Message, StringComparison.Ordinal);
        Assert.Equal(FindingLevel.Change, finding.Level);
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    [Theory]
    [InlineData("Bring the broth back to the boil.")]
    [InlineData("Add more water if it is low.")]
    [InlineData("Do not add stars.")]
    [InlineData("Wait half an hour and boil it for a couple of minutes.")]
    [InlineData("Put in the canner weights and stir gently, adding the rest of the liquid.")]
    [InlineData("Pour in the hot broth, leaving 1 inch of headspace.")]
    public void Vet_PlainThingsOfTheKitchen_AreNot(string step) =>
        Assert.DoesNotContain(Vet(step).Findings, one => one.Rule == "step-food");

    private static VettingReport Vet(string step) => Vetter.Vet(Broth.Replace("{0}", step, StringComparison.Ordinal), new(AltitudeFeet: 500, Gauge: "weighted"));
}
