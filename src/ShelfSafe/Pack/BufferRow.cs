using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>How strongly a kind of food resists a change of pH (<c>rules/buffers.csv</c>): for lessons, never for a verdict.</summary>
/// <param name="MolesPerKilogramPh">Acid that moves one kilogram by one pH; unbounded where nothing is published.</param>
/// <param name="Status">verified, memory or none.</param>
internal sealed record BufferRow(string Id, string Name, Interval MolesPerKilogramPh, string Source, string Url, string Status)
{
    /// <summary>Columns of the table.</summary>
    public static string[] Columns => ["id", "name", "low_mol_per_kg_ph", "high_mol_per_kg_ph", "source", "url", "status", "notes"];

    /// <summary>Reads a row; an empty upper end means that nothing bounds it.</summary>
    public static BufferRow? Read(CsvRow row)
    {
        double low = row.Number("low_mol_per_kg_ph") ?? 0;
        double high = row.Number("high_mol_per_kg_ph") ?? double.PositiveInfinity;
        if (low < 0 || low > high)
        {
            row.Fault("low_mol_per_kg_ph", "the buffering must rise from 0 or more");
            return null;
        }

        return new(row.Text("id"), row.Text("name"), new(low, high), row.Text("source"), row.Text("url"), row.Text("status"));
    }
}
