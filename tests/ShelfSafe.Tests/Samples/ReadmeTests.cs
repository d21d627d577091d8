using System.Text.RegularExpressions;
using ShelfSafe.Tests.Cli;
using Xunit;

namespace ShelfSafe.Tests.Samples;

/// <summary>Holds what README says the program prints against what it prints.</summary>
public sealed partial class ReadmeTests : IDisposable
{
    private const string Stew = "sample-recipes/venison-and-chickpea-stew.md";
    private const string Soup = "sample-recipes/vegetable-beef-soup.md";

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    // The block is told by how it begins.
    [Theory]
    [InlineData("Venison and chickpea stew (", $"vet {Stew} --altitude '410 m' --gauge weighted")]
    [InlineData("Rule: thickener", $"why thickener --recipe {Stew} --altitude '410 m'")]
    [InlineData("# Venison and chickpea stew", $"adapt {Stew} --altitude '410 m' --gauge weighted")]
    [InlineData("Run sheet", $"plan {Soup} --altitude '410 m' --gauge weighted --jar quart --supper 18:30")]
    public async Task Readme_ABlockOfOutput_IsWhatTheProgramPrints(string start, string command)
    {
        (_, string output, string error) = await Shell.RunAsync(SampleFolder.Root, $"shelfsafe {command}", ("XDG_CONFIG_HOME", _kitchen.Folder));

        Assert.Empty(error);
        AssertPrinted(start, output);
    }

    [Fact]
    public async Task Readme_TheComparison_IsWhatTheProgramPrints()
    {
        string soup = await File.ReadAllTextAsync(SampleFolder.Of("vegetable-beef-soup.md"), TestContext.Current.CancellationToken);
        _kitchen.Write("soup.md", soup);
        _kitchen.Write("soup-changed.md", soup
            .Replace("- 4 cups sliced carrots", "- 6 cups sliced carrots\n- 2 tbsp flour", StringComparison.Ordinal)
            .Replace("dried thyme", "dried oregano", StringComparison.Ordinal));

        (_, string output, _) = await Shell.RunAsync(_kitchen.Folder, "shelfsafe compare soup.md soup-changed.md");

        AssertPrinted("Before: soup.md", output);
    }

    // A line of three points stands for what README leaves out.
    private static void AssertPrinted(string start, string output)
    {
        string readme = File.ReadAllText(Path.Combine(SampleFolder.Root, "README.md"));
        string block = Assert.Single(Blocks().Matches(readme).Select(static match => match.Groups[1].Value), text => text.StartsWith(start, StringComparison.Ordinal));
        int from = 0;
        foreach (string part in LeftOut().Split(block).Where(static part => part.Trim().Length > 0))
        {
            int at = output.IndexOf(part.Trim('\n'), from, StringComparison.Ordinal);
            Assert.True(at >= 0, $"README shows what is not printed:\n{part}");
            from = at + part.Trim('\n').Length;
        }
    }

    [GeneratedRegex("```text\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"^ *\.\.\.\n", RegexOptions.Multiline)]
    private static partial Regex LeftOut();
}
