using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading.Amounts;
using ShelfSafe.Steps;

namespace ShelfSafe.Measuring;

/// <summary>The bottled acid that a plain tomato pack takes in each jar.</summary>
/// <param name="Food">Catalogue id.</param>
/// <param name="MillilitresPerPint">Least for a pint, ml; a quart takes twice as much.</param>
/// <param name="GramsPerPint">The same by weight, g.</param>
/// <param name="MillilitresPerKilogram">Least for a kilogram of what is acidified, where the amount is for the whole batch, ml.</param>
/// <param name="GramsPerKilogram">The same by weight, g.</param>
internal sealed record JarAcidRow(string Food, double MillilitresPerPint, double GramsPerPint, double MillilitresPerKilogram, double GramsPerKilogram);

/// <summary>Tells whether a batch brings the published acid to each jar (<c>rules/jar-acid.csv</c>). What is not clear is not enough.</summary>
internal sealed class JarAcid(ImmutableArray<JarAcidRow> rows, LineWordTable words)
{
    private const string File = "jar-acid.csv";
    private static readonly string[] Columns = ["food", "ml_per_pint", "grams_per_pint", "ml_per_kg", "grams_per_kg", "source", "url", "status"];

    /// <summary>Reads the table.</summary>
    public static ImmutableArray<JarAcidRow> Read(PackText text, List<PackFault> faults) =>
    [
        .. CsvTable.Read(File, text, Columns, row => new JarAcidRow(
            row.Text("food"),
            row.Number("ml_per_pint") ?? double.PositiveInfinity,
            row.Number("grams_per_pint") ?? double.PositiveInfinity,
            row.Number("ml_per_kg") ?? double.PositiveInfinity,
            row.Number("grams_per_kg") ?? double.PositiveInfinity), faults),
    ];

    /// <summary>Least of an acid for a pint, ml: its own row, else that of the mildest acid of the table.</summary>
    public double LeastForAPint(string food) =>
        rows.FirstOrDefault(row => row.Food == food)?.MillilitresPerPint ?? rows.Select(row => row.MillilitresPerPint).DefaultIfEmpty(0).Max();

    /// <summary>Whether one acid of the table is there in the published amount: by its own line, or by a step that puts it into each jar.</summary>
    public bool IsEnough(IReadOnlyList<BatchItem> items, IEnumerable<StepFact> facts)
    {
        foreach (JarAcidRow row in rows)
        {
            BatchItem[] own = [.. items.Where(item => item.Presence == Presence.In && item.Food?.Id == row.Food)];
            // "1 tablespoon per quart" in the list is too little, whatever the steps say.
            if (own.Any(item => PerJarWords.Find(item.Ingredient.Line.Text.Text) is "pint" or "half-pint" or "quart" && !ByLine(row, item, items)))
            {
                return false;
            }

            if (own.Any(item => ByLine(row, item, items)) || (own.Length > 0 && facts.Any(fact => fact.Id == "bottled-acid-per-jar" && BySentence(row, fact.Sentence.Text.Text))))
            {
                return true;
            }
        }

        return false;
    }

    private static bool ByLine(JarAcidRow row, BatchItem acid, IReadOnlyList<BatchItem> items)
    {
        if (acid.Ingredient.Amount is not { } amount)
        {
            return false;
        }

        double? millilitres = UnitFactors.Ratio(amount.Unit, "ml") * amount.Value.Low;
        if (PerJarWords.Find(acid.Ingredient.Line.Text.Text) is { } jar)
        {
            double pints = jar is "pint" or "half-pint" ? 1 : 2;
            return millilitres is { } each ? each >= row.MillilitresPerPint * pints : acid.Grams.Low >= row.GramsPerPint * pints;
        }

        double kilograms = items.Where(item => item.InJar && item.Food?.Group == "tomato").Sum(item => item.Grams.High) / 1000;
        return millilitres is { } all ? all >= row.MillilitresPerKilogram * kilograms : acid.Grams.Low >= row.GramsPerKilogram * kilograms;
    }

    // "Put 1 tablespoon in each pint jar, 2 in a quart": every amount must do for the jar that follows it.
    private bool BySentence(JarAcidRow row, string text)
    {
        bool any = false;
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            if (words.Unit(text, number.Next(text), out int unitEnd) is { } unit && UnitFactors.Ratio(unit, "ml") is { } ratio && unit is "tsp" or "tbsp" or "ml")
            {
                any = true;
                if (number.Value.Low * ratio < row.MillilitresPerPint * (IsPint(text, unitEnd) ? 1 : 2))
                {
                    return false;
                }
            }
        }

        return any;
    }

    private static bool IsPint(string text, int from)
    {
        int pint = text.IndexOf("pint", from, StringComparison.OrdinalIgnoreCase);
        int quart = text.IndexOf("quart", from, StringComparison.OrdinalIgnoreCase);
        return pint >= 0 && (quart < 0 || pint < quart);
    }
}
