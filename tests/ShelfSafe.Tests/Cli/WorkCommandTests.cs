using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Cli;

/// <summary>The commands compare, adapt and plan as a cook types them.</summary>
public sealed class WorkCommandTests : IDisposable
{
    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public void Compare_ChangeThatMatters_AnswersOne()
    {
        string before = _kitchen.Write("a.md", Sample("vegetable-beef-soup.md"));
        string after = _kitchen.Write("b.md", Sample("vegetable-beef-soup.md").Replace("4 cups sliced", "6 cups sliced", StringComparison.Ordinal));

        (int code, string output, string error) = Kitchenette.Run("compare", before, after);

        Assert.Equal((1, ""), (code, error));
        Assert.Contains("raised by 50 %", output, StringComparison.Ordinal);
        Assert.Equal(0, Kitchenette.Run("compare", before, before).Code);
    }

    [Fact]
    public void Compare_UnknownFormula_NamesTheNearest()
    {
        string recipe = _kitchen.Write("a.md", Sample("cucumber-pickle.md"));

        (int code, string output, string error) = Kitchenette.Run("compare", recipe, "--with", "spagetti sauce");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("nearest: \"Spaghetti sauce", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Theory]
    [InlineData("compare", "a.md")]
    [InlineData("compare", "a.md", "b.md", "--with", "chile-con-carne")]
    [InlineData("compare", "missing.md", "missing.md")]
    [InlineData("adapt", "missing.md")]
    [InlineData("adapt", "missing.md", "--to", "no such sauce")]
    [InlineData("plan", "missing.md", "--start", "25:00")]
    [InlineData("plan", "missing.md", "--start", "9:00", "--supper", "18:30")]
    public void Run_WrongUse_AnswersTwoAndPrintsNothing(params string[] arguments)
    {
        (int code, string output, string error) = Kitchenette.Run(arguments);

        Assert.Equal((2, ""), (code, output));
        Assert.NotEmpty(error);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vet", "a.md")]
    [InlineData("adapt", "a.md")]
    [InlineData("plan", "a.md", "--altitude", "410 m", "--gauge", "weighted", "--jar", "pint")]
    [InlineData("why", "altitude", "--recipe", "a.md")]
    [InlineData("vet", "a.md", "--kitchen", "b.md")]
    [InlineData("vet", "a.md", "--aliases", "b.md")]
    public void Run_OutputIsWhatIsRead_IsRefusedAndTheFileStays(params string[] arguments)
    {
        string text = Sample("vegetable-beef-soup.md");
        string recipe = _kitchen.Write("a.md", text);
        string other = _kitchen.Write("b.md", text);
        string read = arguments.Contains("b.md") ? other : recipe;
        string sameByAnotherName = Path.Combine(Path.GetDirectoryName(read)!, ".", Path.GetFileName(read));

        (int code, string output, string error) = Kitchenette.Run([.. arguments.Select(word => word == "a.md" ? recipe : word == "b.md" ? other : word), "--output", sameByAnotherName]);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("itself; name another output file", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
        Assert.Equal((text, text), (File.ReadAllText(recipe), File.ReadAllText(other)));
    }

    [Fact]
    public void Vet_FolderThatHoldsTheOutput_IsRefused()
    {
        string recipe = _kitchen.Write("a.md", Sample("vegetable-beef-soup.md"));

        (int code, _, string error) = Kitchenette.Run("vet", Path.GetDirectoryName(recipe)!, "--output", recipe);

        Assert.Equal(2, code);
        Assert.Contains("is the recipe itself", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_OutputIsWhereALinkLeads_IsRefused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need rights there");
        string recipe = _kitchen.Write("a.md", Sample("vegetable-beef-soup.md"));
        string link = _kitchen.Path("link.md");
        File.CreateSymbolicLink(link, recipe);

        Assert.Equal(2, Kitchenette.Run("vet", link, "--output", recipe).Code);
        Assert.Equal(Sample("vegetable-beef-soup.md"), File.ReadAllText(recipe));
    }

    [Theory]
    [InlineData("vet")]
    [InlineData("adapt")]
    [InlineData("plan", "--altitude", "410 m", "--gauge", "weighted", "--jar", "pint")]
    public void Run_OutputInAMissingFolder_NamesTheFolderAlone(string command, params string[] options)
    {
        string recipe = _kitchen.Write("a.md", Sample("vegetable-beef-soup.md"));
        string folder = _kitchen.Path("none");

        (int code, _, string error) = Kitchenette.Run([command, recipe, .. options, "--output", Path.Combine(folder, "x.txt")]);

        Assert.Equal(2, code);
        Assert.EndsWith($"there is no folder {folder.Replace('\\', '/')}\n", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--output: the name is empty", "vet", "x.md", "--output", "")]
    [InlineData("--output: the name is empty", "adapt", "x.md", "--output", "")]
    [InlineData("--output: the name is empty", "plan", "x.md", "-o", " ")]
    [InlineData("missing", "batch", "take", "2026-10-03-A")]
    [InlineData("missing", "batch", "add")]
    [InlineData("k.json: kitchen profile: no such file", "vet", "x.md", "--kitchen", "k.json")]
    public void Run_WrongUse_IsToldInOneLine(string expected, params string[] arguments)
    {
        (int code, string output, string error) = Kitchenette.Run(arguments);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.DoesNotContain("a fault in this program", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    // Source: USDA AIB 539 (rev. 2015): Guide 4 lists soup for pints and quarts alone, and no dial-gauge figure above 8,000 ft.
    [Theory]
    [InlineData("text", "has no row for this food in a half-gallon jar", "--jar", "half-gallon")]
    [InlineData("text", "has no row for a dial gauge", "--altitude", "9000 ft", "--gauge", "dial")]
    [InlineData("markdown", "no row for this food in a half-gallon jar", "--jar", "half-gallon")]
    [InlineData("html", "no row for this food in a half-gallon jar", "--jar", "half-gallon")]
    [InlineData("jsonl", "no row for this food in a half-gallon jar", "--jar", "half-gallon")]
    [InlineData("sarif", "\"ruleId\":\"beyond-jar\"", "--jar", "half-gallon")]
    public void Vet_NoRowForThisKitchen_SaysSoInEveryFormatAndAnswersOne(string format, string words, params string[] options)
    {
        string soup = _kitchen.Write("soup.md", Sample("vegetable-beef-soup.md"));

        (int code, string output, _) = Kitchenette.Run(["vet", soup, "--format", format, .. options]);

        Assert.Equal(1, code);
        Assert.Contains(words, string.Join(' ', output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void VetQuiet_NoRowForThisKitchen_SaysSo()
    {
        string soup = _kitchen.Write("soup.md", Sample("vegetable-beef-soup.md"));

        Assert.Contains("no published row fits this kitchen", Kitchenette.Run("vet", soup, "--quiet", "--jar", "half-gallon").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("adapt")]
    public void PlanAndAdapt_NoRowForThisKitchen_NameTheJarsOfTheTable(string command)
    {
        string soup = _kitchen.Write("soup.md", Sample("vegetable-beef-soup.md"));

        (int code, string output, string error) = Kitchenette.Run(command, soup, "--altitude", "410 m", "--gauge", "weighted", "--jar", "half-gallon");

        Assert.Equal(1, code);
        Assert.Contains("Take a jar that the table lists: pint, quart.", output + error, StringComparison.Ordinal);
        Assert.DoesNotContain("no published process covers it", output + error, StringComparison.Ordinal);
    }

    [Fact]
    public void Adapt_WrittenToAFileAndVettedAgain_IsCovered()
    {
        string stew = _kitchen.Write("stew.md", Sample("venison-and-chickpea-stew.md"));
        string jar = _kitchen.Path("jar.md");

        Assert.Equal(0, Kitchenette.Run("adapt", stew, "--altitude", "410 m", "--gauge", "weighted", "--output", jar).Code);
        Assert.Equal(0, Kitchenette.Run("vet", jar, "--altitude", "410 m", "--gauge", "weighted").Code);
        Assert.Equal(0, Kitchenette.Run("plan", jar, "--altitude", "410 m", "--gauge", "weighted", "--jar", "pint").Code);
    }

    [Fact]
    public void Adapt_NoProcess_WritesTheFreezerVersionAndAnswersOne()
    {
        string gravy = _kitchen.Write("gravy.md", Sample("mushroom-gravy.md"));

        (int code, string output, _) = Kitchenette.Run("adapt", gravy);

        Assert.Equal(1, code);
        Assert.Contains("There is no jar version of this recipe.", output, StringComparison.Ordinal);
        Assert.Contains("headspace in a pint", output, StringComparison.Ordinal);
        Assert.Contains("Freezer:", output, StringComparison.Ordinal);
        Assert.DoesNotContain("psi", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text", "[ ] Lock the lid")]
    [InlineData("markdown", "- [ ] Lock the lid")]
    [InlineData("html", "<input type=\"checkbox\"> Lock the lid")]
    public void Plan_ToSupper_EndsThen(string format, string words)
    {
        string soup = _kitchen.Write("soup.md", Sample("vegetable-beef-soup.md"));

        (int code, string output, _) = Kitchenette.Run("plan", soup, "--altitude", "410 m", "--gauge", "weighted", "--jar", "pint", "--supper", "18:30", "--format", format);

        Assert.Equal(0, code);
        Assert.Contains(words, output, StringComparison.Ordinal);
        Assert.Contains("18:30", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_NoProcessAsWritten_SendsToAdapt()
    {
        string stew = _kitchen.Write("stew.md", Sample("venison-and-chickpea-stew.md"));

        (int code, string output, string error) = Kitchenette.Run("plan", stew, "--altitude", "410 m", "--gauge", "weighted");

        Assert.Equal((1, ""), (code, output));
        Assert.Contains("use adapt", error, StringComparison.Ordinal);
    }
}
