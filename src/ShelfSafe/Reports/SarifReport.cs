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
        json.WriteBoolean("executionSuccessful"u8, finished && troubles.Count == 0);
        json.WriteStartArray("toolExecutionNotifications"u8);
        foreach (string trouble in troubles)
        {
            json.WriteStartObject();
            json.WriteString("level"u8, "error");
            json.WriteStartObject("message"u8);
            json.WriteText("text"u8, Message(trouble));
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
        json.WriteStartObject("description"u8);
        json.WriteText("text"u8, _words["sarif.root"]);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteResult(Utf8JsonWriter json, ReportItem item, Finding finding)
    {
        (string level, string kind) = LevelOf(finding.Level);
        json.WriteStartObject();
        json.WriteText("ruleId"u8, finding.Rule);
        if (_rules.IndexOf(finding.Rule) is { } index)
        {
            json.WriteNumber("ruleIndex"u8, index);
        }

        json.WriteString("level"u8, level);
        json.WriteString("kind"u8, kind);
        json.WriteStartObject("message"u8);
        json.WriteText("text"u8, Message(finding.Instead.Length == 0 ? finding.Message : $"{finding.Message} {_words["label.instead"]}: {finding.Instead}"));
        json.WriteEndObject();
        json.WriteList("locations"u8, finding.Places.IsDefaultOrEmpty ? [new(1, 1, 1, 1)] : finding.Places, (writer, place) => WriteLocation(writer, item, place));
        json.WriteStartObject("partialFingerprints"u8);
        json.WriteString("shelfsafe/v1"u8, Fingerprint(item, finding));
        json.WriteEndObject();
        json.WriteStartObject("properties"u8);
        json.WriteString("level"u8, Names.Of(finding.Level));
        json.WriteString("outcome"u8, Names.Of(item.Report.Outcome));
        json.WriteText("part"u8, finding.Part);
        if (item.Record is { } record)
        {
            json.WriteNumber("record"u8, record);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteLocation(Utf8JsonWriter json, ReportItem item, Place place)
    {
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation"u8);
        json.WriteStartObject("artifactLocation"u8);
        (string uri, bool below) = SarifUri.Of(item.File);
        json.WriteText("uri"u8, uri);
        if (below)
        {
            json.WriteString("uriBaseId"u8, Root);
        }

        json.WriteEndObject();
        if (item is { IsFileText: true, Record: null })
        {
            json.WriteStartObject("region"u8);
            json.WriteNumber("startLine"u8, place.Line);
            json.WriteNumber("startColumn"u8, place.Column);
            json.WriteNumber("endLine"u8, place.EndLine);
            json.WriteNumber("endColumn"u8, place.EndColumn);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    // What stays the same when lines are added above: the rule, the dish and the recipe's own words.
    private static string Fingerprint(ReportItem item, Finding finding) => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes($"{item.Name}\n{finding.Rule}\n{finding.Part}\n{finding.Ingredient ?? finding.Message}")))[..32];
}
