using ShelfSafe.Candidates;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.PackBuilder;

/// <summary>The built-in pack as one binary: its files, and the indexes that the rooms would make at each start.</summary>
internal static class BuiltInPack
{
    /// <summary>Writes the binary.</summary>
    /// <param name="files">Texts of the pack by path.</param>
    /// <param name="pack">The same, read and validated.</param>
    /// <exception cref="InvalidDataException">A phrase of the step facts or the kinds of dish is wrong.</exception>
    public static byte[] Write(IReadOnlyDictionary<string, string> files, RulePack pack)
    {
        PackImageWriter writer = new();
        List<PackFault> faults = [];
        ImageFiles.Write(files, writer);
        LineWordWriter.Write(pack.Text("units.csv"), pack.Text("line-words.csv"), faults, writer);
        FoodIndexWriter.Write(pack.Tables.Foods, pack.Tables.Aliases, writer);
        FormulaIndexWriter.Write(FormulaTable.Read(pack, faults), pack.Tables.ProcessTable, writer);
        CardImage.Write(pack.Tables, writer);
        StepRuleWriter.Write(new(StepFactRow.Read(pack.Text(StepFactRow.File), faults), faults), StepFactRow.Compiled, writer);
        StepRuleWriter.Write(new(DishKindRow.Phrases(DishKindRow.Read(pack.Text(DishKindRow.File), faults).All), faults), DishKindRow.Compiled, writer);
        return faults.Count == 0 ? writer.ToArray() : throw new InvalidDataException(faults[0].ToString());
    }
}
