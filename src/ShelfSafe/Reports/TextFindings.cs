using ShelfSafe.Core;
using ShelfSafe.Verdict;
using static ShelfSafe.Reports.TextPage;

namespace ShelfSafe.Reports;

/// <summary>Writes the findings of one level, those that ask for the same thing together.</summary>
/// <remarks>The same finding twice is one entry that names every place.</remarks>
internal sealed class TextFindings(TextPage page, Words words, SourceList sources)
{
    /// <summary>Writes all findings of a level under their heading; nothing where there are none.</summary>
    public void Write(VettingReport report, FindingLevel level)
    {
        List<Duty> duties = Duty.Of(report.Findings, level);
        if (duties.Count == 0)
        {
            return;
        }

        string name = Names.Of(level);
        Ink ink = level switch
        {
            FindingLevel.Stop => Ink.Red,
            FindingLevel.Change => Ink.Yellow,
            FindingLevel.Caution or FindingLevel.Note => Ink.Bold,
        };
        page.Heading(words[$"heading.{name}"], ink);
        foreach (Duty duty in duties)
        {
            WriteDuty(duty, words[$"level.{name}"], ink);
        }
    }

    private void WriteDuty(Duty duty, string label, Ink ink)
    {
        string rule = duty.First.Part is { } part ? $"{duty.First.Rule}, {words.With("label.part", part)}" : duty.First.Rule;
        IReadOnlyList<(string Message, SortedSet<int> Lines)> entries = duty.Entries(words);
        if (entries.Count == 1)
        {
            page.Paragraph($"({ReportHead.Where(words, entries[0].Lines)}; {rule}) {entries[0].Message}", 2, label + " ", ink);
        }
        else
        {
            page.Paragraph($"({rule})", 2, label + " ", ink);
            foreach ((string message, SortedSet<int> lines) in entries)
            {
                page.Paragraph($"{message} ({ReportHead.Where(words, lines)})", 4, "- ");
            }
        }

        string marks = duty.Sources.Count == 0 ? string.Empty : sources.Mark(duty.Sources);
        if (duty.First.Why.Length > 0)
        {
            page.Paragraph(duty.First.Why + marks, 4, words["label.why"] + ": ", Ink.Faint);
        }

        if (duty.First.Instead.Length > 0)
        {
            page.Paragraph(duty.First.Instead + (duty.First.Why.Length > 0 ? string.Empty : marks), 4, words["label.instead"] + ": ", Ink.Bold);
        }
    }
}
