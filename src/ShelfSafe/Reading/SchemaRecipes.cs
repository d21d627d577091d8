using System.Text.Json;
using ShelfSafe.Pack;

namespace ShelfSafe.Reading;

/// <summary>Finds the schema.org recipes of JSON-LD data and writes each out as text.</summary>
public static class SchemaRecipes
{
    private const int Deepest = 64;
    private const int Most = 10_000;

    /// <summary>Reads a JSON-LD file.</summary>
    /// <param name="text">The file.</param>
    /// <param name="wrong">Why no recipe could be read, or empty.</param>
    public static IReadOnlyList<ReadableRecipe> Read(string text, out string wrong)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(text, out wrong, out _);
    }

    /// <summary>Reads JSON-LD, and tells whether it was JSON at all.</summary>
    internal static IReadOnlyList<ReadableRecipe> Read(string text, out string wrong, out bool isJson)
    {
        isJson = true;
        try
        {
            JsonDocumentOptions options = new() { MaxDepth = Deepest, CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
            using JsonDocument json = JsonDocument.Parse(text.AsMemory().TrimStart('\uFEFF'), options);
            return Read(json.RootElement, out wrong);
        }
        catch (JsonException broken)
        {
            isJson = false;
            wrong = WordTable.BuiltIn.With("input.not-json", (broken.LineNumber ?? 0) + 1, (broken.BytePositionInLine ?? 0) + 1);
        }
        catch (InvalidOperationException)
        {
            wrong = WordTable.BuiltIn["input.not-unicode"];
        }

        return [];
    }

    /// <summary>Reads the recipes of a JSON value: itself, those in its lists, or those in its <c>@graph</c>.</summary>
    internal static IReadOnlyList<ReadableRecipe> Read(JsonElement root, out string wrong)
    {
        List<ReadableRecipe> found = [];
        Stack<JsonElement> open = new([root]);
        while (found.Count < Most && open.TryPop(out JsonElement value))
        {
            if (value.ValueKind == JsonValueKind.Array)
            {
                PushAll(open, value);
            }
            else if (value.ValueKind == JsonValueKind.Object && IsRecipe(value))
            {
                found.Add(SchemaText.Of(value));
            }
            else if (value.ValueKind == JsonValueKind.Object)
            {
                foreach (string key in (ReadOnlySpan<string>)["mainEntityOfPage", "mainEntity", "itemListElement", "item", "@graph"])
                {
                    foreach (JsonElement inner in SchemaText.Values(value, key))
                    {
                        open.Push(inner);
                    }
                }
            }
        }

        wrong = found.Count == 0 ? WordTable.BuiltIn["input.no-recipe"] : string.Empty;
        return found;
    }

    private static void PushAll(Stack<JsonElement> open, JsonElement list)
    {
        foreach (JsonElement one in list.EnumerateArray().Reverse())
        {
            open.Push(one);
        }
    }

    private static bool IsRecipe(JsonElement value) => SchemaText.Values(value, "@type").Any(static type => type.ValueKind switch
    {
        JsonValueKind.String => IsRecipe(type.GetString()),
        JsonValueKind.Array => type.EnumerateArray().Any(static one => one.ValueKind == JsonValueKind.String && IsRecipe(one.GetString())),
        _ => false,
    });

    private static bool IsRecipe(string? type) => type is "Recipe" or "schema:Recipe" or "http://schema.org/Recipe" or "https://schema.org/Recipe";
}
