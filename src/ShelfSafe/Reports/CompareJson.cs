using System.Text;
using System.Text.Json;
using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes a comparison as one JSON object on one line.</summary>
public static class CompareJson
{
    /// <summary>Writes a comparison of two recipes.</summary>
    public static void Write(TextWriter output, string before, string after, RecipeComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(comparison);
        Object(output, json =>
        {
            json.WriteText(JsonNames.Before, before);
            json.WriteText(JsonNames.After, after);
            json.WriteBoolean(JsonNames.Same, comparison.IsSame);
            json.WriteBoolean(JsonNames.Matters, comparison.Matters);
            json.WriteList(JsonNames.Changes, comparison.Changes, Change);
            json.WriteList(JsonNames.Unsure, comparison.Unsure, static (writer, doubt) =>
            {
                writer.WriteStartObject();
                writer.WriteText(JsonNames.Before, doubt.Before);
                writer.WriteText(JsonNames.After, doubt.After);
                writer.WriteRange(JsonNames.Factor, doubt.Factor);
                writer.WriteEndObject();
            });
            Both(json, JsonNames.Outcome, Names.Of(comparison.Before.Outcome), Names.Of(comparison.After.Outcome));
            Both(json, JsonNames.Acidity, Names.Of(comparison.Before.Acidity), Names.Of(comparison.After.Acidity));
            json.WriteBoolean(JsonNames.ProcessDiffers, comparison.ProcessDiffers);
            json.WriteList(JsonNames.Shares, comparison.Shares, static (writer, share) =>
            {
                writer.WriteStartObject();
                writer.WriteText(JsonNames.What, share.What);
                writer.WriteRange(JsonNames.Before, share.Before);
                writer.WriteRange(JsonNames.After, share.After);
                writer.WriteEndObject();
            });
            json.WriteList(JsonNames.NewFindings, comparison.NewFindings, FindingOf);
            json.WriteList(JsonNames.GoneFindings, comparison.GoneFindings, FindingOf);
            json.WriteList(JsonNames.UnsureFindings, comparison.UnsureFindings, FindingOf);
        });
    }

    /// <summary>Writes a recipe beside a published formula.</summary>
    public static void Write(TextWriter output, string file, FormulaComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(comparison);
        Object(output, json =>
        {
            json.WriteText(JsonNames.File, file);
            json.WriteText(JsonNames.Formula, comparison.Id);
            json.WriteText(JsonNames.Name, comparison.Name);
            json.WriteText(JsonNames.Source, comparison.Source);
            json.WriteBoolean(JsonNames.Covers, comparison.Covers);
            json.WriteList(JsonNames.Differences, comparison.Differences, static (writer, row) =>
            {
                writer.WriteStartObject();
                writer.WriteText(JsonNames.What, row.What);
                writer.WriteText(JsonNames.Unit, row.Unit);
                writer.WriteRange(JsonNames.Yours, row.Yours);
                writer.WriteRange(JsonNames.Tested, row.Tested);
                writer.WriteBoolean(JsonNames.Allowed, row.Allowed);
                writer.WriteEndObject();
            });
            json.WriteList(JsonNames.Points, comparison.Points, static (writer, point) =>
            {
                writer.WriteStartObject();
                writer.WriteText(JsonNames.Rule, point.Rule);
                writer.WriteText(JsonNames.Ingredient, point.Ingredient);
                writer.WriteText(JsonNames.Message, point.Message);
                writer.WriteText(JsonNames.Instead, point.Instead);
                writer.WriteEndObject();
            });
        });
    }

    /// <summary>One object on one line, with the version of the form first.</summary>
    internal static void Object(TextWriter output, Action<Utf8JsonWriter> fields)
    {
        using MemoryStream held = new();
        using (Utf8JsonWriter json = new(held, JsonLinesReport.Options))
        {
            json.WriteStartObject();
            json.WriteNumber(JsonNames.SchemaVersion, 1);
            fields(json);
            json.WriteEndObject();
        }

        output.Write(Encoding.UTF8.GetString(held.GetBuffer(), 0, (int)held.Length));
        output.Write('\n');
    }

    /// <summary>A pair of values, before and after; the second is null where there is none.</summary>
    internal static void Both(Utf8JsonWriter json, JsonEncodedText name, string before, string? after)
    {
        json.WriteStartObject(name);
        json.WriteText(JsonNames.Before, before);
        json.WriteText(JsonNames.After, after);
        json.WriteEndObject();
    }

    private static void Change(Utf8JsonWriter json, IngredientChange change)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Kind, change.Kind);
        json.WriteBoolean(JsonNames.Matters, change.Matters);
        json.WriteText(JsonNames.Before, change.Before);
        json.WriteText(JsonNames.After, change.After);
        Line(json, JsonNames.BeforeLine, change.BeforeLine);
        Line(json, JsonNames.AfterLine, change.AfterLine);
        json.WriteRange(JsonNames.Factor, change.Factor);
        json.WriteText(JsonNames.Row, change.RowId);
        json.WriteText(JsonNames.Why, change.Why);
        json.WriteText(JsonNames.Instead, change.Instead);
        json.WriteTexts(JsonNames.Sources, [.. change.Sources.Select(source => source.Text)]);
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, JsonEncodedText name, int? line)
    {
        if (line is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void FindingOf(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Rule, finding.Rule);
        json.WriteText(JsonNames.Level, Names.Of(finding.Level));
        json.WriteText(JsonNames.Ingredient, finding.Ingredient);
        json.WriteNumber(JsonNames.Line, finding.Places[0].Line);
        json.WriteText(JsonNames.Message, finding.Message);
        json.WriteEndObject();
    }
}
