using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

public class ChemistryTablesTests
{
    private static readonly string[] Known = ["verified", "memory", "none"];

    [Fact]
    public void Read_BuiltInPack_HasNoFaultAndASourceOnEveryRow()
    {
        List<PackFault> faults = [];
        ChemistryTables tables = ChemistryTables.Read(RulePack.Default.Text, faults);

        Assert.Empty(faults);
        Assert.Equal(["acetic", "citric", "lactic", "malic", "tartaric"], tables.Acids.Select(row => row.Id));
        Assert.Equal([new(3.13, 3.13), new(4.76, 4.76), new Interval(5.40, 6.40)], tables.Acids[1].PKa);
        Assert.False(tables.Buffers.Single(row => row.Id == "meat").MolesPerKilogramPh.IsBounded);
        Assert.All(tables.Acids, row => Assert.True(row.Source.Length > 0 && Known.Contains(row.Status)));
        Assert.All(tables.Buffers, row => Assert.True(row.Source.Length > 0 && Known.Contains(row.Status)));
        Assert.All(tables.Solutes, row => Assert.True(row.Source.Length > 0 && Known.Contains(row.Status)));
    }

    [Theory]
    [InlineData("acids.csv", "id,name,pka,grams_per_mole,source,url,status,notes", "x,x,4.x,60,s,,memory,", 5)]
    [InlineData("acids.csv", "id,name,pka,grams_per_mole,source,url,status,notes", "x,x,5;4,60,s,,memory,", 5)]
    [InlineData("acids.csv", "id,name,pka,grams_per_mole,source,url,status,notes", "x,x,4,0,s,,memory,", 7)]
    [InlineData("buffers.csv", "id,name,low_mol_per_kg_ph,high_mol_per_kg_ph,source,url,status,notes", "x,x,2,1,s,,memory,", 5)]
    [InlineData("solutes.csv", "id,name,norrish_k,grams_per_mole,source,url,status,notes", "x,x,,60,s,,memory,", 5)]
    public void FromFiles_WrongRow_NamesFileLineAndColumn(string file, string header, string row, int column)
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files[file] = $"{header}\n{row}\n";

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));

        PackFault fault = Assert.Single(faults);
        Assert.Equal((file, 2, column), (fault.File, fault.Line, fault.Column));
    }

    [Fact]
    public void FromFiles_SameIdTwice_IsAFault()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["solutes.csv"] += "sucrose,sugar,6.47,342.3,s,,memory,\n";

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));

        Assert.Contains("sucrose", Assert.Single(faults).Message, StringComparison.Ordinal);
    }
}
