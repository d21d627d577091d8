using System.Globalization;
using System.Text.Json.Nodes;
using ShelfSafe.Cli;
using ShelfSafe.Reports;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class FolderTests : IDisposable
{
    private const string Rub = "# Dry rub\n\n- 4 tbsp salt\n\n1. Stir and keep dry.\n";
    private const string Gravy = "# Gravy\n\n- 50 g butter\n- 4 tbsp flour\n- 1 litre beef broth\n\n1. Stir in the flour.\n";

    private static readonly Terminal _errorSeen = Terminal.None with { ErrorIsTerminal = true };

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Theory]
    [InlineData("--include", "*.md", "a.md soups/b.md soups/deep/c.md")]
    [InlineData("--include", "soups/**", "soups/b.md soups/deep/c.md soups/note.text")]
    [InlineData("--include", "*.text", "soups/note.text")]
    [InlineData("--exclude", "soups/**", "a.md d.txt")]
    [InlineData("--exclude", "*.md", "d.txt")]
    public void Vet_AFolderWithPatterns_TakesWhatTheySay(string option, string glob, string expected)
    {
        foreach (string name in new[] { "a.md", "soups/b.md", "soups/deep/c.md", "soups/note.text", "d.txt" })
        {
            _kitchen.Write(name, Rub);
        }

        (_, string output, string error) = Kitchenette.Run("vet", _kitchen.Folder, "--format", "jsonl", option, glob);

        Assert.Empty(error);
        Assert.Equal(expected.Split(' '), Files(output).Select(file => file[(_kitchen.Folder.Length + 1)..]));
    }

    [Fact]
    public void Vet_PatternsThatLeaveNothing_SaysWhatWasLookedFor()
    {
        _kitchen.Write("a.md", Rub);

        (int code, _, string error) = Kitchenette.Run("vet", _kitchen.Folder, "--include", "*.adoc");

        Assert.Equal((2, $"shelfsafe: {_kitchen.Folder}: folder holds no recipe; looked for *.adoc\n"), (code, error));
    }

    [Fact]
    public void Vet_ManyFilesOfUnlikeLength_KeepTheirOrder()
    {
        for (int number = 0; number < 120; number++)
        {
            _kitchen.Write($"{number:D3}.md", Rub + string.Concat(Enumerable.Repeat("2. Stir again and wait.\n", number % 10 == 0 ? 400 : 1)));
        }

        (_, string output, _) = Kitchenette.Run("vet", _kitchen.Folder, "--format", "jsonl");

        Assert.Equal(Enumerable.Range(0, 120).Select(static number => number.ToString("D3", CultureInfo.InvariantCulture)), Files(output).Select(static file => Path.GetFileNameWithoutExtension(file)));
    }

    [Fact]
    public void Vet_NamesWithSpacesLettersAndMarks_AreTakenAsTheyAre()
    {
        string[] names = ["a b.md", "größe 鍋 👩‍🍳.md", "it's \"so\" #1 %20.md"];
        foreach (string name in names)
        {
            _kitchen.Write(name, Rub);
        }

        (int code, string output, string error) = Kitchenette.Run("vet", _kitchen.Folder, "--format", "jsonl");

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(names.Order(StringComparer.Ordinal), Files(output).Select(static file => Path.GetFileName(file)));
    }

    [Fact]
    public void Vet_WithSummary_CountsOutcomesAndRulesOnStandardError()
    {
        string[] files = [_kitchen.Write("a.md", Rub), _kitchen.Write("b.md", Rub), _kitchen.Write("c.md", Gravy)];

        (int code, string output, string error) = Kitchenette.Run(["vet", .. files, _kitchen.Path("none.md"), "--quiet", "--summary"]);

        string[] lines = error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, code);
        Assert.Equal(3, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal("3 recipes vetted, 1 not read", lines[1]);
        Assert.Equal("  outcome dry-storage: 2", lines[2]);
        Assert.Contains("  rule thickener: 1", lines);
    }

    [Theory]
    [InlineData("stop", Rub, 0)]
    [InlineData("note", Gravy, 1)]
    [InlineData("change", Gravy, 1)]
    [InlineData("caution", Gravy, 1)]
    [InlineData("change", Rub, 0)]
    public void Vet_WithFailOn_AnswersByTheWorstLevel(string level, string recipe, int expected) =>
        Assert.Equal(expected, Kitchenette.Run("vet", _kitchen.Write("a.md", recipe), "--fail-on", level, "--quiet").Code);

    [Fact]
    public void Vet_WithFailOnAndAnUnreadFile_AnswersWithTwo() =>
        Assert.Equal(2, Kitchenette.Run("vet", _kitchen.Write("a.md", Rub), _kitchen.Path("none.md"), "--fail-on", "stop", "--quiet").Code);

    [Fact]
    public void Vet_OnATerminal_ShowsABarAndTakesItAway()
    {
        string[] files = [.. Enumerable.Range(0, 30).Select(number => _kitchen.Write($"{number}.md", Gravy))];

        string error = Kitchenette.RunOn(_errorSeen, CancellationToken.None, ["vet", .. files, "--format", "jsonl"]).Error;

        Assert.StartsWith("\r[", error, StringComparison.Ordinal);
        Assert.Contains(" of 30\r\u001b[K30 recipes vetted, 0 not read\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_NotOnATerminal_WritesNothingOnStandardError() => Assert.Empty(Kitchenette.Run("vet", _kitchen.Write("a.md", Rub), _kitchen.Write("b.md", Rub)).Error);

    [Theory]
    [InlineData(0, 4, "[........................] 0 of 4")]
    [InlineData(1, 4, "[######..................] 1 of 4")]
    [InlineData(4, 4, "[########################] 4 of 4")]
    [InlineData(7, null, "7 recipes")]
    public void Bar_AnyCount_IsDrawn(int done, int? total, string expected) => Assert.Equal(expected, Progress.Bar(Words.Read(), done, total));

    [Theory]
    [InlineData("no-such-folder/out.txt", "output cannot be written")]
    [InlineData("", "output cannot be written")]
    public void Vet_ToWhatCannotBeWritten_IsOneLine(string target, string expected)
    {
        (int code, string output, string error) = Kitchenette.Run("vet", _kitchen.Write("a.md", Rub), "--output", target.Length == 0 ? _kitchen.Folder : _kitchen.Path(target));

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(expected, Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the pattern is empty; write one such as \"*.md\"")]
    [InlineData("?.md", "\"?.md\": a question mark is no sign here; * stands for any letters of a name")]
    [InlineData("soups/../*.md", "\"soups/../*.md\": a pattern begins in the folder and cannot leave it by \"..\"")]
    public void Vet_APatternThatCannotFit_IsOneLine(string glob, string expected)
    {
        _kitchen.Write("a.md", Rub);

        Assert.All((string[])["--include", "--exclude"], option => Assert.Equal(
            (2, string.Empty, $"shelfsafe: {option}: {expected}; for help: shelfsafe vet --help\n"),
            Kitchenette.Run("vet", _kitchen.Folder, option, glob)));
    }

    [Fact]
    public void Vet_ToALinkOrAFileOfFewReaders_LeavesBothAsTheyAre()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("links and modes of Unix");
            return;
        }

        string target = _kitchen.Write("kept/out.txt", "old");
        File.SetUnixFileMode(target, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(_kitchen.Path("link.txt"), target);

        (int code, _, string error) = Kitchenette.Run("vet", _kitchen.Write("a.md", Rub), "--output", _kitchen.Path("link.txt"));

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(target, new FileInfo(_kitchen.Path("link.txt")).LinkTarget);
        Assert.Contains("Verdict", File.ReadAllText(target), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(target));
    }

    [Fact]
    public void Vet_StoppedWhileWritingAFile_KeepsTheOldOne()
    {
        string target = _kitchen.Write("out.txt", "old");

        (int code, _, string error) = Kitchenette.RunOn(Terminal.None, new(canceled: true), "vet", _kitchen.Write("a.md", Rub), "--output", target);

        Assert.Equal(130, code);
        Assert.Contains("not written, since the run was stopped", error, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(target));
        Assert.Equal(2, Directory.GetFiles(_kitchen.Folder).Length);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void Vet_Colour_OnlyWhereItIsWelcome(bool colour, bool expected)
    {
        string output = Kitchenette.RunOn(new(IsTerminal: true, Width: 80, colour), CancellationToken.None, "vet", _kitchen.Write("a.md", Gravy)).Output;

        Assert.Equal(expected, output.Contains("\u001b[", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Files(string output) => output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(static line => JsonNode.Parse(line)!["file"]!.GetValue<string>());
}
