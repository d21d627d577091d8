using System.Collections.Immutable;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes what this kitchen must hear before all else, and the freezer plan where it should come first.</summary>
internal sealed class TextKitchen(TextPage page, Words words, SourceList sources)
{
    /// <summary>Writes the notes.</summary>
    public void WriteNotes(ImmutableArray<KitchenNote> notes)
    {
        if (notes.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.kitchen"], TextPage.Ink.Yellow);
        foreach (KitchenNote note in notes)
        {
            page.Paragraph(note.Text + string.Concat(sources.Numbers(note.Sources).Select(static number => FormattableString.Invariant($" [{number}]"))), 2, "- ");
            page.Paragraph(note.Instead, 4, words["label.instead"] + ": ");
        }
    }

    /// <summary>Writes the freezer plan and how long the dish keeps cold.</summary>
    public void WriteFreezer(VettingReport report)
    {
        if (report.FreezerFirst.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.freezer-first"]);
        foreach ((string heading, IReadOnlyList<FreezingStep> steps) in ReportHead.Freezer(words, report))
        {
            page.Paragraph(heading, 2);
            foreach (FreezingStep step in steps)
            {
                page.Paragraph(step.Text + string.Concat(sources.Numbers(step.Sources).Select(static number => FormattableString.Invariant($" [{number}]"))), 4, "- ");
            }
        }

        new TextElsewhere(page, words, sources).WriteStorage(report.Storage);
    }
}
