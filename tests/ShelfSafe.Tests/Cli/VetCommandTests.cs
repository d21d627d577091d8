using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class VetCommandTests : IDisposable
{
    private const string Rub = """
        # Dry rub

        - 4 tbsp salt
        - 2 tbsp ground black pepper

        1. Stir together and keep dry.
        """;

    private const string Gravy = """
        # Gravy

        - 50 g butter
        - 4 tbsp flour
        - 1 litre beef broth

        1. Melt the butter, stir in the flour and pour in the broth.
        """;

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public void Vet_ADryMix_AnswersWithZero()
    {
        (int code, string output, string error) = Kitchenette.Run("vet", _kitchen.Write("rub.md", Rub));

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Contains("Verdict: ", output, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', output);
    }

    [Fact]
    public void Vet_AnyOtherVerdict_AnswersWithOne() =>
        Assert.Equal(1, Kitchenette.Run("vet", _kitchen.Write("gravy.md", Gravy)).Code);

    [Fact]
    public void Vet_ALongFileBesideAShortOne_GivesALineEachInOrder()
    {
        string file = _kitchen.Write("long.md", "# Stew\n\n- 1 kg beef\n\n" + string.Concat(Enumerable.Repeat("Boil it again. ", 40_000)));

        (_, string output, string error) = Kitchenette.Run("vet", file, SampleFolder.Of("dry-rub.md"), file, "--format", "jsonl");

        string[] lines = output.Split('\n');
        Assert.Equal(string.Empty, error);
        Assert.Equal((4, string.Empty, lines[0]), (lines.Length, lines[3], lines[2]));
        Assert.Equal("Stew", JsonNode.Parse(lines[0])!["title"]!.GetValue<string>());
        Assert.NotEqual("Stew", JsonNode.Parse(lines[1])!["title"]!.GetValue<string>());
    }

    [Fact]
    public void Vet_StandardInput_IsNamedByItsDash()
    {
        (int code, string output, _) = Kitchenette.Run(Encoding.UTF8.GetBytes(Rub), "vet", "-", "--format", "jsonl");

        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(0, code);
        Assert.Equal("-", json.RootElement.GetProperty("file").GetString());
    }

    [Fact]
    public void Vet_AFolder_ReadsRecipesAtAnyDepthInOrdinalOrder()
    {
        _kitchen.Write("b.md", Rub);
        _kitchen.Write("a/z.MARKDOWN", Rub);
        _kitchen.Write("B.txt", Rub);
        _kitchen.Write("picture.png", Rub);

        (_, string output, string error) = Kitchenette.Run("vet", _kitchen.Folder, "--format", "jsonl");

        string[] files = [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(static line =>
        {
            using JsonDocument json = JsonDocument.Parse(line);
            return json.RootElement.GetProperty("file").GetString()!;
        })];
        string folder = _kitchen.Folder.Replace('\\', '/');
        Assert.Empty(error);
        Assert.Equal([$"{folder}/B.txt", $"{folder}/a/z.MARKDOWN", $"{folder}/b.md"], files);
    }

    [Fact]
    public void Vet_OneBadFileAmongGood_ReportsTheGoodAndAnswersWithTwo()
    {
        string good = _kitchen.Write("rub.md", Rub);

        (int code, string output, string error) = Kitchenette.Run("vet", _kitchen.Path("none.md"), good, "--quiet");

        Assert.Equal(2, code);
        Assert.Equal($"shelfsafe: {_kitchen.Path("none.md").Replace('\\', '/')}: no such file or folder\n", error);
        Assert.Contains("dry-storage", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_WhatIsNoText_IsOneLineEach()
    {
        string[] bad =
        [
            _kitchen.WriteBytes("binary.md", [0x50, 0x4B, 0, 0, 1]),
            _kitchen.WriteBytes("latin.md", [(byte)'c', 0xE9]),
            _kitchen.WriteBytes("wide.md", [0xFF, 0xFE, (byte)'a', 0]),
            _kitchen.WriteBytes("empty.md", []),
            _kitchen.Write("blank.md", "\uFEFF \r\n\t"),
            _kitchen.WriteBytes("huge.md", [.. Enumerable.Repeat((byte)'a', (16 * 1024 * 1024) + 1)]),
        ];

        (int code, string output, string error) = Kitchenette.Run(["vet", .. bad]);

        string[] lines = error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Equal(bad.Length, lines.Length);
        Assert.All(lines, static line => Assert.StartsWith("shelfsafe: ", line, StringComparison.Ordinal));
        Assert.Contains("is not a text file", lines[0], StringComparison.Ordinal);
        Assert.Contains("is not UTF-8 text from byte 2 on", lines[1], StringComparison.Ordinal);
        Assert.Contains("is UTF-16 text", lines[2], StringComparison.Ordinal);
        Assert.EndsWith("is empty", lines[3], StringComparison.Ordinal);
        Assert.EndsWith("is empty", lines[4], StringComparison.Ordinal);
        Assert.Contains("larger than 16 MB", lines[5], StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_AFolderWithoutRecipes_SaysSo()
    {
        (int code, _, string error) = Kitchenette.Run("vet", _kitchen.Folder);

        Assert.Equal(2, code);
        Assert.Contains("folder holds no recipe", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vet")]
    [InlineData("vet", "-", "--altitude", "410")]
    [InlineData("vet", "-", "--altitude", "90000 ft")]
    [InlineData("vet", "-", "--gauge", "digital")]
    [InlineData("vet", "-", "--format", "pdf")]
    [InlineData("vet", "-", "--jar", "bucket")]
    [InlineData("vet", "-", "--region", "atlantis")]
    [InlineData("vet", "-", "--frobnicate")]
    [InlineData("vet", "-", "--rules", "no-such-folder")]
    [InlineData("vet", "-", "--kitchen", "no-such-file.json")]
    [InlineData("vet", "-", "--aliases", "no-such-file.csv")]
    [InlineData("cook")]
    [InlineData("rules", "check", "no-such-folder")]
    public void Run_WrongUse_AnswersWithTwoAndSaysWhat(params string[] arguments)
    {
        (int code, string output, string error) = Kitchenette.Run(Encoding.UTF8.GetBytes(Rub), arguments);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.StartsWith("shelfsafe: ", error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vet", "-", "--rules")]
    [InlineData("rules", "check")]
    public void Run_RulesWithABrokenTable_NamesItsPlaceAndVetsNothing(params string[] arguments)
    {
        foreach ((string name, string text) in RulesFolder.Files())
        {
            _kitchen.Write($"rules/{name}", name == "unsafe-methods.csv" ? text.Replace(",change,caution,", ",chnage,caution,", StringComparison.Ordinal) : text);
        }

        (int code, string output, string error) = Kitchenette.Run(Encoding.UTF8.GetBytes(Rub), [.. arguments, _kitchen.Path("rules")]);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("unsafe-methods.csv:2:", error, StringComparison.Ordinal);
        Assert.DoesNotContain("fault in this program", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_ToAFile_WritesItWholeWithoutByteOrderMark()
    {
        string target = _kitchen.Write("out/report.txt", "old");

        (int code, string output, _) = Kitchenette.Run("vet", _kitchen.Write("rub.md", Rub), "--output", target);

        Assert.Equal(0, code);
        Assert.Empty(output);
        Assert.Equal((byte)'D', File.ReadAllBytes(target)[0]);
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(target)!));
    }

    [Fact]
    public void Vet_ToAFileWithNothingRead_LeavesTheOldFile()
    {
        string target = _kitchen.Write("out/report.txt", "old");

        (int code, _, string error) = Kitchenette.Run("vet", _kitchen.Path("none.md"), "--output", target);

        Assert.Equal(2, code);
        Assert.Contains("not written", error, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(target));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(target)!));
    }

    [Fact]
    public void Vet_WithAKitchenAndAnOption_TakesTheOptionFirst()
    {
        string profile = _kitchen.Write("kitchen.json", """{"altitude": "410 m", "gauge": "dial"}""");

        (_, string output, _) = Kitchenette.Run("vet", _kitchen.Write("rub.md", Rub), "--format", "jsonl", "--kitchen", profile, "--gauge", "weighted");

        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement kitchen = json.RootElement.GetProperty("kitchen");
        Assert.Equal("weighted", kitchen.GetProperty("gauge").GetString());
        Assert.Equal(1_345, kitchen.GetProperty("altitudeFeet").GetDouble());
    }

    [Fact]
    public void Vet_WithTheCooksOwnWords_TakesThemAndSaysSo()
    {
        string recipe = _kitchen.Write("rub.md", Rub.Replace("ground black pepper", "skarn", StringComparison.Ordinal));
        string words = _kitchen.Write("words.csv", "word,food\nskarn,paprika\n");

        (int code, string output, _) = Kitchenette.Run("vet", recipe, "--aliases", words);

        Assert.Equal(0, code);
        Assert.Contains("Taken on your word", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_WithOwnWordsForNoFood_NamesFileLineAndColumn()
    {
        string words = _kitchen.Write("words.csv", "word,food\nskarn,skarn-root\n");

        (int code, _, string error) = Kitchenette.Run("vet", _kitchen.Write("rub.md", Rub), "--aliases", words);

        Assert.Equal(2, code);
        Assert.Contains("words.csv:2:7: \"skarn-root\" is no food of the rules", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_Asked_AnswersWithZero()
    {
        (int code, string output, _) = Kitchenette.Run("vet", "--help");

        Assert.Equal(0, code);
        Assert.Contains("--altitude", output, StringComparison.Ordinal);
    }
}
