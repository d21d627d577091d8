using System.Text.Json;
using System.Text.Json.Nodes;
using ShelfSafe.Tests.Cli;
using ShelfSafe.Tests.Reports.Schema;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Reports.Sarif;

/// <summary>Source: OASIS Standard SARIF 2.1.0, its JSON schema and sections 3.30.5 to 3.30.8 (regions).</summary>
public sealed class SarifSchemaTests : IDisposable
{
    private static readonly SchemaCheck _schema = SchemaCheck.OfSarif();

    private readonly Kitchenette _kitchen = new();

    public static TheoryData<string> Samples => [.. SampleFolder.Names];

    public static TheoryData<string> Hostile => [.. HostileText.Payloads.Keys];

    public void Dispose() => _kitchen.Dispose();

    [Theory]
    [MemberData(nameof(Samples))]
    public void Vet_ASample_FitsTheSchema(string name) =>
        Assert.Empty(_schema.Faults(Kitchenette.Run("vet", SampleFolder.Of(name), "--format", "sarif").Output));

    [Fact]
    public void Vet_AFolder_IsOneRunThatFitsTheSchema()
    {
        string output = Kitchenette.Run("vet", SampleFolder.Path, SampleFolder.Of("none.md"), "--format", "sarif").Output;

        Assert.Empty(_schema.Faults(output));
        JsonNode run = Assert.Single(JsonNode.Parse(output)!["runs"]!.AsArray())!;
        Assert.False(run["invocations"]![0]!["executionSuccessful"]!.GetValue<bool>());
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void Vet_HostileText_FitsTheSchema(string payload) =>
        Assert.Empty(_schema.Faults(Kitchenette.Run("vet", _kitchen.Write("recipe.md", HostileText.Recipe(payload)), "--format", "sarif").Output));

    [Fact]
    public void Vet_NothingRead_FitsTheSchema() =>
        Assert.Empty(_schema.Faults(Kitchenette.Run("vet", SampleFolder.Of("none.md"), "--format", "sarif").Output));

    [Theory]
    [InlineData("\n", "")]
    [InlineData("\r\n", "")]
    [InlineData("\r", "")]
    [InlineData("\n", "\uFEFF")]
    [InlineData("\r\n", "\uFEFF")]
    public void Vet_TabsEmojiAndLineEnds_GiveRegionsToTheCharacter(string lineEnd, string mark)
    {
        string text = mark + string.Join(lineEnd, "# Supper 👩‍🍳", "", "## Ingredients", "", "-\t3 tbsp flour 🎃 (\"sifted\")", "- 500 g 🐟 cod fillet, cubed", "", "## Directions", "", "1.\t🎃 Whisk in the cream.");

        List<string> marked = Marked(text, Kitchenette.Run("vet", _kitchen.Write("supper.md", text), "--format", "sarif").Output);

        Assert.Contains("flour 🎃", marked);
        Assert.Contains(marked, static words => words.Contains("cod", StringComparison.Ordinal));
        Assert.Contains(marked, static words => words.Contains("cream", StringComparison.Ordinal));
        Assert.All(marked, static words => Assert.False(words.Length > 0 && (char.IsLowSurrogate(words[0]) || char.IsHighSurrogate(words[^1])), words));
    }

    [Fact]
    public void Faults_AResultWithoutMessage_AreSeen()
    {
        JsonNode log = JsonNode.Parse(Kitchenette.Run("vet", SampleFolder.Of(SampleFolder.Names[0]), "--format", "sarif").Output)!;
        log["runs"]![0]!["results"]![0]!.AsObject().Remove("message");

        Assert.NotEmpty(_schema.Faults(log.ToJsonString()));
    }

    // The text of each region, cut out by line and UTF-16 column as section 3.30 says; a byte-order mark is no character of the text.
    private static List<string> Marked(string text, string sarif)
    {
        string[] lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        using JsonDocument log = JsonDocument.Parse(sarif);
        return [.. log.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray()
            .SelectMany(static result => result.GetProperty("locations").EnumerateArray())
            .Select(static location => location.GetProperty("physicalLocation").GetProperty("region"))
            .Where(static region => region.GetProperty("startLine").GetInt32() == region.GetProperty("endLine").GetInt32())
            .Select(region => lines[region.GetProperty("startLine").GetInt32() - 1][(region.GetProperty("startColumn").GetInt32() - 1)..(region.GetProperty("endColumn").GetInt32() - 1)])];
    }
}
