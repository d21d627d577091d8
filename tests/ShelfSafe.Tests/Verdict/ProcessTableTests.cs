using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
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

    // A word that is passed over must be told: "stuffed" is no word of the table, and nobody has a time for what stuffs it.
    [Theory]
    [InlineData("tomatoes", true)]
    [InlineData("whole ripe tomatoes", true)]
    [InlineData("xyzzy tomatoes", false)]
    [InlineData("grean beans", false)]
    [InlineData("xyzzy", true)]
    public void Find_WordsThatAreNotAllKnown_AreNotTheWholeFood(string words, bool whole) =>
        Assert.Equal(whole, Table.Find(words, Kitchen.Unknown).Whole);

    [Theory]
    [InlineData("xyzzy tomatoes", null, "Of your words \"xyzzy tomatoes\" this is all that is known here: tomato.")]
    [InlineData("green beans", "boiling-water", "No process by this method is published for this food.")]
    public void Write_WhatWasNotAnswered_IsSaidFirst(string words, string? method, string expected)
    {
        using StringWriter output = new();
        new TableReport(Words.Read(), new TextStyle()).Write(output, Table.Find(words, Kitchen.Unknown, method), Kitchen.Unknown);

        string text = string.Join(' ', output.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.DoesNotContain("yes:", text, StringComparison.Ordinal);
        Assert.DoesNotContain("No published home process", text, StringComparison.Ordinal);
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
