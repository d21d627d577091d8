using System.Text.Json;
using ShelfSafe.Pack;

namespace ShelfSafe.Reports;

/// <summary>The hazard cards as SARIF rules, in the order of their ids, each with its reason, its advice and its sources as help.</summary>
internal sealed class SarifRules(RulePack pack, Words words)
{
    private readonly HazardCard[] _cards = [.. pack.Tables.Hazards.OrderBy(static card => card.Rule, StringComparer.Ordinal)];
    private readonly Dictionary<string, int> _indices = pack.Tables.Hazards
        .Select(static card => card.Rule)
        .Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal)
        .Select(static (rule, index) => (rule, index))
        .ToDictionary(static pair => pair.rule, static pair => pair.index, StringComparer.Ordinal);

    private readonly Dictionary<string, SourceRow> _sources = pack.Tables.Sources.ToDictionary(static row => row.Id, StringComparer.Ordinal);

    /// <summary>Index of a rule, or <see langword="null"/> where no card has it.</summary>
    public int? IndexOf(string rule) => _indices.TryGetValue(rule, out int index) ? index : null;

    /// <summary>Writes the tool with its rules.</summary>
    public void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartObject("driver"u8);
        json.WriteText("name"u8, words["sarif.name"]);
        json.WriteText("semanticVersion"u8, typeof(SarifRules).Assembly.GetName().Version?.ToString(3) ?? "0.0.0");
        json.WriteStartArray("rules"u8);
        foreach (HazardCard card in _cards)
        {
            WriteRule(json, card);
        }

        json.WriteEndArray();
        json.WriteStartObject("properties"u8);
        json.WriteText("packVersion"u8, pack.Version);
        json.WriteText("packDate"u8, pack.Date);
        json.WriteText("packSha256"u8, pack.Sha256);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static string FirstSentence(string text)
    {
        int end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }

    private void WriteRule(Utf8JsonWriter json, HazardCard card)
    {
        string why = Filled(card.Why);
        string instead = Filled(card.Instead);
        SourceRow[] sources = [.. card.Rows.SelectMany(static row => row.Sources).Distinct(StringComparer.Ordinal).Select(id => _sources.GetValueOrDefault(id)).OfType<SourceRow>()];
        string label = words["label.instead"];
        string titles = string.Join("; ", sources.Select(static row => row.Title).Distinct(StringComparer.Ordinal));
        string help = titles.Length == 0 ? $"{why}\n\n{label}: {instead}" : $"{why}\n\n{label}: {instead}\n\n{words["label.sources"]}: {titles}";
        json.WriteStartObject();
        json.WriteText("id"u8, card.Rule);
        WriteMessage(json, "shortDescription"u8, FirstSentence(why));
        WriteMessage(json, "fullDescription"u8, why);
        WriteMessage(json, "help"u8, help);
        string? url = sources.Select(static row => row.Url).FirstOrDefault(static url => Uri.IsWellFormedUriString(url, UriKind.Absolute));
        if (url is not null)
        {
            json.WriteText("helpUri"u8, url);
        }

        json.WriteStartObject("defaultConfiguration"u8);
        json.WriteString("level"u8, SarifReport.LevelOf(card.FirstLevel).Level);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteMessage(Utf8JsonWriter json, ReadOnlySpan<byte> name, string text)
    {
        json.WriteStartObject(name);
        json.WriteText("text"u8, text);
        json.WriteEndObject();
    }

    // A card speaks of "{dish}"; without a recipe at hand it is told in general.
    private string Filled(string text)
    {
        string filled = NumberChoice.Singular(text);
        foreach (string blank in (ReadOnlySpan<string>)["dish", "ingredient", "words", "food", "published", "why-no"])
        {
            filled = filled.Replace($"{{{blank}}}", words[$"sarif.{blank}"], StringComparison.Ordinal);
        }

        return string.Join(' ', filled.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
