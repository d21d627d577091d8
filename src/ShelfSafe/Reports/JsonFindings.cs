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
        json.WriteText("rule"u8, finding.Rule);
        json.WriteString("level"u8, Names.Of(finding.Level));
        json.WriteText("ingredient"u8, finding.Ingredient);
        json.WriteNumber("line"u8, first.Line);
        json.WriteNumber("column"u8, first.Column);
        json.WriteNumber("endColumn"u8, first.EndColumn);
        json.WriteText("message"u8, finding.Message);
        json.WriteText("why"u8, finding.Why);
        json.WriteText("instead"u8, finding.Instead);
        json.WriteText("source"u8, finding.Sources.IsDefaultOrEmpty ? null : finding.Sources[0].Text);
        json.WriteList("places"u8, finding.Places.IsDefaultOrEmpty ? [first] : finding.Places, WritePlace);
        json.WriteList("sources"u8, finding.Sources, WriteSource);
        json.WriteText("part"u8, finding.Part);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, Place place)
    {
        json.WriteStartObject();
        json.WriteNumber("line"u8, place.Line);
        json.WriteNumber("column"u8, place.Column);
        json.WriteNumber("endLine"u8, place.EndLine);
        json.WriteNumber("endColumn"u8, place.EndColumn);
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
        json.WriteText("id"u8, source.Id);
        json.WriteText("title"u8, source.Title);
        json.WriteText("locator"u8, source.Locator);
        json.WriteText("url"u8, source.Url);
        json.WriteEndObject();
    }
}
