using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using Xunit;

namespace ShelfSafe.Tests.Reading.Amounts;

public sealed class NumberWordsTests
{
    [Theory]
    [InlineData("one", 1)]
    [InlineData("eleven", 11)]
    [InlineData("nineteen", 19)]
    [InlineData("ninety", 90)]
    [InlineData("dozen", 0)] // no whole number by itself: half a dozen is six
    [InlineData("none", 0)]
    public void Of_AWord_IsItsNumber(string word, double expected) => Assert.Equal(expected, NumberWords.Of(word));

    // Lines and steps read the same words. Source: USDA AIB 539 (2015) Guide 4 p. 4-7: green beans, pints 20 minutes.
    [Theory]
    [InlineData("eleven")]
    [InlineData("sixteen")]
    public void Vet_ATimeInWordsBelowThePublished_IsSeen(string minutes) => Assert.Contains(
        BuiltIn.Vetter.Vet($"# Green beans\n\n- {minutes} cups green beans\n- 2 quarts water\n\n1. Boil 5 minutes, fill hot pint jars with 1 inch headspace and process in a pressure canner for {minutes} minutes.\n", Kitchen.Unknown).Findings,
        static finding => finding is { Rule: "own-process", Level: FindingLevel.Change });
}
