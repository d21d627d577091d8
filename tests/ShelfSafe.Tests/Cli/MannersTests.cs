using System.CommandLine;
using ShelfSafe.Cli;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class MannersTests
{
    private static readonly Command _root = new App(static () => Stream.Null, Terminal.None).Build();

    public static TheoryData<string> Commands => 
    [
        "shelfsafe", "vet", "table", "rules", "rules-check", "schema", "completion", "batch", "batch-add", "batch-list", "batch-stock", "batch-show",
        "batch-seal", "batch-take", "batch-labels", "batch-export", "batch-import", "batch-check",
    ];

    [Fact]
    public void Version_Asked_NamesProgramPackDateAndHash()
    {
        (int code, string output, string error) = Kitchenette.Run("--version");

        RulePack pack = RulePack.Default;
        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal($"shelfsafe {typeof(App).Assembly.GetName().Version!.ToString(3)}, rule pack {pack.Version} of {pack.Date}, sha256 {pack.Sha256}\n", output);
    }

    [Theory]
    [InlineData("--explain")]
    [InlineData("vet", "--explain")]
    public void Explain_Asked_TellsEveryExitCode(params string[] arguments)
    {
        (int code, string output, _) = Kitchenette.Run(arguments);

        Assert.Equal(0, code);
        Assert.Equal(["0", "1", "2", "130"], output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(static line => line.TrimStart().Split(' ')[0]));
    }

    [Fact]
    public void Explain_TheCodesThatMeanSomethingElseElsewhere_NamesEachCommand()
    {
        string[] codes = Kitchenette.Run("--explain").Output.Split('\n');

        Assert.All((string[])["table", "compare", "adapt", "plan"], command => Assert.All(codes[1..3], code => Assert.Contains($"In {command}: ", code, StringComparison.Ordinal)));
    }

    [Fact]
    public void Help_AsACommand_IsTheHelpOfTheRest()
    {
        Assert.Equal(Kitchenette.Run("--help"), Kitchenette.Run("help"));
        Assert.Equal(Kitchenette.Run("batch", "add", "--help"), Kitchenette.Run("help", "batch", "add"));
    }

    [Theory]
    [InlineData("\"vte\" is not known; known: vet, table, compare, adapt, plan, why, batch, rules, schema, completion; nearest: vet", "vte")]
    [InlineData("\"--frmat\" is no option of vet; nearest: --format", "vet", "--frmat", "x", "y.md")]
    [InlineData("\"--jra\" is no option of table; nearest: --jar", "table", "--jra", "pint", "beans")]
    [InlineData("\"chek\" is not known; known: check; nearest: check", "rules", "chek", "x")]
    [InlineData("\"--vrsion\" is no option of shelfsafe; nearest: --version", "--vrsion")]
    [InlineData("--format: \"htlm\" is not known; known: text, markdown, html, jsonl, sarif; nearest: html", "vet", "-", "--format", "htlm")]
    [InlineData("--jar: \"qart\" is not known; known: half-pint, pint, pint-and-a-half, quart, half-gallon; nearest: quart", "vet", "-", "--jar", "qart")]
    [InlineData("--fail-on: \"cange\" is not known; known: stop, change, caution, note; nearest: change", "vet", "-", "--fail-on", "cange")]
    [InlineData("--input: \"jsonld\" is not known; known: auto, markdown, text, html, json-ld, jsonl; nearest: json-ld", "vet", "-", "--input", "jsonld")]
    [InlineData("\"more\" is more than schema takes", "schema", "more")]
    [InlineData("SHELL: \"bsh\" is not known; known: bash, zsh, fish, powershell; nearest: bash", "completion", "bsh")]
    public void Run_AMistypedWord_NamesTheNearest(string expected, params string[] arguments)
    {
        (int code, string output, string error) = Kitchenette.Run(arguments);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.StartsWith($"shelfsafe: {expected}; for help: shelfsafe ", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Help_OfEachCommand_ShowsItsExamplesAndTheExitCodes(string command)
    {
        string[] path = command == "shelfsafe" ? [] : command.Split('-');

        (int code, string output, _) = Kitchenette.Run([.. path, "--help"]);

        (string Line, string Does)[] examples = [.. TeachingHelp.Examples(Words.Read(), command)];
        Assert.Equal(0, code);
        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.Contains($"  {example.Line}\n      {example.Does}\n", output, StringComparison.Ordinal));
        Assert.EndsWith("Exit codes: shelfsafe --explain\n", output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Examples_OfEachCommand_ParseAndNameFilesThatExist(string command) => Assert.All(TeachingHelp.Examples(Words.Read(), command), static example =>
    {
        string line = example.Line.Replace("source <(", string.Empty, StringComparison.Ordinal).Split([" > ", " < ", " | ", ")"], StringSplitOptions.None)[0];
        ParseResult result = _root.Parse(line);

        Assert.Empty(result.Errors);
        Assert.StartsWith("shelfsafe ", line, StringComparison.Ordinal);
        Assert.All(line.Split(' ').Where(static word => word.StartsWith("sample-recipes", StringComparison.Ordinal)), static word => Assert.True(Path.Exists(Path.Combine(SampleFolder.Root, word)), word));
    });

    [Theory]
    [InlineData("adapt batch compare completion plan rules schema table vet why", "")]
    [InlineData("vet", "v")]
    [InlineData("", "vet", "")]
    [InlineData("", "vet", "sample")]
    [InlineData("--fail-on --format", "vet", "--f")]
    [InlineData("sarif", "vet", "--format", "s")]
    [InlineData("dial weighted", "table", "--gauge", "")]
    [InlineData("pint pint-and-a-half", "vet", "a b.md", "--jar", "p")]
    [InlineData("check", "rules", "")]
    [InlineData("zsh", "completion", "z")]
    [InlineData("--version", "--v")]
    [InlineData("--format=jsonl", "vet", "--format=js")]
    [InlineData("--gauge=dial --gauge=weighted", "table", "--gauge=")]
    [InlineData("dial weighted", "table", "--gauge", "=")] // bash parts words at the sign
    [InlineData("jsonl", "vet", "--format", "=", "js")]
    [InlineData("thickener", "why", "thicke")]
    [InlineData("venting", "why", "vent")]
    [InlineData("chile-con-carne", "adapt", "a.md", "--to", "chile-c")]
    public void Complete_WhatWasTyped_IsAnsweredLineByLine(string expected, params string[] typed)
    {
        (int code, string output, string error) = Kitchenette.Run(["complete", "--", .. typed]);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(expected.Replace(' ', '\n'), output.TrimEnd('\n'));
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public void Completion_EachShell_HasAScript(string shell)
    {
        (int code, string output, _) = Kitchenette.Run("completion", shell);

        Assert.Equal(0, code);
        Assert.Contains("complete ", output, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', output);
    }
}
