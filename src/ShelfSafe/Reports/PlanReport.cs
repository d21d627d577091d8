using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using ShelfSafe.Plans;
using ShelfSafe.Reports.Html;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes a run sheet as a check-list to print: text, Markdown or a self-contained page.</summary>
/// <param name="words">Words for people.</param>
public sealed class PlanReport(Words words)
{
    private const int Day = 24 * 60;

    /// <summary>The formats.</summary>
    public static ImmutableArray<string> Formats { get; } = ["text", "markdown", "html"];

    /// <summary>Writes the sheet.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="sheet">The run sheet.</param>
    /// <param name="start">Minute of the day at which the work starts, or <see langword="null"/> for times counted from the start.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    public void Write(TextWriter output, RunSheet sheet, int? start, string format)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(sheet);
        IPlanPage page = format switch
        {
            "html" => new HtmlPage(output),
            "markdown" => new MarkdownPage(output),
            _ => new PlainPage(new(output, new TextStyle())),
        };
        SourceList sources = new();
        page.Open(words["plan.title"]);
        foreach (PlannedRecipe recipe in sheet.Recipes)
        {
            page.Line(Summary(recipe));
        }

        foreach (KitchenNote note in sheet.KitchenNotes)
        {
            page.Line($"{note.Text} {note.Instead}{sources.Mark(note.Sources)}");
        }

        page.Line(words["plan.one-recipe"]);
        WriteTimetable(page, sheet, start);
        Part(page, sources, words["plan.before"], sheet.Before);
        foreach (PlannedRecipe recipe in sheet.Recipes)
        {
            string name = sheet.Recipes.Length > 1 ? $"{recipe.Title}: " : string.Empty;
            Part(page, sources, name + words["plan.prepare"], recipe.Prepare);
            Part(page, sources, name + words["plan.fill"], recipe.Fill);
            Part(page, sources, name + words["plan.canner"], recipe.Canner);
            Part(page, sources, name + words["plan.trouble"], recipe.Trouble);
        }

        Part(page, sources, words["plan.after"], sheet.After);
        page.Heading(words["label.sources"]);
        for (int i = 0; i < sources.Lines.Count; i++)
        {
            page.Line(string.Create(CultureInfo.InvariantCulture, $"[{i + 1}] {sources.Lines[i]}"));
        }

        page.Line(words["caution.tool"]);
        page.Close();
    }

    // The name of a recipe and load stands once above its lines.
    private void WriteTimetable(IPlanPage page, RunSheet sheet, int? start)
    {
        page.Heading(words["plan.timetable"]);
        page.Line(words[start is null ? "plan.from-start" : "plan.longest"]);
        foreach (PlannedRecipe recipe in sheet.Recipes.Where(recipe => recipe.Loads.IsBounded && recipe.Loads.High > Timetable.MostLoads))
        {
            page.Line(words.With("plan.most-loads", recipe.Title, Timetable.MostLoads));
        }

        bool several = sheet.Recipes.Sum(recipe => recipe.Loads.IsBounded ? recipe.Loads.High : 1) > 1;
        string above = string.Empty;
        foreach (TimetableEntry entry in sheet.Timetable)
        {
            string what = entry.Load == 0 || !several ? entry.Recipe : words.With("plan.load", entry.Recipe, entry.Load);
            if (what != above)
            {
                page.Group(what);
                above = what;
            }

            page.Line($"{Clock(entry.Start, start)}  {entry.Text}");
        }

        page.Line($"{Clock(sheet.LongestMinutes, start)}  {words["plan.end"]}");
    }

    private string Summary(PlannedRecipe recipe)
    {
        string count = recipe.Jars.IsBounded
            ? words.With("plan.jars", TextNumbers.Short(recipe.Jars.Low), TextNumbers.Short(recipe.Jars.High), words.Named("jar", recipe.Process.Jar), TextNumbers.Range(recipe.Loads, string.Empty, words))
            : words.With("plan.jars-unknown", words.Named("jar", recipe.Process.Jar));
        string process = recipe.Process.Psi is { } psi
            ? words.With("plan.pressure", recipe.Process.Minutes, TextNumbers.Short(psi), words.Named("gauge", recipe.Process.Gauge ?? string.Empty))
            : words.With(recipe.Process.Method == "atmospheric-steam" ? "plan.steam" : "plan.boiling", recipe.Process.Minutes);
        return $"{recipe.Title}: {words.Named("pack", recipe.Process.Pack)}, {process} {count} ({recipe.Process.Source})";
    }

    private static void Part(IPlanPage page, SourceList sources, string heading, ImmutableArray<RunSheetStep> steps)
    {
        if (steps.IsEmpty)
        {
            return;
        }

        page.Heading(heading);
        foreach (RunSheetStep step in steps)
        {
            string mark = sources.Mark(step.Url.Length == 0 ? step.Source : $"{step.Source} <{step.Url}>");
            page.Check(step.Text + mark);
        }
    }

    private string Clock(int minutes, int? start)
    {
        if (start is not { } first)
        {
            string sign = minutes < 0 ? "-" : "+";
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");
        }

        int at = first + minutes;
        int day = (int)Math.Floor(at / (double)Day);
        string time = string.Create(CultureInfo.InvariantCulture, $"{(at - (day * Day)) / 60:00}:{(at - (day * Day)) % 60:00}");
        return day switch
        {
            0 => time,
            -1 => words.With("plan.day-before", time),
            1 => words.With("plan.day-after", time),
            < -1 => words.With("plan.days-before", -day, time),
            _ => words.With("plan.days-after", day, time),
        };
    }

    /// <summary>A page of headings, lines and boxes to tick.</summary>
    private interface IPlanPage
    {
        void Open(string title);

        void Heading(string text);

        /// <summary>A smaller heading; the lines after an empty one belong to no group.</summary>
        void Group(string text);

        void Line(string text);

        void Check(string text);

        void Close();
    }

    private sealed class PlainPage(TextPage page) : IPlanPage
    {
        public void Open(string title) => page.Paragraph(title, ink: TextPage.Ink.Bold);

        public void Heading(string text) => page.Heading(text);

        public void Group(string text) => page.Paragraph(text, 2, ink: TextPage.Ink.Bold);

        public void Line(string text) => page.Paragraph(text, 2);

        public void Check(string text) => page.Paragraph(text, 2, "[ ] ");

        public void Close() => page.Gap();
    }

    private sealed class MarkdownPage(TextWriter output) : IPlanPage
    {
        private readonly StringBuilder _line = new();

        public void Open(string title) => output.Write($"# {title}\n\n");

        public void Heading(string text) => output.Write($"\n## {Escaped(text)}\n\n");

        public void Group(string text) => output.Write(text.Length == 0 ? "\n" : $"\n### {Escaped(text)}\n\n");

        public void Line(string text) => output.Write($"- {Escaped(text)}\n");

        public void Check(string text) => output.Write($"- [ ] {Escaped(text)}\n");

        public void Close()
        {
        }

        private string Escaped(string text)
        {
            _line.Clear();
            foreach (char c in InertText.Of(text))
            {
                _line.Append(c is '*' or '_' or '`' or '#' or '|' ? "\\" + c : c.ToString());
            }

            return _line.ToString();
        }
    }

    private sealed class HtmlPage(TextWriter output) : IPlanPage
    {
        private bool _list;

        public void Open(string title)
        {
            string text = WebUtility.HtmlEncode(title);
            output.Write($"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>{text}</title>\n<style>body{{font-family:sans-serif;max-width:45em;margin:1em auto;line-height:1.4}}ul{{list-style:none;padding-left:0}}</style>\n</head>\n<body>\n<h1>{text}</h1>\n");
        }

        public void Heading(string text)
        {
            EndList();
            output.Write($"<h2>{Encoded(text)}</h2>\n");
        }

        public void Group(string text)
        {
            EndList();
            output.Write(text.Length == 0 ? string.Empty : $"<h3>{Encoded(text)}</h3>\n");
        }

        public void Line(string text) => Item(Encoded(text));

        public void Check(string text) => Item($"<label><input type=\"checkbox\"> {Encoded(text)}</label>");

        public void Close()
        {
            EndList();
            output.Write("</body>\n</html>\n");
        }

        private static string Encoded(string text) => ReportHtmlText.Safe(text);

        private void Item(string html)
        {
            output.Write(_list ? string.Empty : "<ul>\n");
            _list = true;
            output.Write($"<li>{html}</li>\n");
        }

        private void EndList()
        {
            output.Write(_list ? "</ul>\n" : string.Empty);
            _list = false;
        }
    }
}
