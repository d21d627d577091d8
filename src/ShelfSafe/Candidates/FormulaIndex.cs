using System.Collections.Immutable;
using System.Numerics;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Finds the formulas whose required foods are all in a batch, without looking at amounts.</summary>
internal sealed class FormulaIndex
{
    private readonly Dictionary<string, List<(int Formula, ulong Slot)>> _byFood = new(StringComparer.Ordinal);
    private readonly ulong[] _required;
    private readonly ulong[] _main;

    /// <summary>Indexes the slots of each formula by food; a stand-in counts for the slot it stands for.</summary>
    public FormulaIndex(ImmutableArray<FormulaRow> formulas)
    {
        _required = new ulong[formulas.Length];
        _main = new ulong[formulas.Length];
        for (int at = 0; at < formulas.Length; at++)
        {
            int owner = 0;
            double heaviest = 0;
            for (int i = 0; i < formulas[at].Slots.Length; i++)
            {
                FormulaSlot slot = formulas[at].Slots[i];
                owner = slot.Presence == FormulaPresence.Instead ? owner : i;
                if (slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free)
                {
                    _required[at] |= 1UL << i;
                    if (slot.Grams > heaviest)
                    {
                        heaviest = slot.Grams.Value;
                        _main[at] = 1UL << i;
                    }
                }

                // The word "pepper" is read as the spice and may stand for the vegetable.
                ImmutableArray<string> alike = slot.Foods.Contains("bell-pepper") ? ["black-pepper"] : [];
                foreach (string food in slot.Foods.Concat(slot.Swaps).Concat(alike).Distinct(StringComparer.Ordinal))
                {
                    (_byFood.TryGetValue(food, out List<(int, ulong)>? list) ? list : _byFood[food] = []).Add((at, 1UL << owner));
                }
            }
        }
    }

    /// <summary>For each formula which of its slots the batch has a food for, and how many of the foods that are no seasoning it has.</summary>
    public (ulong Filled, int Foods)[] Find(Batch batch)
    {
        (ulong Filled, int Foods)[] found = new (ulong, int)[_required.Length];
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Food is not { } food || !_byFood.TryGetValue(food.Id, out List<(int Formula, ulong Slot)>? list))
            {
                continue;
            }

            int last = -1;
            int counts = IsSeasoning(item) ? 0 : 1;
            foreach ((int formula, ulong slot) in list)
            {
                found[formula].Filled |= slot;
                found[formula].Foods += formula == last ? 0 : counts;
                last = formula;
            }
        }

        return found;
    }

    /// <summary>How many items are no seasoning: a formula that takes fewer of them cannot cover the batch.</summary>
    public static int Foods(Batch batch) => batch.InJar.Count(item => !IsSeasoning(item));

    // "Pepper" may be the spice or the vegetable; the formula itself decides that.
    private static bool IsSeasoning(BatchItem item) => item.Has("dry-spice") || item.Has("salt") || item.Food?.Id == "food-colouring";

    /// <summary>Whether the heaviest food that the formula needs is there.</summary>
    public bool HasMain(int formula, ulong filled) => (filled & _main[formula]) != 0;

    /// <summary>Whether all required slots are filled.</summary>
    public bool IsComplete(int formula, ulong filled) => (filled & _required[formula]) == _required[formula];

    /// <summary>Share of the required slots that are filled, 0 to 1.</summary>
    public double Share(int formula, ulong filled)
    {
        int all = BitOperations.PopCount(_required[formula]);
        return all == 0 ? 0 : (double)BitOperations.PopCount(filled & _required[formula]) / all;
    }
}
