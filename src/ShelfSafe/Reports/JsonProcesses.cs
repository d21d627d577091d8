using System.Text.Json;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes one published process.</summary>
internal static class JsonProcesses
{
    /// <summary>Writes one object.</summary>
    public static void Write(Utf8JsonWriter json, ProcessLine process)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Method, process.Method);
        json.WriteText(JsonNames.Jar, process.Jar);
        json.WriteText(JsonNames.Pack, process.Pack);
        json.WriteNumber(JsonNames.Minutes, process.Minutes);
        json.WriteText(JsonNames.Gauge, process.Gauge);
        json.WriteRounded(JsonNames.Psi, process.Psi ?? double.NaN);
        json.WriteRange(JsonNames.AltitudeFeet, process.AltitudeFeet);
        json.WriteRounded(JsonNames.HeadspaceInches, process.HeadspaceInches);
        json.WriteText(JsonNames.Source, process.Source);
        json.WriteText(JsonNames.RowId, process.RowId);
        json.WriteText(JsonNames.Product, process.Product);
        json.WriteText(JsonNames.AcidAddition, process.AcidAddition);
        json.WriteText(JsonNames.Conditions, process.Conditions);
        json.WriteText(JsonNames.Note, process.Note);
        json.WriteList(JsonNames.Overruled, process.Overruled, static (writer, other) =>
        {
            writer.WriteStartObject();
            writer.WriteText(JsonNames.RowId, other.RowId);
            writer.WriteText(JsonNames.Product, other.Product);
            writer.WriteNumber(JsonNames.Minutes, other.Minutes);
            writer.WriteText(JsonNames.Source, other.Source);
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }
}
