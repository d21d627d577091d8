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
        json.WriteNumber(JsonNames.SchemaVersion, SchemaVersion);
        json.WriteText(JsonNames.File, file);
        json.WriteNumber(JsonNames.Record, record);
        json.WriteText(JsonNames.Error, wrong);
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
        json.WriteNumber(JsonNames.SchemaVersion, SchemaVersion);
        json.WriteText(JsonNames.File, item.File);
        json.WriteText(JsonNames.Title, report.Title);
        json.WriteString(JsonNames.Acidity, Names.Of(report.Acidity));
        json.WriteString(JsonNames.Outcome, Names.Of(report.Outcome));
        WriteCategory(json, report.Category);
        json.WriteList(JsonNames.Findings, report.Findings, JsonFindings.Write);
        json.WriteList(JsonNames.Ingredients, report.Ingredients, JsonIngredients.Write);
        WriteMeasures(json, report.Measures);
        json.WriteList(JsonNames.Nearest, report.Nearest, WriteNearest);
        json.WriteList(JsonNames.Process, report.Process, JsonProcesses.Write);
        json.WriteList(JsonNames.ProcessAfterChanges, report.ProcessAfterChanges, JsonProcesses.Write);
        json.WriteTexts(JsonNames.Reasons, report.Reasons);
        json.WriteList(JsonNames.Storage, report.Storage, WriteStorage);
        json.WriteList(JsonNames.Parts, report.Parts, WritePart);
        WritePack(json, report.Pack);
        JsonKitchen.Write(json, report);
        if (item.Record is { } record)
        {
            json.WriteNumber(JsonNames.Record, record);
        }

        if (!item.IsFileText)
        {
            json.WriteText(JsonNames.TextRead, item.Text);
        }

        json.WriteEndObject();
    }

    private static void WriteCategory(Utf8JsonWriter json, CategoryReport? category)
    {
        if (category is null)
        {
            json.WriteNull(JsonNames.Category);
            return;
        }

        json.WriteStartObject(JsonNames.Category);
        json.WriteText(JsonNames.Id, category.Id);
        json.WriteText(JsonNames.Name, category.Name);
        json.WriteText(JsonNames.Kind, category.Kind);
        json.WriteList(JsonNames.Differences, category.Differences, static (writer, difference) =>
        {
            writer.WriteStartObject();
            writer.WriteText(JsonNames.What, difference.What);
            writer.WriteText(JsonNames.Unit, difference.Unit);
            writer.WriteRange(JsonNames.Yours, difference.Yours);
            writer.WriteRange(JsonNames.Tested, difference.Tested);
            writer.WriteBoolean(JsonNames.Allowed, difference.Allowed);
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void WriteMeasures(Utf8JsonWriter json, MeasuresReport measures)
    {
        json.WriteStartObject(JsonNames.Measures);
        json.WriteRange(JsonNames.SolidsShare, measures.SolidsShare);
        json.WriteRange(JsonNames.FatShare, measures.FatShare);
        json.WriteRange(JsonNames.AcidShare, measures.AcidShare);
        json.WriteRange(JsonNames.LowAcidShare, measures.LowAcidShare);
        json.WriteRange(JsonNames.TotalGrams, measures.TotalGrams);
        json.WriteRange(JsonNames.TotalMillilitres, measures.TotalMillilitres);
        if (measures.JarYield is { } yield)
        {
            json.WriteStartObject(JsonNames.JarYield);
            json.WriteText(JsonNames.Jar, yield.Jar);
            json.WriteRounded(JsonNames.Low, yield.Jars.Low);
            json.WriteRounded(JsonNames.High, yield.Jars.High);
            json.WriteRange(JsonNames.Loads, yield.Loads);
            json.WriteRange(JsonNames.RemainderMillilitres, yield.RemainderMillilitres);
            json.WriteRounded(JsonNames.HeadspaceInches, yield.HeadspaceInches);
            json.WriteRange(JsonNames.JarsALoad, yield.JarsALoad);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull(JsonNames.JarYield);
        }

        json.WriteEndObject();
    }

    private static void WriteNearest(Utf8JsonWriter json, NearestFormula formula)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Id, formula.Id);
        json.WriteText(JsonNames.Name, formula.Name);
        json.WriteText(JsonNames.Swap, formula.Swap);
        json.WriteTexts(JsonNames.ScaledIngredients, formula.ScaledIngredients);
        json.WriteText(JsonNames.Source, formula.Source);
        json.WriteEndObject();
    }

    private static void WriteStorage(Utf8JsonWriter json, StorageAdvice advice)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Where, advice.Where);
        json.WriteText(JsonNames.Span, advice.Span);
        json.WriteText(JsonNames.Text, advice.Text);
        json.WriteText(JsonNames.Source, advice.Source);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, PartReport part)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Name, part.Name);
        json.WriteNumber(JsonNames.Line, part.Line);
        json.WriteNumber(JsonNames.EndLine, part.EndLine);
        json.WriteString(JsonNames.Acidity, Names.Of(part.Acidity));
        json.WriteString(JsonNames.Outcome, Names.Of(part.Outcome));
        json.WriteEndObject();
    }

    private static void WritePack(Utf8JsonWriter json, PackIdentity pack)
    {
        json.WriteStartObject(JsonNames.Pack);
        json.WriteText(JsonNames.Version, pack.Version);
        json.WriteText(JsonNames.Date, pack.Date);
        json.WriteText(JsonNames.Sha256, pack.Sha256);
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
