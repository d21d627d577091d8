using System.Globalization;
using ShelfSafe.Cli;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class KitchenFileTests
{
    private static readonly DateOnly _today = new(2026, 11, 27);

    [Fact]
    public void Parse_AWholeProfile_IsRead()
    {
        KitchenFile? profile = KitchenFile.Parse(
            "hall/kitchen.json",
            """
            {
              // the harvest hall
              "altitude": "410 m", "canner": ["pressure", "boiling-water"], "gauge": "dial", "gaugeTested": "2026-04-30",
              "capacity": {"pint": 16, "quart": 7}, "jar": "quart", "country": "uk", "units": "metric", "aliases": "words.csv",
            }
            """,
            _today,
            out string wrong);

        Assert.Empty(wrong);
        Assert.NotNull(profile);
        Assert.Equal(1_345.1, profile.AltitudeFeet!.Value, tolerance: 0.1);
        Assert.Equal(["pressure", "boiling-water"], profile.Canners);
        Assert.Equal(("dial", "quart", "uk", true), (profile.Gauge, profile.Jar, profile.Country, profile.Metric));
        Assert.Equal(new DateOnly(2026, 4, 30), profile.GaugeTested);
        Assert.Equal((16, 7), (profile.Capacity!.Jars["pint"], profile.Capacity.Jars["quart"]));
        Assert.Equal(Path.Combine("hall", "words.csv"), profile.Aliases);
    }

    [Theory]
    [InlineData("{\"canner\": \"electric\", \"region\": \"au\"}", "electric", "au", null)]
    [InlineData("{}", null, null, null)]
    [InlineData("{\"gaugeTested\": \"2026-11-27\"}", null, null, "2026-11-27")]
    public void Parse_AShortProfile_SaysWhatItHoldsAndNoMore(string text, string? canner, string? country, string? tested)
    {
        KitchenFile profile = KitchenFile.Parse("k.json", text, _today, out _)!;

        Assert.Equal(canner is null ? [] : [canner], profile.Canners);
        Assert.Equal((country, tested), (profile.Country, profile.GaugeTested?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        Assert.Equal((null, null, null, null, false), (profile.AltitudeFeet, profile.Gauge, profile.Jar, profile.Capacity, profile.Metric));
    }

    // One number stands for every size of jar.
    [Fact]
    public void Parse_CapacityAsANumber_HoldsForEachJar() =>
        Assert.Equal(4, KitchenFile.Parse("k.json", "{\"capacity\": 4}", _today, out _)!.Capacity!.Any);

    [Theory]
    [InlineData("{\n\"altitud\": \"410 m\"}", ":2: \"altitud\" is not known; known: altitude, canner, ", "nearest: altitude")]
    [InlineData("{\n\n\"altitude\": 410}", ":3: \"altitude\" must be a text", "\"410 m\"")]
    [InlineData("{\"altitude\": \"410\"}", ":1: altitude: \"410\" has no unit", "\"410 ft\" or \"410 m\"")]
    [InlineData("{\"altitude\": \"410 km\"}", ":1: altitude: \"410 km\" has a unit that is not known", "known: ft, m")]
    [InlineData("{\"altitude\": \"30000 ft\"}", ":1: altitude: \"30000 ft\" is no altitude of a kitchen", "from -1500 ft to 20000 ft")]
    [InlineData("{\"gauge\": \"digital\"}", ":1: gauge: \"digital\" is not known", "known: dial, weighted")]
    [InlineData("{\n\"gaugeTested\": \"spring\"}", ":2: gaugeTested: \"spring\" is no day", "\"2026-04-30\"")]
    [InlineData("{\"gaugeTested\": \"2026-11-28\"}", ":1: gaugeTested: \"2026-11-28\" is still to come", "last test")]
    [InlineData("{\"canner\": -1}", ":1: canner: a kind in double quotes", "boiling-water, atmospheric-steam, pressure, electric")]
    [InlineData("{\"canner\":\n[\"pressure\",\n\"presure\"]}", ":3: canner: \"presure\" is not known", "nearest: pressure")]
    [InlineData("{\"canner\": [\"pressure\", \"pressure\"]}", ":1: canner: \"pressure\" stands twice", "twice")]
    [InlineData("{\"canner\": []}", ":1: canner: the list is empty", "known: ")]
    [InlineData("{\"capacity\": -3}", ":1: capacity: a whole number", "from 1 to 40")]
    [InlineData("{\"capacity\": 41}", ":1: capacity: a whole number", "from 1 to 40")]
    [InlineData("{\"capacity\": 2.5}", ":1: capacity: a whole number", "from 1 to 40")]
    [InlineData("{\"capacity\": {\"pint\": 0}}", ":1: capacity of pint: a whole number", "from 1 to 40")]
    [InlineData("{\"capacity\": {\"pints\": 9}}", ":1: capacity: \"pints\" is not known", "nearest: pint")]
    [InlineData("{\"capacity\": {}}", ":1: capacity: no size is told", "quart")]
    [InlineData("{\"capacity\": \"many\"}", ":1: capacity: a number of jars", "quart")]
    [InlineData("{\"country\": \"uk\",\n\"region\": \"uk\"}", ":2: \"country\" and \"region\" mean the same", "keep country")]
    [InlineData("{\"country\": \"atlantis\"}", ":1: country: \"atlantis\" is not known", "known: us, uk")]
    [InlineData("{\"units\": \"imperial\"}", ":1: units: \"imperial\" is not known", "us, metric")]
    [InlineData("{\"jar\": \"pint\",\n\"jar\": \"quart\"}", ":2: \"jar\" stands twice", "twice")]
    [InlineData("{\"jar\": \"pint\"", ":1: this is not JSON", "write")]
    [InlineData("{}x", ":1: this is not JSON", "write")]
    [InlineData("{\n\"jar\": \"\\ud800\"}", ":2: these words hold an escape", "no letter")]
    [InlineData("[]", ":1: a profile is one JSON object", "braces")]
    [InlineData("", ":1: this is not JSON", "write")]
    [InlineData("{\"canner\": [\"pressure\"", ":1: this is not JSON", "write")]
    public void Parse_AFault_IsRefusedWithItsLineAndWhatIsAllowed(string text, string expected, string allowed)
    {
        Assert.Null(KitchenFile.Parse("k.json", text, _today, out string wrong));
        Assert.StartsWith("k.json" + expected, wrong, StringComparison.Ordinal);
        Assert.Contains(allowed, wrong, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', wrong);
    }

    [Fact]
    public void Countries_OfTheRules_MayAllBeNamed() =>
        Assert.All(RulePack.Default.Tables.Kitchen.Countries, row => Assert.Contains(row.Code, KitchenWords.Countries));

    [Fact]
    public void Canners_OfTheRules_AreThoseOfTheProfile() => Assert.Equal(KitchenTables.Kinds, KitchenWords.Canners);
}
