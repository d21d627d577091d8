using System.Globalization;
using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Reports;

public sealed class JsonLinesReportTests
{
    [Fact]
    public void Write_AnyReport_IsOneLineWithThePublishedFieldsInOrder()
    {
        string line = Line(SampleReport.Of(Outcome.PressureAfterChanges, SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12, 30)));

        Assert.EndsWith("}\n", line, StringComparison.Ordinal);
        Assert.Equal(line.Length - 1, line.IndexOf('\n', StringComparison.Ordinal));
        using JsonDocument json = JsonDocument.Parse(line);
        Assert.Equal(
            ["schemaVersion", "file", "title", "acidity", "outcome", "category", "findings", "ingredients", "measures", "nearest", "process", "processAfterChanges"],
            Names(json.RootElement)[..12]);
        Assert.Equal(
            ["rule", "level", "ingredient", "line", "column", "endColumn", "message", "why", "instead", "source"],
            Names(json.RootElement.GetProperty("findings")[0])[..10]);
        Assert.Equal(
            ["line", "text", "amount", "package", "food", "foodId", "preparation", "optional", "toTaste", "alternatives", "grams", "traits", "identified"],
            Names(json.RootElement.GetProperty("ingredients")[0])[..13]);
        Assert.Equal(
            ["method", "jar", "pack", "minutes", "gauge", "psi", "altitudeFeet", "headspaceInches", "source"],
            Names(json.RootElement.GetProperty("processAfterChanges")[0])[..9]);
    }

    [Fact]
    public void Stream_AnyLine_IsTheSameText()
    {
        // Letters of two, three and four bytes over more than one piece, each at every place within its bytes.
        foreach (string shift in (string[])["", "a", "ab", "abc"])
        {
            string title = shift + string.Concat(Enumerable.Repeat("Süße 豆 🍅 ", 9_000));
            ReportItem item = new("stew.md", SampleReport.Of(Outcome.FreezeOrChill) with { Title = title }, string.Empty);
            using StringWriter streamed = new();
            JsonLinesReport.Stream(streamed, item);

            Assert.Equal(new JsonLinesReport().Line(item), streamed.ToString());
        }
    }

    [Fact]
    public void Write_AFindingWithSeveralPlaces_RepeatsTheFirstPlaceAndSource()
    {
        using JsonDocument json = Parsed(SampleReport.Of(Outcome.FreezeOrChill, SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12, 30)));
        JsonElement finding = json.RootElement.GetProperty("findings")[0];

        Assert.Equal(12, finding.GetProperty("line").GetInt32());
        Assert.Equal(24, finding.GetProperty("endColumn").GetInt32());
        Assert.Equal(2, finding.GetProperty("places").GetArrayLength());
        Assert.Equal("Book of the island, page 7", finding.GetProperty("source").GetString());
        Assert.Equal("island-book", finding.GetProperty("sources")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void Write_AnOpenEnd_IsNull()
    {
        using JsonDocument json = Parsed(SampleReport.Of(Outcome.FreezeOrChill));
        JsonElement volume = json.RootElement.GetProperty("measures").GetProperty("totalMillilitres");

        Assert.Equal(3_900, volume.GetProperty("low").GetDouble());
        Assert.Equal(JsonValueKind.Null, volume.GetProperty("high").ValueKind);
    }

    [Fact]
    public void Write_ListsThatWereNeverSet_AreEmptyLists()
    {
        VettingReport bare = SampleReport.Of(Outcome.FreezeOrChill) with { Findings = default, Nearest = default, Storage = default, Parts = default, Reasons = default };

        using JsonDocument json = Parsed(bare);

        foreach (string name in new[] { "findings", "nearest", "storage", "parts", "reasons" })
        {
            Assert.Equal(0, json.RootElement.GetProperty(name).GetArrayLength());
        }
    }

    [Fact]
    public void Write_NoCategory_IsNull()
    {
        using JsonDocument json = Parsed(SampleReport.Of(Outcome.FreezeOrChill) with { Category = null });

        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("category").ValueKind);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Write_AnyCulture_GivesTheSameBytes(string culture)
    {
        VettingReport report = SampleReport.Of(Outcome.Pressure, SampleReport.Finding(FindingLevel.Caution, "fat", "oil", 3));
        string expected = Line(report);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(expected, Line(report));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Write_MarksThatTurnTextAround_AreEscapedAndKept()
    {
        const string Title = "Stew \u202Etxt\u0007 \uD800 end";

        string line = Line(SampleReport.Of(Outcome.FreezeOrChill) with { Title = Title });

        Assert.DoesNotContain('\u202E', line);
        Assert.DoesNotContain('\u0007', line);
        using JsonDocument json = JsonDocument.Parse(line);
        Assert.Equal("Stew \u202Etxt\u0007 \uFFFD end", json.RootElement.GetProperty("title").GetString());
    }

    [Fact]
    public void Write_ThirdsAndLargeNumbers_AreRoundedSensibly()
    {
        IngredientReport third = SampleReport.Ingredient(1, "1/3 cup", "milk", "milk") with { Amount = new(Interval.Exactly(1.0 / 3), "cup"), Grams = new(80.66666, 12_345.678) };

        using JsonDocument json = Parsed(SampleReport.Of(Outcome.FreezeOrChill) with { Ingredients = [third] });
        JsonElement written = json.RootElement.GetProperty("ingredients")[0];

        Assert.Equal("0.3333", written.GetProperty("amount").GetProperty("low").GetRawText());
        Assert.Equal("80.67", written.GetProperty("grams").GetProperty("low").GetRawText());
        Assert.Equal("12346", written.GetProperty("grams").GetProperty("high").GetRawText());
    }

    private static string Line(VettingReport report)
    {
        using StringWriter writer = new();
        new JsonLinesReport().Write(writer, "stew.md", report);
        return writer.ToString();
    }

    private static JsonDocument Parsed(VettingReport report) => JsonDocument.Parse(Line(report));

    private static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(static one => one.Name)];
}
