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
            json.WriteText("file"u8, file);
            json.WriteText("title"u8, adaptation.Before.Title);
            json.WriteText("kind"u8, Kind(adaptation.Kind));
            CompareJson.Both(json, "outcome"u8, Names.Of(adaptation.Before.Outcome), adaptation.After is { } after ? Names.Of(after.Outcome) : null);
            json.WriteText("formula"u8, adaptation.Formula?.Id);
            json.WriteText("recipe"u8, adaptation.Recipe.Length == 0 ? null : adaptation.Recipe);
            json.WriteList("changes"u8, adaptation.Changes, Change);
            json.WriteTexts("serving"u8, adaptation.Serving);
            json.WriteList("questions"u8, adaptation.Questions, Note);
            json.WriteList("reasons"u8, adaptation.Reasons, Note);
            json.WriteList("freezing"u8, adaptation.Freezing, static (writer, step) =>
            {
                writer.WriteStartObject();
                writer.WriteText("part"u8, step.Part);
                writer.WriteText("text"u8, step.Text);
                writer.WriteList("sources"u8, step.Sources, JsonFindings.WriteSource);
                writer.WriteEndObject();
            });
            json.WriteList("process"u8, adaptation.After?.Process ?? [], JsonProcesses.Write);
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
        json.WriteText("kind"u8, change.Kind);
        json.WriteText("what"u8, change.What);
        json.WriteText("now"u8, change.Now);
        json.WriteText("why"u8, change.Why);
        json.WriteList("sources"u8, change.Sources, JsonFindings.WriteSource);
        json.WriteEndObject();
    }

    private static void Note(Utf8JsonWriter json, AdaptNote note)
    {
        json.WriteStartObject();
        json.WriteText("what"u8, note.What);
        json.WriteText("text"u8, note.Text);
        json.WriteList("sources"u8, note.Sources, JsonFindings.WriteSource);
        json.WriteEndObject();
    }
}
