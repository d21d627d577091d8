using System.Buffers;
using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>Finds the processing times that a recipe prints itself: "process pints 20 minutes in a boiling-water bath".</summary>
/// <remarks>
/// A sentence counts only if it names a canner, a bath with jars, a pressure, or "process" beside a time; kitchen times are left alone.
/// Several jar sizes in a sentence ("pints 75, quarts 90 minutes") give one entry each.
/// Known gap: a time and its jar must stand in one sentence.
/// </remarks>
internal static class PrintedProcessReader
{
    private const double PsiPerKilopascal = 0.1450377;
    private const double PsiPerBar = 14.50377;

    private static readonly SearchValues<string> Signs = SearchValues.Create(
        ["process", "cann", "pressure", "bath", "psi", "jar", "sterili", "steam", "pint", "quart"], StringComparison.OrdinalIgnoreCase);

    // Compiled at the first sentence that needs them, once for all recipes; never changed after.
    private static readonly Lazy<ProcessWords> Compiled = new(static () => new ProcessWords());

    /// <summary>Every process printed in the sentences.</summary>
    public static ImmutableArray<PrintedProcess> Read(RecipePart part)
    {
        ImmutableArray<PrintedProcess>.Builder found = ImmutableArray.CreateBuilder<PrintedProcess>();
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            if (text.AsSpan().ContainsAny(Signs))
            {
                Add(found, sentence, Tokenizer.Cut(text, Compiled.Value.Words), Compiled.Value);
            }
        }

        return found.ToImmutable();
    }

    private static void Add(ImmutableArray<PrintedProcess>.Builder found, StepSentence sentence, List<Token> tokens, ProcessWords words)
    {
        List<ProcessMark> marks = words.Marks(tokens);
        string? method = marks.Find(mark => mark.Method is not null)?.Method;
        bool about = method is not null || marks.Exists(mark => mark.Says);
        if (!about && marks.Exists(mark => mark.Fills) && marks.FindLast(mark => mark.Jar is not null) is { Jar: { } filled })
        {
            found.Add(new(null, null, filled, null, sentence, Whole(sentence, marks, tokens)));
            return;
        }

        double? psi = marks.Find(mark => mark.Psi is not null)?.Psi;
        if (!about || marks.Exists(mark => mark.Cooking))
        {
            return;
        }

        List<ProcessMark> times = marks.FindAll(mark => mark.Minutes is not null);
        List<ProcessMark> jars = marks.FindAll(mark => mark.Jar is not null);
        if (times.Count == 0 && psi is null)
        {
            return;
        }

        SourceSpan whole = Whole(sentence, marks, tokens);
        if (times.Count == 0 || jars.Count == 0)
        {
            Interval? all = times.Count == 0 ? null : times.Select(mark => mark.Minutes!.Value).Aggregate((left, right) => left.Hull(right));
            found.Add(new(all, psi, jars.Count == 0 ? null : jars[^1].Jar, method, sentence, whole));
            return;
        }

        foreach (ProcessMark jar in jars)
        {
            // The nearest time; of two equally near the later, as in "pints 75 minutes".
            ProcessMark time = times.MinBy(mark => Math.Abs(mark.At - jar.At) * 2 - (mark.At > jar.At ? 1 : 0))!;
            found.Add(new(time.Minutes, psi, jar.Jar, method, sentence, whole));
        }
    }

    private static SourceSpan Whole(StepSentence sentence, List<ProcessMark> marks, List<Token> tokens) =>
        sentence.Text.Map(tokens[marks.Min(mark => mark.At)].Start, tokens[marks.Max(mark => mark.End) - 1].End);

    /// <summary>Pounds a square inch of a number with its unit word.</summary>
    internal static double? ToPsi(double value, string unit) => unit switch
    {
        "psi" or "pound" => value is >= 3 and <= 25 ? value : null,
        "kpa" => value * PsiPerKilopascal,
        _ => value * PsiPerBar,
    };
}
