using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Sorts the foods of a batch into the slots of one formula.</summary>
internal static class FormulaSorter
{
    // More ways than this to sort a recipe's lines means that it is not one written formula.
    private const int MostWays = 64;
    private const string Bell = "bell-pepper";
    private static readonly ulong s_bell = WordMask.Of(Bell);

    /// <summary>The lines of the batch with the slots that take each.</summary>
    public static List<FormulaLine> Lines(FormulaRow formula, ImmutableArray<PrintedLine> printed, Batch batch)
    {
        List<FormulaLine> lines = new(printed.Length);
        foreach (PrintedLine line in printed)
        {
            if (line.IsOneAmount && Whole(formula, line.Items, line, batch, shares: true) is { } whole)
            {
                lines.Add(whole);
                continue;
            }

            foreach (ImmutableArray<BatchItem> choice in line.Choices)
            {
                AddChoice(lines, formula, choice, line, batch);
            }
        }

        return lines;
    }

    private static FormulaLine? Whole(FormulaRow formula, ImmutableArray<BatchItem> items, PrintedLine printed, Batch batch, bool shares)
    {
        ImmutableArray<int> options = Options(formula, items, printed, batch);
        bool sure = !items.Any(static item => item.Ingredient.Optional || item.FromSteps);
        return options.IsEmpty ? null : new(items, sure, options, shares);
    }

    // Of a choice each food counts whole where less is wanted and not at all where more is; so does a part of a shared amount.
    private static void AddChoice(List<FormulaLine> lines, FormulaRow formula, ImmutableArray<BatchItem> items, PrintedLine printed, Batch batch)
    {
        if (Whole(formula, items, printed, batch, shares: false) is { } whole)
        {
            lines.Add(whole with { Sure = whole.Sure && !printed.Shares });
            return;
        }

        // A word with two meanings, of which the formula has one: the cook is asked to say which.
        if (items[0].Ingredient.Match is OneOf && items.FirstOrDefault(item => !Options(formula, [item], printed, batch).IsEmpty) is { } meant)
        {
            lines.Add(Whole(formula, [meant], printed, batch, shares: false)! with { Ambiguous = true });
            return;
        }

        foreach (BatchItem item in items)
        {
            FormulaLine? alone = items.Length == 1 ? null : Whole(formula, [item], printed, batch, shares: false);
            lines.Add(alone is null ? new([item], Sure: false, []) : alone with { Sure = false });
        }
    }

    /// <summary>Every way to put each line into one slot; a line that no slot takes has -1.</summary>
    public static IEnumerable<int[]> Ways(List<FormulaLine> lines)
    {
        int[] choice = new int[lines.Count];
        for (int way = 0; way < MostWays; way++)
        {
            yield return [.. lines.Select((line, at) => line.Options.IsEmpty ? -1 : line.Options[choice[at]])];
            int next = 0;
            while (next < lines.Count && choice[next] + 1 >= Math.Max(lines[next].Options.Length, 1))
            {
                choice[next++] = 0;
            }

            if (next == lines.Count)
            {
                yield break;
            }

            choice[next]++;
        }
    }

    private static ImmutableArray<int> Options(FormulaRow formula, ImmutableArray<BatchItem> items, PrintedLine printed, Batch batch)
    {
        List<int>? options = null;
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            if (Takes(formula.Slots[i], items, printed, batch))
            {
                (options ??= []).Add(i);
            }
        }

        return options is null ? [] : [.. options];
    }

    private static bool Takes(FormulaSlot slot, ImmutableArray<BatchItem> items, PrintedLine printed, Batch batch)
    {
        foreach (BatchItem item in items)
        {
            if (!HasFood(slot, item))
            {
                return false;
            }
        }

        if (!slot.Words.IsEmpty && !slot.Words.Any(word => printed.Folded.Contains(word, StringComparison.Ordinal)))
        {
            return false;
        }

        return !slot.Discarded || FormulaText.IsPouredAway(items[0].Ingredient.Line) || batch.Says("drained") || batch.Says("soaked");
    }

    /// <summary>The slot in which a formula has the food in one kind or size alone ("small onions"), or <see langword="null"/>.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="item">A food that fills no slot of it.</param>
    public static FormulaSlot? OfOneKind(FormulaRow formula, BatchItem item) => formula.Slots.FirstOrDefault(slot => !slot.Words.IsEmpty && HasFood(slot, item));

    private static bool HasFood(FormulaSlot slot, BatchItem item) =>
        item.Food is { } food && (slot.FoodMask & (food.IdMask | s_bell)) != 0 && (FormulaText.IsVegetable(item) ? Names(slot.Foods, Bell) : Names(slot.Foods, food.Id) || Names(slot.Swaps, food.Id));

    private static bool Names(ImmutableArray<string> foods, string id)
    {
        foreach (string food in foods)
        {
            if (string.Equals(food, id, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
