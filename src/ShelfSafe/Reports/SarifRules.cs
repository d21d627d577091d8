using System.Collections.Immutable;
using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>
/// The hazard cards as SARIF rules, in the order of their ids, then what a kitchen may have to hear, each with its reason, its advice and its sources
/// as help.
/// </summary>
internal sealed class SarifRules
{
    private readonly RulePack _pack;
    private readonly Words _words;
    private readonly Dictionary<string, SourceRow> _sources;
    private readonly Rule[] _rules;
    private readonly Dictionary<string, int> _indices = new(StringComparer.Ordinal);

    /// <summary>Prepares the rules of a pack.</summary>
    public SarifRules(RulePack pack, Words words)
    {
        _pack = pack;
        _words = words;
        _sources = pack.Tables.Sources.ToDictionary(static row => row.Id, StringComparer.Ordinal);
        _rules =
        [
            .. pack.Tables.Hazards.OrderBy(static card => card.Rule, StringComparer.Ordinal)
                .Select(static card => new Rule(card.Rule, card.Why, card.Instead, card.FirstLevel, [.. card.Rows.SelectMany(static row => row.Sources)])),
            .. pack.Tables.Kitchen.Notes.Select(static note => new Rule(note.Id, note.Text, note.Instead, FindingLevel.Note, note.Sources)),
            new(KitchenNote.OfCountry, words["sarif.country"], words["sarif.country.do"], FindingLevel.Note, [.. pack.Tables.Kitchen.Countries.SelectMany(static country => country.Sources)]),
        ];
        foreach (Rule rule in _rules)
        {
            _indices.TryAdd(rule.Id, _indices.Count);
        }
    }

    /// <summary>Index of a rule, or <see langword="null"/> where none has the id.</summary>
    public int? IndexOf(string rule) => _indices.TryGetValue(rule, out int index) ? index : null;

    /// <summary>Writes the tool with its rules.</summary>
    public void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartObject(JsonNames.Driver);
        json.WriteText(JsonNames.Name, _words["sarif.name"]);
        json.WriteText(JsonNames.SemanticVersion, typeof(SarifRules).Assembly.GetName().Version?.ToString(3) ?? "0.0.0");
        json.WriteStartArray(JsonNames.Rules);
        foreach (Rule rule in _rules)
        {
            WriteRule(json, rule);
        }

        json.WriteEndArray();
        json.WriteStartObject(JsonNames.Properties);
        json.WriteText(JsonNames.PackVersion, _pack.Version);
        json.WriteText(JsonNames.PackDate, _pack.Date);
        json.WriteText(JsonNames.PackSha256, _pack.Sha256);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static string FirstSentence(string text)
    {
        int end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text : text[..(end + 1)];
    }

    private void WriteRule(Utf8JsonWriter json, Rule rule)
    {
        string why = Filled(rule.Why);
        string instead = Filled(rule.Instead);
        SourceRow[] sources = [.. rule.Sources.Distinct(StringComparer.Ordinal).Select(id => _sources.GetValueOrDefault(id)).OfType<SourceRow>()];
        string label = _words["label.instead"];
        string titles = string.Join("; ", sources.Select(static row => row.Title).Distinct(StringComparer.Ordinal));
        string help = titles.Length == 0 ? $"{why}\n\n{label}: {instead}" : $"{why}\n\n{label}: {instead}\n\n{_words["label.sources"]}: {titles}";
        json.WriteStartObject();
        json.WriteText(JsonNames.Id, rule.Id);
        WriteMessage(json, JsonNames.ShortDescription, FirstSentence(why));
        WriteMessage(json, JsonNames.FullDescription, why);
        WriteMessage(json, JsonNames.Help, help);
        string? url = sources.Select(static row => row.Url).FirstOrDefault(static url => Uri.IsWellFormedUriString(url, UriKind.Absolute));
        if (url is not null)
        {
            json.WriteText(JsonNames.HelpUri, url);
        }

        json.WriteStartObject(JsonNames.DefaultConfiguration);
        json.WriteString(JsonNames.Level, SarifReport.LevelOf(rule.Level).Level);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteMessage(Utf8JsonWriter json, JsonEncodedText name, string text)
    {
        json.WriteStartObject(name);
        json.WriteText(JsonNames.Text, text);
        json.WriteEndObject();
    }

    // A card speaks of "{dish}"; without a recipe at hand it is told in general.
    private string Filled(string text)
    {
        string filled = NumberChoice.Singular(text);
        foreach (string blank in (ReadOnlySpan<string>)["dish", "ingredient", "words", "food", "published", "why-no", "jar", "gauge", "listed", "most", "day"])
        {
            filled = filled.Replace($"{{{blank}}}", _words[$"sarif.{blank}"], StringComparison.Ordinal);
        }

        return string.Join(' ', filled.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private sealed record Rule(string Id, string Why, string Instead, FindingLevel Level, ImmutableArray<string> Sources);
}
