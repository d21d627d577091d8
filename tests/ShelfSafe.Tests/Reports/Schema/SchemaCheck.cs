using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace ShelfSafe.Tests.Reports.Schema;

/// <summary>A JSON Schema, and what it holds against a document.</summary>
internal sealed class SchemaCheck
{
    private readonly JsonSchema _schema;

    private SchemaCheck(JsonSchema schema) => _schema = schema;

    /// <summary>The published schema of the report, closed: in the tests a field that it does not name is a fault.</summary>
    public static SchemaCheck OfReport()
    {
        JsonNode schema = JsonNode.Parse(ShelfSafe.Reports.JsonLinesReport.Schema())!;
        Close(schema);
        schema["$id"] = "urn:shelfsafe:report:closed:" + Guid.NewGuid();
        return new(JsonSchema.FromText(schema.ToJsonString()));
    }

    /// <summary>The SARIF 2.1.0 schema of OASIS. It is written in draft 4; the words it uses mean the same in draft 7 but for the name of its id.</summary>
    public static SchemaCheck OfSarif()
    {
        using Stream stream = typeof(SchemaCheck).Assembly.GetManifestResourceStream("Sarif/sarif-2.1.0-rtm.5.json")!;
        JsonObject schema = JsonNode.Parse(stream)!.AsObject();
        schema.Remove("id");
        schema["$schema"] = "http://json-schema.org/draft-07/schema#";
        return new(JsonSchema.FromText(schema.ToJsonString()));
    }

    /// <summary>What is wrong with a document, one line each; none where it is valid.</summary>
    public IReadOnlyList<string> Faults(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        EvaluationResults results = _schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        return results.IsValid
            ? []
            : [.. (results.Details ?? []).Where(static one => one.Errors is not null).SelectMany(static one => one.Errors!.Select(error => $"{one.InstanceLocation}: {error.Key}: {error.Value}")).Append("invalid")];
    }

    private static void Close(JsonNode? node)
    {
        if (node is JsonObject one)
        {
            foreach ((string _, JsonNode? inner) in one.ToArray())
            {
                Close(inner);
            }

            if (one.ContainsKey("properties") && one["type"]?.GetValueKind() == JsonValueKind.String && one["type"]!.GetValue<string>() == "object")
            {
                one["additionalProperties"] = false;
            }
        }
        else if (node is JsonArray list)
        {
            foreach (JsonNode? inner in list)
            {
                Close(inner);
            }
        }
    }
}
