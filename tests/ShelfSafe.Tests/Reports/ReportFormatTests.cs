using System.Globalization;
using System.Text.Json;
using Markdig;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Reports;

public sealed class ReportFormatTests
{
    private static readonly string _hostile = """
        # <script>alert(1)</script> [x](javascript:alert(2)) chili

        ## Ingredients

        - 3 tbsp flour <img src=x onerror=alert(3)>
        - 500 g [beef](javascript:alert(4)) "onload=alert(5)
        - 2 cups <svg onload=alert(6)> www.example.org RLOtfelPDF
        - 1 onion ESC[31m red ESC]8;;xBEL

        ## Directions

        1. Stir in the flour <a href="javascript:alert(7)">now</a> & {0} http://example.org/x

        """.Replace("RLO", "\u202E", StringComparison.Ordinal).Replace("PDF", "\u202C", StringComparison.Ordinal).Replace("ESC", "\u001b", StringComparison.Ordinal).Replace("BEL", "\u0007", StringComparison.Ordinal);

    private static readonly RecipeVetter _vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("sarif")]
    [InlineData("jsonl")]
    public void One_HostileText_ComesOutInert(string format)
    {
        string written = Whole(format, _hostile, "a\u202Eb<script>\u001b[2J.md");

        Assert.DoesNotContain('\u202E', written);
        Assert.DoesNotContain('\u001b', written);
        Assert.DoesNotContain('\u0007', written);
        if (format == "html")
        {
            Assert.DoesNotContain("<script", written, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img", written, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<svg onload", written, StringComparison.OrdinalIgnoreCase); // a picture of our own may stand there
            Assert.DoesNotContain("href=\"javascript", written, StringComparison.OrdinalIgnoreCase);
        }
        else if (format == "markdown")
        {
            string page = Markdown.ToHtml(written, new MarkdownPipelineBuilder().UseAdvancedExtensions().Build());
            Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("href=\"javascript", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("href=\"http://example", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("href=\"http://www.example", page, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Theory]
    [InlineData("markdown")]
    [InlineData("html")]
    public void One_AfterChanges_PrintsNoTimeAboveTheChanges(string format)
    {
        VettingReport report = SampleReport.Of(Outcome.PressureAfterChanges, SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 1));

        string written = ReportFormat.Create(format, RulePack.Default, new TextStyle()).One(new("stew.md", report, "3 tbsp flour and more words"));

        Assert.True(written.IndexOf("What must change first", StringComparison.Ordinal) < written.IndexOf("75 min", StringComparison.Ordinal));
        Assert.Contains("11 psi", written, StringComparison.Ordinal);
    }

    [Fact]
    public void One_OverlappingPlaces_AreEachMarkedOnce()
    {
        Finding outer = SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 1) with { Places = [new(1, 1, 1, 13)] };
        Finding inner = SampleReport.Finding(FindingLevel.Stop, "seafood", "flour", 1) with { Places = [new(1, 8, 1, 18)] };

        string written = ReportFormat.Create("html", RulePack.Default, new TextStyle()).One(new("a.md", SampleReport.Of(Outcome.FreezeOrChill, inner, outer), "3 tbsp flour, fish"));

        Assert.Contains("<mark class=\"change\">3 tbsp </mark><mark class=\"stop\">flour</mark>", written, StringComparison.Ordinal);
        Assert.Contains("<mark class=\"stop\">, fis</mark><small class=\"tag\">[STOP seafood]</small>h</div>", written, StringComparison.Ordinal);
    }

    [Fact]
    public void Sarif_AnyRecipe_HasRulesRegionsAndLevels()
    {
        using JsonDocument json = JsonDocument.Parse(Whole("sarif", _hostile, "a b/stew.md"));
        JsonElement run = json.RootElement.GetProperty("runs")[0];
        JsonElement rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");

        Assert.Equal("utf16CodeUnits", run.GetProperty("columnKind").GetString());
        Assert.All(rules.EnumerateArray(), static rule => Assert.DoesNotContain('{', rule.GetProperty("help").GetProperty("text").GetString()!));
        foreach (JsonElement result in run.GetProperty("results").EnumerateArray())
        {
            Assert.Equal(result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString());
            Assert.Equal(result.GetProperty("kind").GetString() == "fail", result.GetProperty("level").GetString() != "none");
            JsonElement place = result.GetProperty("locations")[0].GetProperty("physicalLocation");
            Assert.Equal("a%20b/stew.md", place.GetProperty("artifactLocation").GetProperty("uri").GetString());
            Assert.True(place.GetProperty("region").GetProperty("startLine").GetInt32() >= 1);
        }
    }

    [Fact]
    public void Sarif_WhatTheKitchenMustHear_IsAResultWithARuleThatBlamesNoRecipe()
    {
        const string Beans = "# Green beans\n\n- 2 kg green beans\n- 2 l water\n\n1. Cut, boil 5 minutes, pack hot in pint jars with 1 inch headspace and process in a pressure canner.\n";
        using JsonDocument json = JsonDocument.Parse(Whole("sarif", Beans, "beans.md", new(Region: "uk")));
        JsonElement run = json.RootElement.GetProperty("runs")[0];
        JsonElement rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");
        JsonElement[] notes = [.. run.GetProperty("results").EnumerateArray().Where(static result => result.GetProperty("ruleId").GetString() is "altitude-missing" or "country")];

        Assert.Equal(2, notes.Length);
        foreach (JsonElement note in notes)
        {
            Assert.Equal("informational", note.GetProperty("kind").GetString());
            JsonElement rule = rules[note.GetProperty("ruleIndex").GetInt32()];
            Assert.Equal(note.GetProperty("ruleId").GetString(), rule.GetProperty("id").GetString());
            Assert.DoesNotContain('{', rule.GetProperty("help").GetProperty("text").GetString()!);
        }
    }

    [Theory]
    [InlineData("/a/ü.md", "file:///a/%C3%BC.md", false)]
    [InlineData("C:/a.md", "file:///C:/a.md", false)]
    [InlineData("./a#b.md", "a%23b.md", true)]
    [InlineData("../a.md", "../a.md", false)]
    [InlineData("-", "stdin:-", false)]
    public void SarifUri_AnyPath_IsAnAddress(string path, string expected, bool below) => Assert.Equal((expected, below), SarifUri.Of(path));

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void One_AnyCulture_GivesTheSameBytes(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        foreach (string format in ReportFormat.Known)
        {
            string expected = Whole(format, _hostile, "x.md");
            try
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(expected, Whole(format, _hostile, "x.md"));
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }
        }
    }

    private static string Whole(string name, string text, string file, Kitchen? kitchen = null)
    {
        ReportFormat format = ReportFormat.Create(name, RulePack.Default, new TextStyle());
        ReportItem item = new(file, _vetter.Vet(text, kitchen ?? new(AltitudeFeet: 1_345, Gauge: "weighted")), text);
        return format.Start(item) + format.One(item) + format.Finish([], finished: true);
    }
}
