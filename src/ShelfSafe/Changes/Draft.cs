using System.Globalization;
using System.Text;

namespace ShelfSafe.Changes;

/// <summary>A recipe that is being rewritten: one line a food, one line a sentence, so that each finding points at one of them.</summary>
internal sealed class Draft(string title)
{
    private readonly StringBuilder _text = new();
    private int _line;

    /// <summary>The title as it is printed now.</summary>
    public string Title { get; set; } = title;

    /// <summary>The ingredient lines in order.</summary>
    public List<DraftLine> Lines { get; } = [];

    /// <summary>The sentences in order.</summary>
    public List<DraftStep> Steps { get; } = [];

    /// <summary>Ingredient lines by the line of the last text, from 1.</summary>
    public Dictionary<int, DraftLine> LineAt { get; } = [];

    /// <summary>Sentences by the line of the last text, from 1.</summary>
    public Dictionary<int, DraftStep> StepAt { get; } = [];

    /// <summary>Writes it out as Markdown; lines end in a line feed.</summary>
    /// <param name="serving">Which sentences for serving day are printed, beside those that were there already.</param>
    public string Print(Func<DraftStep, bool>? serving = null)
    {
        _text.Clear();
        _line = 0;
        LineAt.Clear();
        StepAt.Clear();
        Write($"# {Title}");
        Write(string.Empty);
        foreach (DraftStep step in Steps.Where(step => step is { Section: DraftSection.Introduction, Place: DraftPlace.Kept }))
        {
            StepAt[_line + 1] = step;
            Write(step.Text);
            Write(string.Empty);
        }

        PrintLines();
        PrintSteps("Method", [.. Steps.Where(step => step is { Section: DraftSection.Method, Place: DraftPlace.Kept })], numbered: true);
        PrintSteps("To serve", [.. Steps.Where(step => step is { Section: DraftSection.Serving, Place: DraftPlace.Kept } || (step.Place == DraftPlace.Serving && serving?.Invoke(step) == true))], numbered: false);
        PrintSteps("Notes", [.. Steps.Where(step => step is { Section: DraftSection.Notes, Place: DraftPlace.Kept })], numbered: false);
        return _text.ToString();
    }

    private void PrintLines()
    {
        Write("## Ingredients");
        Write(string.Empty);
        string? group = null;
        foreach (DraftLine line in Lines.Where(line => line.Place == DraftPlace.Kept))
        {
            if (line.Group != group && line.Group is not null)
            {
                if (line != Lines.First(other => other.Place == DraftPlace.Kept))
                {
                    Write(string.Empty);
                }

                Write($"### {line.Group}");
                Write(string.Empty);
            }

            group = line.Group;
            Print(line);
        }

        Write(string.Empty);
        if (Lines.Exists(line => line.Place == DraftPlace.Serving))
        {
            Write("### To serve");
            Write(string.Empty);
            foreach (DraftLine line in Lines.Where(line => line.Place == DraftPlace.Serving))
            {
                Print(line);
            }

            Write(string.Empty);
        }
    }

    private void Print(DraftLine line)
    {
        LineAt[_line + 1] = line;
        Write($"- {line.Text}");
    }

    private void PrintSteps(string heading, List<DraftStep> steps, bool numbered)
    {
        if (steps.Count == 0)
        {
            return;
        }

        Write($"## {heading}");
        Write(string.Empty);
        for (int i = 0; i < steps.Count; i++)
        {
            StepAt[_line + 1] = steps[i];
            Write(numbered ? string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {steps[i].Text}") : $"- {steps[i].Text}");
        }

        Write(string.Empty);
    }

    private void Write(string line)
    {
        _text.Append(line.ReplaceLineEndings(" ")).Append('\n');
        _line++;
    }
}
