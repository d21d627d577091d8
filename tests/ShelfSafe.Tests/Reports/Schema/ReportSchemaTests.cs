using System.Text;
using System.Text.Json.Nodes;
using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Tests.Cli;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Reports.Schema;

public sealed class ReportSchemaTests
{
    private const string Page = """
        <html><body><script type="application/ld+json">{"@graph":[
          {"@type":"Recipe","name":"Plum jam","recipeIngredient":["1 kg plums","800 g sugar"],"recipeInstructions":"Boil to a set."},
          {"@type":"Recipe","name":"Dry rub","recipeIngredient":["4 tbsp salt"],"recipeInstructions":"Stir."}]}</script></body></html>
        """;

    private static readonly SchemaCheck _schema = SchemaCheck.OfReport();

    public static TheoryData<string> Samples => [.. SampleFolder.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Vet_ASample_GivesALineThatFitsTheSchema(string name)
    {
        (_, string output, _) = Kitchenette.Run("vet", SampleFolder.Of(name), "--format", "jsonl", "--altitude", "410 m", "--gauge", "weighted", "--jar", "pint", "--region", "uk");

        Assert.Empty(_schema.Faults(output));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Vet_ASampleWithoutKitchen_FitsTheSchemaToo(string name) =>
        Assert.Empty(_schema.Faults(Kitchenette.Run("vet", SampleFolder.Of(name), "--format", "jsonl").Output));

    [Fact]
    public void Vet_Records_FitTheSchemaAndABadOneIsAnError()
    {
        string records = """
            {"text":"# Dry rub\n\n- 4 tbsp salt\n","title":"Rub","file":"rub.md"}
            {"text":
            {"@type":"Recipe","name":"Plum jam","recipeIngredient":["1 kg plums"]}
            7
            """;

        (int code, string output, _) = Kitchenette.Run(Encoding.UTF8.GetBytes(records), "vet", "--input", "jsonl", "--format", "jsonl", "-");

        string[] lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, code);
        Assert.Equal(4, lines.Length);
        Assert.All(lines, static line => Assert.Empty(_schema.Faults(line)));
        Assert.Equal([false, true, false, true], lines.Select(static line => JsonNode.Parse(line)!["error"] is not null));
        Assert.Equal([1, 2, 3, 4], lines.Select(static line => JsonNode.Parse(line)!["record"]!.GetValue<int>()));
    }

    [Fact]
    public void Vet_APageWithTwoRecipes_FitsTheSchemaWithRecordAndText()
    {
        (_, string output, _) = Kitchenette.Run(Encoding.UTF8.GetBytes(Page), "vet", "--input", "html", "--format", "jsonl", "-");

        string[] lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, lines.Length);
        Assert.All(lines, static line => Assert.Empty(_schema.Faults(line)));
        Assert.All(lines, static line => Assert.NotNull(JsonNode.Parse(line)!["textRead"]));
    }

    [Fact]
    public void Write_EveryOutcome_FitsTheSchema() => Assert.All(SampleReport.All, static outcome =>
    {
        string line = new JsonLinesReport().Line(new("a.md", SampleReport.Of(outcome, SampleReport.Finding(FindingLevel.Change, "thickener", "flour", 12)) with { Pack = new("1", "2026-11-01", "ab") }, "text"));

        Assert.Empty(_schema.Faults(line));
    });

    // A schema that lets everything pass would hold nothing: each of these changes one thing that product rules forbid.
    [Theory]
    [InlineData("outcome", "\"fine\"")]
    [InlineData("acidity", "\"sour\"")]
    [InlineData("schemaVersion", "2")]
    [InlineData("findings", "null")]
    [InlineData("nearest", "null")]
    [InlineData("kitchen", "null")]
    [InlineData("surprise", "1")]
    [InlineData("record", "0")]
    public void Faults_ALineThatWasChanged_AreSeen(string field, string value)
    {
        JsonObject line = JsonNode.Parse(Kitchenette.Run("vet", SampleFolder.Of(SampleFolder.Names[0]), "--format", "jsonl").Output)!.AsObject();
        line[field] = JsonNode.Parse(value);

        Assert.NotEmpty(_schema.Faults(line.ToJsonString()));
    }

    [Fact]
    public void Faults_AProcessWithoutAnOutcomeThatAllowsIt_AreSeen()
    {
        JsonObject line = JsonNode.Parse(new JsonLinesReport().Line(new("a.md", SampleReport.Of(Outcome.Pressure) with { Pack = new("1", "2026-11-01", "ab") }, "text")))!.AsObject();
        Assert.Empty(_schema.Faults(line.ToJsonString()));

        line["outcome"] = "freeze-or-chill";

        Assert.NotEmpty(_schema.Faults(line.ToJsonString()));
    }

    [Fact]
    public void Schema_Command_PrintsThePublishedText()
    {
        (int code, string output, string error) = Kitchenette.Run("schema");

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", JsonNode.Parse(output)!["$schema"]!.GetValue<string>());
    }
}
