using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Reads one printed amount with its unit, package and size.</summary>
internal sealed class MeasureScan(LineWordTable words)
{
    private readonly PieceScan _pieces = new(words);

    /// <summary>Reads what is joined to an amount.</summary>
    public MeasureJoins Joins { get; } = new(words);

    // Reads "2", "2 cups", "1 lb / 450 g", "2 (14 oz) cans", "2 x 400 g tins"; -1 where no amount stands there.
    public int Amount(LineState state, int at, bool first)
    {
        string text = state.Text;
        if (!NumberScan.TryRange(text, at, out int end, out Interval value) || end == at)
        {
            return -1;
        }

        if (NumberScan.Skip(text, end) is var percent && percent < text.Length && text[percent] == '%')
        {
            // "2 % milk" and "70 % chocolate" tell what it is, not how much.
            return -1;
        }

        string spelled = NumberScan.Word(text, at, out int wordEnd);
        if (spelled is "a" or "an" && NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int fewEnd) is "few" or "little" or "bit" or "lot" or "small" or "large" or "big" or "good" or "generous" or "heaped" or "whole" or "medium" is var vague && vague)
        {
            return Vague(state, fewEnd, NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out _));
        }

        int afterNumber = SkipSizes(state, SkipHoles(state, end));
        bool times = afterNumber < text.Length && text[afterNumber] is 'x' or 'X' or '×' && afterNumber + 1 < text.Length && (text[afterNumber + 1] == ' ' || char.IsDigit(text[afterNumber + 1]));
        afterNumber = times ? NumberScan.Skip(text, afterNumber + 1) : afterNumber;
        int sized = Sized(state, afterNumber, value, times);
        return sized > 0 ? sized : WithUnit(state, at, end, afterNumber, value, first);
    }

    // "2 x 400 g tins", "1 15 oz can", "one 28-oz can": a second measure before the package word is its size; -1 where none stands there.
    private int Sized(LineState state, int afterNumber, Interval value, bool times)
    {
        string text = state.Text;
        if (!NumberScan.TryNumber(text, afterNumber, out int sizeEnd, out double size)
            || words.Unit(text, NumberScan.Skip(text, Dash(text, sizeEnd)), out int sizeUnitEnd) is not { } sizeUnit
            || !(char.IsNumber(text[Math.Min(afterNumber, text.Length - 1)]) || sizeUnit is "inch" or "cm"))
        {
            return -1;
        }

        int packageAt = NumberScan.Skip(text, Dash(text, SkipHoles(state, sizeUnitEnd)));
        string? package = words.Unit(text, packageAt, out int packageEnd);
        if (sizeUnit is "inch" or "cm" && package is not ("piece" or "slice" or "stick" or "strip" or "cube"))
        {
            return -1;
        }

        if (package is "can" or "package" or "jar" or "bottle" or "block" or "glass" or "piece" or "slice" or "stick" or "strip" or "cube")
        {
            state.Package = new(Interval.Exactly(size), sizeUnit);
            state.Measures.Add(new(value, package));
            return packageEnd;
        }

        if (times || sizeUnit is "oz" or "g" or "lb" or "ml" or "kg" or "l")
        {
            bool canned = NumberScan.Word(text, packageAt, out _) is "canned" or "tinned";
            state.Package = new(Interval.Exactly(size), sizeUnit);
            state.Measures.Add(new(value, canned ? "can" : "each"));
            return sizeUnitEnd;
        }

        return -1;
    }

    private int WithUnit(LineState state, int at, int end, int afterNumber, Interval value, bool first)
    {
        string text = state.Text;
        int unitAt = NumberScan.Skip(text, Dash(text, afterNumber));
        string? unit = words.Unit(text, unitAt, out int unitEnd);
        if (unit is "inch" or "cm")
        {
            // "4 1/4 inch thick steaks" is four steaks.
            bool counts = value.High > 1 && text.IndexOf(' ', at, Math.Max(0, end - at)) > at;
            if (OfLength(state, value, unit, unitEnd, counts) is var piece and > 0)
            {
                return piece;
            }

            unit = null;
            value = counts ? Interval.Exactly(Math.Floor(value.Low)) : value;
        }

        if (unit is null)
        {
            (value, end) = ListFraction(text, at, end, value);
            state.Measures.Add(new(value, "each"));
            ParenthesisPackage(state, end);
            InnerMeasures(state, NumberScan.Skip(text, end) + 1, isPackage: false);
            return afterNumber;
        }

        if (unit is "clove" && !IsOf(text, unitEnd) && NothingLeft(state, unitEnd))
        {
            // "3 cloves" alone are the spice; "garlic, 3 cloves" are not.
            bool ofGarlic = text.AsSpan(0, at).Contains("garlic", StringComparison.OrdinalIgnoreCase);
            state.Measures.Add(new(value, ofGarlic ? unit : "each"));
            return ofGarlic ? unitEnd : unitAt;
        }

        if (Vessel(state, value, unit, unitEnd) is var tin && tin >= 0)
        {
            return tin;
        }

        value = OrTwo(text, ref unitEnd, value);
        state.Measures.Add(new(value, unit));
        InnerMeasures(state, end, isPackage: unit is "can" or "package" or "jar" or "bottle" or "block");
        return Joins.More(state, unitEnd, first);
    }

    // Pieces told by their length; 0 or less where the line tells of none.
    private int OfLength(LineState state, Interval value, string unit, int unitEnd, bool counts) =>
        counts && _pieces.Counted(state, value, unit, unitEnd) is var counted and > 0 ? counted : _pieces.Length(state, value, unit, unitEnd);

    // "400 ml can", "28oz (825 ml) can of tomatoes": one can of that size; -1 where no vessel follows.
    private int Vessel(LineState state, Interval value, string unit, int unitEnd)
    {
        int at = NumberScan.Skip(state.Text, Dash(state.Text, SkipHoles(state, unitEnd)));
        if (unit is "oz" or "g" or "ml" or "lb" or "l" or "kg" && words.Unit(state.Text, at, out int end) is { } vessel && vessel is "can" or "jar" or "package" or "bottle")
        {
            state.Package = new(value, unit);
            state.Measures.Add(new(Interval.Exactly(1), vessel));
            return end;
        }

        return -1;
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
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out _) is { } unit)
            {
                int after = NumberScan.Skip(text, to);
                if (words.Unit(text, after, out int packageEnd) is "can" or "package" or "jar" or "bottle" or "block" && words.Unit(text, after, out packageEnd) is { } package)
                {
                    state.Package = new(size, unit);
                    state.Measures[^1] = state.Measures[^1] with { Unit = package };
                    state.Holes.Add((after, packageEnd));
                }
                else if (state.Measures[^1].Unit == "each" && UnitFactors.Ratio(unit, "g") is not null)
                {
                    state.Package = new(size, unit); // "6 (4-oz) chicken breasts": the size of each
                }
                else
                {
                    state.Measures.Add(new(size, unit));
                }
            }
        }
    }

    // "(about 3 lb)" behind the food; "(1 tsp per jar)", "(3 lb each)" and "(1 cup juice reserved)" are no measure of the whole.
    private void InnerMeasures(LineState state, int end, bool isPackage)
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
                at = NumberScan.Skip(text, aboutEnd + (aboutEnd < text.Length && text[aboutEnd] == '.' ? 1 : 0));
            }

            if (!NumberScan.TryRange(text, at, out int numberEnd, out Interval size) || numberEnd >= to
                || words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not { } unit || unit is "inch" or "cm")
            {
                continue;
            }

            bool ofEach = state.Measures[^1].Unit == "each" && UnitFactors.Ratio(unit, "g") is not null && WordFolding.Words(text[unitEnd..to]).Any(static word => word is "each" or "apiece");
            if ((isPackage || ofEach) && state.Package is null)
            {
                state.Package = new(size, unit);
            }
            else if (!IsBoxes(unit, unitEnd, text) && !WordFolding.Words(text[unitEnd..to]).Any(word => words.Is("measure-apart", word)))
            {
                state.Measures.Add(new(size, unit));
            }
        }
    }

    // "5 cups crushed berries (about 3 quart boxes)": how much to buy is no second measure of what goes in.
    private bool IsBoxes(string unit, int unitEnd, string text) =>
        unit is "cup" or "pint" or "quart" or "l" && words.Unit(text, NumberScan.Skip(text, Dash(text, unitEnd)), out _) is "package" or "basket";

    public int SkipSizes(LineState state, int at)
    {
        while (true)
        {
            string word = NumberScan.Word(state.Text, at, out int end);
            if (word.Length == 0 || !(words.Is("size", word) || word is "heaped" or "heaping" or "level" or "scant" or "generous" or "good" or "rounded" or "full" or "standard" or "whole" or "very" or "sized" or "thin" or "thick"))
            {
                return at;
            }

            int next = NumberScan.Skip(state.Text, Dash(state.Text, end));
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
}
