using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Steps;
using ShelfSafe.Tests.Foods;
using Xunit;

namespace ShelfSafe.Tests.Steps;

public sealed class StepReaderTests
{
    private static readonly StepReader Reader = StepReader.Create(RulePack.Default, FoodFixture.NewTexts());

    [Fact]
    public void Read_WordsThatSayAFact_AreThePlaceOfTheFact()
    {
        const string Text = "Fry the leeks. / Then blend everything until smooth.";
        StepFact fact = Assert.Single(Read(Text), fact => fact.Id == "blended");
        Assert.Equal("blend everything until smooth", Text[fact.Span.Start..fact.Span.End]);
        Assert.Equal(fact.Words, Text[fact.Span.Start..fact.Span.End]);
    }

    [Theory]
    [InlineData("Do not blend the soup.", false)]
    [InlineData("Do not stir, blend the soup.", true)]
    [InlineData("Cook without a lid until mushy.", true)]
    [InlineData("Cook without letting it get mushy.", false)]
    public void Read_NegationBeforeTheWords_ReachesToTheNextCommaOrThen(string text, bool expected) =>
        Assert.Equal(expected, Read(text).Any(fact => fact.Id is "blended" or "cooked-to-pieces"));

    // Source: USDA AIB 539 (rev. 2015) Guide 1, methods not recommended.
    [Theory]
    [InlineData("unsafe-inversion", "Fill the jars, close them and turn them upside down.")]
    [InlineData("unsafe-inversion", "Ladle into jars. / Flip upside down for five minutes.")]
    [InlineData("unsafe-open-kettle", "Pour into hot sterilised jars and seal.")]
    [InlineData("unsafe-bwb-low-acid", "Pack the quarts with beans. / Boil the jars for 3 hours.")]
    [InlineData("unsafe-canning-powder", "Add one aspirin to each jar.")]
    [InlineData("unsafe-half-gallon", "Fill half-gallon jars.")]
    public void Read_MethodThatGuidanceRejects_GivesItsFact(string id, string text) =>
        Assert.Contains(Read(text), fact => fact.Id == id);

    [Theory]
    [InlineData("Bake the pie in the oven at 200 C for an hour.")]
    [InlineData("Seal the meat on all sides. / Add a jar of tomato sauce.")]
    [InlineData("Cook the beans in a pressure cooker for 20 minutes. / Tip in a jar of passata.")]
    [InlineData("Turn the cake upside down onto a rack.")]
    [InlineData("Cool the chiffon cake upside down in its tin.")]
    [InlineData("Melt the butter in the microwave.")]
    [InlineData("Serve hot from the pot.")]
    [InlineData("Warm the clean jars in the oven before filling.")]
    [InlineData("Wash the jars in the dishwasher.")]
    public void Read_EverydayKitchenWords_AreNoUnsafeMethod(string text) =>
        Assert.DoesNotContain(Read(text), fact => fact.Id.StartsWith("unsafe-", StringComparison.Ordinal));

    // Source: USDA AIB 539 (rev. 2015) Guide 1: food is processed after the jars are filled and closed.
    [Fact]
    public void Read_ClosedJarsThatAreThenProcessed_AreNotOpenKettle() =>
        Assert.DoesNotContain(
            Read("Ladle into hot jars and put on the lids. / Process 15 minutes in a boiling-water canner."),
            fact => fact.Id == "unsafe-open-kettle");

    [Fact]
    public void Read_LongSentenceFullOfHits_TellsTheFactsOfAShortOne()
    {
        string[] shortly = Facts(2);

        Assert.Contains("blended", shortly);
        Assert.Equal(shortly, Facts(20_000));

        static string[] Facts(int times) => [.. Reader.Read(StepParts.Of(string.Concat(Enumerable.Repeat("boil the jars and blend it ", times)))).Select(static fact => fact.Id).Distinct().Order(StringComparer.Ordinal)];
    }

    [Theory]
    [InlineData("Process pints 20 minutes in a boiling-water bath.", 20, 20, null, "pint", "boiling-water")]
    [InlineData("Pressure can 75 min at 10 lb.", 75, 75, 10, null, "pressure")]
    [InlineData("Boil the filled jars for 1 1/2 hours.", 90, 90, null, null, "boiling-water")]
    [InlineData("Can in quarts for 90 minutes at 10 lb.", 90, 90, 10, "quart", null)]
    [InlineData("Process quarts for 25 to 30 minutes.", 25, 30, null, "quart", null)]
    public void PrintedProcesses_OneSentence_GivesWhatItPrints(string text, double low, double high, int? psi, string? jar, string? method)
    {
        PrintedProcess printed = Assert.Single(Reader.PrintedProcesses(StepParts.Of(text)));
        Assert.Equal(new Interval(low, high), printed.Minutes);
        Assert.Equal(psi, printed.PressurePsi);
        Assert.Equal(jar, printed.Jar);
        Assert.Equal(method, printed.Method);
    }

    [Fact]
    public void PrintedProcesses_TwoJarSizes_KeepTheirOwnTimes()
    {
        ImmutableArray<PrintedProcess> printed = Reader.PrintedProcesses(StepParts.Of("Process pints 75 minutes and quarts 90 minutes in a pressure canner."));
        Assert.Equal([("pint", 75), ("quart", 90)], printed.Select(one => (one.Jar!, one.Minutes!.Value.High)));
    }

    [Theory]
    [InlineData("Simmer for 20 minutes and stir in a pint of stock.")]
    [InlineData("Pulse in a food processor for 2 minutes.")]
    [InlineData("Add a jar of capers and cook 10 minutes.")]
    public void PrintedProcesses_KitchenTimes_AreNone(string text) =>
        Assert.Empty(Reader.PrintedProcesses(StepParts.Of(text)));

    [Theory]
    [InlineData("It has a pH of about 4.9.", 4.9)]
    [InlineData("pH: 3,8 to 4.2", 4.2)]
    public void PrintedPhs_Range_GivesItsUpperEnd(string text, double expected) =>
        Assert.Equal(expected, Assert.Single(StepReader.PrintedPhs(StepParts.Of(text))).Ph);

    private static ImmutableArray<StepFact> Read(string text) => Reader.Read(StepParts.Of(text));
}
