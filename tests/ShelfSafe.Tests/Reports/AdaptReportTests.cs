using System.Text.Json;
using ShelfSafe.Changes;
using ShelfSafe.Reports;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Reports;

/// <summary>A jar version and a freezer version in every format.</summary>
public class AdaptReportTests
{
    private const string Stew = "venison-and-chickpea-stew.md";
    private const string Relish = "green-tomato-chutney.md";

    [Fact]
    public void Write_AJarVersionAsJson_HoldsEveryChangeWithReasonAndSource()
    {
        using JsonDocument json = JsonDocument.Parse(Write(Stew, "jsonl"));
        JsonElement root = json.RootElement;

        Assert.Equal("jar", root.GetProperty("kind").GetString());
        Assert.Equal("pressure", root.GetProperty("outcome").GetProperty("after").GetString());
        Assert.StartsWith("# ", root.GetProperty("recipe").GetString(), StringComparison.Ordinal);
        Assert.NotEmpty(root.GetProperty("process").EnumerateArray());
        Assert.Equal(Adapter.Adapt(Sample(Stew), Hall).Changes.Length, root.GetProperty("changes").GetArrayLength());
        Assert.All(root.GetProperty("changes").EnumerateArray(), change =>
        {
            Assert.NotEqual(string.Empty, change.GetProperty("what").GetString());
            Assert.NotEqual(string.Empty, change.GetProperty("why").GetString());
            Assert.NotEmpty(change.GetProperty("sources").EnumerateArray());
        });
    }

    [Fact]
    public void Write_AFreezerVersionAsJson_HoldsTheReasonsAndNoRecipe()
    {
        using JsonDocument json = JsonDocument.Parse(Write(Relish, "jsonl"));

        Assert.Equal("freezer", json.RootElement.GetProperty("kind").GetString());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("recipe").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("outcome").GetProperty("after").ValueKind);
        Assert.NotEmpty(json.RootElement.GetProperty("reasons").EnumerateArray());
        Assert.NotEmpty(json.RootElement.GetProperty("freezing").EnumerateArray());
    }

    [Theory]
    [InlineData("markdown")]
    [InlineData("text")]
    [InlineData("html")]
    public void Write_AJarVersion_ShowsRecipeChangesProcessAndSources(string format)
    {
        Adaptation done = Adapter.Adapt(Sample(Stew), Hall);
        string page = Flat(Write(Stew, format));

        Assert.All(done.Changes, change => Assert.Contains(Flat(change.Why), page, StringComparison.Ordinal));
        Assert.Contains("75 min", page, StringComparison.Ordinal);
        Assert.Contains("Guide 4, p. 4-18", page, StringComparison.Ordinal);
        Assert.Contains("judged again", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("markdown")]
    [InlineData("text")]
    [InlineData("html")]
    public void Write_AFreezerVersion_SaysSoFirstAndNamesPublishedRecipes(string format)
    {
        Adaptation done = Adapter.Adapt(Sample(Relish), Hall);
        string page = Flat(Write(Relish, format));

        Assert.InRange(page.IndexOf("There is no jar version", StringComparison.Ordinal), 0, page.IndexOf("Why there is no jar version", StringComparison.Ordinal));
        Assert.NotEmpty(done.Before.Nearest);
        Assert.All(done.Before.Nearest, near => Assert.Contains($"adapt with --to {near.Id}", page, StringComparison.Ordinal));
    }

    // An address in angle brackets is a link as it stands.
    [Fact]
    public void Write_AFreezerVersionAsMarkdown_KeepsItsLinksWhole()
    {
        string page = Write("roast-pumpkin-soup.md", "markdown");

        Assert.Contains("<https://nchfp.uga.edu/papers/guide/GUIDE01_HomeCan_rev0715.pdf>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\\_", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_HostileWords_StayText()
    {
        const string recipe = "# <script>alert(1)</script>\n\n- 500 g cod fillet\n- 1 <b>onion</b>\n\n1. Blend <img src=x> it.\n";
        using StringWriter output = new();

        new AdaptReport(Words.Read()).Write(output, "x.md", recipe, Adapter.Adapt(recipe, Hall), "html", new TextStyle());

        Assert.DoesNotContain("<script>", output.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("<img", output.ToString(), StringComparison.Ordinal);
    }

    private static string Write(string sample, string format)
    {
        using StringWriter output = new();
        new AdaptReport(Words.Read()).Write(output, sample, Sample(sample), Adapter.Adapt(Sample(sample), Hall), format, new TextStyle());
        return output.ToString();
    }

    // Wrapped, encoded or not: the same words.
    private static string Flat(string page) => string.Join(' ', System.Net.WebUtility.HtmlDecode(page).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
