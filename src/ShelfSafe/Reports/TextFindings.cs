using System.Collections.Immutable;
using System.Globalization;
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
        List<Duty> duties = Duties(report.Findings, level);
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

    private static List<Duty> Duties(ImmutableArray<Finding> findings, FindingLevel level)
    {
        List<Duty> duties = [];
        Dictionary<(string Rule, string Why, string Instead, string? Part), Duty> seen = [];
        foreach (Finding finding in findings.IsDefault ? [] : findings)
        {
            if (finding.Level != level)
            {
                continue;
            }

            (string Rule, string Why, string Instead, string? Part) key = (finding.Rule, finding.Why, finding.Instead, finding.Part);
            if (!seen.TryGetValue(key, out Duty? duty))
            {
                duty = new(finding);
                seen.Add(key, duty);
                duties.Add(duty);
            }

            duty.Add(finding);
        }

        return duties;
    }

    private void WriteDuty(Duty duty, string label, Ink ink)
    {
        string rule = duty.First.Part is { } part ? $"{duty.First.Rule}, {words.With("label.part", part)}" : duty.First.Rule;
        if (duty.Entries.Count == 1)
        {
            page.Paragraph($"({Where(duty.Entries[0].Lines)}; {rule}) {duty.Entries[0].Message}", 2, label + " ", ink);
        }
        else
        {
            page.Paragraph($"({rule})", 2, label + " ", ink);
            foreach ((string message, SortedSet<int> lines) in duty.Entries)
            {
                page.Paragraph($"{message} ({Where(lines)})", 4, "- ");
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

    private string Where(SortedSet<int> lines) => words.With(
        lines.Count == 1 ? "label.line" : "label.lines",
        string.Join(", ", lines.Select(line => line.ToString(CultureInfo.InvariantCulture))));

    /// <summary>One thing to do, and every finding that asks for it.</summary>
    private sealed class Duty(Finding first)
    {
        public Finding First => first;

        public List<(string Message, SortedSet<int> Lines)> Entries { get; } = [];

        public List<SourceReference> Sources { get; } = [];

        public void Add(Finding finding)
        {
            int index = Entries.FindIndex(entry => string.Equals(entry.Message, finding.Message, StringComparison.Ordinal));
            if (index < 0)
            {
                index = Entries.Count;
                Entries.Add((finding.Message, []));
            }

            foreach (Place place in finding.Places.IsDefault ? [] : finding.Places)
            {
                Entries[index].Lines.Add(place.Line);
            }

            foreach (SourceReference source in finding.Sources.IsDefault ? [] : finding.Sources)
            {
                if (!Sources.Contains(source))
                {
                    Sources.Add(source);
                }
            }
        }
    }
}
