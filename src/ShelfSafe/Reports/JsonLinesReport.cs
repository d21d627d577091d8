using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes a report as one line of JSON, in the published shape: fields may be added, never renamed.</summary>
/// <remarks>
/// One instance may write many reports: it keeps its buffer, so that memory does not grow with the number of recipes.
/// Lists are never null. An unbounded end of a range is null. Control and direction marks come out as escapes.
/// </remarks>
public sealed class JsonLinesReport
{
    /// <summary>Version of the shape; it rises only when a field changes its meaning.</summary>
    public const int SchemaVersion = 1;

    private const string SchemaResource = "schema/report.schema.json";

    /// <summary>No indenting; marks that turn or hide text come out as escapes. The order of calls is held by tests against the schema, not at run time.</summary>
    internal static readonly JsonWriterOptions Options = new() { Encoder = Encoder(), Indented = false, SkipValidation = true };

    private readonly ArrayBufferWriter<byte> _buffer = new(16_384);

    /// <summary>The JSON Schema (2020-12) of a line, as published.</summary>
    public static string Schema()
    {
        using Stream stream = typeof(JsonLinesReport).Assembly.GetManifestResourceStream(SchemaResource)
            ?? throw new InvalidOperationException($"{SchemaResource} was not built into the library");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Writes one object and a line feed.</summary>
    /// <param name="output">Receives the line.</param>
    /// <param name="file">Path as given, or as found below a folder that was given; <c>-</c> for standard input.</param>
    /// <param name="report">The finished report.</param>
    public void Write(TextWriter output, string file, VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(report);
        output.Write(Line(new(file, report, string.Empty)));
    }

    /// <summary>Writes one object and a line feed as it comes, without holding the line whole.</summary>
    /// <param name="output">Receives the line.</param>
    /// <param name="item">The recipe.</param>
    internal static void Stream(TextWriter output, ReportItem item)
    {
        using (Utf8JsonWriter json = new(new TextPieces(output), Options))
        {
            WriteReport(json, item);
        }

        output.Write('\n');
    }

    /// <summary>One object and a line feed.</summary>
    /// <param name="item">The recipe; <c>record</c> is left out for a file of one recipe, <c>textRead</c> unless the text was made of structured data.</param>
    public string Line(ReportItem item) => Encoding.UTF8.GetString(Written(item));

    /// <summary>The same line as UTF-8.</summary>
    internal byte[] Utf8(ReportItem item) => Written(item).ToArray();

    /// <summary>One object for a record that could not be read, and a line feed, so that records in and lines out stay in step.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="record">Number of the record.</param>
    /// <param name="wrong">What is wrong with it.</param>
    public string Broken(string file, int record, string wrong) => Encoding.UTF8.GetString(Written(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("schemaVersion"u8, SchemaVersion);
        json.WriteText("file"u8, file);
        json.WriteNumber("record"u8, record);
        json.WriteText("error"u8, wrong);
        json.WriteEndObject();
    }));

    private ReadOnlySpan<byte> Written(ReportItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Written(json => WriteReport(json, item));
    }

    // What stands in the buffer until the next line is written.
    private ReadOnlySpan<byte> Written(Action<Utf8JsonWriter> write)
    {
        _buffer.ResetWrittenCount();
        using (Utf8JsonWriter json = new(_buffer, Options))
        {
            write(json);
        }

        _buffer.Write("\n"u8);
        return _buffer.WrittenSpan;
    }

    private static void WriteReport(Utf8JsonWriter json, ReportItem item)
    {
        VettingReport report = item.Report;
        json.WriteStartObject();
        json.WriteNumber("schemaVersion"u8, SchemaVersion);
        json.WriteText("file"u8, item.File);
        json.WriteText("title"u8, report.Title);
        json.WriteString("acidity"u8, Names.Of(report.Acidity));
        json.WriteString("outcome"u8, Names.Of(report.Outcome));
        WriteCategory(json, report.Category);
        json.WriteList("findings"u8, report.Findings, JsonFindings.Write);
        json.WriteList("ingredients"u8, report.Ingredients, JsonIngredients.Write);
        WriteMeasures(json, report.Measures);
        json.WriteList("nearest"u8, report.Nearest, WriteNearest);
        json.WriteList("process"u8, report.Process, JsonProcesses.Write);
        json.WriteList("processAfterChanges"u8, report.ProcessAfterChanges, JsonProcesses.Write);
        json.WriteTexts("reasons"u8, report.Reasons);
        json.WriteList("storage"u8, report.Storage, WriteStorage);
        json.WriteList("parts"u8, report.Parts, WritePart);
        WritePack(json, report.Pack);
        JsonKitchen.Write(json, report);
        if (item.Record is { } record)
        {
            json.WriteNumber("record"u8, record);
        }

        if (!item.IsFileText)
        {
            json.WriteText("textRead"u8, item.Text);
        }

        json.WriteEndObject();
    }

    private static void WriteCategory(Utf8JsonWriter json, CategoryReport? category)
    {
        if (category is null)
        {
            json.WriteNull("category"u8);
            return;
        }

        json.WriteStartObject("category"u8);
        json.WriteText("id"u8, category.Id);
        json.WriteText("name"u8, category.Name);
        json.WriteText("kind"u8, category.Kind);
        json.WriteList("differences"u8, category.Differences, static (writer, difference) =>
        {
            writer.WriteStartObject();
            writer.WriteText("what"u8, difference.What);
            writer.WriteText("unit"u8, difference.Unit);
            writer.WriteRange("yours"u8, difference.Yours);
            writer.WriteRange("tested"u8, difference.Tested);
            writer.WriteBoolean("allowed"u8, difference.Allowed);
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void WriteMeasures(Utf8JsonWriter json, MeasuresReport measures)
    {
        json.WriteStartObject("measures"u8);
        json.WriteRange("solidsShare"u8, measures.SolidsShare);
        json.WriteRange("fatShare"u8, measures.FatShare);
        json.WriteRange("acidShare"u8, measures.AcidShare);
        json.WriteRange("lowAcidShare"u8, measures.LowAcidShare);
        json.WriteRange("totalGrams"u8, measures.TotalGrams);
        json.WriteRange("totalMillilitres"u8, measures.TotalMillilitres);
        if (measures.JarYield is { } yield)
        {
            json.WriteStartObject("jarYield"u8);
            json.WriteText("jar"u8, yield.Jar);
            json.WriteRounded("low"u8, yield.Jars.Low);
            json.WriteRounded("high"u8, yield.Jars.High);
            json.WriteRange("loads"u8, yield.Loads);
            json.WriteRange("remainderMillilitres"u8, yield.RemainderMillilitres);
            json.WriteRounded("headspaceInches"u8, yield.HeadspaceInches);
            json.WriteRange("jarsALoad"u8, yield.JarsALoad);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("jarYield"u8);
        }

        json.WriteEndObject();
    }

    private static void WriteNearest(Utf8JsonWriter json, NearestFormula formula)
    {
        json.WriteStartObject();
        json.WriteText("id"u8, formula.Id);
        json.WriteText("name"u8, formula.Name);
        json.WriteText("swap"u8, formula.Swap);
        json.WriteTexts("scaledIngredients"u8, formula.ScaledIngredients);
        json.WriteText("source"u8, formula.Source);
        json.WriteEndObject();
    }

    private static void WriteStorage(Utf8JsonWriter json, StorageAdvice advice)
    {
        json.WriteStartObject();
        json.WriteText("where"u8, advice.Where);
        json.WriteText("span"u8, advice.Span);
        json.WriteText("text"u8, advice.Text);
        json.WriteText("source"u8, advice.Source);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, PartReport part)
    {
        json.WriteStartObject();
        json.WriteText("name"u8, part.Name);
        json.WriteNumber("line"u8, part.Line);
        json.WriteNumber("endLine"u8, part.EndLine);
        json.WriteString("acidity"u8, Names.Of(part.Acidity));
        json.WriteString("outcome"u8, Names.Of(part.Outcome));
        json.WriteEndObject();
    }

    private static void WritePack(Utf8JsonWriter json, PackIdentity pack)
    {
        json.WriteStartObject("pack"u8);
        json.WriteText("version"u8, pack.Version);
        json.WriteText("date"u8, pack.Date);
        json.WriteText("sha256"u8, pack.Sha256);
        json.WriteEndObject();
    }

    private static JavaScriptEncoder Encoder()
    {
        // Every script may stand as it is; marks that turn the direction of text or hide in it are escaped.
        TextEncoderSettings settings = new(UnicodeRanges.All);
        settings.ForbidCharacters(
            '\u061C', '\u200B', '\u200E', '\u200F', '\u202A', '\u202B', '\u202C', '\u202D', '\u202E', '\u2066', '\u2067', '\u2068', '\u2069', '\uFEFF');
        return JavaScriptEncoder.Create(settings);
    }
}
