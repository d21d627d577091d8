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
            json.WriteText("before"u8, before);
            json.WriteText("after"u8, after);
            json.WriteBoolean("same"u8, comparison.IsSame);
            json.WriteBoolean("matters"u8, comparison.Matters);
            json.WriteList("changes"u8, comparison.Changes, Change);
            json.WriteList("unsure"u8, comparison.Unsure, static (writer, doubt) =>
            {
                writer.WriteStartObject();
                writer.WriteText("before"u8, doubt.Before);
                writer.WriteText("after"u8, doubt.After);
                writer.WriteRange("factor"u8, doubt.Factor);
                writer.WriteEndObject();
            });
            Both(json, "outcome"u8, Names.Of(comparison.Before.Outcome), Names.Of(comparison.After.Outcome));
            Both(json, "acidity"u8, Names.Of(comparison.Before.Acidity), Names.Of(comparison.After.Acidity));
            json.WriteBoolean("processDiffers"u8, comparison.ProcessDiffers);
            json.WriteList("shares"u8, comparison.Shares, static (writer, share) =>
            {
                writer.WriteStartObject();
                writer.WriteText("what"u8, share.What);
                writer.WriteRange("before"u8, share.Before);
                writer.WriteRange("after"u8, share.After);
                writer.WriteEndObject();
            });
            json.WriteList("newFindings"u8, comparison.NewFindings, FindingOf);
            json.WriteList("goneFindings"u8, comparison.GoneFindings, FindingOf);
            json.WriteList("unsureFindings"u8, comparison.UnsureFindings, FindingOf);
        });
    }

    /// <summary>Writes a recipe beside a published formula.</summary>
    public static void Write(TextWriter output, string file, FormulaComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(comparison);
        Object(output, json =>
        {
            json.WriteText("file"u8, file);
            json.WriteText("formula"u8, comparison.Id);
            json.WriteText("name"u8, comparison.Name);
            json.WriteText("source"u8, comparison.Source);
            json.WriteBoolean("covers"u8, comparison.Covers);
            json.WriteList("differences"u8, comparison.Differences, static (writer, row) =>
            {
                writer.WriteStartObject();
                writer.WriteText("what"u8, row.What);
                writer.WriteText("unit"u8, row.Unit);
                writer.WriteRange("yours"u8, row.Yours);
                writer.WriteRange("tested"u8, row.Tested);
                writer.WriteBoolean("allowed"u8, row.Allowed);
                writer.WriteEndObject();
            });
            json.WriteList("points"u8, comparison.Points, static (writer, point) =>
            {
                writer.WriteStartObject();
                writer.WriteText("rule"u8, point.Rule);
                writer.WriteText("ingredient"u8, point.Ingredient);
                writer.WriteText("message"u8, point.Message);
                writer.WriteText("instead"u8, point.Instead);
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
            json.WriteNumber("schemaVersion"u8, 1);
            fields(json);
            json.WriteEndObject();
        }

        output.Write(Encoding.UTF8.GetString(held.GetBuffer(), 0, (int)held.Length));
        output.Write('\n');
    }

    /// <summary>A pair of values, before and after; the second is null where there is none.</summary>
    internal static void Both(Utf8JsonWriter json, ReadOnlySpan<byte> name, string before, string? after)
    {
        json.WriteStartObject(name);
        json.WriteText("before"u8, before);
        json.WriteText("after"u8, after);
        json.WriteEndObject();
    }

    private static void Change(Utf8JsonWriter json, IngredientChange change)
    {
        json.WriteStartObject();
        json.WriteText("kind"u8, change.Kind);
        json.WriteBoolean("matters"u8, change.Matters);
        json.WriteText("before"u8, change.Before);
        json.WriteText("after"u8, change.After);
        Line(json, "beforeLine"u8, change.BeforeLine);
        Line(json, "afterLine"u8, change.AfterLine);
        json.WriteRange("factor"u8, change.Factor);
        json.WriteText("row"u8, change.RowId);
        json.WriteText("why"u8, change.Why);
        json.WriteText("instead"u8, change.Instead);
        json.WriteTexts("sources"u8, [.. change.Sources.Select(source => source.Text)]);
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, ReadOnlySpan<byte> name, int? line)
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
        json.WriteText("rule"u8, finding.Rule);
        json.WriteText("level"u8, Names.Of(finding.Level));
        json.WriteText("ingredient"u8, finding.Ingredient);
        json.WriteNumber("line"u8, finding.Places[0].Line);
        json.WriteText("message"u8, finding.Message);
        json.WriteEndObject();
    }
}
