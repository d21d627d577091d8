using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using Xunit;

namespace ShelfSafe.Tests.Reports;

public sealed class WordsTests
{
    private static readonly string[] _promises = [" is safe", " are safe", "safely", "guarantee", " fine.", " okay"];

    [Fact]
    public void Read_EveryOutcomeAcidityAndLevel_HasWords()
    {
        Words words = Words.Read();

        Assert.All(Enum.GetValues<Outcome>(), outcome => Assert.NotEmpty(words[$"outcome.{Names.Of(outcome)}"]));
        Assert.All(Enum.GetValues<Acidity>(), acidity => Assert.NotEmpty(words[$"acidity.{Names.Of(acidity)}"]));
        Assert.All(Enum.GetValues<FindingLevel>(), level => Assert.NotEmpty(words[$"heading.{Names.Of(level)}"]));
    }

    [Fact]
    public void Read_AnyWords_NeverPromise()
    {
        Words words = Words.Read();

        Assert.All(words.Keys, key => Assert.All(_promises, promise => Assert.DoesNotContain(promise, words[key], StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Parse_TheSameKeyTwice_IsAFaultWithItsLine()
    {
        Words.Parse("key,text\na,one\na,two\n", out IReadOnlyList<PackFault> faults);

        PackFault fault = Assert.Single(faults);
        Assert.Equal(3, fault.Line);
    }
}
