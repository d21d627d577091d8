using System.Buffers;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>Jars that the text names by what they hold: "three 2-litre jars", "32-ounce jars".</summary>
/// <param name="words">Unit and jar words.</param>
/// <param name="jars">Brim volumes of the jars that tables name.</param>
/// <param name="limits">How far a printed size may be off.</param>
internal sealed class NamedJars(LineWordTable words, JarYield jars, Limits limits)
{
    private const int MostBetween = 22;
    private const int LongestSize = 80; // number, unit and what stands between
    private readonly SearchValues<string> _words = SearchValues.Create([.. words.Of("jar-word")], StringComparison.OrdinalIgnoreCase);

    /// <summary>The first jar of the part that is larger than any row, with its place.</summary>
    public (SourceSpan Span, string Words)? TooLarge(Recipe recipe, RecipePart part, IReadOnlyList<ProcessRow> rows)
    {
        if (rows.Count == 0)
        {
            return null;
        }

        int largest = rows.Max(row => JarSizes.Order(row.Jar));
        string text = recipe.Text;
        int from = part.Span.Start;
        while (text.AsSpan(from, part.Span.End - from).IndexOfAny(_words) is var jar and >= 0)
        {
            // The size stands shortly before the jar, in its line.
            int at = from + jar;
            int start = Math.Max(Math.Max(part.Span.Start, at - LongestSize), text.LastIndexOf('\n', at) + 1);
            from = at + 1;
            foreach (PrintedNumber number in NumberWalk.In(text, start, at, strict: true))
            {
                if (Held(text, number.End, number.Value) is { } held && Class(held.Millilitres) > largest)
                {
                    return (new(number.Start, held.End), text[number.Start..held.End]);
                }
            }
        }

        return null;
    }

    // What a jar of that number and unit holds, where a jar stands soon after it in the same sentence.
    private (double Millilitres, int End)? Held(string text, int after, Interval value)
    {
        int unitAt = after;
        while (unitAt < text.Length && text[unitAt] is ' ' or '-' or '\u2011' or '\u00A0')
        {
            unitAt++;
        }

        string? unit = words.Unit(text, unitAt, out int unitEnd);
        double? each = unit is "oz" ? UnitFactors.Ratio("fl-oz", "ml") : unit is null ? null : UnitFactors.Ratio(unit, "ml");
        if (each is not { } millilitres)
        {
            return null;
        }

        int from = unitEnd;
        while (from < text.Length && from - unitEnd < MostBetween && text[from] is not ('.' or ',' or ';' or '(' or '\n'))
        {
            string word = NumberScan.Word(text, from, out int end);
            if (words.Is("jar-word", word))
            {
                return (Size(unit!, value.High, joined: unitAt > after && text[unitAt - 1] != ' ') * millilitres, end);
            }

            if (word is "of" or "into" or "to" or "in" or "per" or "each" or "for" or "and" or "or")
            {
                return null;
            }

            from = Math.Max(end, from + 1);
        }

        return null;
    }

    // "7 quart jars" counts jars, "2-quart jars" and "32 ounce jars" say what one holds; of litres a small number may be either, and the larger is read.
    private double Size(string unit, double value, bool joined) =>
        joined || value < 1 || unit is "oz" or "fl-oz" or "ml" or "cl" or "dl" || (unit == "l" && value <= limits["largest-litres-of-a-jar"]) || value != Math.Floor(value) ? value : 1;

    private int Class(double millilitres)
    {
        for (int i = 0; i < JarSizes.All.Length; i++)
        {
            if (jars.Brim(JarSizes.All[i]) is { } brim && millilitres <= brim * (1 + limits["jar-brim-rounding"]))
            {
                return i;
            }
        }

        return JarSizes.All.Length;
    }
}
