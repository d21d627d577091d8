using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Changes;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes the jar version of a recipe as a recipe again: Markdown that can itself be vetted and comes out as covered.</summary>
/// <remarks>The reasons of the changes stand in a comment at its end: as prose they would be read as steps.</remarks>
/// <param name="words">Words for people.</param>
internal sealed class AdaptMarkdown(Words words)
{
    /// <summary>Writes the document; lines end in a line feed.</summary>
    public void Write(TextWriter output, Adaptation adaptation)
    {
        output.Write(adaptation.Recipe);
        WriteComment(output, adaptation);
    }

    // A comment may not hold its own end.
    private static string Inside(string text) => InertText.Of(text).Replace("--", "- -", StringComparison.Ordinal);

    private void WriteComment(TextWriter output, Adaptation adaptation)
    {
        SourceList sources = new();
        List<string> lines = [words["adapt.changes"]];
        int number = 0;
        foreach (AdaptChange change in adaptation.Changes)
        {
            number++;
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{number}. {Change(words, change)} {change.Why}{sources.Mark(change.Sources)}"));
        }

        if (!adaptation.Serving.IsEmpty)
        {
            lines.Add(string.Empty);
            lines.Add(words["adapt.serving"]);
            lines.AddRange(adaptation.Serving.Select(sentence => $"- {sentence}"));
        }

        lines.Add(string.Empty);
        lines.AddRange(Process(words, adaptation.After!, sources));
        lines.Add(string.Empty);
        lines.Add(words["label.sources"]);
        lines.AddRange(sources.Lines.Select((line, at) => string.Create(CultureInfo.InvariantCulture, $"[{at + 1}] {line}")));
        lines.Add(string.Empty);
        lines.Add(words["adapt.caution"]);
        output.Write("<!--\n");
        foreach (string line in lines)
        {
            output.Write(Inside(line) + "\n");
        }

        output.Write("-->\n");
    }

    /// <summary>One change in one line.</summary>
    internal static string Change(Words words, AdaptChange change) => words.With(
        change is { Kind: "amount", What.Length: 0 } ? "adapt.change.new" : $"adapt.change.{change.Kind}", change.What.TrimEnd('.'), change.Now.TrimEnd('.'));

    /// <summary>The published process, or the request for an altitude.</summary>
    internal static IEnumerable<string> Process(Words words, VettingReport report, SourceList sources)
    {
        yield return words["heading.process"];
        if (report.Kitchen.AltitudeFeet is null)
        {
            yield return words["process.ask-altitude"];
        }

        foreach (KitchenNote note in report.KitchenNotes.Where(static note => note.Id != "altitude-missing"))
        {
            yield return $"{note.Text} {note.Instead}{sources.Mark(note.Sources)}";
        }

        foreach (ImmutableArray<ProcessLine> group in ReportHead.Groups(report.Process))
        {
            yield return ReportHead.Process(words, group[0]) + sources.Mark(group[0].Source);
            ReportTables tables = new(words);
            ImmutableArray<string> header = tables.ProcessHeader(group[0].Psi is not null);
            foreach (ImmutableArray<string> row in tables.ProcessRows(group, report.Kitchen.Metric))
            {
                yield return $"- {row[0]}: {string.Join(", ", row.Skip(1).Select((cell, at) => at < row.Length - 3 ? cell : $"{header[at + 1]} {cell}").Where(static cell => cell.Length > 0))}";
            }

            foreach (string note in ReportHead.Notes(words, group))
            {
                yield return "  " + note;
            }
        }

        if (report.Measures.JarYield is { Jars.IsBounded: true } yield)
        {
            yield return words.With("yield.jars", TextNumbers.Short(yield.Jars.Low), TextNumbers.Short(yield.Jars.High), words.Named("jar", yield.Jar));
        }
    }
}
