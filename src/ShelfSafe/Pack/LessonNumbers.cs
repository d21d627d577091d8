namespace ShelfSafe.Pack;

/// <summary>Numbers of the lessons' worked examples (<c>rules/lesson-numbers.csv</c>): they draw pictures and set nothing.</summary>
internal sealed class LessonNumbers
{
    private readonly Dictionary<string, double> _values = new(StringComparer.Ordinal);

    /// <summary>Columns of the table.</summary>
    public static string[] Columns => ["id", "value", "unit", "meaning", "source"];

    /// <summary>Whether the table has a number.</summary>
    public bool Has(string id) => _values.ContainsKey(id);

    /// <summary>The value of a number.</summary>
    public double this[string id] => _values[id];

    /// <summary>Reads the table.</summary>
    public static LessonNumbers Read(PackText text, List<PackFault> faults)
    {
        LessonNumbers numbers = new();
        CsvTable.Read(
            "lesson-numbers.csv",
            text,
            Columns,
            row =>
            {
                if (row.Number("value") is not { } value || row.Text("source").Length == 0)
                {
                    row.Fault("value", "a number and its source are needed");
                }
                else if (!numbers._values.TryAdd(row.Text("id"), value))
                {
                    row.Fault("id", $"the id \"{row.Text("id")}\" stands twice");
                }

                return string.Empty;
            },
            faults);
        return numbers;
    }
}
