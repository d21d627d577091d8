using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ShelfSafe.Records;

/// <summary>Batches as JSON Lines: one flat object a batch and line.</summary>
internal static class BatchJson
{
    private const string NoObject = "is no JSON object; each line holds one batch";
    private static readonly JsonWriterOptions _writing = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonDocumentOptions _reading = new() { AllowDuplicateProperties = false, MaxDepth = 4 };

    /// <summary>Writes batches.</summary>
    public static string Write(IEnumerable<BatchRecord> batches)
    {
        StringBuilder text = new();
        foreach (BatchRecord batch in batches)
        {
            using MemoryStream held = new();
            using (Utf8JsonWriter json = new(held, _writing))
            {
                json.WriteStartObject();
                foreach (BatchField field in BatchFields.All)
                {
                    WriteField(json, field, field.Write(batch));
                }

                json.WriteEndObject();
            }

            text.Append(Encoding.UTF8.GetString(held.ToArray())).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads batches; empty lines count for nothing.</summary>
    public static List<ImportRow> Read(string text, List<ImportFault> faults)
    {
        List<ImportRow> rows = [];
        int number = 0;
        foreach (string line in text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n'))
        {
            number++;
            if (line.AsSpan().Trim().IsEmpty)
            {
                continue;
            }

            if (One(line, out string wrong) is { } batch)
            {
                rows.Add(new(number, batch));
            }
            else
            {
                faults.Add(new(number, wrong));
            }
        }

        return rows;
    }

    private static BatchRecord? One(string line, out string wrong)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(line, _reading);
            return Fields(document.RootElement, out wrong) is { } fields ? BatchFields.Read(name => fields.GetValueOrDefault(name), out wrong) : null;
        }
        catch (JsonException)
        {
            wrong = NoObject;
        }
        catch (InvalidOperationException)
        {
            wrong = "holds half a character; save it as UTF-8";
        }

        return null;
    }

    private static Dictionary<string, string?>? Fields(JsonElement batch, out string wrong)
    {
        wrong = NoObject;
        if (batch.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        Dictionary<string, string?> fields = new(StringComparer.Ordinal);
        foreach (JsonProperty property in batch.EnumerateObject())
        {
            if (BatchFields.All.FirstOrDefault(field => field.Name == property.Name) is not { } known)
            {
                wrong = $"\"{property.Name}\" is no field of a batch";
                return null;
            }

            if (!IsOfKind(known.Kind, property.Value.ValueKind))
            {
                wrong = $"\"{property.Name}\" is of the wrong kind; \"batch export\" shows how it is written";
                return null;
            }

            fields[property.Name] = property.Value.ValueKind switch
            {
                JsonValueKind.Null => null,
                JsonValueKind.String => property.Value.GetString(),
                _ => property.Value.GetRawText(),
            };
        }

        wrong = string.Empty;
        return fields;
    }

    private static bool IsOfKind(FieldKind kind, JsonValueKind value) => value == JsonValueKind.Null || kind switch
    {
        FieldKind.Text => value == JsonValueKind.String,
        FieldKind.Number => value == JsonValueKind.Number,
        FieldKind.Flag => value is JsonValueKind.True or JsonValueKind.False,
    };

    private static void WriteField(Utf8JsonWriter json, BatchField field, string? text)
    {
        if (text is null)
        {
            json.WriteNull(field.Name);
        }
        else if (field.Kind == FieldKind.Text)
        {
            json.WriteString(field.Name, text);
        }
        else
        {
            json.WritePropertyName(field.Name);
            json.WriteRawValue(text);
        }
    }
}
