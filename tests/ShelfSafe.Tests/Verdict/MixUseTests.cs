using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>Water that a note adds to a dry mix on the day it is cooked does not wet the mix. Source: University of Wisconsin-Madison Extension, dry soup mixes.</summary>
public sealed class MixUseTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("Lentil soup mix", "1 cup dried lentils\n- 2 tbsp dried onion flakes", "Layer in a jar.\n\nNote: add 4 cups water and simmer when you cook it.")]
    [InlineData("Rice pilaf mix", "2 cups rice\n- 1/4 cup dried onion", "Mix and store in a jar.\n2. Add 2 cups water to 1 cup mix and simmer 20 minutes.")]
    [InlineData("Cocoa mix", "1 cup cocoa\n- 2 cups sugar\n- 2 cups milk powder", "Stir together. Keep in a jar. Add hot water to 3 tablespoons when you want a cup.")]
    [InlineData("Pancake mix", "4 cups flour\n- 2 tbsp baking powder\n- 1 cup milk powder", "Whisk and keep in a jar. When you bake, add 1 cup water and an egg.")]
    [InlineData("Italian dressing mix", "2 tbsp dried oregano\n- 2 tbsp garlic powder\n- 1 tbsp salt", "Mix and store in a jar. To use, shake 1 tbsp with oil and vinegar.")]
    public void Vet_WaterOfTheDay_LeavesTheMixDry(string title, string list, string steps)
    {
        VettingReport report = Vet(title, list, steps);

        Assert.Equal(Outcome.DryStorage, report.Outcome);
        Assert.Equal(Acidity.Dry, report.Acidity);
    }

    [Theory]
    [InlineData("2 cups rice\n- 1/4 cup dried onion\n- 4 cups water", "Boil. Fill jars with the mix and close.")]
    [InlineData("2 cups rice\n- 1/4 cup dried onion", "Add 4 cups water to 1 cup mix and simmer 20 minutes. Fill into jars and close.")]
    [InlineData("2 cups rice\n- 1/4 cup dried onion", "When you make the mix, add 1 cup water. Fill jars and close.")]
    public void Vet_WaterThatGoesIntoTheJar_MakesItWet(string list, string steps) => Assert.NotEqual(Outcome.DryStorage, Vet("Rice pilaf mix", list, steps).Outcome);

    // Yeast raises dough and is no fermented food; it stays out of a jar as before.
    [Fact]
    public void Vet_BreadWithYeast_IsNotToldAsFermented() =>
        Assert.DoesNotContain(Vet("White bread", "500 g bread flour\n- 7 g yeast\n- 300 ml water", "Knead. Let the dough rise for an hour. Bake for 30 minutes.").Findings, static one => one.Rule == "fermented");

    [Fact]
    public void Vet_YeastInASoup_IsStillBarred()
    {
        VettingReport report = Vet("Beef soup", "1 kg beef, cubed\n- 4 l beef broth\n- 1 tbsp yeast", "Brown the beef and drain. Boil everything 5 minutes. Fill hot jars half full of solids, top up with broth, leaving 1 inch headspace. Process in a pressure canner.");

        Assert.Equal(Outcome.PressureAfterChanges, report.Outcome);
        Assert.Contains(report.Findings, static one => one.Level == FindingLevel.Change && one.Ingredient == "yeast");
    }

    private static VettingReport Vet(string title, string list, string steps) => Vetter.Vet($"# {title}\n\n- {list}\n\n1. {steps}\n", Kitchen.Unknown);
}
