using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Records;

public class JarsInHandTests
{
    private static readonly JarsInHand _jars = new(RulePack.Default);
    private static readonly BatchRecord _hot = SampleBatch.Soup with { Lot = "2024-10-03-A" };
    private static readonly BatchRecord _raw = _hot with { Process = SampleBatch.Process with { Pack = "raw" } };

    public static TheoryData<string> Signs => [.. _jars.Signs.Select(static card => card.Id)];

    // Source: USDA AIB 539 (rev. 2015) Guide 1 p. 1-26, within 24 hours; Kansas State Extension, hot pack alone.
    [Fact]
    public void Answer_NotSealedInTime_OffersAnotherRunForAHotPackAlone()
    {
        Assert.Contains(Steps("not-sealed", _hot, 0), static step => step.StartsWith("To process again", StringComparison.Ordinal));
        Assert.Contains(Steps("not-sealed", _hot, 1), static step => step.StartsWith("To process again", StringComparison.Ordinal));
        Assert.DoesNotContain(Steps("not-sealed", _raw, 0), static step => step.StartsWith("To process again", StringComparison.Ordinal));
        Assert.Contains(Steps("not-sealed", _raw, 0), static step => step.StartsWith("Chill or freeze", StringComparison.Ordinal));
    }

    // Source: Iowa State Extension, AnswerLine 2022: after 24 hours what did not seal is thrown away.
    [Fact]
    public void Answer_NotSealedTwoDaysLater_ThrowsAway()
    {
        ImmutableArray<string> steps = Steps("not-sealed", _hot, 2);

        Assert.StartsWith("Throw the food away", steps[0], StringComparison.Ordinal);
        Assert.DoesNotContain(steps, static step => step.Contains("process", StringComparison.Ordinal));
    }

    // Source: Iowa State Extension, AnswerLine 2022, and the guide's 24 hours: where only the day is known, the next day may be too late.
    [Fact]
    public void Answer_ADayOnWhichTheHoursMayBeOver_GivesBothAnswers()
    {
        ImmutableArray<string> steps = Steps("not-sealed", _hot, 1);

        Assert.Contains(steps, static step => step.StartsWith("To process again", StringComparison.Ordinal));
        Assert.Contains(steps, static step => step.StartsWith("Throw the food away", StringComparison.Ordinal));
        Assert.DoesNotContain(Steps("not-sealed", _hot, 0), static step => step.StartsWith("Throw the food away", StringComparison.Ordinal));
        Assert.Contains(Steps("not-sealed", _hot, -1), static step => step.StartsWith("Throw the food away", StringComparison.Ordinal));
    }

    // Source: Kansas State Extension, Reprocessing jars: without a tested recipe all jars, sealed or not, are thrown away.
    [Theory]
    [MemberData(nameof(Signs))]
    public void Answer_NoPublishedProcess_TakesTheStricterRow(string sign)
    {
        ImmutableArray<string> steps = Steps(sign, _hot with { Published = false }, 0);

        Assert.DoesNotContain(steps, static step => step.StartsWith("To process again", StringComparison.Ordinal) || step.StartsWith("To chill", StringComparison.Ordinal));
        Assert.Contains(steps, static step => step.Contains("sealed and unsealed alike", StringComparison.Ordinal) || step.Contains("Let nobody eat", StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 1 p. 1-27 to 1-28: a closed suspect jar is bagged, an open one is boiled 30 minutes first.
    [Theory]
    [InlineData("bulging")]
    [InlineData("leaking")]
    [InlineData("spurting")]
    [InlineData("cloudy")]
    [InlineData("mould")]
    [InlineData("off-smell")]
    [InlineData("seal-lost")]
    [InlineData("unknown-history")]
    public void Answer_ASpoiledJar_TellsHowToThrowItAwayAndTheSignsOfBotulism(string sign)
    {
        JarAnswer answer = _jars.Answer(_jars.Find(sign)!, _hot, SampleBatch.Day);
        string all = string.Join('\n', answer.Cautions.SelectMany(static caution => caution.Lines));

        Assert.Contains("heavy bag", all, StringComparison.Ordinal);
        Assert.Contains("boil for 30 minutes", all, StringComparison.Ordinal);
        Assert.Contains("1 part of unscented household bleach fresh into 5 parts of water", all, StringComparison.Ordinal);
        Assert.Contains("stand 30 minutes", all, StringComparison.Ordinal);
        Assert.Contains("call the emergency number at once", all, StringComparison.Ordinal);
        Assert.Contains("double or blurred vision", all, StringComparison.Ordinal);
        Assert.Contains("harmless", string.Join(' ', answer.Cases.SelectMany(static one => one.Steps)), StringComparison.Ordinal);
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 1 p. 1-27: a swollen jar that is still closed is not opened.
    [Fact]
    public void Answer_ASwollenJar_StaysClosed() => Assert.Equal("Do not open the jar.", Steps("bulging", _hot, 100)[0]);

    // Source: Clemson Extension, Common canning problems: half or more lost goes to the refrigerator for 2 to 3 days.
    [Fact]
    public void Answer_LostLiquid_IsNotOpenedAndHalfGoesToTheRefrigerator()
    {
        ImmutableArray<string> steps = Steps("lost-liquid", _hot, 0);

        Assert.Equal("Do not open the jar to add liquid.", steps[0]);
        Assert.Contains(steps, static step => step.Contains("refrigerator now and use it within 2 to 3 days", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Signs))]
    public void Signs_Each_HasSourcesAndNeverPromisesOrAsksToTaste(string sign)
    {
        JarSignCard card = _jars.Find(sign)!;
        string all = string.Join('\n', [card.Title, card.Why, .. card.Any, .. card.Hot, .. card.Raw, .. card.TooLate, .. card.NotPublished]);

        Assert.NotEmpty(_jars.Answer(card, null, SampleBatch.Day).Sources);
        Assert.All([" safe", " fine.", " okay", "taste it to", "taste a little"], promise => Assert.DoesNotContain(promise, all, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("Unsealed", "not-sealed")]
    [InlineData("swollen", "bulging")]
    [InlineData("moldy jam", "mould")]
    [InlineData("no altitude correction", "no-altitude")]
    public void Find_OtherWords_FindTheSign(string words, string sign) => Assert.Equal(sign, _jars.Find(words)?.Id);

    [Theory]
    [InlineData("buldging", "bulging")]
    [InlineData("the lid is swolen", "bulging")]
    [InlineData("underprocesed", "under-processed")]
    public void Nearest_AWordThatIsNotKnown_IsAmongTheNearest(string words, string sign)
    {
        Assert.Null(_jars.Find(words));
        Assert.Contains(sign, _jars.Nearest(words).Select(static card => card.Id));
    }

    [Fact]
    public void Validation_ACardWithoutItsStrictestRow_IsAFault()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["jars-in-hand/cloudy.md"] = files["jars-in-hand/cloudy.md"].Replace("## No published process", "## Other", StringComparison.Ordinal).Replace("usda-g1-spoilage", "nobody", StringComparison.Ordinal);

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));
        Assert.Contains(faults, static fault => fault.File == "jars-in-hand/cloudy.md" && fault.Message.Contains("No published process", StringComparison.Ordinal));
    }

    private static ImmutableArray<string> Steps(string sign, BatchRecord batch, int daysLater) =>
        [.. _jars.Answer(_jars.Find(sign)!, batch, batch.Date.AddDays(daysLater)).Cases.SelectMany(static one => one.Steps)];
}
