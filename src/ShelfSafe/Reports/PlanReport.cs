using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Plans;
using ShelfSafe.Reports.Pages;
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
        IReportPage page = format switch
        {
            "html" => new HtmlPage(output),
            "markdown" => new MarkdownPage(output),
            _ => new PlainPage(new(output, new TextStyle())),
        };
        SourceList sources = new();
        WriteHead(page, sources, sheet);
        WriteTimetable(page, sheet, start);
        WriteParts(page, sources, sheet);
        page.Heading(words["label.sources"]);
        for (int i = 0; i < sources.Lines.Count; i++)
        {
            page.Line(string.Create(CultureInfo.InvariantCulture, $"[{i + 1}] {sources.Lines[i]}"));
        }

        page.Line(words["caution.tool"]);
        page.Close();
    }

    private void WriteHead(IReportPage page, SourceList sources, RunSheet sheet)
    {
        page.Open(words["plan.title"]);
        foreach (PlannedRecipe recipe in sheet.Recipes)
        {
            page.Line(Summary(recipe, sheet.Metric));
        }

        foreach (KitchenNote note in sheet.KitchenNotes)
        {
            page.Line($"{note.Text} {note.Instead}{sources.Mark(note.Sources)}");
        }

        page.Line(words["plan.one-recipe"]);
    }

    private void WriteParts(IReportPage page, SourceList sources, RunSheet sheet)
    {
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
    }

    // The name of a recipe and load stands once above its lines.
    private void WriteTimetable(IReportPage page, RunSheet sheet, int? start)
    {
        page.Heading(words["plan.timetable"]);
        page.Line(words[start is null ? "plan.from-start" : "plan.longest"]);
        foreach (PlannedRecipe recipe in sheet.Recipes.Where(recipe => recipe.Loads.IsBounded && recipe.Loads.High > Timetable.MostLoads))
        {
            page.Line(words.With("plan.most-loads", recipe.Title, Timetable.MostLoads));
        }

        if (sheet.TooLong)
        {
            page.Line(words["plan.too-long"]);
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

    private string Summary(PlannedRecipe recipe, bool metric)
    {
        string count = recipe.Jars.IsBounded
            ? words.With("plan.jars", TextNumbers.Short(recipe.Jars.Low), TextNumbers.Short(recipe.Jars.High), words.Named("jar", recipe.Process.Jar), TextNumbers.Range(recipe.Loads, string.Empty, words))
            : words.With("plan.jars-unknown", words.Named("jar", recipe.Process.Jar));
        string process = recipe.Process.Psi is { } psi
            ? words.With("plan.pressure", recipe.Process.Minutes, TextNumbers.Short(psi), metric ? MetricFigures.Pressure(words, psi) : string.Empty, words.Named("gauge", recipe.Process.Gauge ?? string.Empty))
            : words.With(recipe.Process.Method == "atmospheric-steam" ? "plan.steam" : "plan.boiling", recipe.Process.Minutes);
        return $"{recipe.Title}: {words.Named("pack", recipe.Process.Pack)}, {process} {count} ({recipe.Process.Source})";
    }

    private static void Part(IReportPage page, SourceList sources, string heading, ImmutableArray<RunSheetStep> steps)
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
}
