using System.IO.Pipes;
using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class InputTests : IDisposable
{
    private const string Jam = """{"@context":"https://schema.org","@type":"Recipe","name":"Plum &amp; cardamom jam","recipeYield":["6","6 jars"],"recipeIngredient":["1 kg plums","800 g sugar"],"recipeInstructions":[{"@type":"HowToSection","name":"Cook","itemListElement":[{"@type":"HowToStep","text":"Boil to a set."}]}]}""";
    private const string Rub = """{"@type":["Recipe","NewsArticle"],"name":"Dry rub","recipeIngredient":["4 tbsp salt"],"recipeInstructions":"Stir."}""";

    private const string Microdata = """
        <!doctype html><title>x</title>
        <div itemscope itemtype="https://schema.org/Recipe">
          <h1 itemprop="name">Mushroom gravy</h1>
          <span itemprop="author" itemscope itemtype="https://schema.org/Person"><b itemprop="name">A cook of the hall</b></span>
          <ul><li itemprop="recipeIngredient">50 g butter</li><li itemprop="recipeIngredient">3 tbsp flour</li></ul>
          <ol itemprop="recipeInstructions"><li>Melt the butter.</li><li>Stir in the flour.</li></ol>
          <p>An advert for copper pans.</p>
        </div>
        """;

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public void Vet_APageWithOneRecipe_ReadsTitleIngredientsAndSteps()
    {
        JsonNode report = Assert.Single(Reports(_kitchen.Write("jam.html", Page(Jam)), out int code, out string error));

        Assert.Empty(error);
        Assert.NotEqual(2, code);
        Assert.Equal("Plum & cardamom jam", report["title"]!.GetValue<string>());
        Assert.Equal(["plum", "sugar"], Foods(report));
        Assert.Equal("# Plum & cardamom jam\n\nYield: 6 jars\n\n## Ingredients\n\n- 1 kg plums\n- 800 g sugar\n\n## Directions\n\n- Cook\n- Boil to a set.\n", report["textRead"]!.GetValue<string>());
        Assert.Null(report["record"]);
    }

    [Theory]
    [InlineData("{\"@context\":\"https://schema.org\",\"@graph\":[{\"@type\":\"WebSite\"},JAM]}", 1)]
    [InlineData("[JAM,RUB]", 2)]
    [InlineData("{\"@type\":\"ItemList\",\"itemListElement\":[{\"@type\":\"ListItem\",\"item\":JAM},{\"@type\":\"ListItem\",\"item\":RUB}]}", 2)]
    [InlineData("{\"@type\":\"WebPage\",\"mainEntity\":RUB}", 1)]
    [InlineData("RUB", 1)]
    public void Vet_APageWithRecipesInAnyNest_FindsEachInOrder(string data, int expected)
    {
        List<JsonNode> reports = Reports(_kitchen.Write("page.htm", Page(data.Replace("JAM", Jam, StringComparison.Ordinal).Replace("RUB", Rub, StringComparison.Ordinal))), out _, out string error);

        Assert.Empty(error);
        Assert.Equal(expected, reports.Count);
        if (expected == 2)
        {
            Assert.Equal([1, 2], reports.Select(static report => report["record"]!.GetValue<int>()));
            Assert.Equal("Dry rub", reports[1]["title"]!.GetValue<string>());
        }
    }

    // "vet <(curl ...)" and "vet /dev/stdin": a pipe has a name and no places.
    [Fact]
    public void Vet_APipeWithAName_IsReadToItsEnd()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using AnonymousPipeServerStream pipe = new(PipeDirection.In);
        using (AnonymousPipeClientStream cook = new(PipeDirection.Out, pipe.ClientSafePipeHandle))
        {
            cook.Write("# Soup\n\n- 1 kg carrots\n- 2 l water\n"u8);
        }

        JsonNode report = Assert.Single(Reports($"/proc/self/fd/{pipe.SafePipeHandle.DangerousGetHandle()}", out _, out string error));

        Assert.Empty(error);
        Assert.Equal(["carrot", "water"], Foods(report));
    }

    [Fact]
    public void Vet_APageWithThreeScripts_ReadsThemAll() =>
        Assert.Equal(3, Reports(_kitchen.Write("page.html", Page(Jam) + Page(Rub) + Page(Jam)), out _, out _).Count);

    [Theory]
    [InlineData("<html><body><p>Only words.</p></body></html>", "page holds no schema.org Recipe; save the recipe as text")]
    [InlineData("<html><script type=\"application/ld+json\">{\"@type\":\"Person\"}</script></html>", "page holds no schema.org Recipe; save the recipe as text")]
    [InlineData("<html><script type=\"application/ld+json\">{\"@type\":\"Recipe\",</script></html>", "page holds recipe data that is not JSON from line 1, byte 18 on")]
    public void Vet_APageWithoutRecipe_IsOneClearLine(string page, string expected)
    {
        string path = _kitchen.Write("page.html", page);

        (int code, string output, string error) = Kitchenette.Run("vet", path);

        Assert.Equal((2, string.Empty, $"shelfsafe: {path}: {expected}\n"), (code, output, error));
    }

    [Fact]
    public void Vet_Microdata_ReadsTheRecipeAndNotItsAuthor()
    {
        JsonNode report = Assert.Single(Reports(_kitchen.Write("gravy.html", Microdata), out _, out string error));

        Assert.Empty(error);
        Assert.Equal("Mushroom gravy", report["title"]!.GetValue<string>());
        Assert.Equal(["butter", "flour"], Foods(report));
        Assert.EndsWith("- Melt the butter.\n- Stir in the flour.\n", report["textRead"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain("cook of the hall", report["textRead"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_ALineOfABareAmount_IsQuotedAsItStands() =>
        Assert.Contains("\"5\" is not known here", Kitchenette.Run("vet", _kitchen.Write("five.md", "# Pot\n\n- 1 kg beef\n- 5\n\n1. Boil.\n"), "--format", "jsonl").Output.Replace("\\u0022", "\"", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void Vet_AScriptWithAParameterInItsType_IsRead() =>
        Assert.Single(Reports(_kitchen.Write("type.html", Page(Jam).Replace("ld+json", "ld+json; charset=utf-8", StringComparison.Ordinal)), out _, out _));

    [Theory]
    [InlineData("jam.jsonld")]
    [InlineData("jam.json")]
    public void Vet_AJsonLdFile_IsReadByItsEnding(string name) =>
        Assert.Equal(["plum", "sugar"], Foods(Assert.Single(Reports(_kitchen.Write(name, Jam), out _, out _))));

    [Theory]
    [InlineData("{\"@type\":\"Recipe\"", "is not JSON from line 1, byte 18 on")]
    [InlineData("{}", "holds no schema.org Recipe")]
    [InlineData("{\"@type\":\"Recipe\",\"name\":\"\\ud800\"}", "holds text that is not Unicode")]
    public void Vet_ABadJsonLdFile_IsOneClearLine(string text, string expected)
    {
        string path = _kitchen.Write("bad.jsonld", text);

        (int code, _, string error) = Kitchenette.Run("vet", path);

        Assert.Equal((2, $"shelfsafe: {path}: {expected}\n"), (code, error));
    }

    [Theory]
    [InlineData(Jam, 1)]
    [InlineData("  [" + Jam + "," + Rub + "]", 2)]
    public void Vet_StandardInput_IsToldByItsFirstCharacters(string text, int expected)
    {
        (_, string output, string error) = Kitchenette.Run(Encoding.UTF8.GetBytes(text), "vet", "-", "--format", "jsonl");

        Assert.Empty(error);
        Assert.Equal(expected, Lines(output).Count);
    }

    [Fact]
    public void Vet_AMarkdownRecipeThatStartsWithABracket_IsMarkdown()
    {
        (_, string output, string error) = Kitchenette.Run("[Note](x)\n\n# Dry rub\n\n- 4 tbsp salt\n\n1. Stir.\n"u8.ToArray(), "vet", "-", "--format", "jsonl");

        Assert.Empty(error);
        Assert.Equal(["salt"], Foods(JsonNode.Parse(output)!));
    }

    [Fact]
    public void Vet_PlainText_IsReadWithoutMarks()
    {
        string path = _kitchen.Write("rub.txt", "Dry rub\n\nIngredients:\n4 tbsp salt\n2 tbsp ground black pepper\n\nMethod:\nStir and keep dry.\n");

        JsonNode report = Assert.Single(Reports(path, out _, out string error));

        Assert.Empty(error);
        Assert.Equal(["salt", "black pepper"], Foods(report).Select(static food => food.Replace("ground ", string.Empty, StringComparison.Ordinal)));
    }

    [Fact]
    public void Vet_Records_KeepTheirOrderAndABadOneCostsOnlyItself()
    {
        StringBuilder records = new("\uFEFF");
        for (int number = 1; number <= 60; number++)
        {
            records.Append(number % 7 == 0 ? "{\"text\":" : $$"""{"text":"# Stew {{number}}\n\n- {{number}} g beef\n\n1. Boil.","file":"stew-{{number}}.md"}""").Append('\n');
        }

        (int code, string output, string error) = Kitchenette.Run(Encoding.UTF8.GetBytes(records.ToString()), "vet", "--input", "jsonl", "--format", "jsonl", "-");

        List<JsonNode> lines = Lines(output);
        Assert.Equal(2, code);
        Assert.Equal(Enumerable.Range(1, 60), lines.Select(static line => line["record"]!.GetValue<int>()));
        Assert.Equal(8, lines.Count(static line => line["error"] is not null));
        Assert.All(lines.Where(static line => line["error"] is null), static line => Assert.Equal($"stew-{line["record"]}.md", line["file"]!.GetValue<string>()));
        Assert.Equal(8, error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.StartsWith("shelfsafe: -:7: is not JSON from byte 9 on; one object a line is wanted\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Vet_ARecordWithAllFields_ReadsItsTitleAboveItsText()
    {
        (_, string output, _) = Kitchenette.Run("{\"text\":\"- 4 tbsp salt\\n\\n1. Stir.\",\"title\":\"Dry \\n rub\",\"file\":\"rub.md\",\"id\":7}\n\n"u8.ToArray(), "vet", "--input", "jsonl", "--format", "jsonl", "-");

        JsonNode report = Assert.Single(Lines(output));
        Assert.Equal(("Dry rub", "rub.md", 1), (report["title"]!.GetValue<string>(), report["file"]!.GetValue<string>(), report["record"]!.GetValue<int>()));
        Assert.Equal("# Dry rub\n\n- 4 tbsp salt\n\n1. Stir.", report["textRead"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("[]", "is no JSON object; write {\"text\": \"...\"} or a schema.org Recipe")]
    [InlineData("{\"text\":7}", "has a \"text\" that is no string")]
    [InlineData("{\"text\":\" \"}", "has an empty \"text\"")]
    [InlineData("{\"name\":\"x\"}", "has neither a \"text\" nor a schema.org Recipe")]
    [InlineData("{\"text\":\"- 1 cup flour\",\"text\":\"- 1 cup sugar\"}", "has a \"text\" twice")]
    [InlineData("{\"@graph\":[{\"@type\":\"Recipe\"},{\"@type\":\"Recipe\"}]}", "holds several recipes; one a line is wanted")]
    [InlineData("{\"text\":\"\\udc00\"}", "holds text that is not Unicode")]
    public void Vet_ABadRecord_SaysWhatIsWrong(string record, string expected)
    {
        (int code, string output, string error) = Kitchenette.Run(Encoding.UTF8.GetBytes(record), "vet", "--input", "jsonl", "--format", "jsonl", "-");

        Assert.Equal((2, $"shelfsafe: -:1: {expected}\n"), (code, error));
        Assert.Equal(expected, JsonNode.Parse(output)!["error"]!.GetValue<string>());
    }

    [Fact]
    public void Vet_ARecordThatIsNotUtf8OrTooLong_CostsOnlyItself()
    {
        byte[] good = [.. "{\"text\":\"- 4 tbsp salt\"}\n"u8];
        byte[] input = [.. good, .. "{\"text\":\"caf"u8, 0xE9, .. "\"}\n"u8, .. "{\"text\":\""u8, .. Enumerable.Repeat((byte)'a', 17 * 1024 * 1024), .. "\"}\n"u8, .. good];

        (int code, string output, string error) = Kitchenette.Run(input, "vet", "--input", "jsonl", "--format", "jsonl", "-");

        List<JsonNode> lines = Lines(output);
        Assert.Equal(2, code);
        Assert.Equal([false, true, true, false], lines.Select(static line => line["error"] is not null));
        Assert.Equal("shelfsafe: -:2: is not UTF-8 text from byte 13 on\nshelfsafe: -:3: is larger than 16 MB; no recipe is that long\n", error);
    }

    [Fact]
    public void Vet_NoRecords_SaysSo()
    {
        (int code, string output, string error) = Kitchenette.Run([], "vet", "--input", "jsonl", "--format", "jsonl", "-");

        Assert.Equal((2, string.Empty, "shelfsafe: -: is empty\n"), (code, output, error));
    }

    [Fact]
    public void Vet_AFileOfRecords_IsReadByItsEnding()
    {
        string path = _kitchen.Write("all.jsonl", "{\"text\":\"- 4 tbsp salt\"}\r\n\r\n{\"text\":\"- 500 g beef\"}");

        Assert.Equal([1, 3], Reports(path, out _, out _).Select(static report => report["record"]!.GetValue<int>()));
    }

    private static string Page(string data) => $"<!DOCTYPE html><html><head><script type=\"application/ld+json\">{data}</script></head><body><h1>Noise</h1></body></html>";

    private static List<JsonNode> Reports(string path, out int code, out string error)
    {
        (code, string output, error) = Kitchenette.Run("vet", path, "--format", "jsonl");
        return Lines(output);
    }

    private static List<JsonNode> Lines(string output) => [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(static line => JsonNode.Parse(line)!)];

    private static IEnumerable<string> Foods(JsonNode report) => report["ingredients"]!.AsArray().Select(static one => one!["food"]!.GetValue<string>());
}
