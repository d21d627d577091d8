using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Reads one printed amount with its unit, package and size.</summary>
internal sealed class MeasureScan(LineWordTable words)
{
    private readonly PieceScan _pieces = new(words);
    private readonly PackageScan _packages = new(words);

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

        end = AfterOrSo(text, end);
        string spelled = NumberScan.Word(text, at, out int wordEnd);
        if (spelled is "a" or "an" && NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int fewEnd) is "few" or "little" or "bit" or "lot" or "small" or "large" or "big" or "good" or "generous" or "heaped" or "whole" or "medium" is var vague && vague)
        {
            return Vague(state, fewEnd, NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out _));
        }

        if (spelled is "a" or "an" && SkipSizes(state, NumberScan.Skip(text, wordEnd), beforeNumber: true) is var scant && scant < text.Length && (char.IsNumber(text[scant])))
        {
            return Amount(state, scant, first); // "a scant 1/2 cup"
        }

        if (end + 1 < text.Length && text[end] == ':' && char.IsAsciiDigit(text[end + 1]) && NumberScan.TryNumber(text, end + 1, out int ratioEnd, out double other))
        {
            // "2:1 oil to vinegar" tells shares, and no amount: each food is one of the two.
            state.IsRatio = true;
            state.Measures.Add(new(new(Math.Min(value.Low, other), Math.Max(value.High, other)), "part"));
            return ratioEnd;
        }

        int afterNumber = SkipSizes(state, SkipHoles(state, end));
        bool times = afterNumber < text.Length && text[afterNumber] is 'x' or 'X' or '×' && afterNumber + 1 < text.Length && (text[afterNumber + 1] == ' ' || char.IsDigit(text[afterNumber + 1]));
        afterNumber = times ? NumberScan.Skip(text, afterNumber + 1) : afterNumber;
        int sized = _packages.Sized(state, afterNumber, value, times);
        return sized > 0 ? sized : WithUnit(state, at, end, afterNumber, value, first);
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

            if (!counts)
            {
                return unitEnd; // "2 inch beets", "3-inch carrot sticks": how large they are, and not how many
            }

            unit = null;
            value = Interval.Exactly(Math.Floor(value.Low));
        }

        if (unit is null)
        {
            Counted(state, at, end, value);
            return afterNumber;
        }

        if (unit is "clove" && !IsOf(text, unitEnd) && NothingLeft(state, unitEnd))
        {
            // "3 cloves" alone are the spice; "garlic, 3 cloves" are not.
            bool ofGarlic = text.AsSpan(0, at).Contains("garlic", StringComparison.OrdinalIgnoreCase);
            state.Measures.Add(new(value, ofGarlic ? unit : "each"));
            return ofGarlic ? unitEnd : unitAt;
        }

        return Measured(state, end, unitEnd, Thousands(text, at, end, value, unit), unit, first);
    }

    // A number without a unit counts pieces.
    private void Counted(LineState state, int at, int end, Interval value)
    {
        (value, end) = ListFraction(state.Text, at, end, value);
        state.Measures.Add(new(value, "each"));
        _packages.ParenthesisPackage(state, end);
        InnerMeasures(state, NumberScan.Skip(state.Text, end) + 1, isPackage: false);
    }

    private int Measured(LineState state, int end, int unitEnd, Interval value, string unit, bool first)
    {
        if (IsPackage(unit) && _packages.OfEach(state, unitEnd) is var each and > 0)
        {
            state.Measures.Add(new(value, unit));
            return each;
        }

        if (_packages.Vessel(state, value, unit, unitEnd) is var tin && tin >= 0)
        {
            return tin;
        }

        unitEnd = AfterOrSo(state.Text, unitEnd);
        value = OrTwo(state.Text, ref unitEnd, value);
        state.Measures.Add(new(value, unit));
        InnerMeasures(state, end, isPackage: IsPackage(unit));
        return Joins.More(state, unitEnd, first);
    }

    // "10 or so small cucumbers", "60ish": about as many.
    private static int AfterOrSo(string text, int end)
    {
        bool orSo = NumberScan.Word(text, NumberScan.Skip(text, end), out int or) is "or" && NumberScan.Word(text, NumberScan.Skip(text, or), out or) is "so";
        return orSo ? or : NumberScan.Word(text, end, out int ish) is "ish" && text[end - 1] is >= '0' and <= '9' ? ish : end;
    }

    // "1.500 g": a point may part thousands or decimals, and nobody can tell which.
    private static Interval Thousands(string text, int at, int end, Interval value, string unit) =>
        unit is "g" or "ml" && end - at is >= 5 and <= 7 && text[end - 4] == '.' && text[at] != '0'
            && !text.AsSpan(at, end - at - 4).ContainsAnyExceptInRange('0', '9') && !text.AsSpan(end - 3, 3).ContainsAnyExceptInRange('0', '9')
            ? new(value.Low, value.High * 1000)
            : value;

    // Pieces told by their length; 0 or less where the line tells of none.
    private int OfLength(LineState state, Interval value, string unit, int unitEnd, bool counts) =>
        counts && _pieces.Counted(state, value, unit, unitEnd) is var counted and > 0 ? counted : _pieces.Length(state, value, unit, unitEnd);

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

    /// <summary>Passes over words such as "large", "scant", "heaped" before a unit.</summary>
    /// <param name="beforeNumber">Whether a number is looked for behind them instead of a unit.</param>
    public int SkipSizes(LineState state, int at, bool beforeNumber = false)
    {
        while (true)
        {
            string word = NumberScan.Word(state.Text, at, out int end);
            bool sized = end + 1 < state.Text.Length && state.Text[end] == '-' && NumberScan.Word(state.Text, end + 1, out int sizedEnd) is "sized" or "size" && (end = sizedEnd) > 0; // "walnut-sized lump"
            if (word.Length == 0 || !(sized || words.Is("size", word) || word is "heaped" or "heaping" or "level" or "scant" or "generous" or "good" or "rounded" or "full" or "standard" or "whole" or "very" or "sized" or "thin" or "thick"))
            {
                return at;
            }

            int next = NumberScan.Skip(state.Text, Dash(state.Text, end));
            if ((beforeNumber ? next >= state.Text.Length || !char.IsNumber(state.Text[next]) : words.Unit(state.Text, next, out _) is null) && !(words.Is("size", NumberScan.Word(state.Text, next, out _)) || NumberScan.Word(state.Text, next, out _) is "sized" or "thin" or "thick"))
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
