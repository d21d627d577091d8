using System.Buffers;
using System.Runtime.CompilerServices;
using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes a finding; its single place and source repeat the first of the lists.</summary>
internal static class JsonFindings
{
    // A source is one object for all findings of a pack, and most of a line of the report is sources.
    private static readonly ConditionalWeakTable<SourceReference, byte[]> Written = [];

    /// <summary>Writes one object.</summary>
    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        Place first = finding.Places.IsDefaultOrEmpty ? new(1, 1, 1, 1) : finding.Places[0];
        json.WriteStartObject();
        json.WriteText(JsonNames.Rule, finding.Rule);
        json.WriteString(JsonNames.Level, Names.Of(finding.Level));
        json.WriteText(JsonNames.Ingredient, finding.Ingredient);
        json.WriteNumber(JsonNames.Line, first.Line);
        json.WriteNumber(JsonNames.Column, first.Column);
        json.WriteNumber(JsonNames.EndColumn, first.EndColumn);
        json.WriteText(JsonNames.Message, finding.Message);
        json.WriteText(JsonNames.Why, finding.Why);
        json.WriteText(JsonNames.Instead, finding.Instead);
        json.WriteText(JsonNames.Source, finding.Sources.IsDefaultOrEmpty ? null : finding.Sources[0].Text);
        json.WriteList(JsonNames.Places, finding.Places.IsDefaultOrEmpty ? [first] : finding.Places, WritePlace);
        json.WriteList(JsonNames.Sources, finding.Sources, WriteSource);
        json.WriteText(JsonNames.Part, finding.Part);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, Place place)
    {
        json.WriteStartObject();
        json.WriteNumber(JsonNames.Line, place.Line);
        json.WriteNumber(JsonNames.Column, place.Column);
        json.WriteNumber(JsonNames.EndLine, place.EndLine);
        json.WriteNumber(JsonNames.EndColumn, place.EndColumn);
        json.WriteEndObject();
    }

    /// <summary>Writes one source.</summary>
    public static void WriteSource(Utf8JsonWriter json, SourceReference source)
    {
        if (json.Options.Indented || !ReferenceEquals(json.Options.Encoder, JsonLinesReport.Options.Encoder))
        {
            WriteAnew(json, source);
        }
        else
        {
            json.WriteRawValue(Written.GetValue(source, Bytes), skipInputValidation: true);
        }
    }

    private static byte[] Bytes(SourceReference source)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, JsonLinesReport.Options))
        {
            WriteAnew(json, source);
        }

        return bytes.WrittenSpan.ToArray();
    }

    private static void WriteAnew(Utf8JsonWriter json, SourceReference source)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Id, source.Id);
        json.WriteText(JsonNames.Title, source.Title);
        json.WriteText(JsonNames.Locator, source.Locator);
        json.WriteText(JsonNames.Url, source.Url);
        json.WriteEndObject();
    }
}
