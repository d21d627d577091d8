using System.Text.Json.Nodes;
using ShelfSafe.Cli;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>The profile that is found by itself: where it is looked for, and what goes before it.</summary>
public sealed class SurroundingsTests : IDisposable
{
    private static readonly DateOnly _today = new(2026, 11, 27);

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Theory]
    [InlineData("/c", "/home/a", "/c/shelfsafe/kitchen.json")]
    [InlineData("", "/home/a", "/home/a/.config/shelfsafe/kitchen.json")]
    [InlineData("relative", "/home/a", "/home/a/.config/shelfsafe/kitchen.json")]
    [InlineData(null, null, null)]
    public void Of_TheEnvironment_NamesThePlace(string? config, string? home, string? expected)
    {
        Surroundings around = Surroundings.Of(name => name == "XDG_CONFIG_HOME" ? config : name == "HOME" ? home : "elsewhere", windows: false, static () => _today);

        Assert.Equal(expected, around.KitchenFile?.Replace('\\', '/'));
    }

    [Fact]
    public void Of_Windows_NamesTheRoamingFolder() => Assert.Equal(
        "C:/data/shelfsafe/kitchen.json",
        Surroundings.Of(static name => name == "APPDATA" ? "C:/data" : null, windows: true, static () => _today).KitchenFile!.Replace('\\', '/'));

    [Fact]
    public void Vet_AProfileInItsPlace_IsUsedAndNamed()
    {
        string file = _kitchen.Write("shelfsafe/kitchen.json", """{"altitude": "410 m", "gauge": "weighted", "canner": "pressure", "jar": "pint", "capacity": {"pint": 16}}""");

        JsonNode kitchen = Vet(file, "--format", "jsonl")["kitchen"]!;

        Assert.Equal(("weighted", "pint", "pressure"), (kitchen["gauge"]!.GetValue<string>(), kitchen["jar"]!.GetValue<string>(), kitchen["canners"]![0]!.GetValue<string>()));
        Assert.Equal(16, kitchen["capacity"]!["pint"]!.GetValue<int>());
        Assert.Equal(RecipePaths.Shown(file), kitchen["file"]!.GetValue<string>());
    }

    [Fact]
    public void Vet_OptionsAndANamedProfile_GoBeforeIt()
    {
        string found = _kitchen.Write("shelfsafe/kitchen.json", """{"altitude": "410 m", "gauge": "weighted", "jar": "pint"}""");
        string named = _kitchen.Write("other.json", """{"altitude": "100 m", "gauge": "dial"}""");

        JsonNode typed = Vet(found, "--format", "jsonl", "--altitude", "1000 ft", "--gauge", "dial", "--jar", "quart")["kitchen"]!;
        JsonNode other = Vet(found, "--format", "jsonl", "--kitchen", named)["kitchen"]!;
        JsonNode none = Vet(found, "--format", "jsonl", "--kitchen", "none")["kitchen"]!;

        Assert.Equal((1_000, "dial", "quart"), (typed["altitudeFeet"]!.GetValue<double>(), typed["gauge"]!.GetValue<string>(), typed["jar"]!.GetValue<string>()));
        Assert.Equal("dial", other["gauge"]!.GetValue<string>());
        Assert.Null(other["jar"]);
        Assert.Null(none["altitudeFeet"]);
        Assert.Null(none["file"]);
    }

    [Fact]
    public void Vet_ABrokenProfileInItsPlace_IsRefusedInOneLine()
    {
        string file = _kitchen.Write("shelfsafe/kitchen.json", "{\n\"gauge\": \"digital\"}");

        (int code, string output, string error) = Run(file, "vet", SampleFolder.Of("venison-and-chickpea-stew.md"));

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.StartsWith($"shelfsafe: {file}:2: gauge: \"digital\" is not known; known: dial, weighted", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_TwiceOnOneDay_GivesTheSameBytes()
    {
        string file = _kitchen.Write("shelfsafe/kitchen.json", """{"altitude": "410 m", "gauge": "dial", "gaugeTested": "2025-11-26", "canner": "pressure"}""");
        string[] command = ["vet", SampleFolder.Of("vegetable-beef-soup.md")];

        (_, string first, _) = Run(file, command);

        Assert.Contains("2025-11-26", first, StringComparison.Ordinal);
        Assert.Equal(first, Run(file, command).Output);
    }

    [Fact]
    public void Table_AProfileInItsPlace_NarrowsTheRows()
    {
        string file = _kitchen.Write("shelfsafe/kitchen.json", """{"altitude": "410 m", "gauge": "weighted", "jar": "pint"}""");

        (int code, string output, _) = Run(file, "table", "green", "beans");

        Assert.Equal(0, code);
        Assert.Contains("15 psi", output, StringComparison.Ordinal);
        Assert.DoesNotContain("dial gauge", output, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Error) Run(string? profile, params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        int code = new App(static () => Stream.Null, Terminal.None, new Surroundings(profile, static () => _today)).Run(arguments, output, error);
        return (code, output.ToString(), error.ToString());
    }

    private static JsonNode Vet(string profile, params string[] options) =>
        JsonNode.Parse(Run(profile, ["vet", SampleFolder.Of("venison-and-chickpea-stew.md"), .. options]).Output)!;
}
