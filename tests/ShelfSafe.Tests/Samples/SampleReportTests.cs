using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Samples;

/// <summary>Every sample recipe has an approved report; SHELFSAFE_APPROVE=1 writes them anew for review.</summary>
public class SampleReportTests
{
    public static TheoryData<string> Files => [.. Directory.GetFiles(Folder(), "*.md").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Vet_Sample_GivesTheApprovedReport(string file)
    {
        VettingReport report = RecipeVetter.Create(RulePack.Default).Vet(File.ReadAllText(Path.Combine(Folder(), file)), Kitchen.Unknown);
        using StringWriter writer = new();
        new TextReport(Words.Read(), new TextStyle(80, false)).Write(writer, "sample-recipes/" + file, report);
        string[] lines = writer.ToString().ReplaceLineEndings("\n").Split('\n');
        string actual = string.Join('\n', lines.Where(line => !line.StartsWith("Rules:", StringComparison.Ordinal)));
        string expected = Path.Combine(Folder(), "expected", Path.ChangeExtension(file, ".txt"));
        if (Environment.GetEnvironmentVariable("SHELFSAFE_APPROVE") == "1")
        {
            File.WriteAllText(expected, actual);
        }

        Assert.Equal(File.ReadAllText(expected).ReplaceLineEndings("\n"), actual);
    }

    private static string Folder()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShelfSafe.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder!.FullName, "sample-recipes");
    }
}
