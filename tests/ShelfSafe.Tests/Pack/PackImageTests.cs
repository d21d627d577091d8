using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.PackBuilder;
using ShelfSafe.Reports;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

public class PackImageTests
{
    private static readonly Dictionary<string, string> Files = RulesFolder.Files();

    public static TheoryData<string> Tables => [.. Files.Keys.Where(path => path.EndsWith(".csv", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Tables))]
    public void BuiltIn_EachTable_HasTheRowsOfTheFolder(string path)
    {
        string[] header = Files[path][..Files[path].IndexOf('\n', StringComparison.Ordinal)].Trim().Split(',');

        Assert.Equal(Rows(path, Files[path], header), Rows(path, RulePack.Default.Text(path), header));
    }

    [Fact]
    public void BuiltIn_EachCard_IsThatOfTheFolder()
    {
        foreach (string path in Files.Keys.Where(path => path.EndsWith(".md", StringComparison.Ordinal)))
        {
            Assert.Equal(Files[path], RulePack.Default.Card(path));
        }
    }

    [Fact]
    public void Words_OfTheFolder_StandOnceEach()
    {
        Words words = Words.Parse(Files["words.csv"], out IReadOnlyList<PackFault> faults);

        Assert.Empty(faults);
        Assert.Equal(words.Keys, Words.Read().Keys);
    }

    [Fact]
    public void BuiltIn_Identity_IsThatOfTheFolder()
    {
        RulePack folder = RulePack.Load(RulesFolder.Path, out ImmutableArray<PackFault> faults)!;

        Assert.Empty(faults);
        Assert.Equal((folder.Version, folder.Date, folder.Sha256), (RulePack.Default.Version, RulePack.Default.Date, RulePack.Default.Sha256));
    }

    [Fact]
    public void BuiltIn_WholeImage_IsWhatTheFolderGives()
    {
        RulePack folder = RulePack.Load(RulesFolder.Path, out _)!;

        Assert.True(RulePack.Default.Image!.Bytes.SequenceEqual(BuiltInPack.Write(Files, folder)));
    }

    [Fact]
    public void BuiltIn_CardsWrittenAgain_GiveTheBytesOfTheFolder()
    {
        RulePack folder = RulePack.Load(RulesFolder.Path, out _)!;
        PackImageWriter builtIn = new();
        PackImageWriter read = new();
        CardImage.Write(RulePack.Default.Tables, builtIn);
        CardImage.Write(folder.Tables, read);

        Assert.Equal(read.ToArray(), builtIn.ToArray());
    }

    // Property by property, so that one that the image forgets is missed here and not at a stove.
    [Fact]
    public void BuiltIn_EachReadCard_IsThatOfTheFolder()
    {
        RulePack folder = RulePack.Load(RulesFolder.Path, out _)!;

        Assert.Equal(folder.Tables.Hazards.Select(card => Print(card)), RulePack.Default.Tables.Hazards.Select(card => Print(card)));
        Assert.Equal(folder.Tables.Categories.Select(card => Print(card)), RulePack.Default.Tables.Categories.Select(card => Print(card)));

        static string Print<T>(T card)
        {
            JsonNode node = JsonSerializer.SerializeToNode(card)!;
            if (node["Sections"] is JsonObject sections)
            {
                node["Sections"] = new JsonObject(sections.Select(pair => KeyValuePair.Create(pair.Key, pair.Value?.DeepClone())).OrderBy(pair => pair.Key, StringComparer.Ordinal));
            }

            return node.ToJsonString();
        }
    }

    [Fact]
    public void BuiltIn_EachFormula_IsThatOfTheFolder()
    {
        List<PackFault> faults = [];
        RulePack folder = RulePack.Load(RulesFolder.Path, out _)!;
        IEnumerable<string> expected = FormulaTable.Read(folder, faults).Select(Print);

        Assert.Equal(expected, FormulaTable.Read(RulePack.Default, faults).Select(Print));
        Assert.Empty(faults);

        static string Print(FormulaRow formula) => JsonSerializer.Serialize(formula);
    }

    [Fact]
    public void Of_AnotherLayout_IsRefused() =>
        Assert.Throws<InvalidDataException>(() => PackImage.Of(new byte[PackImageWriter.HeaderLength]));

    [Theory]
    [InlineData("")]
    [InlineData("us")]
    [InlineData("uk")]
    public void Find_EveryName_IsTheSameFromImageAndFolder(string region)
    {
        RulePack folder = RulePack.Load(RulesFolder.Path, out _)!;
        FoodCatalogue fromFolder = FoodCatalogue.Create(folder, [], LineWords(folder), region);
        FoodCatalogue builtIn = FoodCatalogue.Create(RulePack.Default, [], LineWords(RulePack.Default), region);

        foreach (AliasRow alias in folder.Tables.Aliases)
        {
            Assert.Equal(Ids(fromFolder.Find(alias.Alias)), Ids(builtIn.Find(alias.Alias)));
        }
    }

    [Fact]
    public void BuiltIn_EachLittleWord_IsThatOfTheFolder()
    {
        LineWordTable folder = LineWords(RulePack.Load(RulesFolder.Path, out _)!);
        LineWordTable builtIn = LineWords(RulePack.Default);

        foreach (string[] row in Cells("line-words.csv", ["word", "kind", "source"]))
        {
            Assert.True(builtIn.Is(row[1], row[0]), row[0]);
            Assert.Equal(folder.Of(row[1]), builtIn.Of(row[1]));
            Assert.False(builtIn.Is(row[1], row[0] + " zorblax"));
        }

        foreach (string word in Cells("units.csv", ["word", "unit", "kind", "factor", "region", "source"]).Select(row => row[0]))
        {
            Assert.Equal((folder.Unit(word, 0, out int end), end), (builtIn.Unit(word, 0, out int own), own));
        }

        Assert.Contains(("to taste", " to taste"), builtIn.TailsIn("salt to taste"));
        Assert.Equal(folder.TailsIn("oil for frying or to taste"), builtIn.TailsIn("oil for frying or to taste"));
    }

    private static IEnumerable<string[]> Cells(string path, string[] header) =>
        Rows(path, Files[path], header).Select(row => row[(row.IndexOf(' ', StringComparison.Ordinal) + 1)..].Split('\u241F'));

    private static LineWordTable LineWords(RulePack pack) => LineWordTable.Of(pack, []);

    private static string Ids(FoodMatch match) => string.Join('|', match.Candidates.Select(food => food.Id));

    private static List<string> Rows(string path, PackText table, string[] header)
    {
        List<PackFault> faults = [];
        List<string> rows = CsvTable.Read(path, table, header, row => $"{row.Line}: {string.Join('\u241F', header.Select(row.Text))}", faults);
        Assert.Empty(faults);
        return rows;
    }
}
