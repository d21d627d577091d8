using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Writes the section that <see cref="FormulaIndex"/> reads.</summary>
/// <remarks>
/// Layout: number of formulas and where the map begins; for each formula the slots that must be filled, its heaviest slot, the slots of its acid, whether it has a
/// time, where its kinds stand (their number, then each), and its rank by id; the kinds; a map from each food to its slots (their number, then formula and
/// slot of each); those slots. Slots are bits of a set, places are counted from the section.
/// </remarks>
internal static class FormulaIndexWriter
{
    /// <summary>Name of the section.</summary>
    public const string Section = "formula-index";

    /// <summary>Bytes before the formulas.</summary>
    public const int HeaderLength = 8;

    /// <summary>Bytes of one formula.</summary>
    public const int FormulaLength = 36;

    /// <summary>Adds the section to an image.</summary>
    /// <param name="formulas">The formulas in the order of their table.</param>
    /// <param name="processes">The processes that they lead to.</param>
    /// <param name="writer">Takes the section.</param>
    public static void Write(ImmutableArray<FormulaRow> formulas, RowTable<ProcessRow> processes, PackImageWriter writer)
    {
        Dictionary<string, List<(int Formula, ulong Slot)>> byFood = new(StringComparer.Ordinal);
        ImageSection heads = new();
        ImageSection kinds = new();
        int kindsAt = HeaderLength + (FormulaLength * formulas.Length);
        for (int at = 0; at < formulas.Length; at++)
        {
            FormulaRow formula = formulas[at];
            (ulong required, ulong main) = Slots(formula, at, byFood);
            heads.Add(required);
            heads.Add(main);
            heads.Add(Acid(formula));
            heads.Add(formula.Seen && formula.ProcessRows.Any(row => processes.First("id", row) is { Seen: true }) ? 1 : 0);
            heads.Add(kindsAt + kinds.Length);
            heads.Add(formulas.Count(other => string.CompareOrdinal(other.Id, formula.Id) < 0));
            kinds.Add([.. formula.Kinds.Select(writer.Id)]);
        }

        ImageSection section = new();
        section.Add(formulas.Length);
        section.Add(kindsAt + kinds.Length);
        section.Add(heads.ToArray());
        section.Add(kinds.ToArray());
        WriteFoods(byFood, section, writer);
        writer.Add(Section, section);
    }

    private static ulong Acid(FormulaRow formula)
    {
        ulong acid = 0;
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            acid |= formula.Slots[i] is { IsAcid: true, Presence: FormulaPresence.Required } ? 1UL << i : 0;
        }

        return acid;
    }

    private static (ulong Required, ulong Main) Slots(FormulaRow formula, int at, Dictionary<string, List<(int Formula, ulong Slot)>> byFood)
    {
        int main = formula.MainSlot();
        ulong required = 0;
        int owner = 0;
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            FormulaSlot slot = formula.Slots[i];
            owner = slot.Presence == FormulaPresence.Instead ? owner : i;
            if (slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free)
            {
                required |= 1UL << i;
            }

            // The word "pepper" is read as the spice and may stand for the vegetable.
            ImmutableArray<string> alike = slot.Foods.Contains("bell-pepper") ? ["black-pepper"] : [];
            foreach (string food in slot.Foods.Concat(slot.Swaps).Concat(alike).Distinct(StringComparer.Ordinal))
            {
                (byFood.TryGetValue(food, out List<(int, ulong)>? list) ? list : byFood[food] = []).Add((at, 1UL << owner));
            }
        }

        return (required, main < 0 ? 0 : 1UL << main);
    }

    private static void WriteFoods(Dictionary<string, List<(int Formula, ulong Slot)>> byFood, ImageSection section, PackImageWriter writer)
    {
        // The map is as long whatever numbers stand in it, so that a first one tells where the lists begin.
        ImageSection map = new();
        ImageMap.Write(writer, map, [.. byFood.Keys.Select(static food => (food, 0))]);
        int listsAt = section.Length + map.Length;
        ImageSection lists = new();
        List<(string, int)> places = [];
        foreach ((string food, List<(int Formula, ulong Slot)> slots) in byFood)
        {
            places.Add((food, listsAt + lists.Length));
            lists.Add(slots.Count);
            foreach ((int formula, ulong slot) in slots)
            {
                lists.Add(formula);
                lists.Add(slot);
            }
        }

        ImageMap.Write(writer, section, places);
        section.Add(lists.ToArray());
    }
}
