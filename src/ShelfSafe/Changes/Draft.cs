using System.Globalization;
using System.Text;

namespace ShelfSafe.Changes;

/// <summary>Where a line or a step of a recipe went.</summary>
internal enum DraftPlace
{
    /// <summary>It stays in the jar recipe.</summary>
    Kept,

    /// <summary>It waits for serving day.</summary>
    Serving,

    /// <summary>It is gone.</summary>
    Out,
}

/// <summary>A line of the ingredient list.</summary>
internal sealed class DraftLine(string text, string? group, int offset)
{
    /// <summary>The line as it is printed now.</summary>
    public string Text { get; set; } = text;

    /// <summary>The label above it, or <see langword="null"/>.</summary>
    public string? Group { get; } = group;

    /// <summary>Offset in the original file, or -1 where it was added.</summary>
    public int Offset { get; } = offset;

    /// <summary>Where it went.</summary>
    public DraftPlace Place { get; set; }
}

/// <summary>What an added step does at the jar.</summary>
internal enum JarPart
{
    /// <summary>Nothing: it is no step at the jar, or the cook's own.</summary>
    None,

    /// <summary>It fills the jars.</summary>
    Fill,

    /// <summary>It closes them.</summary>
    Close,

    /// <summary>It processes them.</summary>
    Process,
}

/// <summary>A sentence of the prose.</summary>
internal sealed class DraftStep(string text, DraftSection section, bool added = false)
{
    /// <summary>What it does at the jar, where it was added for that.</summary>
    public JarPart Part { get; init; }

    /// <summary>The sentence as it is printed now.</summary>
    public string Text { get; set; } = text;

    /// <summary>The part of the recipe it stands in.</summary>
    public DraftSection Section { get; } = section;

    /// <summary>Whether the jar version added it.</summary>
    public bool Added { get; } = added;

    /// <summary>Where it went.</summary>
    public DraftPlace Place { get; set; }
}

/// <summary>A part of the prose of a recipe.</summary>
internal enum DraftSection
{
    /// <summary>Before the ingredients.</summary>
    Introduction,

    /// <summary>The directions.</summary>
    Method,

    /// <summary>Notes.</summary>
    Notes,

    /// <summary>For serving.</summary>
    Serving,
}

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
