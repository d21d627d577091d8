using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Sorts the foods of a batch into the slots of one formula.</summary>
internal static class FormulaSorter
{
    // More ways than this to sort a recipe's lines means that it is not one written formula.
    private const int MostWays = 64;

    /// <summary>The lines of the batch with the slots that take each.</summary>
    public static List<FormulaLine> Lines(FormulaRow formula, Batch batch)
    {
        List<FormulaLine> lines = [];
        foreach (IGrouping<object?, BatchItem> printed in batch.InJar.GroupBy(item => item.Ingredient.Line, ReferenceEqualityComparer.Instance))
        {
            ImmutableArray<BatchItem> all = [.. printed];
            bool shares = all.Any(item => item.Ingredient.SharesAmountWith is not null);
            if (shares && IsOneAmount(all) && !FormulaText.HasAny(all[0].Ingredient.Line.Text.Text, ["each"]) && Whole(formula, all, batch, shares: true) is { } whole)
            {
                lines.Add(whole);
                continue;
            }

            foreach (IGrouping<int, BatchItem> choice in all.GroupBy(item => item.Line))
            {
                lines.AddRange(Choice(formula, [.. choice], batch, shares));
            }
        }

        return lines;
    }

    // Of foods that share an amount only one carries it; a second amount in the line is an amount of its own.
    private static bool IsOneAmount(ImmutableArray<BatchItem> items) =>
        items.Where(item => item.Ingredient.SharesAmountWith is null).Select(item => item.Line).Distinct().Count() == 1;

    private static FormulaLine? Whole(FormulaRow formula, ImmutableArray<BatchItem> items, Batch batch, bool shares)
    {
        bool sure = !items.Any(item => item.Ingredient.Optional || item.FromSteps);
        FormulaLine line = new(items, sure, [], shares);
        ImmutableArray<int> options = Options(formula, line, batch);
        return options.IsEmpty ? null : line with { Options = options };
    }

    // Of a choice each food counts whole where less is wanted and not at all where more is; so does a part of a shared amount.
    private static IEnumerable<FormulaLine> Choice(FormulaRow formula, ImmutableArray<BatchItem> items, Batch batch, bool shares)
    {
        if (Whole(formula, items, batch, shares: false) is { } whole)
        {
            return [whole with { Sure = whole.Sure && !shares }];
        }

        return items.Select(item => Whole(formula, [item], batch, shares: false) is { } alone
            ? alone with { Sure = alone.Sure && !shares && items.Length == 1 }
            : new FormulaLine([item], Sure: false, []));
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

    private static ImmutableArray<int> Options(FormulaRow formula, FormulaLine line, Batch batch)
    {
        ImmutableArray<int>.Builder options = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            if (Takes(formula.Slots[i], line, batch))
            {
                options.Add(i);
            }
        }

        return options.ToImmutable();
    }

    private static bool Takes(FormulaSlot slot, FormulaLine line, Batch batch)
    {
        foreach (BatchItem item in line.Items)
        {
            if (item.Food is not { } food
                || !(FormulaText.IsVegetable(item) ? slot.Foods.Contains("bell-pepper") : slot.Foods.Contains(food.Id) || slot.Swaps.Contains(food.Id)))
            {
                return false;
            }
        }

        if (!slot.Words.IsEmpty && !slot.Words.Any(word => Says(line.Text, word)))
        {
            return false;
        }

        return !slot.Discarded || FormulaText.IsPouredAway(line) || batch.Says("drained") || batch.Says("soaked");
    }

    private static bool Says(string text, string word)
    {
        string folded = string.Join(' ', WordFolding.Words(text));
        return folded.Contains(word, StringComparison.Ordinal);
    }
}
