using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Reads the measure tables of a rule pack.</summary>
internal static class MeasureTableReader
{
    /// <summary>Reads every table; what is wrong is added to the faults.</summary>
    /// <param name="text">Gives the text of a file of the pack, empty where it is missing.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static MeasureTables Read(Func<string, PackText> text, List<PackFault> faults) => new(
        Rows(text, TableKeys.Measures, row => new MeasureRow(row.Text("food"), row.Text("measure"), row.Text("state"), Pair(row, "low", "high")), faults),
        Rows(text, TableKeys.UnitFactors, row => new UnitFactorRow(row.Text("unit"), row.Text("region"), row.Choice("kind", ("mass", true), ("volume", false)), Pair(row, "low", "high")), faults),
        Rows(text, TableKeys.Packages, row => new PackageRow(row.Text("group"), row.Text("unit"), Pair(row, "low", "high")), faults),
        Rows(text, TableKeys.GroupWeights, Group, faults),
        Rows(text, TableKeys.Likes, Like, faults),
        Rows(text, TableKeys.Compositions, Made, faults),
        Table(text, "yields.csv", ["group", "food", "from", "to", "low", "high", "source"], row => new YieldRow(row.Text("group"), row.Text("food"), row.Text("from"), row.Text("to"), Pair(row, "low", "high"), row.Text("source")), faults),
        Table(text, "jars.csv", ["jar", "brim_ml", "ml_per_inch_low", "ml_per_inch_high", "load_low", "load_high", "source"], row => new JarRow(row.Text("jar"), row.Number("brim_ml") ?? 0, Pair(row, "ml_per_inch_low", "ml_per_inch_high"), Pair(row, "load_low", "load_high"), row.Text("source")), faults),
        Table(text, "jar-weights.csv", ["product", "pounds_a_quart_low", "pounds_a_quart_high", "source", "url", "status"], row => new JarWeightRow(row.Text("product"), Pair(row, "pounds_a_quart_low", "pounds_a_quart_high"), row.Text("source")), faults));

    private static ImmutableArray<T> Table<T>(Func<string, PackText> text, string file, string[] header, Func<CsvRow, T?> read, List<PackFault> faults)
        where T : class =>
        [.. CsvTable.Read(file, text(file), header, read, faults)];

    private static RowTable<T> Rows<T>(Func<string, PackText> text, TableKeys keys, Func<CsvRow, T?> read, List<PackFault> faults)
        where T : class =>
        new(text(keys.File), keys, read, faults);

    private static GroupWeightRow Group(CsvRow row) => new(
        row.Text("group"), Pair(row, "bulk_low", "bulk_high"), Pair(row, "density_low", "density_high"), Pair(row, "each_low", "each_high"));

    private static LikeRow Like(CsvRow row) => new(
        row.Text("food"),
        row.Text("like"),
        row.Choice("basis", ("near", true), ("same", false)),
        row.Text("state"),
        row.Choice("form", (string.Empty, false), ("pours", true)));

    private static Composition Made(CsvRow row) => new(
        One(row, "water"), One(row, "protein"), One(row, "fat"), One(row, "carbohydrate"), One(row, "fibre"), One(row, "starch"), One(row, "ash"), One(row, "density"), row.Text("source"));

    private static Interval? One(CsvRow row, string column) => row.Number(column) is { } value ? Interval.Exactly(value) : null;

    private static Interval Pair(CsvRow row, string low, string high)
    {
        double least = row.Number(low) ?? 0;
        double most = row.Number(high) ?? 0;
        if (least < 0 || most < least)
        {
            row.Fault(low, $"{low} must be 0 or more and at most {high}");
        }

        return new(least, most);
    }
}
