using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Reports;

public sealed class TextReportTests
{
    private static readonly string[] _headings = ["What stops it", "What must change first", "Take care", "Good to know"];

    public static TheoryData<Outcome> Outcomes => [.. SampleReport.All];

    [Theory]
    [MemberData(nameof(Outcomes))]
    public void Write_AnyOutcome_PutsTheVerdictBeforeEverythingElse(Outcome outcome)
    {
        string text = Text(SampleReport.Of(outcome, SampleReport.Finding(FindingLevel.Note, "gelatin", "gelatin", 2)));

        int verdict = text.IndexOf("Verdict: ", StringComparison.Ordinal);
        Assert.InRange(verdict, 0, 80);
        Assert.True(text.IndexOf("How this was reached", StringComparison.Ordinal) > verdict);
        Assert.Contains("What this tool cannot know", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Outcomes))]
    public void Write_OnlyTheOutcomesThatMayShowAProcess_ShowOne(Outcome outcome)
    {
        VettingReport report = SampleReport.Of(outcome) with { Process = [SampleReport.Process(Outcome.Pressure)] };
        bool expected = outcome is Outcome.BoilingWater or Outcome.Pressure or Outcome.BoilingWaterAfterChanges or Outcome.PressureAfterChanges;

        Assert.Equal(expected, Text(report).Contains("75 min", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Outcome.PressureAfterChanges)]
    [InlineData(Outcome.BoilingWaterAfterChanges)]
    public void Write_AfterChanges_PrintsNoTimeAboveTheChanges(Outcome outcome)
    {
        string text = Text(SampleReport.Of(outcome, SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12)));

        int change = text.IndexOf("Leave it out.", StringComparison.Ordinal);
        Assert.True(change > 0);
        Assert.True(text.IndexOf(" min", StringComparison.Ordinal) > change);
        Assert.True(outcome == Outcome.BoilingWaterAfterChanges || text.IndexOf(" psi", StringComparison.Ordinal) > change);
    }

    [Fact]
    public void Write_WithoutAltitude_AsksForItBeforeTheBands()
    {
        string text = Text(SampleReport.Of(Outcome.Pressure) with { Kitchen = Kitchen.Unknown });

        int asked = text.IndexOf("Give your altitude first", StringComparison.Ordinal);
        Assert.True(asked > 0);
        Assert.True(text.IndexOf("75 min", StringComparison.Ordinal) > asked);
    }

    [Fact]
    public void Write_TheSameFindingTwice_IsOneEntryWithBothPlaces()
    {
        string text = Text(SampleReport.Of(
            Outcome.FreezeOrChill,
            SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12),
            SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 30)));

        Assert.Contains("(lines 12, 30; thickener)", text, StringComparison.Ordinal);
        Assert.Equal(text.IndexOf("Leave it out.", StringComparison.Ordinal), text.LastIndexOf("Leave it out.", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_FindingsThatAskForTheSame_ShareOneReason()
    {
        string text = Text(SampleReport.Of(
            Outcome.FreezeOrChill,
            SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12),
            SampleReport.Finding(FindingLevel.Change, "thickener", "starch", 13)));

        Assert.Contains("\"flour\", \"starch\": each thickens the stew.", text, StringComparison.Ordinal);
        Assert.Contains("lines 12, 13", text, StringComparison.Ordinal);
        Assert.Equal(text.IndexOf("Thick food", StringComparison.Ordinal), text.LastIndexOf("Thick food", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Levels_StandInTheOrderOfWhatMustBeDone()
    {
        string text = Text(SampleReport.Of(
            Outcome.FreezeOrChill,
            SampleReport.Finding(FindingLevel.Note, "gelatin", "gelatin", 1),
            SampleReport.Finding(FindingLevel.Caution, "fat", "oil", 2),
            SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 3),
            SampleReport.Finding(FindingLevel.Stop, "offal", "liver", 4)));

        int[] places = [.. _headings.Select(heading => text.IndexOf(heading, StringComparison.Ordinal))];
        Assert.All(places, static place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void Write_AnyWidth_KeepsLinesWithinItButForAddresses(int width)
    {
        using StringWriter writer = new();
        new TextReport(Words.Read(), new(width)).Write(writer, "stew.md", SampleReport.Of(Outcome.Pressure, SampleReport.Finding(FindingLevel.Caution, "fat", "oil", 2)));

        Assert.All(
            writer.ToString().Split('\n').Where(static line => !line.Contains("https:", StringComparison.Ordinal)),
            line => Assert.InRange(line.Length, 0, width));
    }

    [Fact]
    public void Write_WithoutColour_HoldsNoControlCharacterWhateverTheRecipeHolds()
    {
        VettingReport report = SampleReport.Of(Outcome.FreezeOrChill, SampleReport.Finding(FindingLevel.Change, "thickener", "fl\u001b[31mour\u202E\u0000", 12)) with
        {
            Title = "St\u001b]0;x\u0007ew\r\n\u2066",
            Ingredients = [SampleReport.Ingredient(3, "a \u009b2J handful", "handful", null)],
        };

        string text = Text(report);

        Assert.DoesNotContain(text, static one => char.IsControl(one) && one != '\n');
        Assert.DoesNotContain(text, static one => one is '\u202E' or '\u2066');
    }

    [Fact]
    public void Write_WithColour_ClosesEachColourOnItsLine()
    {
        using StringWriter writer = new();
        new TextReport(Words.Read(), new(80, Colour: true)).Write(writer, "stew.md", SampleReport.Of(Outcome.Pressure));

        Assert.Contains("\u001b[1m", writer.ToString(), StringComparison.Ordinal);
        Assert.All(
            writer.ToString().Split('\n').Where(static line => line.Contains('\u001b', StringComparison.Ordinal)),
            static line => Assert.True(line.LastIndexOf("\u001b[0m", StringComparison.Ordinal) > line.IndexOf('\u001b', StringComparison.Ordinal)));
    }

    [Fact]
    public void Write_AnUnreadIngredient_IsListed()
    {
        string text = Text(SampleReport.Of(Outcome.CannotTell) with { Ingredients = [SampleReport.Ingredient(9, "2 cups skarn", "skarn", null)] });

        Assert.Contains("Ingredients that could not be read", text, StringComparison.Ordinal);
        Assert.Contains("- 2 cups skarn (line 9)", text, StringComparison.Ordinal);
    }

    private static string Text(VettingReport report)
    {
        using StringWriter writer = new();
        new TextReport(Words.Read(), new TextStyle()).Write(writer, "stew.md", report);
        return writer.ToString();
    }
}
