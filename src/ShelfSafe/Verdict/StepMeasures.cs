using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>A food with the amount that a sentence prints before it.</summary>
/// <param name="Value">The number or range.</param>
/// <param name="Unit">Its unit, of mass or volume.</param>
/// <param name="Mention">The food.</param>
internal sealed record MeasuredFood(Interval Value, string Unit, FoodMention Mention);

/// <summary>Measured foods of a sentence: "2 cups of the vinegar".</summary>
internal sealed class StepMeasures
{
    private const int MostBetween = 24;
    private readonly LineWordTable _words;
    private readonly TextNote<MeasuredFood[]> _measures;

    /// <summary>Prepares the note that it takes of sentences.</summary>
    public StepMeasures(LineWordTable words, ReadTexts texts)
    {
        _words = words;
        _measures = texts.Note<MeasuredFood[]>(text => [.. In(text)]);
    }

    /// <summary>Each mention that a number and a unit of mass or volume stand before.</summary>
    public IReadOnlyList<MeasuredFood> Of(ReadText sentence) => _measures.Of(sentence);

    private IEnumerable<MeasuredFood> In(ReadText sentence)
    {
        string text = sentence.Text;
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            int unitAt = number.Next(text);
            unitAt = NumberScan.Word(text, unitAt, out int article) is "a" or "an" ? NumberScan.Skip(text, article) : unitAt;
            if (_words.Unit(text, unitAt, out int unitEnd) is { } unit && UnitFactors.Ratio(unit, unit) is not null
                && sentence.Mentions.FirstOrDefault(mention => mention.Start >= unitEnd && mention.Start - unitEnd <= MostBetween && !text.AsSpan(unitEnd, mention.Start - unitEnd).ContainsAny(",;.(")) is { } food)
            {
                yield return new(number.Value, unit, food);
            }
        }
    }

    /// <summary>An amount in millilitres or grams, with its kind; <see langword="null"/> for a unit of neither.</summary>
    public static (bool Volume, double Low, double High)? Plain(Interval value, string unit) =>
        UnitFactors.Ratio(unit, "ml") is { } volume ? (true, value.Low * volume, value.High * volume)
        : UnitFactors.Ratio(unit, "g") is { } mass ? (false, value.Low * mass, value.High * mass)
        : null;
}
