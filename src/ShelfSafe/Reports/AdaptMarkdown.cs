using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes the jar version of a recipe, or its freezer version, as Markdown.</summary>
/// <remarks>
/// The jar version can itself be vetted and comes out as covered. So the reasons of the changes stand in a comment at its end: as
/// prose they would be read as steps. The freezer version makes no such promise.
/// </remarks>
/// <param name="words">Words for people.</param>
public sealed class AdaptMarkdown(Words words)
{
    /// <summary>Writes the document.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="original">The recipe as it stands in the file, for the freezer version.</param>
    /// <param name="adaptation">What came of it.</param>
    public void Write(TextWriter output, string original, Adaptation adaptation)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(adaptation);
        switch (adaptation.Kind)
        {
            case AdaptationKind.Jar:
                output.Write(adaptation.Recipe);
                WriteComment(output, adaptation);
                break;
            case AdaptationKind.AsWritten:
                Line(output, words["adapt.as-written"]);
                break;
            case AdaptationKind.Nothing:
                Line(output, words[$"outcome.{Names.Of(adaptation.Before.Outcome)}"]);
                break;
            case AdaptationKind.Question or AdaptationKind.Freezer:
                WriteFreezer(output, original, adaptation);
                break;
        }
    }

    private static void Line(TextWriter output, string text) => output.Write(InertText.Of(text) + "\n");

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
                yield return "- " + string.Join(", ", row.Select((cell, at) => at == 0 ? cell : $"{header[at]} {cell}"));
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

    private void WriteFreezer(TextWriter output, string original, Adaptation adaptation)
    {
        SourceList sources = new();
        Line(output, $"# {words.With("adapt.freezer-title", adaptation.Before.Title ?? words["report.untitled"])}");
        output.Write('\n');
        Line(output, words["adapt.no-jar"]);
        WriteNotes(output, sources, adaptation.Questions, "adapt.questions");
        WriteNotes(output, sources, adaptation.Reasons, "adapt.reasons");
        if (adaptation.Formula is { } formula && !adaptation.Changes.IsEmpty)
        {
            Heading(output, words.With("adapt.amounts", formula.Name));
            foreach (AdaptChange change in adaptation.Changes)
            {
                Line(output, $"- {Change(words, change)}{sources.Mark(change.Sources)}");
            }
        }

        foreach (IGrouping<string, FreezingStep> part in adaptation.Freezing.GroupBy(step => step.Part, StringComparer.Ordinal))
        {
            Heading(output, words[$"freezing.{part.Key}"]);
            foreach (FreezingStep step in part)
            {
                Line(output, $"- {step.Text}{sources.Mark(step.Sources)}");
            }
        }

        if (!adaptation.Before.Storage.IsEmpty)
        {
            Heading(output, words["heading.storage"]);
            foreach (StorageAdvice advice in adaptation.Before.Storage)
            {
                Line(output, $"- {words.Named("where", advice.Where)}: {advice.Span}. {advice.Text}{sources.Mark(advice.Source)}");
            }
        }

        Heading(output, words["label.sources"]);
        for (int i = 0; i < sources.Lines.Count; i++)
        {
            Line(output, string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {sources.Lines[i]}"));
        }

        Heading(output, words["adapt.original"]);
        foreach (string line in original.ReplaceLineEndings("\n").Split('\n'))
        {
            Line(output, line.Length == 0 ? ">" : $"> {line}");
        }
    }

    private void WriteNotes(TextWriter output, SourceList sources, ImmutableArray<AdaptNote> notes, string heading)
    {
        if (notes.IsEmpty)
        {
            return;
        }

        Heading(output, words[heading]);
        foreach (AdaptNote note in notes)
        {
            Line(output, $"- {(note.What.Length == 0 ? string.Empty : $"\"{note.What}\": ")}{note.Text}{sources.Mark(note.Sources)}");
        }
    }

    private static void Heading(TextWriter output, string text)
    {
        output.Write('\n');
        Line(output, $"## {text}");
        output.Write('\n');
    }
}
