using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Reads the size of one can, packet or piece: "2 x 400 g tins", "400 ml can", "2 (14 oz) cans", "3 cans, 15 ounces each".</summary>
internal sealed class PackageScan(LineWordTable words)
{
    /// <summary>"2 x 400 g tins", "1 15 oz can", "one 28-oz can": a second measure before the package word is its size; -1 where none stands there.</summary>
    public int Sized(LineState state, int afterNumber, Interval value, bool times)
    {
        string text = state.Text;
        if (!NumberScan.TryRange(text, afterNumber, out int sizeEnd, out Interval size)
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

        if (IsPackage(package) || package is "glass" or "piece" or "slice" or "stick" or "strip" or "cube")
        {
            state.Package = new(size, sizeUnit);
            state.Measures.Add(new(value, package));
            return packageEnd;
        }

        if (times || sizeUnit is "oz" or "g" or "lb" or "ml" or "kg" or "l")
        {
            bool canned = NumberScan.Word(text, packageAt, out _) is "canned" or "tinned";
            state.Package = new(size, sizeUnit);
            state.Measures.Add(new(value, canned ? "can" : "each"));
            return sizeUnitEnd;
        }

        return -1;
    }

    /// <summary>"3 cans, 15 ounces each, kidney beans": the size of each before the food; -1 where none stands there.</summary>
    public int OfEach(LineState state, int unitEnd)
    {
        string text = state.Text;
        if (unitEnd < text.Length && text[unitEnd] == ',' && NumberScan.TryRange(text, unitEnd + 1, out int numberEnd, out Interval size)
            && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int sizeEnd) is { } unit && UnitFactors.Ratio(unit, unit) is not null
            && NumberScan.Word(text, NumberScan.Skip(text, sizeEnd), out int eachEnd) is "each" or "apiece" && eachEnd < text.Length && text[eachEnd] == ',')
        {
            state.Package = new(size, unit);
            return eachEnd + 1;
        }

        return -1;
    }

    /// <summary>"400 ml can", "28oz (825 ml) can of tomatoes": one can of that size; -1 where no vessel follows.</summary>
    public int Vessel(LineState state, Interval value, string unit, int unitEnd)
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

    /// <summary>"2 (14 oz) cans": the bracket between number and package word holds the size.</summary>
    public void ParenthesisPackage(LineState state, int end)
    {
        string text = state.Text;
        int at = NumberScan.Skip(text, end);
        foreach ((int from, int to) in state.Holes)
        {
            if (from == at && NumberScan.TryRange(text, from + 1, out int numberEnd, out Interval size)
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out _) is { } unit)
            {
                int after = NumberScan.Skip(text, to);
                if (words.Unit(text, after, out int packageEnd) is { } package && IsPackage(package))
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
}
