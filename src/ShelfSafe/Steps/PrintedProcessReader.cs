using System.Buffers;
using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>Finds the processing times that a recipe prints itself: "process pints 20 minutes in a boiling-water bath".</summary>
/// <remarks>
/// A sentence counts only if it names a canner, a bath with jars, a pressure, or "process" beside a time; kitchen times are left alone.
/// Several jar sizes in a sentence ("pints 75, quarts 90 minutes") give one entry each.
/// Known gap: a time and its jar must stand in one sentence.
/// </remarks>
internal sealed class PrintedProcessReader
{
    private const double PsiPerKilopascal = 0.1450377;
    private const double PsiPerBar = 14.50377;

    private static readonly SearchValues<string> Signs = SearchValues.Create(
        ["process", "cann", "pressure", "bath", "psi", "jar", "sterili", "steam", "pint", "quart", "litre", "liter"], StringComparison.OrdinalIgnoreCase);

    private readonly Lazy<ProcessWords> _words = new(static () => new ProcessWords()); // at the first sentence that needs them
    private readonly ReadTexts _texts;
    private readonly TextNote<Printed[]> _printed;

    /// <summary>Prepares the note that it takes of sentences.</summary>
    public PrintedProcessReader(ReadTexts texts)
    {
        _texts = texts;
        _printed = texts.Note<Printed[]>(text => text.Text.AsSpan().ContainsAny(Signs) ? [.. In(Tokenizer.Cut(text.Text, _words.Value.Words), _words.Value)] : []);
    }

    // What a sentence prints, with its place there.
    private readonly record struct Printed(Interval? Minutes, double? Psi, string? Jar, string? Method, int Start, int End);

    /// <summary>Every process printed in the sentences.</summary>
    public ImmutableArray<PrintedProcess> Read(RecipePart part)
    {
        ImmutableArray<PrintedProcess>.Builder found = ImmutableArray.CreateBuilder<PrintedProcess>();
        foreach (StepSentence sentence in part.Steps)
        {
            foreach (Printed printed in _printed.Of(_texts.Of(sentence.Text)))
            {
                found.Add(new(printed.Minutes, printed.Psi, printed.Jar, printed.Method, sentence, sentence.Text.Map(printed.Start, printed.End)));
            }
        }

        return found.ToImmutable();
    }

    private static ImmutableArray<Printed> In(List<Token> tokens, ProcessWords words)
    {
        List<ProcessMark> marks = words.Marks(tokens);
        string? method = marks.Find(mark => mark.Method is not null)?.Method;
        bool about = method is not null || marks.Exists(mark => mark.Says);
        if (!about && marks.Exists(mark => mark.Fills) && marks.FindLast(mark => mark.Jar is not null) is { Jar: { } filled })
        {
            return [At(marks, tokens, null, null, filled, null)];
        }

        double? psi = marks.Find(mark => mark.Psi is not null)?.Psi;
        if (!about || marks.Exists(mark => mark.Cooking))
        {
            return [];
        }

        List<ProcessMark> times = marks.FindAll(mark => mark.Minutes is not null);
        List<ProcessMark> jars = marks.FindAll(mark => mark.Jar is not null);
        if (times.Count == 0 && psi is null)
        {
            return [];
        }

        if (times.Count == 0 || jars.Count == 0)
        {
            Interval? all = times.Count == 0 ? null : times.Select(mark => mark.Minutes!.Value).Aggregate((left, right) => left.Hull(right));
            return [At(marks, tokens, all, psi, jars.Count == 0 ? null : jars[^1].Jar, method)];
        }

        // Of each jar the nearest time; of two equally near the later, as in "pints 75 minutes".
        return [.. jars.Select(jar => At(marks, tokens, times.MinBy(mark => Math.Abs(mark.At - jar.At) * 2 - (mark.At > jar.At ? 1 : 0))!.Minutes, psi, jar.Jar, method))];
    }

    private static Printed At(List<ProcessMark> marks, List<Token> tokens, Interval? minutes, double? psi, string? jar, string? method) =>
        new(minutes, psi, jar, method, tokens[marks.Min(mark => mark.At)].Start, tokens[marks.Max(mark => mark.End) - 1].End);

    /// <summary>Pounds a square inch of a number with its unit word.</summary>
    internal static double? ToPsi(double value, string unit) => unit switch
    {
        "psi" or "pound" => value is >= 3 and <= 25 ? value : null,
        "kpa" => value * PsiPerKilopascal,
        _ => value * PsiPerBar,
    };
}
