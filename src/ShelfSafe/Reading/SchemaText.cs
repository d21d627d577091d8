using System.Text.Json;

namespace ShelfSafe.Reading;

/// <summary>Writes a schema.org Recipe out as plain text: title, description, yield, ingredients, directions, each value on a line of its own.</summary>
/// <remarks>Known gap: what a page says beside its recipe data is not read.</remarks>
internal static class SchemaText
{
    private const int Deepest = 16;

    /// <summary>The recipe as text.</summary>
    public static ReadableRecipe Of(JsonElement recipe)
    {
        RecipeText text = new();
        text.Title(Lines(recipe, "name").FirstOrDefault());
        foreach (string line in Lines(recipe, "description"))
        {
            text.Prose(line);
        }

        text.Yield(Lines(recipe, "recipeYield").FirstOrDefault(static line => line.Any(static letter => !char.IsDigit(letter))) ?? Lines(recipe, "yield").FirstOrDefault());
        foreach (string key in (ReadOnlySpan<string>)["recipeIngredient", "ingredients"])
        {
            foreach (string line in Lines(recipe, key))
            {
                text.Ingredient(line);
            }
        }

        if (recipe.TryGetProperty("recipeInstructions", out JsonElement steps))
        {
            AddSteps(text, steps, 0);
        }

        return new(text.ToString(), IsPlain: true);
    }

    private static void AddSteps(RecipeText text, JsonElement steps, int depth)
    {
        if (steps.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement one in steps.EnumerateArray())
            {
                AddSteps(text, one, depth + 1);
            }
        }
        else if (steps.ValueKind == JsonValueKind.String)
        {
            foreach (string line in Split(steps.GetString()!))
            {
                text.Step(line);
            }
        }
        else if (steps.ValueKind == JsonValueKind.Object && depth < Deepest)
        {
            AddStep(text, steps, depth);
        }
    }

    // A HowToSection has a name and a list; a HowToStep a text, and a name that often repeats its start.
    private static void AddStep(RecipeText text, JsonElement step, int depth)
    {
        string[] words = [.. Lines(step, "text")];
        string[] names = [.. Lines(step, "name")];
        foreach (string name in names)
        {
            if (!words.Any(line => line.StartsWith(name.TrimEnd('.', '…', ' '), StringComparison.OrdinalIgnoreCase)))
            {
                text.Step(name);
            }
        }

        foreach (string line in words)
        {
            text.Step(line);
        }

        foreach (string key in (ReadOnlySpan<string>)["itemListElement", "steps"])
        {
            if (step.TryGetProperty(key, out JsonElement inner))
            {
                AddSteps(text, inner, depth + 1);
            }
        }
    }

    private static IEnumerable<string> Lines(JsonElement holder, string key) =>
        holder.TryGetProperty(key, out JsonElement value) ? Lines(value) : [];

    private static IEnumerable<string> Lines(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => Split(value.GetString()!),
        JsonValueKind.Number => [value.GetRawText()],
        JsonValueKind.Array => value.EnumerateArray().SelectMany(static one => one.ValueKind == JsonValueKind.Array ? [] : Lines(one)),
        JsonValueKind.Object when value.TryGetProperty("@value", out JsonElement inner) && inner.ValueKind == JsonValueKind.String => Split(inner.GetString()!),
        _ => [],
    };

    private static IEnumerable<string> Split(string text) => WebPage.PlainLines(text);
}
