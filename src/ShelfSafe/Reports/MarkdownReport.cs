using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using static ShelfSafe.Reports.MarkdownText;

namespace ShelfSafe.Reports;

/// <summary>Writes a report as Markdown, in the order of the text report: no time stands above the changes it needs first.</summary>
internal sealed class MarkdownReport(Words words) : ReportFormat
{
    private readonly ReportTables _tables = new(words);

    /// <inheritdoc/>
    public override string Between => "\n---\n\n";

    /// <inheritdoc/>
    public override string One(ReportItem item)
    {
        StringBuilder page = new();
        SourceList sources = new();
        VettingReport report = item.Report;
        WriteHead(page, item, sources);
        foreach (FindingLevel level in (ReadOnlySpan<FindingLevel>)[FindingLevel.Stop, FindingLevel.Change, FindingLevel.Caution, FindingLevel.Note])
        {
            WriteFindings(page, report, level, sources);
        }

        if (report.Category is { Differences.IsDefaultOrEmpty: false } category)
        {
            Heading(page, words["heading.comparison"]);
            Table(page, _tables.ComparisonHeader, _tables.ComparisonRows(category));
        }

        WriteUnread(page, report);
        WriteProcess(page, report, sources);
        WriteList(page, "heading.yield", ReportHead.Yield(words, report).Select(Of));
        WriteList(page, "heading.storage", report.FreezerFirst.IsEmpty ? Storage(report, sources) : []);
        WriteList(page, "heading.nearest", Listed(report.Nearest).Select(formula => Nearest(formula, sources)));
        WriteList(page, "label.sources", sources.Entries.Select(static source => Of(source.Text) + Address(source.Url)), "1. ");
        Heading(page, words["heading.cannot-know"]);
        page.Append(Of(words["caution.tool"])).Append("\n\n").Append(Of(words["caution.ask"])).Append("\n\n").Append(Of(words["caution.doubt"])).Append("\n\n");
        page.Append(Of(words["label.kitchen"])).Append(": ").Append(Of(ReportHead.Kitchen(words, report.Kitchen))).Append(". ");
        page.Append(Of(words["label.pack"])).Append(": ").Append(Of(ReportHead.Pack(words, report.Pack))).Append(".\n");
        return page.ToString();
    }

    private static ImmutableArray<T> Listed<T>(ImmutableArray<T> items) => items.IsDefault ? [] : items;

    private static void Heading(StringBuilder page, string text) => page.Append("## ").Append(Of(text)).Append("\n\n");

    private static string Marks(IReadOnlyList<int> numbers) =>
        string.Concat(numbers.Select(static number => string.Create(CultureInfo.InvariantCulture, $" \\[{number}\\]")));

    // Addresses come from the rule pack; one with a mark that could end it early is printed as text.
    internal static string Address(string url) => url.Length == 0 ? string.Empty
        : (url.StartsWith("https://", StringComparison.Ordinal) || url.StartsWith("http://", StringComparison.Ordinal)) && !url.AsSpan().ContainsAny(" <>\"\\") ? $" <{url}>"
        : " " + Of(url);

    private static void Table(StringBuilder page, ImmutableArray<string> header, IReadOnlyList<ImmutableArray<string>> rows)
    {
        page.Append("| ").AppendJoin(" | ", header.Select(Of)).Append(" |\n|").Insert(page.Length, " --- |", header.Length).Append('\n');
        foreach (ImmutableArray<string> row in rows)
        {
            page.Append("| ").AppendJoin(" | ", row.Select(Of)).Append(" |\n");
        }

        page.Append('\n');
    }

    private void WriteHead(StringBuilder page, ReportItem item, SourceList sources)
    {
        VettingReport report = item.Report;
        page.Append("# ").Append(Of(report.Title ?? words["report.untitled"])).Append("\n\n");
        page.Append("**").Append(Of(words["label.verdict"])).Append(":** ").Append(Of(ReportHead.Verdict(words, report))).Append("\n\n");
        page.Append("- ").Append(Of(words["label.file"])).Append(": ").Append(Of(item.Name)).Append('\n');
        page.Append("- ").Append(Of(words["label.acidity"])).Append(": ").Append(Of(words[$"acidity.{Names.Of(report.Acidity)}"])).Append('\n');
        if (report.Category is { } category)
        {
            page.Append("- ").Append(Of(words["label.nearest-category"])).Append(": ").Append(Of(category.Name)).Append('\n');
        }

        page.Append('\n');
        WriteList(page, "heading.kitchen", Listed(report.KitchenNotes).Select(note => $"{Of(note.Text)}{Marks(sources.Numbers(note.Sources))}\n  - *{Of(words["label.instead"])}:* {Of(note.Instead)}"));
        WriteList(page, "heading.freezer-first", ReportHead.Freezer(words, report).Select(part =>
            Of(part.Heading) + string.Concat(part.Steps.Select(step => $"\n  - {Of(step.Text)}{Marks(sources.Numbers(step.Sources))}"))));
        WriteList(page, "heading.storage", report.FreezerFirst.IsEmpty ? [] : Storage(report, sources));
        WriteList(page, "heading.parts", Listed(report.Parts).Select(part => Of(ReportHead.Part(words, part))));
        WriteList(page, "heading.reasons", Listed(report.Reasons).Select(Of), "1. ");
    }

    private void WriteList(StringBuilder page, string heading, IEnumerable<string> lines, string mark = "- ")
    {
        bool any = false;
        foreach (string line in lines)
        {
            if (!any)
            {
                Heading(page, words[heading]);
                any = true;
            }

            page.Append(mark).Append(line).Append('\n');
        }

        page.Append(any ? "\n" : string.Empty);
    }

    private void WriteFindings(StringBuilder page, VettingReport report, FindingLevel level, SourceList sources) =>
        WriteList(page, $"heading.{Names.Of(level)}", Duty.Of(report.Findings, level).Select(duty => Written(duty, sources)));

    private string Written(Duty duty, SourceList sources)
    {
        StringBuilder text = new();
        string part = duty.First.Part is { } name ? $", {words.With("label.part", name)}" : string.Empty;
        text.Append("**").Append(Of(words[$"level.{Names.Of(duty.First.Level)}"])).Append("** ");
        IReadOnlyList<(string Message, SortedSet<int> Lines)> entries = duty.Entries(words);
        if (entries.Count == 1)
        {
            text.Append(Of($"({ReportHead.Where(words, entries[0].Lines)}; {duty.First.Rule}{part}) {entries[0].Message}"));
        }
        else
        {
            text.Append(Of($"({duty.First.Rule}{part})"));
            foreach ((string message, SortedSet<int> lines) in entries)
            {
                text.Append("\n  - ").Append(Of($"{message} ({ReportHead.Where(words, lines)})"));
            }
        }

        string marks = Marks(sources.Numbers(duty.Sources));
        if (duty.First.Why.Length > 0)
        {
            text.Append("\n  - *").Append(Of(words["label.why"])).Append(":* ").Append(Of(duty.First.Why)).Append(marks);
        }

        if (duty.First.Instead.Length > 0)
        {
            text.Append("\n  - *").Append(Of(words["label.instead"])).Append(":* ").Append(Of(duty.First.Instead)).Append(duty.First.Why.Length > 0 ? string.Empty : marks);
        }

        return text.ToString();
    }

    private void WriteUnread(StringBuilder page, VettingReport report)
    {
        WriteList(page, "heading.unread", Introduced("unread.intro", Listed(report.Ingredients).Where(static one => !one.Identified)));
        WriteList(page, "heading.cooks-word", Introduced("cooks-word.intro", Listed(report.Ingredients).Where(static one => one.OnTheCooksWord)));
    }

    private IEnumerable<string> Introduced(string intro, IEnumerable<IngredientReport> ingredients)
    {
        bool any = false;
        foreach (IngredientReport ingredient in ingredients)
        {
            if (!any)
            {
                yield return Of(words[intro]);
                any = true;
            }

            yield return Of($"{ingredient.Text} ({words.With("label.line", ingredient.Line)})");
        }
    }

    private void WriteProcess(StringBuilder page, VettingReport report, SourceList sources)
    {
        (string heading, ImmutableArray<ProcessLine> lines) = ReportHead.Processes(report);
        if (lines.IsDefaultOrEmpty)
        {
            return;
        }

        Heading(page, words[heading]);
        if (report.Kitchen.AltitudeFeet is null)
        {
            page.Append("**").Append(Of(words["process.ask-altitude"])).Append("**\n\n");
        }

        foreach (ImmutableArray<ProcessLine> group in ReportHead.Groups(lines))
        {
            IEnumerable<int> numbers = group.SelectMany(line => sources.Numbers(line.Source)).Distinct();
            page.Append("**").Append(Of(ReportHead.Process(words, group[0]))).Append("**").Append(Marks([.. numbers])).Append("\n\n");
            Table(page, _tables.ProcessHeader(group[0].Psi is not null), _tables.ProcessRows(group, report.Kitchen.Metric));
            foreach (string note in ReportHead.Notes(words, group))
            {
                page.Append(Of(note)).Append("\n\n");
            }
        }

        foreach (string follow in ReportHead.Follow(words, lines, report.Kitchen.Metric))
        {
            page.Append(Of(follow)).Append("\n\n");
        }
    }

    private IEnumerable<string> Storage(VettingReport report, SourceList sources) =>
        ReportHead.Storage(report.Storage).Select(own => $"{Of(words.Named("where", own.Advice.Where))}: {Of(own.Text)}{Marks(sources.Numbers(own.Advice.Source))}");

    private string Nearest(NearestFormula formula, SourceList sources)
    {
        string text = Of(formula.Name) + Marks(sources.Numbers(formula.Source));
        text += formula.Swap.Length == 0 ? string.Empty : $"\n  - {Of(words["label.swap"])}: {Of(formula.Swap)}";
        return formula.ScaledIngredients.IsDefaultOrEmpty
            ? text
            : $"{text}\n  - {Of(words["label.scaled"])}: {Of(string.Join("; ", formula.ScaledIngredients))}";
    }
}
