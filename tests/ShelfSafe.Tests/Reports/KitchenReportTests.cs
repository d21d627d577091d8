using ShelfSafe.Tests.Cli;
using ShelfSafe.Tests.Reports.Schema;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Reports;

/// <summary>Where a report says what the kitchen must hear: before the times, in every format.</summary>
public sealed class KitchenReportTests : IDisposable
{
    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Theory]
    [InlineData("text", "75 min")]
    [InlineData("markdown", "75 min")]
    [InlineData("html", "75 min")]
    public void Vet_WithoutAPressureCanner_PrintsTheFreezerPlanAboveTheTimes(string format, string time)
    {
        string output = Vet("vegetable-beef-soup.md", """{"altitude": "410 m", "canner": "boiling-water"}""", format);

        int note = output.IndexOf("your kitchen file lists none", StringComparison.Ordinal);
        int plan = output.IndexOf("The freezer plan", StringComparison.Ordinal);
        int months = output.IndexOf("2 to 3 months", StringComparison.Ordinal);
        Assert.True(note > 0 && note < plan && plan < months && months < output.IndexOf(time, StringComparison.Ordinal));
        Assert.Equal(months, output.LastIndexOf("2 to 3 months", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    public void Vet_WithAnElectricAppliance_PrintsNoTime(string format)
    {
        string output = Vet("vegetable-beef-soup.md", """{"altitude": "410 m", "canner": "electric", "gauge": "dial"}""", format);

        Assert.Contains("No published time fits it", Joined(output), StringComparison.Ordinal);
        Assert.DoesNotContain(" psi", output, StringComparison.Ordinal);
        Assert.DoesNotContain("75 min", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"altitude": "410 m", "canner": ["electric", "boiling-water"], "country": "au", "capacity": 9, "units": "metric"}""")]
    [InlineData("""{"altitude": "410 m", "canner": "pressure", "gauge": "dial", "gaugeTested": "2020-01-31", "capacity": {"pint": 16, "quart": 7}, "country": "de"}""")]
    [InlineData("""{"canner": "atmospheric-steam"}""")]
    public void Vet_AnyProfile_GivesLinesThatFitTheSchema(string profile)
    {
        SchemaCheck schema = SchemaCheck.OfReport();
        foreach (string name in (string[])["vegetable-beef-soup.md", "peach-halves.md", "venison-and-chickpea-stew.md"])
        {
            Assert.Empty(schema.Faults(Vet(name, profile, "jsonl")));
        }
    }

    // Conversions: 15 psi is 103.4 kPa, 1 inch 25.4 mm, 1,001 ft 305.1 m; pressure is rounded up, altitude down.
    [Fact]
    public void Vet_InMetricUnits_KeepsThePublishedFigureFirstAndMarksTheConversion()
    {
        string metric = Vet("vegetable-beef-soup.md", """{"altitude": "410 m", "gauge": "weighted", "units": "metric"}""", "text");
        string us = Vet("vegetable-beef-soup.md", """{"altitude": "410 m", "gauge": "weighted"}""", "text");

        string joined = Joined(metric);
        Assert.Contains("15 psi (104 kPa)", joined, StringComparison.Ordinal);
        Assert.Contains("1 in (25 mm)", joined, StringComparison.Ordinal);
        Assert.Contains("from 1,001 ft (305 m)", joined, StringComparison.Ordinal);
        Assert.Contains("converted from the published ones", joined, StringComparison.Ordinal);
        Assert.DoesNotContain("kPa", us, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_ASteamCanner_IsNamedWithItsLimits()
    {
        string output = Joined(Vet("peach-halves.md", """{"altitude": "410 m", "canner": "atmospheric-steam"}""", "text"));

        Assert.Contains("atmospheric steam, hot pack", output, StringComparison.Ordinal);
        Assert.Contains("no process above 45 minutes with the altitude counted in, and no jar above the quart.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_AKitchenWithASteamCannerAlone_NeverSpeaksOfWaterOverTheLids()
    {
        string kitchen = _kitchen.Write("kitchen.json", """{"altitude": "410 m", "canner": "atmospheric-steam", "capacity": 7}""");

        (int code, string output, _) = Kitchenette.Run("plan", SampleFolder.Of("peach-halves.md"), "--kitchen", kitchen, "--jar", "quart");

        Assert.Equal(0, code);
        Assert.Contains("in the steam canner", output, StringComparison.Ordinal);
        Assert.DoesNotContain("water over the lids", Joined(output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("electric", 1, "lists no canner for its published process")]
    [InlineData("boiling-water", 1, "lists no canner for its published process")]
    public void Plan_WithoutACannerForIt_IsRefused(string canner, int expected, string words)
    {
        string kitchen = _kitchen.Write("kitchen.json", $$"""{"altitude": "410 m", "gauge": "dial", "canner": "{{canner}}"}""");

        (int code, string output, string error) = Kitchenette.Run("plan", SampleFolder.Of("vegetable-beef-soup.md"), "--kitchen", kitchen);

        Assert.Equal(expected, code);
        Assert.Empty(output);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public void BatchAdd_WithAnElectricApplianceInTheProfile_IsNotPublished()
    {
        string kitchen = _kitchen.Write("kitchen.json", """{"altitude": "410 m", "gauge": "weighted", "canner": "electric"}""");

        (_, string output, _) = Add("vegetable-beef-soup.md", "--kitchen", kitchen, "--method", "pressure", "--pack", "hot", "--minutes", "90", "--psi", "15", "--jar", "pint");

        Assert.Contains("Not put up by a published process", output, StringComparison.Ordinal);
    }

    // Source: USDA Complete Guide, Guide 2, p. 2-19: peaches, hot pack, quarts: 30 minutes at 1,001 to 3,000 ft.
    [Theory]
    [InlineData("30", "Put up by a published process")]
    [InlineData("29", "Not put up by a published process")]
    public void BatchAdd_InASteamCanner_TakesTheMinutesOfBoilingWater(string minutes, string expected)
    {
        (int code, string output, _) = Add("peach-halves.md", "--altitude", "410 m", "--method", "atmospheric-steam", "--pack", "hot", "--minutes", minutes, "--jar", "quart");

        Assert.Equal(0, code);
        Assert.Contains(expected, output, StringComparison.Ordinal);
    }

    private (int Code, string Output, string Error) Add(string recipe, params string[] options) =>
        Kitchenette.Run(["batch", "add", SampleFolder.Of(recipe), "--jars", "7", "--log", _kitchen.Path("log.db"), .. options]);

    private string Vet(string recipe, string profile, string format) =>
        Kitchenette.Run("vet", SampleFolder.Of(recipe), "--kitchen", _kitchen.Write("kitchen.json", profile), "--format", format).Output;

    private static string Joined(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
