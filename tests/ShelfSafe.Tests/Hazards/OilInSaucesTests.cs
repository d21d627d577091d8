using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Hazards;

/// <summary>
/// Garlic, herbs, tomatoes or other vegetables in oil are told inside another dish too. Source: Penn State Extension, Caution: don't can in oil (2012);
/// National Center for Home Food Preservation, Garlic-in-oil (reviewed 2015): cold, at most 4 days, or frozen.
/// </summary>
public sealed class OilInSaucesTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("1 jar garlic in oil")]
    [InlineData("2 tbsp minced garlic in oil")]
    [InlineData("2 tbsp chopped garlic preserved in oil")]
    [InlineData("2 tbsp garlic, packed in oil")]
    [InlineData("10 cloves garlic, steeped in oil")]
    [InlineData("20 cloves confit garlic")]
    [InlineData("2 tbsp garlic-infused oil")]
    [InlineData("2 tbsp herb oil")]
    [InlineData("2 tbsp basil in olive oil")]
    [InlineData("200 g sun-dried tomatoes in oil")]
    [InlineData("200 g sun-dried tomatoes, oil-packed")]
    [InlineData("1/2 cup sun-dried tomatoes, packed in oil, chopped")]
    [InlineData("1 cup oil-packed sundried tomatoes, drained")]
    [InlineData("1/2 cup mushrooms in oil")]
    public void Vet_FoodInOilOfALine_IsToldWithAnAlternative(string line)
    {
        VettingReport report = Vet(line, "Boil 5 minutes.");

        Finding finding = report.Findings.First(static one => one.Rule == "oil-infusion");
        Assert.Equal(FindingLevel.Change, finding.Level);
        Assert.Contains("plain garlic, dry tomatoes or dried herbs", finding.Instead, StringComparison.Ordinal);
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    [Theory]
    [InlineData("Cover the garlic with the oil and leave for two days.")]
    [InlineData("Steep the garlic in the oil for a week.")]
    [InlineData("Put the herbs in the oil and leave overnight.")]
    public void Vet_FoodPutUnderOilInAStep_IsTold(string step) =>
        Assert.Contains(Vet("1 tsp olive oil", step).Findings, static one => one.Rule == "oil-infusion" && one.Level == FindingLevel.Change && one.Message.StartsWith("The steps leave food under oil", StringComparison.Ordinal));

    [Theory]
    [InlineData("1 tsp olive oil", "Soften the garlic in the oil for 5 minutes.")]
    [InlineData("2 carrots", "Sauté the garlic in olive oil until soft.")]
    [InlineData("2 carrots, fried in oil", "Boil 5 minutes.")]
    [InlineData("200 g sun-dried tomatoes, dry", "Boil 5 minutes.")]
    [InlineData("1 tsp olive oil", "Marinate the beef in the oil with garlic overnight.")]
    public void Vet_OilToFryIn_IsNoInfusion(string line, string step) => Assert.DoesNotContain(Vet(line, step).Findings, static one => one.Rule == "oil-infusion");

    [Fact]
    public void Vet_PastaEatenFresh_IsOnlyWarned() =>
        Assert.All(Vetter.Vet("# Pasta with tomatoes\n\n- 500 g spaghetti\n- 200 g sun-dried tomatoes in oil\n\n1. Boil the spaghetti and toss with the tomatoes. Serve.\n", Kitchen.Unknown).Findings.Where(static one => one.Rule == "oil-infusion"), static one => Assert.Equal(FindingLevel.Caution, one.Level));

    private static VettingReport Vet(string line, string step) =>
        Vetter.Vet($"# Beef soup\n\n- 1 kg beef, cubed\n- 4 l beef broth\n- 1 clove garlic\n- {line}\n\n1. Brown the beef, and drain off the fat. {step}\n2. Add everything to the broth and boil 5 minutes.\n3. Fill hot jars half full with solids, then top up with broth, leaving 1 inch headspace. Process in a pressure canner.\n", Kitchen.Unknown);
}
