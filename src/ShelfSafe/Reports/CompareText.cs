using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes for people what a kitchen change does: what matters first, each point with its reason and source.</summary>
/// <param name="words">Words for people.</param>
/// <param name="style">Width and colours.</param>
public sealed class CompareText(Words words, TextStyle style)
{
    /// <summary>Writes a comparison of two recipes.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="before">Path of the first recipe as given.</param>
    /// <param name="after">Path of the second recipe as given.</param>
    /// <param name="comparison">What was found.</param>
    public void Write(TextWriter output, string before, string after, RecipeComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(comparison);
        TextPage page = new(output, style);
        SourceList sources = new();
        page.Paragraph(words.With("compare.intro", before, after), ink: TextPage.Ink.Bold);
        if (comparison.IsSame)
        {
            page.Gap();
            page.Paragraph(words["compare.same"]);
            WriteUnsure(page, comparison.Unsure);
            WriteFindings(page, sources, comparison.UnsureFindings, "compare.unsure-findings");
        }
        else
        {
            WriteChanges(page, sources, comparison.Changes.Where(change => change.Matters), "compare.matters");
            WriteChanges(page, sources, comparison.Changes.Where(change => !change.Matters), "compare.harmless");
            WriteUnsure(page, comparison.Unsure);
            WriteVerdict(page, comparison);
            WriteFindings(page, sources, comparison.NewFindings, "compare.new");
            WriteFindings(page, sources, comparison.GoneFindings, "compare.gone");
        }

        page.Gap();
        page.Paragraph(words["compare.limit"]);
        new TextElsewhere(page, words, sources).WriteSources();
    }

    /// <summary>Writes a recipe beside a published formula.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="file">Path as given.</param>
    /// <param name="title">Title of the recipe, or <see langword="null"/>.</param>
    /// <param name="comparison">The comparison.</param>
    public void Write(TextWriter output, string file, string? title, FormulaComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(comparison);
        TextPage page = new(output, style);
        SourceList sources = new();
        page.Paragraph($"{title ?? words["report.untitled"]} ({file})", ink: TextPage.Ink.Bold);
        page.Paragraph(words.With("compare.with", comparison.Name) + sources.Mark(Source(comparison)));
        page.Gap();
        page.Paragraph(words[comparison.Covers ? "compare.covers" : "compare.not-covers"], ink: comparison.Covers ? TextPage.Ink.Plain : TextPage.Ink.Yellow);
        if (comparison.Differences.IsEmpty)
        {
            page.Paragraph(words["compare.unmeasured"]);
        }

        new TextBatch(page, words).WriteComparison(new(comparison.Id, comparison.Name, "formula", comparison.Differences));
        if (!comparison.Points.IsEmpty)
        {
            page.Heading(words["compare.points"]);
            foreach (FormulaPoint point in comparison.Points)
            {
                page.Paragraph(point.Message, 2, "- ");
                page.Paragraph(point.Instead, 4, $"{words["label.instead"]}: ", TextPage.Ink.Faint);
            }
        }

        page.Gap();
        page.Paragraph(words["compare.limit"]);
        new TextElsewhere(page, words, sources).WriteSources();
    }

    /// <summary>One change in one line.</summary>
    internal static string Head(Words words, IngredientChange change) =>
        words.With($"compare.{change.Kind}", change.Before, change.After, By(words, change.Factor));

    private static string By(Words words, Interval? factor)
    {
        if (factor is not { IsBounded: true } known)
        {
            return words["compare.by-unknown"];
        }

        string low = Percent(Math.Min(Math.Abs(known.Low - 1), Math.Abs(known.High - 1)));
        string high = Percent(Math.Max(Math.Abs(known.Low - 1), Math.Abs(known.High - 1)));
        return low == high ? words.With("compare.by", low) : words.With("compare.by-between", low, high);
    }

    private static string Percent(double share) => Math.Round(share * 100, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);

    private static ImmutableArray<SourceReference> Source(FormulaComparison comparison) => [new(string.Empty, comparison.Source, string.Empty, comparison.Url)];

    private void WriteChanges(TextPage page, SourceList sources, IEnumerable<IngredientChange> changes, string heading)
    {
        bool first = true;
        foreach (IngredientChange change in changes)
        {
            if (first)
            {
                page.Heading(words[heading]);
                first = false;
            }

            page.Paragraph(Head(words, change), 2, "- ");
            page.Paragraph(change.Why + sources.Mark(change.Sources), 4, $"{words["label.why"]}: ", TextPage.Ink.Faint);
            if (change.Instead.Length > 0)
            {
                page.Paragraph(change.Instead, 4, $"{words["label.instead"]}: ", TextPage.Ink.Faint);
            }
        }
    }

    private void WriteUnsure(TextPage page, ImmutableArray<AmountDoubt> unsure)
    {
        if (unsure.IsEmpty)
        {
            return;
        }

        page.Heading(words["compare.unsure"]);
        foreach (AmountDoubt doubt in unsure)
        {
            page.Paragraph(words.With("compare.doubt", doubt.Before, doubt.After, TextNumbers.Short(doubt.Factor.Low), TextNumbers.Short(doubt.Factor.High)), 2, "- ");
        }
    }

    private void WriteVerdict(TextPage page, RecipeComparison comparison)
    {
        VettingReport before = comparison.Before;
        VettingReport after = comparison.After;
        List<ImmutableArray<string>> rows =
        [
            [words["compare.outcome"], Names.Of(before.Outcome), Names.Of(after.Outcome)],
            [words["compare.acidity"], Names.Of(before.Acidity), Names.Of(after.Acidity)],
            [words["compare.process"], Process(before, "compare.same-process"), Process(after, comparison.ProcessDiffers ? "compare.other-process" : "compare.same-process")],
        ];
        foreach ((string what, Interval? left, Interval? right) in (ReadOnlySpan<(string, Interval?, Interval?)>)
        [
            ("solids", before.Measures.SolidsShare, after.Measures.SolidsShare),
            ("fat", before.Measures.FatShare, after.Measures.FatShare),
            ("acid", before.Measures.AcidShare, after.Measures.AcidShare),
            ("low-acid", before.Measures.LowAcidShare, after.Measures.LowAcidShare),
        ])
        {
            if (left is { } was && right is { } now)
            {
                rows.Add([words[$"compare.{what}"], TextNumbers.Range(was, "share", words), TextNumbers.Range(now, "share", words)]);
            }
        }

        page.Heading(words["compare.verdict"]);
        page.Table([words["compare.item"], words["compare.before"], words["compare.after"]], rows, 2);
    }

    private string Process(VettingReport report, string key)
    {
        ImmutableArray<ProcessLine> lines = report.Process.IsEmpty ? report.ProcessAfterChanges : report.Process;
        return lines.IsEmpty ? words["compare.no-process"]
            : key == "compare.same-process" ? $"{words.Named("method", lines[0].Method)}, {lines[0].Product}"
            : $"{words[key]}: {words.Named("method", lines[0].Method)}, {lines[0].Product}";
    }

    private void WriteFindings(TextPage page, SourceList sources, ImmutableArray<Finding> findings, string heading)
    {
        if (findings.IsEmpty)
        {
            return;
        }

        page.Heading(words[heading]);
        foreach (Finding finding in findings)
        {
            page.Paragraph(finding.Message + sources.Mark(finding.Sources), 2, $"{words[$"level.{Names.Of(finding.Level)}"]} ({finding.Rule}) ");
        }
    }
}
