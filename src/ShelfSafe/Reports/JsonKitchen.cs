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
        json.WriteList(JsonNames.KitchenNotes, report.KitchenNotes, static (writer, note) =>
        {
            writer.WriteStartObject();
            writer.WriteText(JsonNames.Id, note.Id);
            writer.WriteText(JsonNames.Text, note.Text);
            writer.WriteText(JsonNames.Instead, note.Instead);
            WriteSources(writer, note.Sources);
            writer.WriteEndObject();
        });
        json.WriteList(JsonNames.FreezerFirst, report.FreezerFirst, static (writer, step) =>
        {
            writer.WriteStartObject();
            writer.WriteText(JsonNames.Part, step.Part);
            writer.WriteText(JsonNames.Text, step.Text);
            WriteSources(writer, step.Sources);
            writer.WriteEndObject();
        });
    }

    private static void WriteKitchen(Utf8JsonWriter json, Kitchen kitchen)
    {
        json.WriteStartObject(JsonNames.Kitchen);
        json.WriteRounded(JsonNames.AltitudeFeet, kitchen.AltitudeFeet ?? double.NaN);
        json.WriteText(JsonNames.Gauge, kitchen.Gauge);
        json.WriteText(JsonNames.Jar, kitchen.Jar);
        json.WriteText(JsonNames.Region, kitchen.Region.Length == 0 ? null : kitchen.Region);
        json.WriteTexts(JsonNames.Canners, kitchen.Canners);
        json.WriteText(JsonNames.GaugeTested, kitchen.GaugeTested is { } tested ? Days.Of(tested) : null);
        WriteCapacity(json, kitchen.Capacity);
        json.WriteText(JsonNames.Units, kitchen.Metric ? "metric" : "us");
        json.WriteText(JsonNames.File, kitchen.File);
        json.WriteEndObject();
    }

    // A number holds for any jar; an object tells each size.
    private static void WriteCapacity(Utf8JsonWriter json, CannerCapacity? capacity)
    {
        if (capacity is null)
        {
            json.WriteNull(JsonNames.Capacity);
        }
        else if (capacity.Any is { } any)
        {
            json.WriteNumber(JsonNames.Capacity, any);
        }
        else
        {
            json.WriteStartObject(JsonNames.Capacity);
            foreach (string jar in JarSizes.All.Where(capacity.Jars.ContainsKey))
            {
                json.WriteNumber(jar, capacity.Jars[jar]);
            }

            json.WriteEndObject();
        }
    }

    private static void WriteSources(Utf8JsonWriter json, System.Collections.Immutable.ImmutableArray<SourceReference> sources) =>
        json.WriteList(JsonNames.Sources, sources, JsonFindings.WriteSource);
}
