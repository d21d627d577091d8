using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>What a kind of canner does (<c>rules/canners.csv</c>); a pair of canner and method without a row is not done.</summary>
/// <param name="Canner"><c>boiling-water</c>, <c>atmospheric-steam</c>, <c>pressure</c> or <c>electric</c>.</param>
/// <param name="Method">Method of a process.</param>
/// <param name="Does"><c>yes</c>; <c>no</c>: another canner is needed; <c>untested</c>: no published time fits the appliance.</param>
/// <param name="MostMinutes">Longest process that it takes, altitude included; infinite where no limit is published.</param>
/// <param name="LargestJar">Largest jar that it takes, or empty.</param>
internal sealed record CannerRow(string Canner, string Method, string Does, double MostMinutes, string LargestJar, string Source, string Url);

/// <summary>A sentence about the kitchen (<c>rules/kitchen-notes.csv</c>).</summary>
/// <param name="Sources">Keys of <c>sources.csv</c>.</param>
internal sealed record KitchenNoteRow(string Id, string Text, string Instead, ImmutableArray<string> Sources);

/// <summary>What an authority advises on canning low-acid food at home (<c>rules/countries.csv</c>).</summary>
/// <param name="Code">Country code.</param>
/// <param name="LowAcid"><c>against</c>, <c>no-times</c> or <c>pressure-canner</c>.</param>
/// <param name="Sources">Keys of <c>sources.csv</c>.</param>
internal sealed record CountryRow(string Code, string Name, string LowAcid, string Text, string Instead, ImmutableArray<string> Sources);

/// <summary>The tables about the cook's kitchen: its canners, what is said about them, and its country.</summary>
internal sealed record KitchenTables(ImmutableArray<CannerRow> Canners, ImmutableArray<KitchenNoteRow> Notes, ImmutableArray<CountryRow> Countries)
{
    private static readonly string[] CannerColumns = ["canner", "method", "does", "most_minutes", "largest_jar", "source", "url", "status"];
    private static readonly string[] NoteColumns = ["id", "text", "instead", "sources"];
    private static readonly string[] CountryColumns = ["code", "name", "low_acid", "text", "instead", "sources", "status"];

    /// <summary>Kinds of canner.</summary>
    public static ImmutableArray<string> Kinds { get; } = ["boiling-water", "atmospheric-steam", "pressure", "electric"];

    /// <summary>Reads the tables; what is wrong is added to the faults and left out.</summary>
    public static KitchenTables Read(Func<string, PackText> text, List<PackFault> faults) => new(
        [.. CsvTable.Read("canners.csv", text("canners.csv"), CannerColumns, Canner, faults)],
        [.. CsvTable.Read("kitchen-notes.csv", text("kitchen-notes.csv"), NoteColumns, row => new KitchenNoteRow(row.Text("id"), row.Text("text"), row.Text("instead"), [.. row.List("sources")]), faults)],
        [.. CsvTable.Read("countries.csv", text("countries.csv"), CountryColumns, Country, faults)]);

    /// <summary>The row of a canner and method, or <see langword="null"/>.</summary>
    public CannerRow? Row(string canner, string method) => Canners.FirstOrDefault(row => row.Canner == canner && row.Method == method);

    /// <summary>Adds a fault for each source key that does not exist, and each row without one.</summary>
    public void CheckSources(HashSet<string> known, List<PackFault> faults)
    {
        IEnumerable<(string File, string Row, ImmutableArray<string> Keys)> all =
        [
            .. Notes.Select(row => ("kitchen-notes.csv", row.Id, row.Sources)),
            .. Countries.Select(row => ("countries.csv", row.Code, row.Sources)),
        ];
        foreach ((string file, string row, ImmutableArray<string> keys) in all)
        {
            foreach (string key in (keys.IsEmpty ? [string.Empty] : keys).Where(key => !known.Contains(key)))
            {
                faults.Add(new(file, 1, 1, $"row \"{row}\": source \"{key}\" does not exist in sources.csv"));
            }
        }
    }

    private static CannerRow? Canner(CsvRow row)
    {
        string jar = row.Text("largest_jar");
        if (jar.Length > 0 && Core.JarSizes.Order(jar) < 0)
        {
            row.Fault("largest_jar", $"\"{jar}\" is no jar; allowed: {string.Join(", ", Core.JarSizes.All)}");
            return null;
        }

        return new(
            row.Choice("canner", ("boiling-water", "boiling-water"), ("atmospheric-steam", "atmospheric-steam"), ("pressure", "pressure"), ("electric", "electric")),
            row.Choice("method", ("boiling-water", "boiling-water"), ("atmospheric-steam", "atmospheric-steam"), ("pressure", "pressure")),
            row.Choice("does", ("no", "no"), ("yes", "yes"), ("untested", "untested")),
            row.Number("most_minutes") ?? double.PositiveInfinity,
            jar,
            row.Text("source"),
            row.Text("url"));
    }

    private static CountryRow? Country(CsvRow row) => new(
        row.Text("code"),
        row.Text("name"),
        row.Choice("low_acid", ("against", "against"), ("no-times", "no-times"), ("pressure-canner", "pressure-canner")),
        row.Text("text"),
        row.Text("instead"),
        [.. row.List("sources")]);
}
