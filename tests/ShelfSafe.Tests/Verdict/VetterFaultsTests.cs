using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>What is wrong in a table that only a vetter reads is named before anything is vetted.</summary>
public class VetterFaultsTests
{
    [Fact]
    public void Faults_SoundPack_NamesNone() => Assert.Empty(RecipeVetter.Faults(Pack(RulePack.FilesOf(RulesFolder.Path))));

    [Theory]
    [InlineData("unsafe-methods.csv")]
    [InlineData("dish-kinds.csv")]
    [InlineData("step-facts.csv")]
    [InlineData("formulas.csv")]
    [InlineData("formula-slots.csv")]
    [InlineData("measures.csv")]
    [InlineData("jars.csv")]
    [InlineData("packages.csv")]
    [InlineData("unit-factors.csv")]
    [InlineData("jar-acid.csv")]
    public void Faults_BrokenCell_NamesItsTableAndLine(string table)
    {
        Dictionary<string, string> files = RulePack.FilesOf(RulesFolder.Path);
        string[] header = files[table][..files[table].IndexOf('\n', StringComparison.Ordinal)].Split(',');
        files[table] = Broken(files[table], header.Length);

        ImmutableArray<PackFault> faults = RecipeVetter.Faults(Pack(files));

        Assert.Contains(faults, fault => fault.File == table && fault.Line == 3);
    }

    // The third line, which no table lacks, with a word in every cell that no column takes.
    private static string Broken(string table, int cells)
    {
        string[] lines = table.Split('\n');
        lines[2] = string.Join(',', Enumerable.Repeat("??", cells));
        return string.Join('\n', lines);
    }

    private static RulePack Pack(Dictionary<string, string> files) => RulePack.FromFiles(files, validate: false, out _)!;
}
