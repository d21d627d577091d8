using ShelfSafe.Pack;
using ShelfSafe.Tests.Lessons;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>The tables about the kitchen: sources that exist, words that a newcomer reads, and no promise.</summary>
public sealed class KitchenTablesTests
{
    private static readonly KitchenTables _tables = RulePack.Default.Tables.Kitchen;

    [Fact]
    public void Read_EverySource_Exists()
    {
        List<PackFault> faults = [];

        _tables.CheckSources([.. RulePack.Default.Tables.Sources.Select(source => source.Id)], faults);

        Assert.Empty(faults);
    }

    [Fact]
    public void Texts_OfEveryRow_AreAtGradeEightOrBelowAndNeverPromise()
    {
        IEnumerable<string> texts = _tables.Notes.SelectMany(row => (string[])[row.Text, row.Instead]).Concat(_tables.Countries.SelectMany(row => (string[])[row.Text, row.Instead]));

        Assert.All(texts, text =>
        {
            Assert.True(Readability.Grade(text) <= 8, $"{Readability.Grade(text):0.0}: {text}");
            Assert.DoesNotContain(" safe", text, StringComparison.OrdinalIgnoreCase);
        });
    }

    // What a canner may not do is told by a row or by no row; only these may be done.
    [Fact]
    public void Canners_ThatDoAMethod_AreThese() => Assert.Equal(
        ["atmospheric-steam atmospheric-steam", "boiling-water boiling-water", "pressure boiling-water", "pressure pressure"],
        _tables.Canners.Where(row => row.Does == "yes").Select(row => $"{row.Canner} {row.Method}").Order(StringComparer.Ordinal));

    [Fact]
    public void Read_AMisspeltCannerOrJar_IsAFaultWithItsLine()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["canners.csv"] = "canner,method,does,most_minutes,largest_jar,source,url,status\npresure,pressure,yes,,,a,,verified\npressure,pressure,yes,,litre,a,,verified\n";

        RulePack.FromFiles(files, validate: true, out System.Collections.Immutable.ImmutableArray<PackFault> faults);

        Assert.Contains(faults, fault => fault.File == "canners.csv" && fault.Line == 2 && fault.Message.Contains("allowed: boiling-water", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.File == "canners.csv" && fault.Line == 3 && fault.Message.Contains("allowed: half-pint", StringComparison.Ordinal));
    }
}
