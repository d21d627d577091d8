using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

// Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 4, p. 4-8 to 4-10 (snap beans, carrots).
public class ProcessTableTests
{
    private static readonly ProcessTable Table = ProcessTable.Create(RulePack.Default);

    [Fact]
    public void Find_GreenBeansAboveAThousandFeet_GivesFifteenPounds()
    {
        ProcessAnswer answer = Table.Find("green beans", new(AltitudeFeet: 1345, Gauge: "weighted", Jar: "quart"));

        Assert.All(answer.Lines, line => Assert.Equal((25, 15d, "quart"), (line.Minutes, line.Psi, line.Jar)));
        Assert.Equal(["hot", "raw"], answer.Lines.Select(line => line.Pack).Order(StringComparer.Ordinal));
        Assert.False(answer.ByName);
    }

    [Theory]
    [InlineData("broccoli")]
    [InlineData("pumpkin puree")]
    public void Find_FoodWithoutAProcess_SaysWhy(string food)
    {
        ProcessAnswer answer = Table.Find(food, Kitchen.Unknown);

        Assert.Empty(answer.Lines);
        Assert.NotEmpty(answer.WhyNot);
    }

    [Theory]
    [InlineData("summer squash")]
    [InlineData("cauliflower")]
    [InlineData("onions")]
    public void Find_FoodOfRecipesAlone_SaysThatItHasNoPlainProcess(string food)
    {
        ProcessAnswer answer = Table.Find(food, Kitchen.Unknown);

        Assert.True(answer.ByName);
        Assert.NotEmpty(answer.WhyNot);
    }

    [Fact]
    public void Find_JarBeyondTheTable_GivesNoTime()
    {
        ProcessAnswer answer = Table.Find("peaches", new(Jar: "half-gallon"));

        Assert.Empty(answer.Lines);
        Assert.True(answer.BeyondTable);
    }

    [Fact]
    public void Find_Nonsense_KnowsNothing()
    {
        ProcessAnswer answer = Table.Find("xyzzy", Kitchen.Unknown);

        Assert.Null(answer.Food);
        Assert.Empty(answer.Lines);
    }
}
