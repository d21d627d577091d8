using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Numerics;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Finds the formulas whose required foods are all in a batch, without looking at amounts.</summary>
internal sealed class FormulaIndex
{
    /// <summary>The kind of dish that is fermented on purpose.</summary>
    public const string Fermented = "fermented-vegetable";

    private readonly PackImage _image;
    private readonly int _at;
    private readonly ImageMap _foods;
    private readonly ConcurrentDictionary<string, (int Formula, ulong Slot)[]> _byFood = new(StringComparer.Ordinal);
    private readonly ulong[] _required;
    private readonly ulong[] _main;
    private readonly ulong[] _acid;
    private readonly bool[] _timed;
    private readonly string[][] _kinds;
    private readonly ulong[] _kindMasks;

    /// <summary>Opens the index of an image.</summary>
    public FormulaIndex(PackImage image)
    {
        (_image, _at) = (image, image.Section(FormulaIndexWriter.Section));
        int count = image.Int32(_at);
        _foods = new(image, _at + image.Int32(_at + 4));
        (_required, _main, _acid, _timed, _kinds, _kindMasks) = (new ulong[count], new ulong[count], new ulong[count], new bool[count], new string[count][], new ulong[count]);
        for (int i = 0; i < count; i++)
        {
            int head = _at + FormulaIndexWriter.HeaderLength + (FormulaIndexWriter.FormulaLength * i);
            (_required[i], _main[i], _acid[i], _timed[i]) = (image.UInt64(head), image.UInt64(head + 8), image.UInt64(head + 16), image.Int32(head + 24) != 0);
            int kinds = _at + image.Int32(head + 28);
            _kinds[i] = new string[image.Int32(kinds)];
            for (int kind = 0; kind < _kinds[i].Length; kind++)
            {
                _kinds[i][kind] = image.String(image.Int32(kinds + 4 + (4 * kind)));
                _kindMasks[i] |= WordMask.Of(_kinds[i][kind]);
            }
        }
    }

    /// <summary>Makes the index of tables in memory; a stand-in counts for the slot it stands for.</summary>
    public static FormulaIndex Of(ImmutableArray<FormulaRow> formulas, PackTables tables)
    {
        return new(PackImage.Of(writer => FormulaIndexWriter.Write(formulas, tables.ProcessTable, writer)));
    }

    /// <summary>Whether a formula was seen in its source and leads to a process that was.</summary>
    public bool HasTime(int formula) => _timed[formula];

    /// <summary>How many formulas have an id before its own, in ordinal order.</summary>
    public int Rank(int formula) => _image.Int32(_at + FormulaIndexWriter.HeaderLength + (FormulaIndexWriter.FormulaLength * formula) + 32);

    /// <summary>Whether a batch is of a kind that is judged by a formula.</summary>
    public bool IsOfKind(int formula, Batch batch) => Kinship(formula, batch) > 0;

    /// <summary>
    /// How near a formula's kinds are to a batch: 2 where its first kind is one of the batch's, 1 where another is, 0 where none is.
    /// A fermented dish is nearest to a fermented formula, and no other dish is.
    /// </summary>
    public int Kinship(int formula, Batch batch)
    {
        if ((_kindMasks[formula] & batch.KindMask) == 0)
        {
            return 0;
        }

        string[] kinds = _kinds[formula];
        int own = 0;
        while (own < kinds.Length && !batch.IsKind(kinds[own]))
        {
            own++;
        }

        if (own == kinds.Length)
        {
            return 0;
        }

        bool ferments = Array.IndexOf(kinds, Fermented) >= 0;
        return ferments == (batch.IsKind(Fermented) || batch.Says("fermented")) && (ferments || own == 0) ? 2 : 1;
    }

    /// <summary>For each formula which of its slots the batch has a food for, and how many of the foods that are no seasoning it has.</summary>
    public (ulong Filled, int Foods)[] Find(Batch batch)
    {
        (ulong Filled, int Foods)[] found = new (ulong, int)[_required.Length];
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Food is not { } food)
            {
                continue;
            }

            int last = -1;
            int counts = IsSeasoning(item) ? 0 : 1;
            foreach ((int formula, ulong slot) in _byFood.GetOrAdd(food.Id, Slots))
            {
                found[formula].Filled |= slot;
                found[formula].Foods += formula == last ? 0 : counts;
                last = formula;
            }
        }

        return found;
    }

    private (int Formula, ulong Slot)[] Slots(string food)
    {
        if (_foods.Find(food) is not (int found and >= 0))
        {
            return [];
        }

        int list = _at + _foods.Value(found);
        (int, ulong)[] slots = new (int, ulong)[_image.Int32(list)];
        for (int i = 0; i < slots.Length; i++)
        {
            slots[i] = (_image.Int32(list + 4 + (12 * i)), _image.UInt64(list + 8 + (12 * i)));
        }

        return slots;
    }

    /// <summary>How many items are no seasoning: a formula that takes fewer of them cannot cover the batch.</summary>
    public static int Foods(Batch batch)
    {
        int foods = 0;
        int asked = -1; // the line of a word with two meanings: whichever fits counts as the word
        foreach (BatchItem item in batch.InJar)
        {
            bool oneMeaning = item.Ingredient.Match is OneOf;
            foods += IsSeasoning(item) || (oneMeaning && item.Line == asked) ? 0 : 1;
            asked = oneMeaning && !IsSeasoning(item) ? item.Line : asked;
        }

        return foods;
    }

    // "Pepper" may be the spice or the vegetable; the formula itself decides that.
    private static bool IsSeasoning(BatchItem item) => item.Has("dry-spice") || item.Has("salt") || item.Food?.Id == "food-colouring";

    /// <summary>Whether the heaviest food that the formula is made of is missing.</summary>
    public bool LacksMain(int formula, ulong filled) => _main[formula] != 0 && (filled & _main[formula]) == 0;

    /// <summary>Whether the heaviest food that the formula is made of is there.</summary>
    public bool HasMain(int formula, ulong filled) => (filled & _main[formula]) != 0;

    /// <summary>Whether all required slots are filled.</summary>
    public bool IsComplete(int formula, ulong filled) => (filled & _required[formula]) == _required[formula];

    /// <summary>Whether all required slots are filled but that of its acid: the dish takes another acid, or none.</summary>
    public bool LacksAcidAlone(int formula, ulong filled) => (~filled & _required[formula]) is var lacking and not 0 && (lacking & ~_acid[formula]) == 0;

    /// <summary>Share of the required slots that are filled, 0 to 1.</summary>
    public double Share(int formula, ulong filled)
    {
        int all = BitOperations.PopCount(_required[formula]);
        return all == 0 ? 0 : (double)BitOperations.PopCount(filled & _required[formula]) / all;
    }
}
