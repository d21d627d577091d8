using System.Text;
using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes published processes, one table for each product, method and pack.</summary>
internal sealed class TextProcesses(TextPage page, Words words, SourceList sources)
{
    /// <summary>Writes the processes that the outcome lets a cook see, and none for any other outcome.</summary>
    public void Write(VettingReport report)
    {
        (string heading, ImmutableArray<ProcessLine> lines) = ReportHead.Processes(report);
        WriteLines(lines, report.Kitchen, heading);
    }

    /// <summary>Writes lines of the table under a heading.</summary>
    public void WriteLines(ImmutableArray<ProcessLine> lines, Kitchen kitchen, string heading)
    {
        if (lines.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words[heading]);
        if (kitchen.AltitudeFeet is null)
        {
            page.Paragraph(words["process.ask-altitude"], 2, ink: TextPage.Ink.Yellow);
        }

        foreach (ImmutableArray<ProcessLine> group in ReportHead.Groups(lines))
        {
            WriteGroup(group, kitchen.Metric);
        }

        foreach (string follow in ReportHead.Follow(words, lines, kitchen.Metric))
        {
            page.Paragraph(follow, 2);
        }
    }

    private void WriteGroup(ImmutableArray<ProcessLine> lines, bool metric)
    {
        ProcessLine first = lines[0];
        StringBuilder marks = new();
        HashSet<string> marked = new(StringComparer.Ordinal);
        foreach (ProcessLine line in lines)
        {
            if (marked.Add(line.Source))
            {
                marks.Append(sources.Mark(line.Source));
            }
        }

        page.Paragraph(ReportHead.Process(words, first) + marks, 2, ink: TextPage.Ink.Bold);
        ReportTables tables = new(words);
        page.Table(tables.ProcessHeader(first.Psi is not null), tables.ProcessRows(lines, metric), 4);
        foreach (string note in ReportHead.Notes(words, lines))
        {
            page.Paragraph(note, 4);
        }
    }
}
