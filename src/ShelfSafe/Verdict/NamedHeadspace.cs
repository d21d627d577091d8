using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>Headspace that the steps print, held against that of the published process: "leave 1/8 inch headspace", "fill to within 1 cm of the rim".</summary>
/// <remarks>Known gap: a headspace without a number ("a finger of space") is not compared; no room at all is a step fact.</remarks>
/// <param name="words">Units, and the words that speak of headspace.</param>
/// <param name="texts">Texts with their words.</param>
/// <param name="limits">How far a printed length may be off.</param>
internal sealed class NamedHeadspace(LineWordTable words, ReadTexts texts, Limits limits)
{
    private const int MostBetween = 24; // characters between a length and the word that makes it headspace

    /// <summary>Each printed headspace that no row has.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="rows">Rows of the published process; without any there is nothing to compare.</param>
    public IEnumerable<(SourceSpan Span, string Words)> Other(RecipePart part, IReadOnlyList<ProcessRow> rows)
    {
        foreach (StepSentence sentence in rows.Count == 0 ? [] : part.Steps)
        {
            ReadText read = texts.Of(sentence.Text);
            if (read.Has("headspace-word") || (read.Has("headspace-end") && (read.Has("jar-word") || read.Has("jar-size"))))
            {
                foreach ((int start, int end, Interval inches) in Printed(read))
                {
                    if (!IsPublished(inches.Low, rows) || !IsPublished(inches.High, rows))
                    {
                        yield return (sentence.Text.Map(start, end), read.Text[start..end]);
                    }
                }
            }
        }
    }

    private bool IsPublished(double inches, IReadOnlyList<ProcessRow> rows) =>
        rows.Any(row => Math.Abs(row.HeadspaceInches - inches) <= limits["headspace-rounding"]);

    // Lengths that a word for headspace, or for the top of the jar, stands right behind or before, with the place of both.
    private IEnumerable<(int Start, int End, Interval Inches)> Printed(ReadText read)
    {
        string text = read.Text;
        foreach (PrintedNumber number in NumberWalk.In(text, strict: true))
        {
            int unitAt = number.End;
            while (unitAt < text.Length && text[unitAt] is ' ' or '-' or '\u2011' or '\u00A0')
            {
                unitAt++;
            }

            if (InchesOf(text, unitAt, out int unitEnd) is { } inches && (Behind(read, unitEnd) ?? Before(read, number.Start)) is { } space)
            {
                yield return (Math.Min(number.Start, space.Start), Math.Max(unitEnd, space.End), new(number.Value.Low * inches, number.Value.High * inches));
            }
        }
    }

    // Inches of one of the unit at a place, or null where no length stands there. Millimetres measure no food, so no ingredient line knows them.
    private double? InchesOf(string text, int at, out int end)
    {
        string word = NumberScan.Word(text, at, out end);
        if (words.Is("millimetre-word", word))
        {
            return 0.1 / MetricUnits.CentimetresPerInch;
        }

        return words.Unit(text, at, out end) switch
        {
            "inch" => 1,
            "cm" => 1 / MetricUnits.CentimetresPerInch,
            _ => null,
        };
    }

    // "1/2 inch of headspace", "1 inch of the top", but not "2-inch pieces, leaving 1 inch at the top" or water "1 inch over the lids".
    private PlacedWord? Behind(ReadText read, int from)
    {
        foreach (PlacedWord word in read.Placed.Where(word => word.Start >= from && word.Start - from <= MostBetween))
        {
            if (read.Text.AsSpan(from, word.Start - from).ContainsAny(",;:") || char.IsDigit(word.Plain[0]) || words.Is("headspace-not", word.Plain))
            {
                return null;
            }

            if (words.Is("headspace-word", word.Plain) || words.Is("headspace-end", word.Plain))
            {
                return word;
            }
        }

        return null;
    }

    // "A headspace of 1/2 inch", "headspace: 1 cm".
    private PlacedWord? Before(ReadText read, int to)
    {
        foreach (PlacedWord word in read.Placed.Where(word => word.End <= to && to - word.End <= MostBetween / 2).Reverse())
        {
            if (words.Is("headspace-word", word.Plain))
            {
                return read.Text.AsSpan(word.End, to - word.End).ContainsAny(",;") ? null : word;
            }
        }

        return null;
    }
}
