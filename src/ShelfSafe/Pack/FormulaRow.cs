using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>One published recipe that was tested at its own proportions (<c>rules/formulas.csv</c>).</summary>
/// <param name="Id">Key of the formula.</param>
/// <param name="Name">Its published name.</param>
/// <param name="Kinds">Kinds of dish that are judged by it.</param>
/// <param name="ProcessRows">Rows of the process table; empty where the guide's table has none, and then it yields no time.</param>
/// <param name="Needs">Step facts or kinds of dish of which one must hold, since the list alone does not tell this dish from another; empty where it does.</param>
/// <param name="Yield">What one batch fills, as printed.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Url">Where it was read.</param>
/// <param name="Seen">Whether the amounts were seen in the named source.</param>
/// <param name="Slots">Its foods, in printed order.</param>
public sealed record FormulaRow(
    string Id,
    string Name,
    ImmutableArray<string> Kinds,
    ImmutableArray<string> ProcessRows,
    ImmutableArray<string> Needs,
    string Yield,
    string Source,
    string Url,
    bool Seen,
    ImmutableArray<FormulaSlot> Slots)
{
    /// <summary>Index of the slot of the heaviest food that it is made of, from 0; -1 where it weighs none.</summary>
    internal int MainSlot()
    {
        int main = -1;
        for (int i = 0; i < Slots.Length; i++)
        {
            FormulaSlot slot = Slots[i];
            bool heavier = slot.Grams is { } grams && grams > (main < 0 ? 0 : Slots[main].Grams);
            main = heavier && slot is { Presence: FormulaPresence.Required, Role: not FormulaRole.Free, Discarded: false, PerJar: false, IsCarrier: false } ? i : main;
        }

        return main;
    }
}
