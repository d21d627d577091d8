using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Reads further measures of the same food: sums, second systems, open ends.</summary>
internal sealed class MeasureJoins(LineWordTable words)
{
    /// <summary>Reads what follows an amount and returns the offset after it.</summary>
    // Further measures of the same food: "1 lb / 450 g", "500g or 1lb", "1 cup plus 2 tbsp".
    public int More(LineState state, int end, bool first)
    {
        string text = state.Text;
        int at = SkipHoles(state, end);
        bool sum = false;
        int next = at;
        if (at < text.Length && text[at] is '/' or '|' or '=' or '+' && !(text[at] == '+' && !NumberScan.TryRange(text, at + 1, out _, out _)))
        {
            sum = text[at] == '+';
            next = at + 1;
        }
        else if (first && state.Measures.Count == 1 && (Range(state, at) is var range && range > 0 ? range : OpenEnd(state, end, at)) is var ended && ended > 0)
        {
            return ended;
        }
        else
        {
            string word = NumberScan.Word(text, at, out int wordEnd);
            if (first && SpelledNumber.TryRest(text, at, out int restEnd, out double rest))
            {
                state.Measures[0] = state.Measures[0] with { Value = state.Measures[0].Value + Interval.Exactly(rest) };
                return restEnd; // "three pounds and a half of sugar"
            }

            sum = word is "plus" or "and";
            next = sum || word is "or" ? wordEnd : at;
            if (next == at && first && state.Measures.Count == 1 && SmallerPart(state, at) is var part && part > 0)
            {
                return part;
            }
        }

        int second = first && next > at && NumberScan.TryRange(text, next, out int numberEnd, out Interval value) ? Second(state, numberEnd, value, sum) : -1;
        return second > 0 ? second : end;
    }

    // "1 cup to 2 cups": the unit stands twice.
    private int Range(LineState state, int at)
    {
        string text = state.Text;
        bool dash = at < text.Length && text[at] is '-' or '\u2013';
        bool to = NumberScan.Word(text, at, out int wordEnd) is "to";
        if ((to || dash) && NumberScan.TryNumber(text, dash ? at + 1 : wordEnd, out int highEnd, out double high) && high > state.Measures[0].Value.Low
            && words.Unit(text, NumberScan.Skip(text, highEnd), out int highUnitEnd) == state.Measures[0].Unit)
        {
            state.Measures[0] = state.Measures[0] with { Value = new(state.Measures[0].Value.Low, high) };
            return highUnitEnd;
        }

        return -1;
    }

    // "1 cup or more of stock", "2 cups+": nothing bounds it above.
    private static int OpenEnd(LineState state, int end, int at)
    {
        string text = state.Text;
        bool orMore = NumberScan.Word(text, at, out int wordEnd) is "or" & NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int moreEnd) is "more";
        bool plus = end < text.Length && text[end] == '+' && end == at;
        if (!orMore && !plus)
        {
            return -1;
        }

        state.Measures[0] = state.Measures[0] with { Value = new(state.Measures[0].Value.Low, double.PositiveInfinity) };
        return orMore ? moreEnd : at + 1;
    }

    // "2 lb 4 oz", "1 kg 500 g": the next smaller unit of the same system adds to the first.
    private int SmallerPart(LineState state, int at)
    {
        string text = state.Text;
        if (at >= text.Length || !char.IsAsciiDigit(text[at]) || !NumberScan.TryNumber(text, at, out int numberEnd, out double number))
        {
            return -1;
        }

        string? unit = words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd);
        bool smaller = (state.Measures[0].Unit, unit) is ("lb", "oz") or ("kg", "g") or ("l", "ml") or ("gallon", "quart" or "pint") or ("quart", "pint" or "cup") or ("pint", "fl-oz" or "cup") or ("cup", "tbsp" or "tsp") or ("tbsp", "tsp");
        return smaller ? Second(state, numberEnd, Interval.Exactly(number), sum: true) is var end && end > 0 ? end : unitEnd : -1;
    }

    private int Second(LineState state, int numberEnd, Interval value, bool sum)
    {
        string text = state.Text;
        if (words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not { } unit)
        {
            return -1;
        }

        if (sum)
        {
            Amount before = state.Measures[0];
            if (UnitFactors.Ratio(unit, before.Unit) is { } ratio)
            {
                state.Measures[0] = before with { Value = before.Value + (value * ratio) };
                return unitEnd;
            }

            return -1;
        }

        state.Measures.Add(new(value, unit));
        return unitEnd;
    }

    // "1 cup sugar plus 2 tbsp": the rest of a sum may stand behind the food.
    /// <summary>Adds the rest of a sum.</summary>
    public void TrailingSum(LineState state)
    {
        string text = state.Text;
        foreach (string joint in (string[])[" plus ", " + "])
        {
            int at = text.IndexOf(joint, Math.Min(state.Start, text.Length), StringComparison.OrdinalIgnoreCase);
            if (at > state.Start && NumberScan.TryRange(text, at + joint.Length, out int numberEnd, out Interval value)
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not null
                && (unitEnd >= text.Length || text[NumberScan.Skip(text, unitEnd) is var rest && rest < text.Length ? rest : text.Length - 1] is ',' or '.' or ')' || NumberScan.Skip(text, unitEnd) >= text.Length)
                && Second(state, numberEnd, value, sum: true) > 0)
            {
                state.Holes.Add((at, unitEnd));
                return;
            }
        }
    }
}
