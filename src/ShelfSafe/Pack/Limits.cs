namespace ShelfSafe.Pack;

/// <summary>Named thresholds of <c>rules/limits.csv</c>: each has a unit, a source and the reason for its side.</summary>
internal sealed class Limits
{
    private readonly Dictionary<string, double> _values = new(StringComparer.Ordinal);

    /// <summary>Columns of the table.</summary>
    public static string[] Columns => ["id", "value", "unit", "meaning", "source"];

    /// <summary>How many limits there are.</summary>
    public int Count => _values.Count;

    /// <summary>The value of a limit.</summary>
    public double this[string id] => _values[id];

    /// <summary>Reads the table.</summary>
    public static Limits Read(PackText text, List<PackFault> faults)
    {
        Limits limits = new();
        CsvTable.Read("limits.csv", text, Columns, row =>
        {
            limits._values[row.Text("id")] = row.Number("value") ?? 0;
            return string.Empty;
        }, faults);
        return limits;
    }
}
