using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>How much liquid a dry soup lacks. Source: USDA AIB 539 (2015) Guide 4 p. 4-18, jars half full of solids: as much liquid as solids by volume.</summary>
public sealed class MoreLiquidTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData(1, "about 3 litres (3.2 quarts) more than the list has")]
    [InlineData(2, "about 2 litres (2.1 quarts) more than the list has")]
    public void Vet_ASoupWithTooLittleBroth_NamesWhatIsMissing(int litres, string words) =>
        Assert.Contains(words, Vet(litres).Single().Instead, StringComparison.Ordinal);

    [Fact]
    public void Vet_ASoupWithThatMuchBroth_LacksNothing() => Assert.Empty(Vet(4));

    private static IEnumerable<Finding> Vet(int litres) =>
        Vetter.Vet($"# Beef and carrot pot\n\n- 2 kg stewing beef, cubed\n- 2 kg carrots, sliced\n- {litres} l beef broth\n- 2 tsp salt\n\n1. Brown the beef and pour off the fat.\n2. Add the carrots and the broth and boil for 5 minutes.\n3. Fill hot jars, leave 1 inch of headspace, and process in a pressure canner.\n", Kitchen.Unknown)
            .Findings.Where(finding => finding.Rule == "too-little-liquid");
}
