using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using static ShelfSafe.Reports.TextPage;

namespace ShelfSafe.Reports;

/// <summary>Writes the findings of one level. The same finding twice is one entry that names every place.</summary>
internal sealed class TextFindings(TextPage page, Words words, SourceList sources)
{
    /// <summary>Writes all findings of a level under their heading; nothing where there are none.</summary>
    public void Write(VettingReport report, FindingLevel level)
    {
        List<(Finding Finding, SortedSet<int> Lines)> entries = Merged(report.Findings, level);
        if (entries.Count == 0)
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
        foreach ((Finding finding, SortedSet<int> lines) in entries)
        {
            WriteEntry(finding, lines, words[$"level.{name}"], ink);
        }
    }

    private static List<(Finding Finding, SortedSet<int> Lines)> Merged(ImmutableArray<Finding> findings, FindingLevel level)
    {
        List<(Finding Finding, SortedSet<int> Lines)> entries = [];
        if (findings.IsDefault)
        {
            return entries;
        }

        Dictionary<(string Rule, string Message, string Instead, string? Part), int> seen = [];
        foreach (Finding finding in findings)
        {
            if (finding.Level != level)
            {
                continue;
            }

            (string Rule, string Message, string Instead, string? Part) key = (finding.Rule, finding.Message, finding.Instead, finding.Part);
            if (!seen.TryGetValue(key, out int index))
            {
                index = entries.Count;
                seen.Add(key, index);
                entries.Add((finding, []));
            }

            foreach (Place place in finding.Places.IsDefault ? [] : finding.Places)
            {
                entries[index].Lines.Add(place.Line);
            }
        }

        return entries;
    }

    private void WriteEntry(Finding finding, SortedSet<int> lines, string label, Ink ink)
    {
        string numbers = string.Join(", ", lines.Select(line => line.ToString(CultureInfo.InvariantCulture)));
        string where = words.With(lines.Count == 1 ? "label.line" : "label.lines", numbers);
        if (finding.Part is { } part)
        {
            where += ", " + words.With("label.part", part);
        }

        page.Paragraph($"({where}; {finding.Rule}) {finding.Message}", 2, label + " ", ink);
        if (finding.Why.Length > 0)
        {
            page.Paragraph(finding.Why + Marks(finding), 4, words["label.why"] + ": ", Ink.Faint);
        }

        if (finding.Instead.Length > 0)
        {
            page.Paragraph(finding.Instead + (finding.Why.Length > 0 ? string.Empty : Marks(finding)), 4, words["label.instead"] + ": ", Ink.Bold);
        }
    }

    private string Marks(Finding finding) => finding.Sources.IsDefaultOrEmpty ? string.Empty : sources.Mark(finding.Sources);
}
