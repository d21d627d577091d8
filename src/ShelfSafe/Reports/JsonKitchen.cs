using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes the kitchen that a recipe was judged for, and what was said of it.</summary>
internal static class JsonKitchen
{
    /// <summary>Writes the fields <c>kitchen</c>, <c>kitchenNotes</c> and <c>freezerFirst</c>.</summary>
    public static void Write(Utf8JsonWriter json, VettingReport report)
    {
        WriteKitchen(json, report.Kitchen);
        json.WriteList("kitchenNotes"u8, report.KitchenNotes, static (writer, note) =>
        {
            writer.WriteStartObject();
            writer.WriteText("id"u8, note.Id);
            writer.WriteText("text"u8, note.Text);
            writer.WriteText("instead"u8, note.Instead);
            WriteSources(writer, note.Sources);
            writer.WriteEndObject();
        });
        json.WriteList("freezerFirst"u8, report.FreezerFirst, static (writer, step) =>
        {
            writer.WriteStartObject();
            writer.WriteText("part"u8, step.Part);
            writer.WriteText("text"u8, step.Text);
            WriteSources(writer, step.Sources);
            writer.WriteEndObject();
        });
    }

    private static void WriteKitchen(Utf8JsonWriter json, Kitchen kitchen)
    {
        json.WriteStartObject("kitchen"u8);
        json.WriteRounded("altitudeFeet"u8, kitchen.AltitudeFeet ?? double.NaN);
        json.WriteText("gauge"u8, kitchen.Gauge);
        json.WriteText("jar"u8, kitchen.Jar);
        json.WriteText("region"u8, kitchen.Region.Length == 0 ? null : kitchen.Region);
        json.WriteTexts("canners"u8, kitchen.Canners);
        json.WriteText("gaugeTested"u8, kitchen.GaugeTested is { } tested ? Days.Of(tested) : null);
        WriteCapacity(json, kitchen.Capacity);
        json.WriteText("units"u8, kitchen.Metric ? "metric" : "us");
        json.WriteText("file"u8, kitchen.File);
        json.WriteEndObject();
    }

    // A number holds for any jar; an object tells each size.
    private static void WriteCapacity(Utf8JsonWriter json, CannerCapacity? capacity)
    {
        if (capacity is null)
        {
            json.WriteNull("capacity"u8);
        }
        else if (capacity.Any is { } any)
        {
            json.WriteNumber("capacity"u8, any);
        }
        else
        {
            json.WriteStartObject("capacity"u8);
            foreach (string jar in JarSizes.All.Where(capacity.Jars.ContainsKey))
            {
                json.WriteNumber(jar, capacity.Jars[jar]);
            }

            json.WriteEndObject();
        }
    }

    private static void WriteSources(Utf8JsonWriter json, System.Collections.Immutable.ImmutableArray<SourceReference> sources) =>
        json.WriteList("sources"u8, sources, JsonFindings.WriteSource);
}
