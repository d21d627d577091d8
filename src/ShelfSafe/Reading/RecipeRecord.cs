using System.Text.Json;
using ShelfSafe.Pack;

namespace ShelfSafe.Reading;

/// <summary>One line of a file of many recipes: <c>{"text": "...", "title": "...", "file": "..."}</c>, or a schema.org Recipe.</summary>
/// <param name="Recipe">The recipe as text.</param>
/// <param name="File">The name that the record gives itself, or <see langword="null"/>.</param>
/// <param name="IsFileText">Whether the text is the record's own, so that places count in its <c>text</c>.</param>
public sealed record RecipeRecord(ReadableRecipe Recipe, string? File, bool IsFileText)
{
    private const int Deepest = 64;

    /// <summary>Reads a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="wrong">What is wrong with it, or empty.</param>
    /// <returns>The record, or <see langword="null"/> where it cannot be read.</returns>
    public static RecipeRecord? Read(string line, out string wrong)
    {
        ArgumentNullException.ThrowIfNull(line);
        try
        {
            using JsonDocument json = JsonDocument.Parse(line.AsMemory().TrimStart('\uFEFF'), new JsonDocumentOptions { MaxDepth = Deepest });
            return Read(json.RootElement, out wrong);
        }
        catch (JsonException broken)
        {
            wrong = WordTable.BuiltIn.With("input.record-not-json", (broken.BytePositionInLine ?? 0) + 1);
        }
        catch (InvalidOperationException)
        {
            wrong = WordTable.BuiltIn["input.not-unicode"];
        }

        return null;
    }

    private static RecipeRecord? Read(JsonElement record, out string wrong)
    {
        if (record.ValueKind != JsonValueKind.Object)
        {
            wrong = WordTable.BuiltIn.With("input.record-no-object");
            return null;
        }

        string? file = record.TryGetProperty("file", out JsonElement name) && name.ValueKind == JsonValueKind.String ? name.GetString() : null;
        if (!record.TryGetProperty("text", out JsonElement text) || record.TryGetProperty("@type", out _))
        {
            IReadOnlyList<ReadableRecipe> recipes = SchemaRecipes.Read(record, out wrong);
            wrong = recipes.Count > 1 ? WordTable.BuiltIn["input.record-several"] : wrong.Length > 0 ? WordTable.BuiltIn["input.record-neither"] : wrong;
            return recipes.Count == 1 ? new(recipes[0], file, IsFileText: false) : null;
        }

        wrong = SchemaText.Values(record, "text").Skip(1).Any() ? WordTable.BuiltIn["input.record-text-twice"]
            : text.ValueKind != JsonValueKind.String ? WordTable.BuiltIn["input.record-text-kind"]
            : string.IsNullOrWhiteSpace(text.GetString()) ? WordTable.BuiltIn["input.record-text-empty"] : string.Empty;
        if (wrong.Length > 0)
        {
            return null;
        }

        string? title = record.TryGetProperty("title", out JsonElement head) && head.ValueKind == JsonValueKind.String ? head.GetString() : null;
        string body = text.GetString()!;
        bool titled = string.IsNullOrWhiteSpace(title) || body.AsSpan().TrimStart('\uFEFF').TrimStart().StartsWith("# ", StringComparison.Ordinal);

        // A title decides what kind of dish it is, so it is read with the text, on a line of its own above it.
        return titled
            ? new(new(body, IsPlain: false), file, IsFileText: true)
            : new(new($"# {string.Join(' ', title!.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}\n\n{body}", IsPlain: false), file, IsFileText: false);
    }
}
