using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>The tables of the work: sources that exist, and words that a newcomer reads.</summary>
public class WorkTablesTests
{
    private static readonly WorkTables _tables = WorkTables.Of(RulePack.Default);

    [Fact]
    public void Read_EverySource_Exists()
    {
        List<PackFault> faults = [];

        _tables.CheckSources(RulePack.Default.Tables.Sources, faults);

        Assert.Empty(faults);
    }

    [Fact]
    public void Adaptations_EveryHazard_HasATreatment()
    {
        HashSet<string> known = [.. _tables.Adaptations.Select(row => row.Rule)];
        string[] missing = [.. RulePack.Default.Tables.Hazards.Select(card => card.Rule).Where(rule => !known.Contains(rule) && rule != "at-serving")];

        Assert.Empty(missing);
    }

    // Only these may be done to a recipe: nothing adds acid to a mixture, swaps a thickener or guesses at a food.
    [Theory]
    [InlineData("unidentified", "ask")]
    [InlineData("unmeasured", "ask")]
    [InlineData("step-food", "ask")]
    [InlineData("dense", "freeze")]
    [InlineData("leftovers", "freeze")]
    [InlineData("seafood", "freeze")]
    [InlineData("proportions", "freeze")]
    [InlineData("thickener", "serve")]
    [InlineData("fat", "leave-out")]
    public void Adaptations_OfAHazard_AreWhatGuidanceAllows(string rule, string treatment) =>
        Assert.Equal(treatment, _tables.Adaptations.Single(row => row.Rule == rule).Treatment);
}
