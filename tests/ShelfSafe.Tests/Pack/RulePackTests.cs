using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

public class RulePackTests
{
    [Fact]
    public void Default_Validated_HasNoFault()
    {
        RulePack? pack = RulePack.FromFiles(RulesFolder.Files(), validate: true, out ImmutableArray<PackFault> faults);

        Assert.Empty(faults);
        Assert.NotNull(pack);
    }

    [Fact]
    public void Default_Identity_NamesVersionDateAndHash()
    {
        RulePack pack = RulePack.Default;

        Assert.Equal(64, pack.Sha256.Length);
        Assert.Equal("2026-11-28", pack.Date);
        Assert.Equal("0.1.0", pack.Version);
    }

    [Fact]
    public void FromFiles_AliasToAnUnknownFood_NamesFileLineAndColumn()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["food-aliases.csv"] = "alias,food,region,source\nroux,weat-flour,,invented for this test\n";

        RulePack? pack = RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults);

        Assert.Null(pack);
        PackFault fault = Assert.Single(faults);
        Assert.Equal(("food-aliases.csv", 2, 6), (fault.File, fault.Line, fault.Column));
        Assert.Contains("weat-flour", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense: thickener")]
    [InlineData("share above much")]
    [InlineData("")]
    [InlineData("line has: @no-such-list")]
    [InlineData("line has: whole|@no-such-list")]
    [InlineData("batch share of trait @no-such-list above 0.1")]
    public void Parse_OutsideTheGrammar_IsRefused(string check)
    {
        Assert.Null(CheckParser.Parse(check, 1, RulePack.Default.Tables.Lists, out string? wrong));
        Assert.NotNull(wrong);
    }

    [Fact]
    public void Parse_ANamedList_StandsForItsWords()
    {
        RuleLists lists = new("list,word,source\n@oily,fat,invented for this test\n@oily,oil,invented for this test\n", []);

        Check? named = CheckParser.Parse("trait: nut|@oily|egg and batch share of trait @oily above 0.1", 1, lists, out _);

        Assert.Equal(["nut", "fat", "oil", "egg"], named!.Terms[0].Values);
        Assert.Equal(["fat", "oil"], named.Terms[1].Values);
        Assert.Null(CheckParser.Parse("trait: @oil", 1, lists, out string? wrong));
        Assert.Equal("no list \"@oil\" stands in lists.csv", wrong);
    }

    [Fact]
    public void Parse_SeveralTerms_KeepsEach()
    {
        Check? check = CheckParser.Parse("trait: fat|oil and not share above 0.02 and dish: soup", 7, RulePack.Default.Tables.Lists, out _);

        Assert.NotNull(check);
        Assert.Equal([TermKind.Trait, TermKind.ShareAbove, TermKind.Dish], check.Terms.Select(term => term.Kind));
        Assert.True(check.Terms[1].Negated);
        Assert.True(check.HasItemTerm);
    }

    [Fact]
    public void Parse_Bands_ReadAsPrinted()
    {
        ImmutableArray<AltitudeBand>? bands = AltitudeBand.Parse("0-1000:10;1001+:15");

        Assert.Equal([new AltitudeBand(0, 1000, 10), new AltitudeBand(1001, double.PositiveInfinity, 15)], bands!.Value);
        Assert.Null(AltitudeBand.Parse("0-:10"));
    }
}
