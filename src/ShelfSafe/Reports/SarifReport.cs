using System.Buffers;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes one SARIF 2.1.0 log with one run: every hazard card a rule, every finding a result.</summary>
/// <remarks>
/// Levels: stop is <c>error</c>, change is <c>warning</c>, caution is <c>note</c>; a note teaches and reports no problem, so it has
/// the kind <c>informational</c> and by section 3.27.10 the level <c>none</c>. Our own word stands in <c>properties.level</c>.
/// Places in text that was made of structured data, or that stood in a record, are no places in the file: such a result has no region.
/// No path of the machine is written but one that was given.
/// </remarks>
internal sealed class SarifReport : ReportFormat
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private const string Root = "%SRCROOT%";

    private readonly SarifRules _rules;
    private readonly Words _words;

    /// <summary>Prepares the rules of a pack.</summary>
    public SarifReport(RulePack pack, Words words)
    {
        _words = words;
        _rules = new(pack, words);
    }

    /// <inheritdoc/>
    public override bool WritesEmpty => true;

    /// <inheritdoc/>
    public override string Start(ReportItem? first) =>
        $$"""{"$schema":"{{Schema}}","version":"2.1.0","runs":[{"tool":""" + Written(_rules.WriteTool)
        + ""","columnKind":"utf16CodeUnits","newlineSequences":["\r\n","\n","\r"],"originalUriBaseIds":""" + Written(WriteBase)
        + ",\"results\":[\n";

    /// <inheritdoc/>
    public override string Between => ",\n";

    /// <inheritdoc/>
    public override string One(ReportItem item)
    {
        // Editors show results alone, so what the kitchen must hear is a result too; a kitchen that no row is for has to change first.
        ImmutableArray<Finding> findings =
        [
            .. item.Report.KitchenNotes.Select((note, index) => OfKitchen(note, index == 0 && item.Report.LacksRow ? FindingLevel.Change : FindingLevel.Note)),
            .. item.Report.Findings.IsDefault ? [] : item.Report.Findings,
        ];
        return string.Join(Between, findings.Select(finding => Written(json => WriteResult(json, item, finding))));
    }

    /// <inheritdoc/>
    public override string Finish(IReadOnlyList<string> troubles, bool finished) =>
        "\n],\"invocations\":" + Written(json => WriteInvocation(json, troubles, finished)) + "}]}\n";

    /// <summary>Level and kind of a result.</summary>
    internal static (string Level, string Kind) LevelOf(FindingLevel level) => level switch
    {
        FindingLevel.Stop => ("error", "fail"),
        FindingLevel.Change => ("warning", "fail"),
        FindingLevel.Caution => ("note", "fail"),
        FindingLevel.Note => ("none", "informational"),
    };

    /// <summary>Text of a message: brackets and braces have a meaning in SARIF (3.11.5 and 3.11.6), so they are escaped.</summary>
    internal static string Message(string text) => InertText.Of(text)
        .Replace("\\", @"\\", StringComparison.Ordinal)
        .Replace("[", @"\[", StringComparison.Ordinal)
        .Replace("]", @"\]", StringComparison.Ordinal)
        .Replace("{", "{{", StringComparison.Ordinal)
        .Replace("}", "}}", StringComparison.Ordinal);

    private static string Written(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> buffer = new(1_024);
        using (Utf8JsonWriter json = new(buffer, JsonLinesReport.Options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static Finding OfKitchen(KitchenNote note, FindingLevel level) =>
        new(note.Id, level, null, [new(1, 1, 1, 1)], note.Text, string.Empty, note.Instead, note.Sources);

    private static void WriteInvocation(Utf8JsonWriter json, IReadOnlyList<string> troubles, bool finished)
    {
        json.WriteStartArray();
        json.WriteStartObject();
        json.WriteBoolean(JsonNames.ExecutionSuccessful, finished && troubles.Count == 0);
        json.WriteStartArray(JsonNames.ToolExecutionNotifications);
        foreach (string trouble in troubles)
        {
            json.WriteStartObject();
            json.WriteString(JsonNames.Level, "error");
            json.WriteStartObject(JsonNames.Message);
            json.WriteText(JsonNames.Text, Message(trouble));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private void WriteBase(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartObject(Root);
        json.WriteStartObject(JsonNames.Description);
        json.WriteText(JsonNames.Text, _words["sarif.root"]);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteResult(Utf8JsonWriter json, ReportItem item, Finding finding)
    {
        (string level, string kind) = LevelOf(finding.Level);
        json.WriteStartObject();
        json.WriteText(JsonNames.RuleId, finding.Rule);
        if (_rules.IndexOf(finding.Rule) is { } index)
        {
            json.WriteNumber(JsonNames.RuleIndex, index);
        }

        json.WriteString(JsonNames.Level, level);
        json.WriteString(JsonNames.Kind, kind);
        json.WriteStartObject(JsonNames.Message);
        json.WriteText(JsonNames.Text, Message(finding.Instead.Length == 0 ? finding.Message : $"{finding.Message} {_words["label.instead"]}: {finding.Instead}"));
        json.WriteEndObject();
        json.WriteList(JsonNames.Locations, finding.Places.IsDefaultOrEmpty ? [new(1, 1, 1, 1)] : finding.Places, (writer, place) => WriteLocation(writer, item, place));
        json.WriteStartObject(JsonNames.PartialFingerprints);
        json.WriteString(JsonNames.Fingerprint, Fingerprint(item, finding));
        json.WriteEndObject();
        json.WriteStartObject(JsonNames.Properties);
        json.WriteString(JsonNames.Level, Names.Of(finding.Level));
        json.WriteString(JsonNames.Outcome, Names.Of(item.Report.Outcome));
        json.WriteText(JsonNames.Part, finding.Part);
        if (item.Record is { } record)
        {
            json.WriteNumber(JsonNames.Record, record);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteLocation(Utf8JsonWriter json, ReportItem item, Place place)
    {
        json.WriteStartObject();
        json.WriteStartObject(JsonNames.PhysicalLocation);
        json.WriteStartObject(JsonNames.ArtifactLocation);
        (string uri, bool below) = SarifUri.Of(item.File);
        json.WriteText(JsonNames.Uri, uri);
        if (below)
        {
            json.WriteString(JsonNames.UriBaseId, Root);
        }

        json.WriteEndObject();
        if (item is { IsFileText: true, Record: null })
        {
            json.WriteStartObject(JsonNames.Region);
            json.WriteNumber(JsonNames.StartLine, place.Line);
            json.WriteNumber(JsonNames.StartColumn, place.Column);
            json.WriteNumber(JsonNames.EndLine, place.EndLine);
            json.WriteNumber(JsonNames.EndColumn, place.EndColumn);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    // What stays the same when lines are added above: the rule, the dish and the recipe's own words.
    private static string Fingerprint(ReportItem item, Finding finding) => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes($"{item.Name}\n{finding.Rule}\n{finding.Part}\n{finding.Ingredient ?? finding.Message}")))[..32];
}
