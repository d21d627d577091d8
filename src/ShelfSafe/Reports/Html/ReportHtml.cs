using System.Collections.Immutable;
using System.Text;
using ShelfSafe.Core;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Reports.Teaching;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports.Html;

/// <summary>Writes recipes as one HTML file without script or outside asset: the verdict first, then the recipe with its marks, then the rest, with a picture of why where one helps.</summary>
/// <remarks>No time of a process that needs changes first stands above the list of those changes.</remarks>
internal sealed class ReportHtml(RulePack pack, Words words) : ReportFormat
{
    private readonly ReportTables _tables = new(words);
    private readonly Illustrator _illustrator = LessonBook.Create(pack).Illustrator;

    /// <inheritdoc/>
    public override string Start(ReportItem? first) => ReportHtmlShell.Start(words, first?.Report.Title ?? words["report.untitled"]);

    /// <inheritdoc/>
    public override string Finish(IReadOnlyList<string> troubles, bool finished) => ReportHtmlShell.End;

    /// <inheritdoc/>
    public override string One(ReportItem item)
    {
        ReportHtmlText page = new();
        SourceList sources = new();
        VettingReport report = item.Report;
        page.Raw("<article>\n");
        WriteHead(page, item);
        WriteKitchen(page, report, sources);
        ReportHtmlRecipe.Write(page, words, item);
        foreach (FindingLevel level in (ReadOnlySpan<FindingLevel>)[FindingLevel.Stop, FindingLevel.Change, FindingLevel.Caution, FindingLevel.Note])
        {
            WriteFindings(page, report, level, sources);
        }

        foreach (Figure figure in _illustrator.ForReport(report))
        {
            FigureHtml.Write(page, words, figure);
        }

        if (report.Category is { Differences.IsDefaultOrEmpty: false } category)
        {
            page.Heading(words["heading.comparison"]);
            page.Table(words["heading.comparison"], _tables.ComparisonHeader, _tables.ComparisonRows(category));
        }

        WriteProcess(page, report, sources);
        page.List(words["heading.yield"], ReportHead.Yield(words, report).Select(ReportHtmlText.Safe));
        page.List(words["heading.storage"], report.FreezerFirst.IsEmpty ? Storage(report, sources) : []);
        page.List(words["heading.nearest"], Listed(report.Nearest).Select(formula => Nearest(formula, sources)));
        page.List(words["heading.reasons"], Listed(report.Reasons).Select(ReportHtmlText.Safe), ordered: true);
        page.List(words["label.sources"], sources.Entries.Select(static source => Source(source.Text, source.Url)), ordered: true);
        WriteFoot(page, report);
        page.Raw("</article>\n");
        return page.ToString();
    }

    private static ImmutableArray<T> Listed<T>(ImmutableArray<T> items) => items.IsDefault ? [] : items;

    private static string Marks(IReadOnlyList<int> numbers) => string.Concat(numbers.Select(static number => FormattableString.Invariant($" [{number}]")));

    // Only an https address of the rule pack becomes a link.
    private static string Source(string text, string url) => url.StartsWith("https://", StringComparison.Ordinal)
        ? $"{ReportHtmlText.Safe(text)} <a href=\"{ReportHtmlText.Safe(url)}\">{ReportHtmlText.Safe(url)}</a>"
        : ReportHtmlText.Safe(url.Length == 0 ? text : $"{text} {url}");

    private static string Tone(Outcome outcome) => outcome switch
    {
        Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage or Outcome.NotAJarFood => "plain",
        Outcome.BoilingWaterAfterChanges or Outcome.PressureAfterChanges => "change",
        Outcome.CannotTell or Outcome.TestedRecipeOnly or Outcome.FreezeOrChill => "stop",
    };

    private void WriteHead(ReportHtmlText page, ReportItem item)
    {
        VettingReport report = item.Report;
        page.Element("h1", report.Title ?? words["report.untitled"]);
        page.Raw($"<p class=\"verdict {Tone(report.Outcome)}\"><strong>").Text(words["label.verdict"]).Raw(":</strong> ").Text(ReportHead.Verdict(words, report)).Raw("</p>\n");
        page.Element("p", $"{words["label.acidity"]}: {words[$"acidity.{Names.Of(report.Acidity)}"]}");
        if (report.Category is { } category)
        {
            page.Element("p", $"{words["label.nearest-category"]}: {category.Name}");
        }

        page.Element("p", $"{words["label.file"]}: {item.Name}");
        page.List(words["heading.parts"], Listed(report.Parts).Select(part => ReportHtmlText.Safe(ReportHead.Part(words, part))));
    }

    private void WriteKitchen(ReportHtmlText page, VettingReport report, SourceList sources)
    {
        page.List(words["heading.kitchen"], Listed(report.KitchenNotes).Select(note => $"{ReportHtmlText.Safe(note.Text)}{Marks(sources.Numbers(note.Sources))} <strong>{ReportHtmlText.Safe(words["label.instead"])}:</strong> {ReportHtmlText.Safe(note.Instead)}"));
        page.List(words["heading.freezer-first"], ReportHead.Freezer(words, report).SelectMany(static part => part.Steps.Select(step => (part.Heading, Step: step)))
            .Select(one => $"{ReportHtmlText.Safe($"{one.Heading}: {one.Step.Text}")}{Marks(sources.Numbers(one.Step.Sources))}"));
        page.List(words["heading.storage"], report.FreezerFirst.IsEmpty ? [] : Storage(report, sources));
    }

    private IEnumerable<string> Storage(VettingReport report, SourceList sources) =>
        ReportHead.Storage(report.Storage).Select(own => ReportHtmlText.Safe($"{words.Named("where", own.Advice.Where)}: {own.Text}") + Marks(sources.Numbers(own.Advice.Source)));

    private void WriteFindings(ReportHtmlText page, VettingReport report, FindingLevel level, SourceList sources)
    {
        List<Duty> duties = Duty.Of(report.Findings, level);
        if (duties.Count == 0)
        {
            return;
        }

        string name = Names.Of(level);
        page.Heading(words[$"heading.{name}"]);
        foreach (Duty duty in duties)
        {
            page.Raw($"<section class=\"finding {name}\">\n");
            string part = duty.First.Part is { } dish ? $", {words.With("label.part", dish)}" : string.Empty;
            page.Element("h3", $"{words[$"level.{name}"]}: {duty.First.Rule}{part}");
            foreach ((string message, SortedSet<int> lines) in duty.Entries(words))
            {
                page.Element("p", $"{message} ({ReportHead.Where(words, lines)})");
            }

            Labelled(page, "label.why", duty.First.Why, Marks(sources.Numbers(duty.Sources)));
            Labelled(page, "label.instead", duty.First.Instead, string.Empty);
            page.Raw("</section>\n");
        }
    }

    private void Labelled(ReportHtmlText page, string label, string text, string marks)
    {
        if (text.Length > 0)
        {
            page.Raw("<p><strong>").Text(words[label]).Raw(":</strong> ").Text(text + marks).Raw("</p>\n");
        }
    }

    private void WriteProcess(ReportHtmlText page, VettingReport report, SourceList sources)
    {
        (string heading, ImmutableArray<ProcessLine> lines) = ReportHead.Processes(report);
        if (lines.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words[heading]);
        if (report.Kitchen.AltitudeFeet is null)
        {
            page.Raw("<p class=\"verdict change\">").Text(words["process.ask-altitude"]).Raw("</p>\n");
        }

        foreach (ImmutableArray<ProcessLine> group in ReportHead.Groups(lines))
        {
            string title = ReportHead.Process(words, group[0]) + Marks([.. group.SelectMany(line => sources.Numbers(line.Source)).Distinct()]);
            page.Table(title, _tables.ProcessHeader(group[0].Psi is not null), _tables.ProcessRows(group, report.Kitchen.Metric));
            foreach (string note in ReportHead.Notes(words, group))
            {
                page.Element("p", note);
            }
        }

        foreach (string follow in ReportHead.Follow(words, lines, report.Kitchen.Metric))
        {
            page.Element("p", follow);
        }
    }

    private string Nearest(NearestFormula formula, SourceList sources)
    {
        StringBuilder text = new();
        text.Append(ReportHtmlText.Safe(formula.Name + Marks(sources.Numbers(formula.Source))));
        text.Append(formula.Swap.Length == 0 ? string.Empty : $"<br>{ReportHtmlText.Safe($"{words["label.swap"]}: {formula.Swap}")}");
        text.Append(formula.ScaledIngredients.IsDefaultOrEmpty ? string.Empty : $"<br>{ReportHtmlText.Safe($"{words["label.scaled"]}: {string.Join("; ", formula.ScaledIngredients)}")}");
        return text.ToString();
    }

    private void WriteFoot(ReportHtmlText page, VettingReport report)
    {
        page.Heading(words["heading.cannot-know"]);
        page.Element("p", words["caution.tool"]);
        page.Element("p", words["caution.ask"]);
        page.Element("p", words["caution.doubt"]);
        page.Element("p", $"{words["label.kitchen"]}: {ReportHead.Kitchen(words, report.Kitchen)}. {words["label.pack"]}: {ReportHead.Pack(words, report.Pack)}.");
    }
}
