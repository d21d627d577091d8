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
