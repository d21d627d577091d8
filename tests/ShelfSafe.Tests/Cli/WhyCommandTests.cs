using System.Text;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public class WhyCommandTests
{
    private const string Stew = "# Hall stew\n\n- 1 kg beef, cubed\n- 500 g carrots\n- 1 l water\n- 40 g flour\n\n1. Boil for 5 minutes.\n2. Stir in the flour.\n";

    [Fact]
    public void Why_WithoutTopic_ListsTheLessons()
    {
        (int code, string output, string error) = Kitchenette.Run("why");

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Contains("venting", output, StringComparison.Ordinal);
        Assert.Contains("thickener", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vennting", "venting")]
    [InlineData("thickner", "thickener")]
    [InlineData("tomatto", "tomato")]
    [InlineData("x\u001b[2J\ny", "nearest")]
    [InlineData("\"", "nearest")]
    public void Why_AnUnknownTopic_IsOneLineWithTheNearestAndExitTwo(string asked, string nearest)
    {
        (int code, string output, string error) = Kitchenette.Run("why", asked);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(nearest, error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', error);
    }

    [Fact]
    public void Why_AVeryLongTopic_IsCutInTheLine()
    {
        (int code, _, string error) = Kitchenette.Run("why", new string('x', 100_000));

        Assert.Equal(2, code);
        Assert.InRange(error.Length, 10, 400);
    }

    [Fact]
    public void Why_SeveralWords_AreOneTopic() => Assert.StartsWith("Raw pack and hot pack", Kitchenette.Run("why", "raw", "pack").Output, StringComparison.Ordinal);

    [Fact]
    public void Why_WithARecipe_DrawsItAgainstTheThinExample()
    {
        using Kitchenette kitchen = new();
        (int code, string output, _) = Kitchenette.Run("why", "thickener", "--recipe", kitchen.Write("stew.md", Stew));

        Assert.Equal(0, code);
        Assert.Contains("Drawn for: Hall stew", output, StringComparison.Ordinal);
        Assert.Contains("degrees from the thin example", output, StringComparison.Ordinal);
        Assert.DoesNotContain("lethality", output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Why_LineEndsAndStandardInput_MakeNoDifference()
    {
        using Kitchenette kitchen = new();
        string unix = Kitchenette.Run("why", "thickener", "--recipe", kitchen.Write("stew.md", Stew)).Output;
        string dos = Kitchenette.Run("why", "thickener", "--recipe", kitchen.Write("dos.md", Stew.Replace("\n", "\r\n", StringComparison.Ordinal))).Output;
        string piped = Kitchenette.Run(Encoding.UTF8.GetBytes(Stew), "why", "thickener", "--recipe", "-").Output;

        Assert.Equal(unix, dos);
        Assert.Equal(unix, piped);
    }

    [Fact]
    public void Why_ARecipeWithoutAmounts_GivesTheLessonAndSaysWhyThereIsNoPicture()
    {
        using Kitchenette kitchen = new();
        (int code, string output, _) = Kitchenette.Run("why", "thickener", "--recipe", kitchen.Write("stew.md", "# Stew\n\n- beef\n- flour\n\n1. Boil.\n"));

        Assert.Equal(0, code);
        Assert.Contains("No picture: \"beef\" has no amount", output, StringComparison.Ordinal);
        Assert.Contains("Half a spoon", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none.md", "no such file")]
    [InlineData("page.html", "Markdown or plain text only")]
    public void Why_ARecipeThatCannotBeRead_IsOneLineAndExitTwo(string name, string reason)
    {
        using Kitchenette kitchen = new();
        (int code, string output, string error) = Kitchenette.Run("why", "thickener", "--recipe", kitchen.Path(name));

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(reason, Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void Why_ARecipeWithoutATopic_IsNotDroppedInSilence()
    {
        using Kitchenette kitchen = new();

        Assert.Equal(2, Kitchenette.Run("why", "--recipe", kitchen.Write("stew.md", Stew)).Code);
    }

    [Theory]
    [InlineData("--format", "pdf", "known: text, markdown, html")]
    [InlineData("--altitude", "20 km", "altitude")]
    [InlineData("--jar", "bucket", "known:")]
    public void Why_NonsenseInAnOption_IsRefusedWithWhatIsValid(string option, string value, string told)
    {
        (int code, _, string error) = Kitchenette.Run("why", "altitude", option, value);

        Assert.Equal(2, code);
        Assert.Contains(told, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_OutputFile_HoldsTheWholePageOrIsNotMade()
    {
        using Kitchenette kitchen = new();
        string path = kitchen.Path("lesson.html");

        Assert.Equal(0, Kitchenette.Run("why", "thickener", "--format", "html", "--output", path).Code);
        Assert.EndsWith("</html>\n", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(2, Kitchenette.Run("why", "nothing-of-that", "--output", kitchen.Path("none.txt")).Code);
        Assert.False(File.Exists(kitchen.Path("none.txt")));
        Assert.Equal(2, Kitchenette.Run("why", "venting", "--output", kitchen.Path("no/such/folder.txt")).Code);
    }

    [Fact]
    public void Why_OwnAltitude_IsToldUnderThePicture() => Assert.Contains("At 1350 ft water boils at about", Kitchenette.Run("why", "altitude", "--altitude", "1350 ft").Output, StringComparison.Ordinal);
}
