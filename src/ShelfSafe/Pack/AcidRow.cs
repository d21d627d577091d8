using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>An acid (<c>rules/acids.csv</c>): for lessons on pH, never for a verdict.</summary>
/// <param name="PKa">pKa of each step, rising; an interval where sources disagree.</param>
/// <param name="GramsPerMole">Molar mass.</param>
/// <param name="Status">verified where the pKa were seen at the address, else memory.</param>
internal sealed record AcidRow(string Id, string Name, ImmutableArray<Interval> PKa, double GramsPerMole, string Source, string Url, string Status)
{
    /// <summary>Columns of the table.</summary>
    public static string[] Columns => ["id", "name", "pka", "grams_per_mole", "source", "url", "status", "notes"];

    /// <summary>Reads a row; a pKa is a number or two joined by a hyphen.</summary>
    public static AcidRow? Read(CsvRow row)
    {
        ImmutableArray<Interval>.Builder steps = ImmutableArray.CreateBuilder<Interval>();
        double before = double.NegativeInfinity;
        foreach (string text in row.List("pka"))
        {
            int hyphen = text.IndexOf('-', 1);
            string low = hyphen < 0 ? text : text[..hyphen];
            string high = hyphen < 0 ? text : text[(hyphen + 1)..];
            if (!double.TryParse(low, NumberStyles.Float, CultureInfo.InvariantCulture, out double from)
                || !double.TryParse(high, NumberStyles.Float, CultureInfo.InvariantCulture, out double to)
                || !(from >= -2 && from <= to && to <= 16 && from > before))
            {
                row.Fault("pka", $"\"{text}\" is not a pKa; write rising numbers such as 3.13;4.76;5.40-6.40");
                return null;
            }

            steps.Add(new(from, to));
            before = to;
        }

        double mass = row.Number("grams_per_mole") ?? 0;
        if (steps.Count == 0 || mass <= 0)
        {
            row.Fault(steps.Count == 0 ? "pka" : "grams_per_mole", "an acid needs a pKa and a molar mass above 0");
            return null;
        }

        return new(row.Text("id"), row.Text("name"), steps.ToImmutable(), mass, row.Text("source"), row.Text("url"), row.Text("status"));
    }
}
