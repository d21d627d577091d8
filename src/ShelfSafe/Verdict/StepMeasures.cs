using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>Measured foods of a sentence: "2 cups of the vinegar".</summary>
internal static class StepMeasures
{
    private const int MostBetween = 24;

    /// <summary>Each mention that a number and a unit of mass or volume stand before.</summary>
    public static IEnumerable<(Interval Value, string Unit, FoodMention Mention)> Of(string text, IReadOnlyList<FoodMention> mentions, LineWordTable words)
    {
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            int unitAt = number.Next(text);
            unitAt = NumberScan.Word(text, unitAt, out int article) is "a" or "an" ? NumberScan.Skip(text, article) : unitAt;
            if (words.Unit(text, unitAt, out int unitEnd) is { } unit && UnitFactors.Ratio(unit, unit) is not null
                && mentions.FirstOrDefault(mention => mention.Start >= unitEnd && mention.Start - unitEnd <= MostBetween && !text.AsSpan(unitEnd, mention.Start - unitEnd).ContainsAny(",;.(")) is { } food)
            {
                yield return (number.Value, unit, food);
            }
        }
    }

    /// <summary>An amount in millilitres or grams, with its kind; <see langword="null"/> for a unit of neither.</summary>
    public static (bool Volume, double Low, double High)? Plain(Interval value, string unit) =>
        UnitFactors.Ratio(unit, "ml") is { } volume ? (true, value.Low * volume, value.High * volume)
        : UnitFactors.Ratio(unit, "g") is { } mass ? (false, value.Low * mass, value.High * mass)
        : null;
}
