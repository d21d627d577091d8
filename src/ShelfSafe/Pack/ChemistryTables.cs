using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Tables for the lessons on pH and water activity; no verdict reads them.</summary>
internal sealed record ChemistryTables(ImmutableArray<AcidRow> Acids, ImmutableArray<BufferRow> Buffers, ImmutableArray<SoluteRow> Solutes)
{
    /// <summary>Reads the three tables; what is wrong is added to the faults and left out.</summary>
    /// <param name="text">Text of a file of the pack by its path, empty where it is missing.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static ChemistryTables Read(Func<string, PackText> text, List<PackFault> faults) => new(
        Unique("acids.csv", CsvTable.Read("acids.csv", text("acids.csv"), AcidRow.Columns, AcidRow.Read, faults), row => row.Id, faults),
        Unique("buffers.csv", CsvTable.Read("buffers.csv", text("buffers.csv"), BufferRow.Columns, BufferRow.Read, faults), row => row.Id, faults),
        Unique("solutes.csv", CsvTable.Read("solutes.csv", text("solutes.csv"), SoluteRow.Columns, SoluteRow.Read, faults), row => row.Id, faults));

    private static ImmutableArray<T> Unique<T>(string file, List<T> rows, Func<T, string> id, List<PackFault> faults)
    {
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (T row in rows)
        {
            if (!known.Add(id(row)))
            {
                faults.Add(new(file, 1, 1, $"the id \"{id(row)}\" stands twice"));
            }
        }

        return [.. rows];
    }
}
