using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>What a category card says is followed, and nothing of it stands in the program.</summary>
public sealed class CategoryCardTests
{
    [Theory]
    [InlineData("| smooth | yes |", true)]
    [InlineData("| smooth | no |", false)]
    [InlineData("", false)]
    public void Category_SmoothField_IsRead(string row, bool expected)
    {
        List<PackFault> faults = [];
        string text = $"# syrup\n\n| field | value |\n| --- | --- |\n| name | Syrup |\n| dish | syrup |\n| method | boiling-water |\n| rank | 1 |\n{row}\n";

        Assert.Equal(expected, CardReader.Category("categories/syrup.md", text, RulePack.Default.Tables.Lists, faults)?.IsSmooth);
        Assert.Empty(faults);
    }

    [Fact]
    public void Vet_ASoup_IsComparedWithTheShareOfItsCard()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["categories/soup.md"] = files["categories/soup.md"].Replace("solids share above 0.5 and", "solids share above 0.4 and", StringComparison.Ordinal);
        RulePack pack = RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults)!;
        string soup = File.ReadAllText(Path.Combine(SampleFolder.Root, "sample-recipes", "vegetable-beef-soup.md"));

        Assert.Empty(faults);
        Assert.Equal(0.4, Solids(RecipeVetter.Create(pack).Vet(soup, Kitchen.Unknown)));
        Assert.Equal(0.5, Solids(BuiltIn.Vetter.Vet(soup, Kitchen.Unknown)));
    }

    // A product that no row of the process table bears would silently give the category no time.
    [Fact]
    public void Categories_EveryProduct_StandsInTheProcessTable()
    {
        PackTables tables = RulePack.Default.Tables;
        HashSet<string> known = [.. tables.ProcessTable.All.Select(static row => row.Product)];

        Assert.DoesNotContain(tables.CategoryShelf.All.SelectMany(static card => card.Products), product => !known.Contains(product));
    }

    private static double Solids(VettingReport report) => report.Category!.Differences.Single(row => row.What == "solids share").Tested.High;
}
