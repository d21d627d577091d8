using System.Globalization;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class BatchCommandTests : IDisposable
{
    private const string Broth = """
        # Beef broth of the hall

        - 5 lb meaty beef bones
        - 5 quarts water

        1. Crack the bones, cover with the water and simmer for 3 hours.
        2. Strain through cheesecloth and throw the bones away. Chill overnight and skim off all fat.
        3. Reheat to a boil.
        """;

    private const string Gravy = """
        # Gravy <b>&</b> "more"

        - 50 g butter
        - 4 tbsp flour
        - 1 litre beef broth

        1. Melt the butter, stir in the flour and pour in the broth.
        """;

    private readonly Kitchenette _kitchen = new();

    private string LogFile => _kitchen.Path("batches.db");

    public void Dispose() => _kitchen.Dispose();

    // Source: USDA AIB 539 (rev. 2015) Guide 5, meat stock: pints 20 minutes, weighted gauge 15 pounds above 1,000 ft.
    [Theory]
    [InlineData("20", "15", "pint", "hot", "410 m", true)]
    [InlineData("25", "15", "pint", "hot", "410 m", true)]
    [InlineData("19", "15", "pint", "hot", "410 m", false)]
    [InlineData("20", "10", "pint", "hot", "410 m", false)]
    [InlineData("20", "10", "pint", "hot", "200 m", true)]
    [InlineData("20", "15", "quart", "hot", "410 m", false)]
    [InlineData("20", "15", "pint", "raw", "410 m", false)]
    [InlineData("20", "15", "half-pint", "hot", "410 m", true)] // takes the next larger jar's time
    public void Add_AProcess_CountsOnlyWhereItMeetsThePublishedRow(string minutes, string psi, string jar, string pack, string altitude, bool published)
    {
        (int code, string output, string error) = Batch("add", Recipe(Broth), "--jars", "4", "--sealed", "4", "--date", "2024-10-03", "--method", "pressure", "--minutes", minutes, "--psi", psi, "--gauge", "weighted", "--jar", jar, "--pack", pack, "--altitude", altitude);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(published, output.Contains("best until 2025-10-03", StringComparison.Ordinal));
        Assert.Equal(!published, output.Contains("freeze or throw away", StringComparison.Ordinal));
        Assert.Equal(published, Batch("labels", "2024-10-03-A").Output.Contains("Best quality until 2025-10-03", StringComparison.Ordinal));
        Assert.Equal(!published, Batch("stock").Output.Contains("freeze or throw away", StringComparison.Ordinal));
    }

    // Source: USDA AIB 539 (rev. 2015) Guide 1 p. 1-26 to 1-28; freezing makes no formed poison harmless, so age decides nothing and cold does.
    [Theory]
    [InlineData("list")]
    [InlineData("stock")]
    public void List_ABatchWithoutAPublishedProcess_SaysThatFreezingDestroysNoPoison(string command)
    {
        Batch("add", Recipe(Gravy), "--jars", "2", "--date", "2024-10-03");

        string output = Batch(command).Output.ReplaceLineEndings(" ");

        Assert.Contains("within 2 hours", output, StringComparison.Ordinal);
        Assert.Contains("Freezing destroys no poison", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Add_WithoutAnAltitude_DoesNotCount()
    {
        (_, string output, _) = Batch("add", Recipe(Broth), "--jars", "4", "--method", "pressure", "--minutes", "90", "--psi", "15", "--gauge", "weighted", "--jar", "pint", "--pack", "hot");

        Assert.Contains("altitude of the kitchen is not known", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_SealsNotChecked_PrintNoShelfDate()
    {
        AddBroth("2024-10-03");

        string labels = Batch("labels", "2024-10-03-A").Output;

        Assert.Contains("Seal not checked", labels, StringComparison.Ordinal);
        Assert.DoesNotContain("Best quality", labels, StringComparison.Ordinal);
        Assert.Equal(4, labels.Split("<section").Length - 1);
    }

    [Theory]
    [InlineData("html")]
    [InlineData("svg")]
    public void Labels_AnyBatch_EscapeTheTextAndDoNotNameTheProduct(string format)
    {
        Batch("add", Recipe(Gravy), "--jars", "2", "--date", "2024-10-03", "--jar", "pint", "--method", "pressure", "--minutes", "90");

        string labels = Batch("labels", "2024-10-03-a", "--format", format).Output;

        Assert.DoesNotContain("<b>", labels, StringComparison.Ordinal);
        Assert.Contains("&amp;", labels, StringComparison.Ordinal);
        Assert.Contains("FREEZE OR THROW AWAY", labels, StringComparison.Ordinal);
        Assert.DoesNotContain("90 min", labels, StringComparison.Ordinal);
        Assert.DoesNotContain("shelfsafe", labels, StringComparison.OrdinalIgnoreCase);
        if (format == "svg")
        {
            Assert.Equal("svg", System.Xml.Linq.XDocument.Parse(labels).Root!.Name.LocalName);
        }
    }

    // Source: NCHFP, For Safety's Sake: low-acid home-canned food is boiled 10 minutes, and longer higher up.
    [Fact]
    public void Labels_LowAcidFood_AskToBoilBeforeTasting()
    {
        AddBroth("2024-10-03");

        Assert.Contains("Boil before tasting: 10 minutes", Batch("labels", "2024-10-03-A").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("jsonl")]
    [InlineData("csv")]
    public void Export_IntoAnotherLog_GivesTheSameExport(string format)
    {
        AddBroth("2024-10-03");
        Batch("add", Recipe(Gravy), "--jars", "2", "--notes", "two lines,\n\"quoted\"");
        Batch("seal", "2024-10-03-A", "--failed", "1");
        Batch("take", "2024-10-03-A", "2", "--date", "2024-12-01");
        string file = _kitchen.Path("out." + format);
        Assert.Equal(0, Batch("export", "--format", format, "--output", file).Code);
        string other = _kitchen.Path("other.db");

        (int code, string output, string error) = Kitchenette.Run("batch", "import", file, "--log", other);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.DoesNotContain("any more", output, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(file), Kitchenette.Run("batch", "export", "--format", format, "--log", other).Output);
    }

    [Fact]
    public void Import_AFileThatGrantsItselfAShelfDate_IsNotBelieved()
    {
        Batch("add", Recipe(Gravy), "--jars", "2", "--sealed", "2", "--date", "2024-10-03", "--altitude", "410 m", "--jar", "pint", "--method", "pressure", "--minutes", "90", "--psi", "15", "--gauge", "weighted", "--pack", "hot");
        string forged = Batch("export").Output.Replace("\"published\":false", "\"published\":true", StringComparison.Ordinal).Replace("\"outcome\":\"freeze-or-chill\"", "\"outcome\":\"pressure\"", StringComparison.Ordinal);
        string other = _kitchen.Path("other.db");

        (int code, string output, _) = Kitchenette.Run("batch", "import", _kitchen.Write("forged.jsonl", forged), "--log", other);

        Assert.Equal(0, code);
        Assert.Contains("2024-10-03-A", output, StringComparison.Ordinal);
        Assert.Contains("freeze or throw away", Kitchenette.Run("batch", "stock", "--log", other).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_BrokenRows_AreNamedByLineAndNothingIsTakenIn()
    {
        AddBroth("2024-10-03");
        string good = Batch("export").Output;
        string file = _kitchen.Write("in.jsonl", good.Replace("2024-10-03", "2024-10-05", StringComparison.Ordinal) + "{nonsense\n" + good.Replace("\"jars\":4", "\"jars\":-4", StringComparison.Ordinal));

        (int code, string output, string error) = Batch("import", file);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains("in.jsonl:2: ", error, StringComparison.Ordinal);
        Assert.Contains("in.jsonl:3: ", error, StringComparison.Ordinal);
        Assert.Equal(good, Batch("export").Output);
    }

    [Fact]
    public void Import_WhatIsThereAlready_IsNamedByLineAndOverwritesNothing()
    {
        AddBroth("2024-10-03");
        string file = _kitchen.Write("in.jsonl", Batch("export").Output);
        Batch("seal", "2024-10-03-A", "--sealed", "4");
        string before = Batch("export").Output;

        (int code, _, string error) = Batch("import", file);

        Assert.Equal(2, code);
        Assert.Contains("in.jsonl:1: lot 2024-10-03-A stands in the log already", error, StringComparison.Ordinal);
        Assert.Equal(before, Batch("export").Output);
    }

    [Theory]
    [InlineData("show 2024-10-09-A", "there is no batch")]
    [InlineData("seal 2024-10-09-A --sealed 1", "there is no batch")]
    [InlineData("seal 2024-10-03-A", "tell how many")]
    [InlineData("seal 2024-10-03-A --sealed 9", "neither can be below 0")]
    [InlineData("seal 2024-10-03-A --sealed -1", "neither can be below 0")]
    [InlineData("take 2024-10-09-A 1", "there is no batch")]
    [InlineData("take 2024-10-03-A 5", "only 4 are there")]
    [InlineData("take 2024-10-03-A 0", "at least 1")]
    [InlineData("take 2024-10-03-A -2", "at least 1")]
    [InlineData("take 2024-10-03-A two", "no whole number")]
    [InlineData("take 2024-10-03-A 1 --date 2024-10-02", "nothing can be taken out before")]
    [InlineData("take 2024-10-03-A 1 --date 3.10.2024", "is no day")]
    [InlineData("labels 2024-10-09-A", "there is no batch")]
    [InlineData("labels 2024-10-03-A --format pdf", "not known")]
    [InlineData("check buldging", "nearest: bulging")]
    [InlineData("check bulging --lot 2024-10-09-A", "there is no batch")]
    [InlineData("import nowhere.jsonl", "no such file")]
    [InlineData("add nowhere.md --jars 1", "no such file")]
    [InlineData("add RECIPE --jars -1", "from 1 to")]
    [InlineData("add RECIPE --jars 0", "from 1 to")]
    [InlineData("add RECIPE --jars 1 --minutes -5 --method pressure", "a time is from 1")]
    [InlineData("add RECIPE --jars 1 --psi 5", "needs the method pressure")]
    [InlineData("add RECIPE --jars 1 --psi -5 --method pressure", "above 0")]
    [InlineData("add RECIPE --jars 1 --psi NaN --method pressure", "no number")]
    [InlineData("add RECIPE --jars 1 --method boiling-water --gauge dial", "needs the method pressure")]
    [InlineData("add RECIPE --jars 3 --sealed 4", "neither can be below 0")]
    [InlineData("add RECIPE --jars 3 --date 9000-01-01", "still to come")]
    public void Run_BadInput_IsOneLineAndTwoAndChangesNothing(string line, string said)
    {
        AddBroth("2024-10-03");
        string before = Batch("export").Output;
        string[] words = [.. line.Split(' ').Select(word => word == "RECIPE" ? Recipe(Broth) : word)];

        (int code, string output, string error) = Batch(words);

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
        Assert.InRange(error.Count(static sign => sign == '\n'), 1, 2); // a second line only points to the help
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.Equal(before, Batch("export").Output);
    }

    [Fact]
    public void Run_ALogThatCannotBe_IsOneLineAndTwo()
    {
        string file = _kitchen.Write("notes.txt", "these are a cook's notes, and no batch log at all; they must stay as they are.");
        string recipe = Recipe(Broth);
        Assert.All([file, _kitchen.Folder, System.IO.Path.Combine(file, "batches.db"), _kitchen.Path("no/such/folder/batches.db"), string.Empty], log =>
        {
            (int code, string output, string error) = Kitchenette.Run("batch", "add", recipe, "--jars", "1", "--log", log);

            Assert.Equal((2, string.Empty), (code, output));
            Assert.Equal(1, error.Count(static sign => sign == '\n'));
        });
        Assert.StartsWith("these are a cook's notes", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(2, Kitchenette.Run("batch", "list", "--log", _kitchen.Path("none.db")).Code);
        Assert.False(File.Exists(_kitchen.Path("none.db")));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Run_AnyCulture_SaysTheSame(string culture)
    {
        AddBroth("2024-10-03");
        string before = Batch("show", "2024-10-03-A").Output + Batch("labels", "2024-10-03-A").Output + Batch("check", "BULGING").Output;
        CultureInfo own = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(before, Batch("show", "2024-10-03-a").Output + Batch("labels", "2024-10-03-a").Output + Batch("check", "BULGING").Output);
            Assert.Contains("2024-10-04-A", Batch("add", Recipe(Broth), "--jars", "4", "--psi", "12.5", "--method", "pressure", "--date", "2024-10-04").Output, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = own;
        }
    }

    [Fact]
    public void Take_FromABatchWithoutAPublishedProcess_SaysToThrowItAway()
    {
        Batch("add", Recipe(Gravy), "--jars", "2", "--date", "2024-10-03");

        string output = Batch("take", "2024-10-03-A", "1").Output;

        Assert.Contains("throw it away", output, StringComparison.Ordinal);
        Assert.DoesNotContain("boil", output, StringComparison.OrdinalIgnoreCase);
    }

    private void AddBroth(string date) =>
        Assert.Equal(0, Batch("add", Recipe(Broth), "--jars", "4", "--date", date, "--method", "pressure", "--minutes", "20", "--psi", "15", "--gauge", "weighted", "--jar", "pint", "--pack", "hot", "--altitude", "410 m").Code);

    private string Recipe(string text) => _kitchen.Write("recipe.md", text);

    private (int Code, string Output, string Error) Batch(params string[] words) => Kitchenette.Run(["batch", .. words, "--log", LogFile]);
}
