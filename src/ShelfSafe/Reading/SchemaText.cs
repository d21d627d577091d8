using System.Text.Json;
using ShelfSafe.Pack;

namespace ShelfSafe.Reading;

/// <summary>Writes a schema.org Recipe out as plain text: title, description, yield, ingredients, directions, each value on a line of its own.</summary>
/// <remarks>Known gap: what a page says beside its recipe data is not read.</remarks>
internal static class SchemaText
{
    // Of a thing that stands where words are wanted, what these tell is no part of the recipe.
    private static readonly string[] NoWords = ["image", "video", "url", "position", "identifier", "sameAs", "thumbnailUrl", "author"];

    // Lists of steps, whatever they are called.
    private static readonly string[] StepLists = ["recipeInstructions", "steps", "step"];

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
        foreach (JsonElement value in ((ReadOnlySpan<string>)["recipeIngredient", "ingredients", "supply"]).ToArray().SelectMany(key => Values(recipe, key)))
        {
            AddIngredients(text, value);
        }

        foreach (JsonElement steps in StepLists.SelectMany(key => Values(recipe, key)))
        {
            AddSteps(text, steps);
        }

        return new(text.ToString(), IsPlain: true);
    }

    /// <summary>Every value of that name: JSON lets a name stand twice, and the one that is passed over could hold the flour.</summary>
    internal static IEnumerable<JsonElement> Values(JsonElement holder, string key) =>
        holder.EnumerateObject().Where(one => one.NameEquals(key)).Select(static one => one.Value);

    private static void AddIngredients(RecipeText text, JsonElement value)
    {
        foreach (JsonElement one in value.ValueKind == JsonValueKind.Array ? [.. value.EnumerateArray()] : (JsonElement[])[value])
        {
            JsonElement[] inner = one.ValueKind switch
            {
                JsonValueKind.Array => [one],
                JsonValueKind.Object => [.. Values(one, "@list"), .. Values(one, "@set")],
                _ => [],
            };
            foreach (JsonElement list in inner)
            {
                AddIngredients(text, list);
            }

            foreach (string line in inner.Length > 0 ? [] : OrAsWritten(one, Lines(one)))
            {
                text.Ingredient(line);
            }
        }
    }

    private static void AddSteps(RecipeText text, JsonElement steps)
    {
        if (steps.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement one in steps.EnumerateArray())
            {
                AddSteps(text, one);
            }
        }
        else if (steps.ValueKind == JsonValueKind.Object)
        {
            AddStep(text, steps);
        }
        else
        {
            foreach (string line in Lines(steps))
            {
                text.Step(line);
            }
        }
    }

    // A HowToSection has a name and a list; a HowToStep a text, and a name that often repeats its start.
    private static void AddStep(RecipeText text, JsonElement step)
    {
        string[] words = [.. ((ReadOnlySpan<string>)["text", "description", "@value", "supply"]).ToArray().SelectMany(key => Lines(step, key))];
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

        JsonElement[] inner = [.. ((ReadOnlySpan<string>)["itemListElement", "item", "@list", "@set", .. StepLists]).ToArray().SelectMany(key => Values(step, key))];
        foreach (JsonElement one in inner)
        {
            AddSteps(text, one);
        }

        // A step that only points elsewhere, or is a picture alone, is told so that the reader of steps asks for it.
        if (words.Length + names.Length + inner.Length == 0)
        {
            text.Step(WordTable.BuiltIn.With("input.step-elsewhere", string.Join(' ', OrAsWritten(step, Lines(step)))));
        }
    }

    // What says nothing that can be read stands in the text as it is written, so that it is found unread there and not passed over.
    private static IEnumerable<string> OrAsWritten(JsonElement value, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        return all.Length > 0 || value.ValueKind is JsonValueKind.Null or JsonValueKind.String ? all : Split(value.GetRawText());
    }

    private static IEnumerable<string> Lines(JsonElement holder, string key) => Values(holder, key).SelectMany(Lines);

    private static IEnumerable<string> Lines(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => Split(value.GetString()!),
        JsonValueKind.Number => [value.GetRawText()],
        JsonValueKind.Array => value.EnumerateArray().SelectMany(Lines),
        JsonValueKind.Object => Told(value),
        _ => [],
    };

    // A thing where words are wanted, such as a name with its amount: all that it says, on one line.
    private static IEnumerable<string> Told(JsonElement thing)
    {
        string line = string.Join(' ', thing.EnumerateObject()
            .Where(static one => one.Name == "@value" || !(one.Name.StartsWith('@') || NoWords.Contains(one.Name, StringComparer.Ordinal)))
            .SelectMany(static one => Lines(one.Value)));
        return line.Length == 0 ? [] : [line];
    }

    private static IEnumerable<string> Split(string text) => WebPage.PlainLines(text);
}
