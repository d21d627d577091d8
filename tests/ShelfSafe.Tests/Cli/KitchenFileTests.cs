using ShelfSafe.Cli;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class KitchenFileTests
{
    [Fact]
    public void Parse_AWholeProfile_IsRead()
    {
        KitchenFile? profile = KitchenFile.Parse(
            "hall/kitchen.json",
            """
            {
              // the harvest hall
              "altitude": "410 m", "gauge": "weighted", "jar": "quart", "region": "uk", "aliases": "words.csv",
            }
            """,
            out string wrong);

        Assert.Empty(wrong);
        Assert.NotNull(profile);
        Assert.Equal(1_345.1, profile.AltitudeFeet!.Value, tolerance: 0.1);
        Assert.Equal(("weighted", "quart", "uk"), (profile.Gauge, profile.Jar, profile.Region));
        Assert.Equal(Path.Combine("hall", "words.csv"), profile.Aliases);
    }

    [Theory]
    [InlineData("{\n\"altitud\": \"410 m\"}", ":2: \"altitud\" is not known")]
    [InlineData("{\n\n\"altitude\": 410}", ":3: \"altitude\" must be a text")]
    [InlineData("{\"altitude\": \"410\"}", ":1: altitude: \"410\" has no unit")]
    [InlineData("{\"gauge\": \"digital\"}", ":1: gauge: \"digital\" is not known")]
    [InlineData("{\"jar\": \"pint\",\n\"jar\": \"quart\"}", ":2: \"jar\" stands twice")]
    [InlineData("{\"jar\": \"pint\"", ":1: this is not JSON")]
    [InlineData("{}x", ":1: this is not JSON")]
    [InlineData("[]", ":1: a profile is one JSON object")]
    [InlineData("", ":1: this is not JSON")]
    public void Parse_AFault_IsRefusedWithItsLine(string text, string expected)
    {
        Assert.Null(KitchenFile.Parse("k.json", text, out string wrong));
        Assert.StartsWith("k.json" + expected, wrong, StringComparison.Ordinal);
    }
}
