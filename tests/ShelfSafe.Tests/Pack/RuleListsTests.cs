using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>Short lists that a judgement reads as a set.</summary>
public sealed class RuleListsTests
{
    [Fact]
    public void Of_EachList_HasTheWordsOfTheFolder()
    {
        RuleLists read = new(RulesFolder.Files()["lists.csv"], []);

        foreach (string list in RuleLists.All)
        {
            Assert.NotEmpty(read.Of(list).Words);
            Assert.Equal(read.Of(list).Words, RulePack.Default.Tables.Lists.Of(list).Words);
        }
    }

    // A list that no card names is forgotten; one that a card repeats in words drifts from it.
    [Fact]
    public void CardLists_EachOne_IsNamedByACard()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        string[] cards = [.. files.Where(static file => file.Key.EndsWith(".md", StringComparison.Ordinal)).Select(static file => file.Value)];
        RuleLists lists = RulePack.Default.Tables.Lists;

        Assert.NotEmpty(lists.OfCards);
        Assert.All(lists.OfCards, list => Assert.Contains(cards, card => card.Contains(list, StringComparison.Ordinal)));
        Assert.All(lists.OfCards, list => Assert.DoesNotContain(cards, card => card.Replace("\\|", "|", StringComparison.Ordinal).Contains(string.Join('|', lists.WordsOf(list)), StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("body-traits,dairy,", "body-traits,dairi,", "no food or card has \"dairi\"")]
    [InlineData("bulk-groups,grain,", "bulk-groups,grains,", "no food or card has \"grains\"")]
    [InlineData("mending-rules,dense,", "mending-rules,densely,", "no food or card has \"densely\"")]
    [InlineData("dry-kinds,", "dry-kind,", "the list \"dry-kinds\" is missing or empty")]
    [InlineData("dry-kinds,", "dry-kind,", "the list \"dry-kind\" is not known")]
    public void Check_AWrongList_IsAFault(string right, string wrong, string fault)
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["lists.csv"] = files["lists.csv"].Replace(right, wrong, StringComparison.Ordinal);

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));
        Assert.Contains(faults, one => one.File == "lists.csv" && one.Message.Contains(fault, StringComparison.Ordinal));
    }

    // Dropping a list would hear less than before, so a pack without the table is no pack.
    [Fact]
    public void FromFiles_WithoutTheTable_IsRefused()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files.Remove("lists.csv");

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));
        Assert.Contains(faults, one => one.File == "lists.csv");
    }
}
