using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Reports.Pages;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes a jar version or a freezer version on a page for people.</summary>
internal sealed class AdaptPage(Words words, IReportPage page)
{
    private readonly SourceList _sources = new();

    /// <summary>Writes the page.</summary>
    /// <param name="original">The recipe as it stands in the file, for the freezer version.</param>
    /// <param name="adaptation">What came of it.</param>
    public void Write(string original, Adaptation adaptation)
    {
        string title = adaptation.Before.Title ?? words["report.untitled"];
        switch (adaptation.Kind)
        {
            case AdaptationKind.Jar:
                page.Open(words.With("adapt.jar-title", title));
                page.Text(words["adapt.caution"]);
                WriteRecipe(adaptation.Recipe);
                WriteChanges(adaptation, words["adapt.changes"]);
                WriteProcess(adaptation);
                WriteSources();
                break;
            case AdaptationKind.AsWritten:
                page.Open(title);
                page.Text(words["adapt.as-written"]);
                break;
            case AdaptationKind.Nothing:
                page.Open(title);
                page.Text(words[$"outcome.{Names.Of(adaptation.Before.Outcome)}"]);
                break;
            case AdaptationKind.Question or AdaptationKind.Freezer:
                page.Open(words.With("adapt.freezer-title", title));
                page.Text(words[adaptation.Kind == AdaptationKind.Question ? "adapt.not-yet" : "adapt.no-jar"]);
                WriteNotes(adaptation.Questions, "adapt.questions");
                WriteNotes(adaptation.Reasons, "adapt.reasons");
                WriteAmounts(adaptation);
                WriteNearest(adaptation.Before);
                WriteFreezing(adaptation);
                WriteSources();
                page.Heading(words["adapt.original"]);
                page.Quote(original.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'));
                break;
        }

        page.Close();
    }

    // Our own Markdown: headings, lists and paragraphs, one a line.
    private void WriteRecipe(string recipe)
    {
        foreach (string line in recipe.Split('\n').Skip(1).Where(static line => line.Length > 0))
        {
            int number = line.IndexOf(". ", StringComparison.Ordinal);
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                page.Heading(line[3..]);
            }
            else if (line.StartsWith("### ", StringComparison.Ordinal))
            {
                page.Group(line[4..]);
            }
            else if (line.StartsWith("- ", StringComparison.Ordinal))
            {
                page.Item(line[2..]);
            }
            else if (number > 0 && line.AsSpan(0, number).IndexOfAnyExceptInRange('0', '9') < 0)
            {
                page.Item(line[(number + 2)..], line[..(number + 1)]);
            }
            else
            {
                page.Text(line);
            }
        }
    }

    private void WriteChanges(Adaptation adaptation, string heading)
    {
        page.Heading(heading);
        for (int i = 0; i < adaptation.Changes.Length; i++)
        {
            AdaptChange change = adaptation.Changes[i];
            page.Item($"{AdaptMarkdown.Change(words, change)} {change.Why}{_sources.Mark(change.Sources)}", string.Create(CultureInfo.InvariantCulture, $"{i + 1}."));
        }

        if (!adaptation.Serving.IsEmpty)
        {
            page.Heading(words["adapt.serving"]);
            foreach (string sentence in adaptation.Serving)
            {
                page.Item(sentence);
            }
        }
    }

    private void WriteProcess(Adaptation adaptation)
    {
        string[] lines = [.. AdaptMarkdown.Process(words, adaptation.After!, _sources)];
        page.Heading(lines[0]);
        foreach (string line in lines.Skip(1))
        {
            page.Item(line.TrimStart(' ', '-'));
        }
    }

    private void WriteNotes(ImmutableArray<AdaptNote> notes, string heading)
    {
        if (notes.IsEmpty)
        {
            return;
        }

        page.Heading(words[heading]);
        foreach (AdaptNote note in notes)
        {
            page.Item($"{(note.What.Length == 0 ? string.Empty : $"\"{note.What}\": ")}{note.Text}{_sources.Mark(note.Sources)}");
        }
    }

    private void WriteAmounts(Adaptation adaptation)
    {
        if (adaptation.Formula is { } formula && !adaptation.Changes.IsEmpty)
        {
            WriteChanges(adaptation, words.With("adapt.amounts", formula.Name));
        }
    }

    private void WriteNearest(VettingReport report)
    {
        string[] own = report.Category is { Kind: "formula" } formula && report.Nearest.All(near => near.Id != formula.Id)
            ? [$"{formula.Name}. {words.With("adapt.to", formula.Id)}"]
            : [];
        string[] items = [.. own, .. report.Nearest.Select(Nearest)];
        if (items.Length == 0)
        {
            return;
        }

        page.Heading(words["heading.nearest"]);
        foreach (string item in items)
        {
            page.Item(item);
        }
    }

    private string Nearest(NearestFormula near)
    {
        string swap = near.Swap.Length == 0 ? string.Empty : $" {words["label.swap"]}: {near.Swap}";
        return $"{near.Name}.{swap}{_sources.Mark(near.Source)} {words.With("adapt.to", near.Id)}";
    }

    private void WriteFreezing(Adaptation adaptation)
    {
        foreach (IGrouping<string, FreezingStep> part in adaptation.Freezing.GroupBy(step => step.Part, StringComparer.Ordinal))
        {
            page.Heading(words[$"freezing.{part.Key}"]);
            foreach (FreezingStep step in part)
            {
                page.Item($"{step.Text}{_sources.Mark(step.Sources)}");
            }
        }

        if (!adaptation.Before.Storage.IsDefaultOrEmpty)
        {
            page.Heading(words["heading.storage"]);
            foreach ((StorageAdvice advice, string text) in ReportHead.Storage(adaptation.Before.Storage))
            {
                page.Item($"{words.Named("where", advice.Where)}: {text}{_sources.Mark(advice.Source)}");
            }
        }
    }

    private void WriteSources()
    {
        page.Heading(words["label.sources"]);
        for (int i = 0; i < _sources.Lines.Count; i++)
        {
            page.Item(_sources.Lines[i], string.Create(CultureInfo.InvariantCulture, $"{i + 1}."));
        }
    }
}
