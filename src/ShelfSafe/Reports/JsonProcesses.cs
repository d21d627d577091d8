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
        json.WriteText("method"u8, process.Method);
        json.WriteText("jar"u8, process.Jar);
        json.WriteText("pack"u8, process.Pack);
        json.WriteNumber("minutes"u8, process.Minutes);
        json.WriteText("gauge"u8, process.Gauge);
        json.WriteRounded("psi"u8, process.Psi ?? double.NaN);
        json.WriteRange("altitudeFeet"u8, process.AltitudeFeet);
        json.WriteRounded("headspaceInches"u8, process.HeadspaceInches);
        json.WriteText("source"u8, process.Source);
        json.WriteText("rowId"u8, process.RowId);
        json.WriteText("product"u8, process.Product);
        json.WriteText("acidAddition"u8, process.AcidAddition);
        json.WriteText("conditions"u8, process.Conditions);
        json.WriteText("note"u8, process.Note);
        json.WriteList("overruled"u8, process.Overruled, static (writer, other) =>
        {
            writer.WriteStartObject();
            writer.WriteText("rowId"u8, other.RowId);
            writer.WriteText("product"u8, other.Product);
            writer.WriteNumber("minutes"u8, other.Minutes);
            writer.WriteText("source"u8, other.Source);
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }
}
