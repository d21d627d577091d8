using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Reads an amount on a line: "2", "2 cups", "1 lb / 450 g", "2 (14 oz) cans", "2 x 400 g tins".</summary>
internal sealed class LineAmount(LineWordTable words)
{
    /// <summary>Reads an amount at an offset into the state; the offset after it, or -1 where none stands there.</summary>
    public int Amount(LineState state, int at, bool first)
    {
        string text = state.Text;
        if (!NumberScan.TryRange(text, at, out int end, out Interval value) || end == at)
        {
            return -1;
        }

        string spelled = NumberScan.Word(text, at, out int wordEnd);
        if (spelled is "a" or "an" && NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int fewEnd) is "few" or "little" or "bit" or "lot" or "small" or "large" or "big" or "good" or "generous" or "heaped" or "whole" or "medium" is var vague && vague)
        {
            return Vague(state, fewEnd, NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out _));
        }

        int afterNumber = LinePlaces.SkipHoles(state, end);
        afterNumber = SkipSizes(state, afterNumber);
        bool times = afterNumber < text.Length && text[afterNumber] is 'x' or 'X' or '×' && afterNumber + 1 < text.Length && (text[afterNumber + 1] == ' ' || char.IsDigit(text[afterNumber + 1]));
        if (times)
        {
            afterNumber = NumberScan.Skip(text, afterNumber + 1);
        }

        // "2 x 400 g tins", "1 15 oz can", "one 28-oz can": a second measure before the package word is its size.
        if (NumberScan.TryNumber(text, afterNumber, out int sizeEnd, out double size) && char.IsDigit(text[Math.Min(afterNumber, text.Length - 1)])
            && words.Unit(text, NumberScan.Skip(text, LinePlaces.Dash(text, sizeEnd)), out int sizeUnitEnd) is { } sizeUnit && sizeUnit is not ("inch" or "cm"))
        {
            int packageAt = NumberScan.Skip(text, LinePlaces.Dash(text, LinePlaces.SkipHoles(state, sizeUnitEnd)));
            if (words.Unit(text, packageAt, out int packageEnd) is "can" or "package" or "jar" or "bottle" or "block" or "glass" or "piece" or "slice" or "stick" is var packed && packed)
            {
                state.Package = new(Interval.Exactly(size), sizeUnit);
                state.Measures.Add(new(value, words.Unit(text, packageAt, out _)!));
                return packageEnd;
            }

            if (times || sizeUnit is "oz" or "g" or "lb" or "ml" or "kg" or "l")
            {
                bool canned = NumberScan.Word(text, packageAt, out _) is "canned" or "tinned";
                state.Package = new(Interval.Exactly(size), sizeUnit);
                state.Measures.Add(new(value, canned ? "can" : "each"));
                return sizeUnitEnd;
            }
        }

        int unitAt = NumberScan.Skip(text, LinePlaces.Dash(text, afterNumber));
        string? unit = words.Unit(text, unitAt, out int unitEnd);
        if (unit is "inch" or "cm")
        {
            // "4 1/4 inch thick steaks" is four steaks; "a 2 inch piece of ginger" is a piece.
            unit = null;
            int blank = text.IndexOf(' ', at, Math.Max(0, end - at));
            if (blank > at && value.High > 1)
            {
                value = Interval.Exactly(Math.Floor(value.Low));
            }
        }

        if (unit is null)
        {
            (value, end) = ListFraction(text, at, end, value);
            state.Measures.Add(new(value, "each"));
            ParenthesisPackage(state, end);
            return afterNumber;
        }

        bool unitIsFood = unit is "clove" && !LinePlaces.IsOf(text, unitEnd) && NothingLeft(state, unitEnd);
        if (unitIsFood)
        {
            state.Measures.Add(new(value, "each"));
            return unitAt;
        }

        bool isPackage = unit is "can" or "package" or "jar" or "bottle" or "block";
        int packageWord = NumberScan.Skip(text, LinePlaces.Dash(text, LinePlaces.SkipHoles(state, unitEnd)));
        if (!isPackage && unit is "oz" or "g" or "ml" or "lb" or "l" or "kg" && words.Unit(text, packageWord, out int tin) is "can" or "jar" or "package" or "bottle" && words.Unit(text, packageWord, out tin) is { } vessel)
        {
            // "400 ml can", "28oz (825 ml) can of tomatoes": one can of that size.
            state.Package = new(value, unit);
            state.Measures.Add(new(Interval.Exactly(1), vessel));
            return tin;
        }

        value = OrTwo(text, ref unitEnd, value);
        state.Measures.Add(new(value, unit));
        InnerMeasures(state, end, isPackage, value);
        return More(state, unitEnd, first);
    }

    // "a pound or two" is one to two pounds.
    private static Interval OrTwo(string text, ref int end, Interval value)
    {
        int at = NumberScan.Skip(text, end);
        if (NumberScan.Word(text, at, out int orEnd) is "or" && NumberScan.TryNumber(text, orEnd, out int numberEnd, out double high) && high > value.High
            && (numberEnd >= text.Length || NumberScan.Skip(text, numberEnd) >= text.Length || text[NumberScan.Skip(text, numberEnd)] is ')' or ',' || NumberScan.Word(text, NumberScan.Skip(text, numberEnd), out _) is "of"))
        {
            end = numberEnd;
            return new(value.Low, high);
        }

        return value;
    }

    private int Vague(LineState state, int end, string word)
    {
        string text = state.Text;
        int next = NumberScan.Skip(text, end);
        string? unit = words.Unit(text, next, out int unitEnd);
        if (word is "few" or "little" or "bit" or "lot")
        {
            if (unit is not null && word == "few")
            {
                return unitEnd;
            }

            return next;
        }

        if (word is "small" or "medium" or "large" or "big")
        {
            state.Size = word == "big" ? "large" : word;
        }

        state.Measures.Add(new(Interval.Exactly(1), unit ?? "each"));
        return unit is null ? next : unitEnd;
    }

    // "2 (14 oz) cans": the bracket between number and package word holds the size.
    private void ParenthesisPackage(LineState state, int end)
    {
        string text = state.Text;
        int at = NumberScan.Skip(text, end);
        foreach ((int from, int to) in state.Holes)
        {
            if (from == at && NumberScan.TryRange(text, from + 1, out int numberEnd, out Interval size)
                && words.Unit(text, NumberScan.Skip(text, LinePlaces.Dash(text, numberEnd)), out _) is { } unit)
            {
                int after = NumberScan.Skip(text, to);
                if (words.Unit(text, after, out int packageEnd) is "can" or "package" or "jar" or "bottle" or "block" && words.Unit(text, after, out packageEnd) is { } package)
                {
                    state.Package = new(size, unit);
                    state.Measures[^1] = state.Measures[^1] with { Unit = package };
                    state.Holes.Add((after, packageEnd));
                }
                else
                {
                    state.Measures.Add(new(size, unit));
                }
            }
        }
    }

    private void InnerMeasures(LineState state, int end, bool isPackage, Interval count)
    {
        string text = state.Text;
        foreach ((int from, int to) in state.Holes.ToArray())
        {
            if (from < end || text[from] is not ('(' or '['))
            {
                continue;
            }

            int at = NumberScan.Skip(text, from + 1);
            if (words.Is("about", NumberScan.Word(text, at, out int aboutEnd)))
            {
                at = NumberScan.Skip(text, aboutEnd);
            }

            if (NumberScan.TryRange(text, at, out int numberEnd, out Interval size) && numberEnd < to
                && words.Unit(text, NumberScan.Skip(text, LinePlaces.Dash(text, numberEnd)), out _) is { } unit && unit is not ("inch" or "cm"))
            {
                if (isPackage && state.Package is null)
                {
                    state.Package = new(size, unit);
                }
                else
                {
                    state.Measures.Add(new(size, unit));
                }
            }
        }
    }

    // Further measures of the same food: "1 lb / 450 g", "500g or 1lb", "1 cup plus 2 tbsp".
    private int More(LineState state, int end, bool first)
    {
        string text = state.Text;
        int at = LinePlaces.SkipHoles(state, end);
        bool sum = false;
        int next = at;
        if (at < text.Length && text[at] is '/' or '|' or '=' or '+')
        {
            sum = text[at] == '+';
            next = at + 1;
        }
        else
        {
            string word = NumberScan.Word(text, at, out int wordEnd);
            bool dash = at < text.Length && text[at] is '-' or '\u2013';
            if ((word is "to" || dash) && first && state.Measures.Count == 1
                && NumberScan.TryNumber(text, dash ? at + 1 : wordEnd, out int highEnd, out double high) && high > state.Measures[0].Value.Low
                && words.Unit(text, NumberScan.Skip(text, highEnd), out int highUnitEnd) == state.Measures[0].Unit)
            {
                state.Measures[0] = state.Measures[0] with { Value = new(state.Measures[0].Value.Low, high) };
                return highUnitEnd;
            }

            if (word is "or" or "plus" or "and")
            {
                sum = word is not "or";
                next = wordEnd;
            }
        }

        if (!first || (next > at && NumberScan.TryRange(text, next, out int numberEnd, out Interval value) && Second(state, numberEnd, value, sum) is var done && done > 0 && (end = done) > 0))
        {
            return end;
        }

        return end;
    }

    private int Second(LineState state, int numberEnd, Interval value, bool sum)
    {
        string text = state.Text;
        if (words.Unit(text, NumberScan.Skip(text, LinePlaces.Dash(text, numberEnd)), out int unitEnd) is not { } unit)
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

    private int SkipSizes(LineState state, int at)
    {
        while (true)
        {
            string word = NumberScan.Word(state.Text, at, out int end);
            if (word.Length == 0 || !(words.Is("size", word) || word is "heaped" or "heaping" or "level" or "scant" or "generous" or "good" or "rounded" or "full" or "standard" or "whole" or "very" or "sized" or "thin" or "thick"))
            {
                return at;
            }

            int next = NumberScan.Skip(state.Text, LinePlaces.Dash(state.Text, end));
            if (words.Unit(state.Text, next, out _) is null && !(words.Is("size", NumberScan.Word(state.Text, next, out _)) || NumberScan.Word(state.Text, next, out _) is "sized" or "thin" or "thick"))
            {
                return at;
            }

            at = next;
        }
    }

    private static (Interval Value, int End) ListFraction(string text, int at, int end, Interval value)
    {
        // "2/3 cardamom pods", "5/6 bay leaves" of whole things means two to three, five to six.
        int slash = text.IndexOf('/', at, Math.Max(0, end - at));
        if (slash > 0
            && double.TryParse(text[at..slash].Trim(), System.Globalization.CultureInfo.InvariantCulture, out double top)
            && double.TryParse(text[(slash + 1)..end].Trim(), System.Globalization.CultureInfo.InvariantCulture, out double bottom)
            && top >= 2 && bottom == top + 1 && text[^1] is 's' or 'S' or 'f')
        {
            return (new(top, bottom), end);
        }

        return (value, end);
    }

    private static bool NothingLeft(LineState state, int at) => state.Between(at, state.Text.Length).Trim(' ', '.', ',', '*').Length == 0;
}
