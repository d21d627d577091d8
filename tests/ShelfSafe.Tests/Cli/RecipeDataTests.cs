using System.Text.Json.Nodes;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>Recipe data of web pages in forms that are rarely met.</summary>
public sealed class RecipeDataTests : IDisposable
{
    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    // What is passed over in silence could be the very thing that stops a jar.
    [Theory]
    [InlineData("\"recipeIngredient\":[[\"2 cups rice\"],\"800 g sugar\"]", "- 2 cups rice\n- 800 g sugar\n")]
    [InlineData("\"recipeIngredient\":{\"@list\":[\"3 eggs\",[\"1 cup milk\"]]}", "- 3 eggs\n- 1 cup milk\n")]
    [InlineData("\"recipeIngredient\":[{\"@type\":\"PropertyValue\",\"name\":\"cornstarch\",\"value\":\"2 tbsp\"}]", "- cornstarch 2 tbsp\n")]
    [InlineData("\"recipeIngredient\":[null,true,{\"@id\":\"#flour\"}]", "- true\n- {\"@id\":\"#flour\"}\n")]
    [InlineData("\"recipeIngredient\":[\"1 cup flour\"],\"recipeIngredient\":[\"1 cup sugar\"]", "- 1 cup flour\n- 1 cup sugar\n")]
    [InlineData("\"supply\":{\"@type\":\"HowToSupply\",\"name\":\"2 tbsp flour\"}", "- 2 tbsp flour\n")]
    [InlineData("\"recipeInstructions\":{\"@type\":\"ItemList\",\"itemListElement\":[{\"@type\":\"ListItem\",\"position\":1,\"item\":{\"@type\":\"HowToStep\",\"text\":\"Whisk in flour.\"}}]}", "- Whisk in flour.\n")]
    [InlineData("\"recipeInstructions\":[{\"@type\":\"HowToStep\",\"description\":\"Dust with flour.\"},{\"@id\":\"#cream\"}]", "- Dust with flour.\n- See the recipe elsewhere: {\"@id\":\"#cream\"}\n")]
    [InlineData("\"step\":[{\"@type\":\"HowToStep\",\"itemListElement\":{\"@type\":\"HowToTip\",\"text\":\"Add cream.\"}}]", "- Add cream.\n")]
    public void Vet_RecipeDataOfAnyForm_PassesNothingOver(string data, string expected)
    {
        string path = _kitchen.Write("any.html", $"<html><script type=\"application/ld+json\">{{\"@type\":\"Recipe\",\"name\":\"Pot\",{data}}}</script></html>");

        Assert.EndsWith(expected, Report(path)["textRead"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"@id\":\"#s6\"}")]
    [InlineData("{\"@type\":\"HowToStep\",\"image\":\"s6.jpg\"}")]
    public void Vet_AStepOfRecipeDataWithoutWords_BarsAPlainYes(string step)
    {
        string[] lines = File.ReadAllLines(SampleFolder.Of("vegetable-beef-soup.md"));
        JsonObject recipe = new()
        {
            ["@type"] = "Recipe",
            ["name"] = "Vegetable-beef soup, half and half",
            ["recipeIngredient"] = new JsonArray([.. lines.Where(static line => line.StartsWith("- ", StringComparison.Ordinal)).Select(static line => (JsonNode)line[2..])]),
            ["recipeInstructions"] = new JsonArray([.. lines.Where(static line => line.Length > 0 && char.IsDigit(line[0])).Select(static line => (JsonNode)line[3..])]),
        };
        Assert.Equal("pressure", Outcome(recipe));

        recipe["recipeInstructions"]!.AsArray().Add(JsonNode.Parse(step));

        Assert.Equal("pressure-after-changes", Outcome(recipe));

        string Outcome(JsonObject data) => Report(_kitchen.Write("soup.jsonld", data.ToJsonString()))["outcome"]!.GetValue<string>();
    }

    [Fact]
    public void Vet_AStepThatOnlyAHiddenMarkTells_IsRead()
    {
        string path = _kitchen.Write("hidden.html", """
            <div itemscope itemtype="https://schema.org/NewsArticle https://schema.org/Recipe"><b itemprop="name">Pot</b>
            <i itemprop="recipeIngredient">1 kg beef</i>
            <ol itemprop="recipeInstructions"><li itemscope><meta itemprop="text" content="Stir in flour."><meta itemprop="url" content="#1"></li><li>Boil.</li></ol></div>
            """);

        Assert.EndsWith("- Stir in flour.\n- Boil.\n", Report(path)["textRead"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static JsonNode Report(string path)
    {
        (_, string output, string error) = Kitchenette.Run("vet", path, "--format", "jsonl");
        Assert.Empty(error);
        return JsonNode.Parse(Assert.Single(output.Split('\n', StringSplitOptions.RemoveEmptyEntries)))!;
    }
}
