namespace ShelfSafe.Pack;

/// <summary>A dissolved sugar or the like (<c>rules/solutes.csv</c>): for lessons on water activity, never for a verdict.</summary>
/// <param name="NorrishK">Constant of Norrish's equation.</param>
/// <param name="GramsPerMole">Molar mass.</param>
/// <param name="Status">verified or memory.</param>
internal sealed record SoluteRow(string Id, string Name, double NorrishK, double GramsPerMole, string Source, string Url, string Status)
{
    /// <summary>Columns of the table.</summary>
    public static string[] Columns => ["id", "name", "norrish_k", "grams_per_mole", "source", "url", "status", "notes"];

    /// <summary>Reads a row.</summary>
    public static SoluteRow? Read(CsvRow row)
    {
        double k = row.Number("norrish_k") ?? -1;
        double mass = row.Number("grams_per_mole") ?? 0;
        if (k < 0 || mass <= 0)
        {
            row.Fault(k < 0 ? "norrish_k" : "grams_per_mole", "a solute needs a constant of 0 or more and a molar mass above 0");
            return null;
        }

        return new(row.Text("id"), row.Text("name"), k, mass, row.Text("source"), row.Text("url"), row.Text("status"));
    }
}
