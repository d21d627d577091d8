using System.Globalization;

namespace ShelfSafe.Tests.Published;

/// <summary>One row of heat-checks.csv: a published or recomputed number with its source.</summary>
internal sealed class NumberedCheck
{
    private readonly Dictionary<string, string> _inputs = new(StringComparer.Ordinal);

    private NumberedCheck(Dictionary<string, string> row)
    {
        (Id, Quantity, Inputs, Source) = (row["id"], row["quantity"], row["inputs"], $"{row["source"]} {row["url"]} ({row["status"]})");
        Expected = row["expected_value"];
        Tolerance = Number(row["tolerance"]);
        string inputs = row["inputs"].Replace("wt%:", "wt%=", StringComparison.Ordinal);
        foreach (string piece in inputs.Split(';', StringSplitOptions.TrimEntries))
        {
            int equals = piece.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0)
            {
                _inputs[piece[..equals].Trim()] = piece[(equals + 1)..].Trim();
            }
        }
    }

    public string Id { get; }

    public string Quantity { get; }

    public string Inputs { get; }

    public string Source { get; }

    public string Expected { get; }

    public double Tolerance { get; }

    /// <summary>The number of an input.</summary>
    public double this[string name] => Number(_inputs[name]);

    /// <summary>All rows.</summary>
    public static List<NumberedCheck> All() => [.. PublishedTable.Read("heat-checks.csv").Select(row => new NumberedCheck(row))];

    public static double Number(string text) => text == "inf" ? double.PositiveInfinity : double.Parse(text, CultureInfo.InvariantCulture);

    public bool Has(string name) => _inputs.ContainsKey(name);

    public double Or(string name, double otherwise) => Has(name) ? this[name] : otherwise;

    /// <summary>A list of numbers parted by commas.</summary>
    public double[] List(string name) => [.. _inputs[name].Split(',').Select(Number)];

    /// <summary>A list of names with numbers, such as water=92.4,protein=2.28.</summary>
    public Dictionary<string, double> Parts(string name) =>
        _inputs[name].Split('(')[0].Split(',').Select(part => part.Split('=')).ToDictionary(part => part[0].Trim(), part => Number(part[1].Trim()), StringComparer.Ordinal);
}
