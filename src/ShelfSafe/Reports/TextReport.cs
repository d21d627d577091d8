using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using static ShelfSafe.Reports.TextPage;

namespace ShelfSafe.Reports;

/// <summary>Writes a report for people: the verdict first, then how it was reached, what to change, and only then the rest.</summary>
/// <remarks>No time or pressure of a process that needs changes first is ever printed above the list of those changes.</remarks>
public sealed class TextReport(Words words, TextStyle style)
{
    /// <summary>Writes the whole report.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="file">Path as given, <c>-</c> for standard input.</param>
    /// <param name="report">The finished report.</param>
    public void Write(TextWriter output, string file, VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(report);
        TextPage page = new(output, style);
        SourceList sources = new();
        WriteHead(page, file, report);
        TextKitchen kitchen = new(page, words, sources);
        kitchen.WriteNotes(report.KitchenNotes);
        kitchen.WriteFreezer(report);
        WriteReasons(page, report);
        TextFindings findings = new(page, words, sources);
        findings.Write(report, FindingLevel.Stop);
        findings.Write(report, FindingLevel.Change);
        findings.Write(report, FindingLevel.Caution);
        findings.Write(report, FindingLevel.Note);
        TextBatch batch = new(page, words);
        batch.WriteComparison(report.Category);
        batch.WriteUnread(report.Ingredients);
        TextProcesses processes = new(page, words, sources);
        processes.Write(report);
        batch.WriteYield(report);
        TextElsewhere elsewhere = new(page, words, sources);
        elsewhere.WriteStorage(report.FreezerFirst.IsEmpty ? report.Storage : []);
        elsewhere.WriteNearest(report.Nearest);
        elsewhere.WriteSources();
        WriteCautions(page, report);
    }

    /// <summary>Writes the verdict alone, in one line.</summary>
    public void WriteVerdict(TextWriter output, string file, VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(report);
        output.Write(InertText.Of($"{file}: {Names.Of(report.Outcome)}. {ReportHead.Verdict(words, report)}"));
        output.Write('\n');
    }

    private static Ink InkOf(Outcome outcome) => outcome switch
    {
        Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage or Outcome.NotAJarFood => Ink.Bold,
        Outcome.BoilingWaterAfterChanges or Outcome.PressureAfterChanges => Ink.Yellow,
        Outcome.CannotTell or Outcome.TestedRecipeOnly or Outcome.FreezeOrChill => Ink.Red,
    };

    private void WriteHead(TextPage page, string file, VettingReport report)
    {
        page.Paragraph($"{report.Title ?? words["report.untitled"]} ({file})", ink: Ink.Bold);
        page.Gap();
        page.Paragraph(ReportHead.Verdict(words, report), mark: $"{words["label.verdict"]}: ", ink: report.LacksRow ? Ink.Red : InkOf(report.Outcome));
        page.Paragraph(words[$"acidity.{Names.Of(report.Acidity)}"], mark: $"{words["label.acidity"]}: ");
        if (report.Category is { } category)
        {
            page.Paragraph(category.Name, mark: $"{words["label.nearest-category"]}: ");
        }

        if (!report.Parts.IsDefaultOrEmpty)
        {
            page.Heading(words["heading.parts"]);
            foreach (PartReport part in report.Parts)
            {
                page.Paragraph(ReportHead.Part(words, part), 2, "- ");
            }
        }
    }

    private void WriteReasons(TextPage page, VettingReport report)
    {
        if (report.Reasons.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.reasons"]);
        for (int i = 0; i < report.Reasons.Length; i++)
        {
            page.Paragraph(report.Reasons[i], 2, string.Create(CultureInfo.InvariantCulture, $"{i + 1}. "));
        }
    }

    private void WriteCautions(TextPage page, VettingReport report)
    {
        page.Heading(words["heading.cannot-know"]);
        page.Paragraph(words["caution.tool"], 2);
        page.Paragraph(words["caution.ask"], 2);
        page.Paragraph(words["caution.doubt"], 2);
        page.Gap();
        page.Paragraph(ReportHead.Kitchen(words, report.Kitchen), mark: $"{words["label.kitchen"]}: ", ink: Ink.Faint);
        page.Paragraph(ReportHead.Pack(words, report.Pack), mark: $"{words["label.pack"]}: ", ink: Ink.Faint);
    }
}
