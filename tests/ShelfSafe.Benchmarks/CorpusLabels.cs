using System.Text.Json;

namespace ShelfSafe.Benchmarks;

/// <summary>What a labelled recipe must, and must not, be told.</summary>
internal sealed record RecipeLabel(
    string File,
    string Acidity,
    IReadOnlyList<string> AcidityAlsoOk,
    string Outcome,
    IReadOnlyList<string> AlsoOk,
    IReadOnlyList<FlagLabel> MustFlag,
    IReadOnlyList<string> MustNotFlag,
    IReadOnlyList<FlagLabel> MustNotFlagAs,
    string? UnsafeMethod);

/// <summary>Words of a recipe and the hazard they stand for.</summary>
internal sealed record FlagLabel(string Words, string Hazard, IReadOnlyList<string> HazardAlsoOk, bool Soft, bool InDirections);

/// <summary>What a labelled ingredient line says.</summary>
internal sealed record LineLabel(
    string File,
    string Line,
    double? Quantity,
    double? QuantityMax,
    string? Unit,
    IReadOnlyList<string> UnitAlsoOk,
    IReadOnlyList<AmountLabel> AmountAlsoOk,
    AmountLabel? Package,
    string? Food,
    IReadOnlyList<string> FoodAlsoOk,
    IReadOnlyList<string> Foods,
    IReadOnlyList<string> Alternatives,
    bool NotFood);

/// <summary>An amount that a label names.</summary>
internal sealed record AmountLabel(double Quantity, double? QuantityMax, string? Unit);

/// <summary>Reads the label files of a corpus; fields that are missing count as empty.</summary>
internal static class CorpusLabels
{
    /// <summary>Reads labelled recipes, one JSON object a line.</summary>
    public static IEnumerable<RecipeLabel> Recipes(string path)
    {
        foreach (JsonElement root in Objects(path))
        {
            yield return new(
                Text(root, "file")!,
                Text(root, "acidity")!,
                Texts(root, "acidity_also_ok"),
                Text(root, "outcome")!,
                Texts(root, "also_ok"),
                Flags(root, "must_flag"),
                Texts(root, "must_not_flag"),
                Flags(root, "must_not_flag_as"),
                Text(root, "unsafe_method"));
        }
    }

    /// <summary>Reads labelled ingredient lines, one JSON object a line.</summary>
    public static IEnumerable<LineLabel> Lines(string path)
    {
        foreach (JsonElement root in Objects(path))
        {
            yield return new(
                Text(root, "file")!,
                Text(root, "line")!,
                Number(root, "quantity"),
                Number(root, "quantity_max"),
                Text(root, "unit"),
                Texts(root, "unit_also_ok"),
                [.. Items(root, "amount_also_ok").Select(Amount)],
                root.TryGetProperty("package_size", out JsonElement size) && size.ValueKind == JsonValueKind.Object ? Amount(size) : null,
                Text(root, "food"),
                Texts(root, "food_also_ok"),
                Texts(root, "foods"),
                Texts(root, "alternatives"),
                True(root, "not_food"));
        }
    }

    private static IEnumerable<JsonElement> Objects(string path)
    {
        if (!File.Exists(path))
        {
            yield break;
        }

        foreach (string line in File.ReadLines(path))
        {
            if (!string.IsNullOrWhiteSpace(line))
            {
                using JsonDocument document = JsonDocument.Parse(line);
                yield return document.RootElement.Clone();
            }
        }
    }

    private static FlagLabel[] Flags(JsonElement root, string name) =>
    [
        .. Items(root, name).Select(static item => new FlagLabel(
            Text(item, "ingredient") ?? string.Empty,
            Text(item, "hazard") ?? string.Empty,
            Texts(item, "hazard_also_ok"),
            True(item, "soft"),
            string.Equals(Text(item, "where"), "directions", StringComparison.Ordinal))),
    ];

    private static AmountLabel Amount(JsonElement item) =>
        new(Number(item, "quantity") ?? double.NaN, Number(item, "quantity_max"), Text(item, "unit"));

    private static JsonElement.ArrayEnumerator Items(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray() : default;

    private static string[] Texts(JsonElement root, string name) =>
        [.. Items(root, name).Where(static item => item.ValueKind == JsonValueKind.String).Select(static item => item.GetString()!)];

    private static string? Text(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static double? Number(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    private static bool True(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.True;
}
