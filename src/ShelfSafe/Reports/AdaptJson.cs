using System.Text.Json;
using ShelfSafe.Changes;
using ShelfSafe.Core;

namespace ShelfSafe.Reports;

/// <summary>Writes a jar version, or its freezer version, as one JSON object on one line.</summary>
public static class AdaptJson
{
    /// <summary>Writes it.</summary>
    /// <param name="output">Receives one line that ends in a line feed.</param>
    /// <param name="file">Path of the recipe as given.</param>
    /// <param name="adaptation">What came of it.</param>
    public static void Write(TextWriter output, string file, Adaptation adaptation)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(adaptation);
        CompareJson.Object(output, json =>
        {
            json.WriteText(JsonNames.File, file);
            json.WriteText(JsonNames.Title, adaptation.Before.Title);
            json.WriteText(JsonNames.Kind, Kind(adaptation.Kind));
            CompareJson.Both(json, JsonNames.Outcome, Names.Of(adaptation.Before.Outcome), adaptation.After is { } after ? Names.Of(after.Outcome) : null);
            json.WriteText(JsonNames.Formula, adaptation.Formula?.Id);
            json.WriteText(JsonNames.Recipe, adaptation.Recipe.Length == 0 ? null : adaptation.Recipe);
            json.WriteList(JsonNames.Changes, adaptation.Changes, Change);
            json.WriteTexts(JsonNames.Serving, adaptation.Serving);
            json.WriteList(JsonNames.Questions, adaptation.Questions, Note);
            json.WriteList(JsonNames.Reasons, adaptation.Reasons, Note);
            json.WriteList(JsonNames.Freezing, adaptation.Freezing, static (writer, step) =>
            {
                writer.WriteStartObject();
                writer.WriteText(JsonNames.Part, step.Part);
                writer.WriteText(JsonNames.Text, step.Text);
                writer.WriteList(JsonNames.Sources, step.Sources, JsonFindings.WriteSource);
                writer.WriteEndObject();
            });
            json.WriteList(JsonNames.Process, adaptation.After?.Process ?? [], JsonProcesses.Write);
        });
    }

    private static string Kind(AdaptationKind kind) => kind switch
    {
        AdaptationKind.Jar => "jar",
        AdaptationKind.AsWritten => "as-written",
        AdaptationKind.Question => "question",
        AdaptationKind.Freezer => "freezer",
        AdaptationKind.Nothing => "nothing",
    };

    private static void Change(Utf8JsonWriter json, AdaptChange change)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Kind, change.Kind);
        json.WriteText(JsonNames.What, change.What);
        json.WriteText(JsonNames.Now, change.Now);
        json.WriteText(JsonNames.Why, change.Why);
        json.WriteList(JsonNames.Sources, change.Sources, JsonFindings.WriteSource);
        json.WriteEndObject();
    }

    private static void Note(Utf8JsonWriter json, AdaptNote note)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.What, note.What);
        json.WriteText(JsonNames.Text, note.Text);
        json.WriteList(JsonNames.Sources, note.Sources, JsonFindings.WriteSource);
        json.WriteEndObject();
    }
}
