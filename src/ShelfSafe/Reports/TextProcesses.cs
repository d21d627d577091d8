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
        switch (report.Outcome)
        {
            case Outcome.BoilingWater or Outcome.Pressure:
                WriteLines(report.Process, report.Kitchen, "heading.process");
                break;
            case Outcome.BoilingWaterAfterChanges or Outcome.PressureAfterChanges:
                WriteLines(report.ProcessAfterChanges, report.Kitchen, "heading.process-after-changes");
                break;
            case Outcome.CannotTell or Outcome.TestedRecipeOnly or Outcome.FreezeOrChill or Outcome.DryStorage or Outcome.NotAJarFood:
                break;
        }
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

        foreach (IGrouping<(string Product, string Method, string Pack), ProcessLine> group in lines
            .GroupBy(static line => (line.Product, line.Method, line.Pack)))
        {
            WriteGroup([.. group]);
        }

        bool pressure = lines.Any(static line => line.Psi is not null);
        page.Paragraph(words[pressure ? "process.follow" : "process.follow-boiling"], 2);
    }

    private void WriteGroup(ImmutableArray<ProcessLine> lines)
    {
        ProcessLine first = lines[0];
        string marks = string.Concat(lines.Select(line => line.Source).Distinct(StringComparer.Ordinal).Select(sources.Mark));
        string title = string.Join(
            ", ",
            new[] { first.Product, words.Named("method", first.Method), words.Named("pack", first.Pack) }.Where(static piece => piece.Length > 0));
        page.Paragraph(title + marks, 2, ink: TextPage.Ink.Bold);
        page.Table(Header(first.Psi is not null), [.. lines.Select(Row).Distinct(RowComparer.Instance)], 4);
        WriteOnce(lines.Select(static line => line.AcidAddition), "process.acid");
        WriteOnce(lines.Select(static line => line.Conditions), "process.note");
        WriteOnce(lines.Select(static line => line.Note), "process.note");
        WriteOnce(
            lines.SelectMany(line => line.Overruled.Select(other => $"{other.Product}, {words.Named("jar", line.Jar)}, {words.With("process.min", other.Minutes)}{sources.Mark(other.Source)}")),
            "process.overruled");
    }

    private void WriteOnce(IEnumerable<string?> texts, string key)
    {
        foreach (string? text in texts.Distinct(StringComparer.Ordinal))
        {
            if (!string.IsNullOrEmpty(text))
            {
                page.Paragraph(words.With(key, text), 4);
            }
        }
    }

    private ImmutableArray<string> Header(bool pressure) => pressure
        ? [words["process.jar"], words["process.minutes"], words["process.gauge"], words["process.pressure"], words["process.band"], words["process.headspace"]]
        : [words["process.jar"], words["process.minutes"], words["process.band"], words["process.headspace"]];

    private ImmutableArray<string> Row(ProcessLine line)
    {
        string jar = words.Named("jar", line.Jar);
        string minutes = words.With("process.min", line.Minutes);
        string headspace = words.With("process.inch", Inches(line.HeadspaceInches));
        return line.Psi is { } psi
            ? [jar, minutes, line.Gauge is { } gauge ? words.Named("gauge", gauge) : string.Empty, words.With("process.psi", TextNumbers.Short(psi)), Band(line.AltitudeFeet), headspace]
            : [jar, minutes, Band(line.AltitudeFeet), headspace];
    }

    private string Band(Interval feet)
    {
        if (!feet.IsBounded)
        {
            return feet.Low > 0 ? words.With("process.band-from", TextNumbers.Whole(feet.Low)) : words["process.band-any"];
        }

        return feet.Low > 0
            ? words.With("process.band-between", TextNumbers.Whole(feet.Low), TextNumbers.Whole(feet.High))
            : words.With("process.band-to", TextNumbers.Whole(feet.High));
    }

    private static string Inches(double inches) => inches switch
    {
        0.25 => "1/4",
        0.5 => "1/2",
        0.75 => "3/4",
        1.25 => "1 1/4",
        1.5 => "1 1/2",
        _ => TextNumbers.Short(inches),
    };

    private sealed class RowComparer : IEqualityComparer<ImmutableArray<string>>
    {
        public static RowComparer Instance { get; } = new();

        public bool Equals(ImmutableArray<string> x, ImmutableArray<string> y) => x.SequenceEqual(y);

        public int GetHashCode(ImmutableArray<string> row) => row.Aggregate(0, static (hash, cell) => HashCode.Combine(hash, cell));
    }
}
