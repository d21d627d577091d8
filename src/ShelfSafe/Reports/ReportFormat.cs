using System.Collections.Concurrent;
using System.Text;
using ShelfSafe.Pack;

namespace ShelfSafe.Reports;

/// <summary>A way to write reports: a start, any number of recipes, and an end.</summary>
/// <remarks><see cref="One"/> may be called from several threads at once; the rest once, in order.</remarks>
public abstract class ReportFormat
{
    /// <summary>Names of the formats.</summary>
    public static IReadOnlyList<string> Known { get; } = ["text", "markdown", "html", "jsonl", "sarif"];

    /// <summary>Written between two recipes.</summary>
    public virtual string Between => string.Empty;

    /// <summary>Whether a run that read no recipe still writes a document.</summary>
    public virtual bool WritesEmpty => false;

    /// <summary>Makes a format by its name.</summary>
    /// <param name="name">One of <see cref="Known"/>.</param>
    /// <param name="pack">The rule pack that judges.</param>
    /// <param name="style">Layout of the text report.</param>
    public static ReportFormat Create(string name, RulePack pack, TextStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        return name switch
        {
            "text" => new TextFormat(new(Words.Read(), style), style.Width),
            "markdown" => new MarkdownReport(Words.Read()),
            "html" => new Html.ReportHtml(pack, Words.Read()),
            "jsonl" => new JsonLinesFormat(),
            "sarif" => new SarifReport(pack, Words.Read()),
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, null),
        };
    }

    /// <summary>The verdict alone, one line a recipe.</summary>
    public static ReportFormat CreateBrief() => new BriefFormat(new(Words.Read(), new TextStyle()));

    /// <summary>What stands before the first recipe.</summary>
    /// <param name="first">The first recipe, or <see langword="null"/> where there is none.</param>
    public virtual string Start(ReportItem? first) => string.Empty;

    /// <summary>One recipe.</summary>
    public abstract string One(ReportItem item);

    /// <summary>One recipe as UTF-8, for an output that takes bytes.</summary>
    public virtual byte[] Utf8(ReportItem item) => Encoding.UTF8.GetBytes(One(item));

    /// <summary>Writes one recipe; a format whose reports grow long writes them as they come.</summary>
    /// <param name="output">Receives the report.</param>
    /// <param name="item">The recipe.</param>
    public virtual void Write(TextWriter output, ReportItem item)
    {
        ArgumentNullException.ThrowIfNull(output);
        output.Write(One(item));
    }

    /// <summary>One record that could not be read, or empty where the format does not show it.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="record">Number of the record.</param>
    /// <param name="wrong">What is wrong with it.</param>
    public virtual string Broken(string file, int record, string wrong) => string.Empty;

    /// <summary>What stands after the last recipe.</summary>
    /// <param name="troubles">What could not be read.</param>
    /// <param name="finished">Whether everything asked for was tried.</param>
    public virtual string Finish(IReadOnlyList<string> troubles, bool finished) => string.Empty;

    private sealed class TextFormat(TextReport text, int width) : ReportFormat
    {
        public override string Between { get; } = "\n" + new string('=', width) + "\n\n";

        public override string One(ReportItem item)
        {
            using StringWriter writer = new();
            text.Write(writer, item.Name, item.Report);
            return writer.ToString();
        }
    }

    private sealed class BriefFormat(TextReport text) : ReportFormat
    {
        public override string One(ReportItem item)
        {
            using StringWriter writer = new();
            text.WriteVerdict(writer, item.Name, item.Report);
            return writer.ToString();
        }
    }

    private sealed class JsonLinesFormat : ReportFormat
    {
        private readonly ConcurrentStack<JsonLinesReport> _idle = []; // one for each thread that ever wrote at the same time

        public override void Write(TextWriter output, ReportItem item) => JsonLinesReport.Stream(output, item);

        public override string One(ReportItem item) => Written(json => json.Line(item));

        public override byte[] Utf8(ReportItem item) => Written(json => json.Utf8(item));

        public override string Broken(string file, int record, string wrong) => Written(json => json.Broken(file, record, wrong));

        private T Written<T>(Func<JsonLinesReport, T> write)
        {
            JsonLinesReport json = _idle.TryPop(out JsonLinesReport? idle) ? idle : new();
            T line = write(json);
            _idle.Push(json);
            return line;
        }
    }
}
