using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Samples;

/// <summary>Vets every sample recipe and compares text and JSON with the approved reports beside them.</summary>
/// <remarks>
/// With the environment variable <c>SHELFSAFE_APPROVE=1</c> the approved reports are written anew instead; their difference is then
/// read and committed by itself. Version, date and hash of the rule pack are blanked, since they change with every row.
/// The texts end in <c>.text</c>, so that <c>vet sample-recipes</c> does not take them for recipes.
/// </remarks>
public sealed class SampleRecipesTests
{
    private static readonly RecipeVetter _vetter = BuiltIn.Vetter;
    private static readonly Kitchen _hall = new(AltitudeFeet: 410 / 0.3048, Gauge: "weighted");
    private static readonly PackIdentity _anyPack = new("0", "0000-00-00", "0");

    public static TheoryData<string> Recipes => [.. Files().Select(static path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Vet_ASample_GivesTheApprovedReports(string name)
    {
        VettingReport report = Vetted(name);
        using StringWriter text = new(CultureInfo.InvariantCulture);
        new TextReport(Words.Read(), new TextStyle()).Write(text, name, report);
        using StringWriter json = new(CultureInfo.InvariantCulture);
        new JsonLinesReport().Write(json, name, report);

        Approve(Path.ChangeExtension(name, ".text"), text.ToString());
        Approve(Path.ChangeExtension(name, ".jsonl"), json.ToString());
    }

    [Fact]
    public void Vet_AllSamples_CoverEveryOutcome()
    {
        HashSet<Outcome> seen = [];
        foreach (string path in Files())
        {
            VettingReport report = Vetted(Path.GetFileName(path));
            seen.Add(report.Outcome);
            seen.UnionWith(report.Parts.Select(static part => part.Outcome));
        }

        Assert.Equal(Enum.GetValues<Outcome>(), seen.Order());
    }

    [Fact]
    public void Samples_Folder_HoldsSixteenOrMore() => Assert.InRange(Files().Length, 16, 1_000);

    private static VettingReport Vetted(string name) =>
        _vetter.Vet(File.ReadAllText(SampleFolder.Of(name)), _hall) with { Pack = _anyPack };

    private static string[] Files() => [.. SampleFolder.Names.Select(SampleFolder.Of)];

    private static void Approve(string name, string actual)
    {
        string path = Path.Combine(SampleFolder.Path, "expected", name);
        if (Environment.GetEnvironmentVariable("SHELFSAFE_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
        }

        Assert.True(File.Exists(path), $"{name} has no approved report; run with SHELFSAFE_APPROVE=1 and read what it writes");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
