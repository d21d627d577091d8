using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Candidates;

/// <summary>The cook's amount in the measure that the formula prints.</summary>
/// <remarks>Like units are compared as printed; unlike ones through the slot's own density row, the same for both sides.</remarks>
internal static class FormulaMeasure
{
    /// <summary>What the line holds, in the slot's unit; <see langword="null"/> where nothing can be said.</summary>
    public static Interval? In(FormulaSlot slot, FormulaLine line)
    {
        Interval? all = null;
        foreach (BatchItem item in line.Items.Where(item => item.Ingredient.SharesAmountWith is null || !line.Shares))
        {
            if (Printed(slot, item.Ingredient) is { } printed)
            {
                all = all is { } before ? before.Hull(printed) : printed;
            }
            else if (Weighed(slot, item) is { } weighed)
            {
                all = all is { } before ? before.Hull(weighed) : weighed;
            }
            else
            {
                return null;
            }
        }

        return all is { } found && !line.Sure ? found.OrNothing() : all;
    }

    /// <summary>How many of the slot's unit one of the cook's unit is, for naming the allowed amount.</summary>
    public static (double Factor, string Unit)? Cook(FormulaSlot slot, FormulaLine line)
    {
        if (line.Item.Ingredient.Amount is not { } amount)
        {
            return null;
        }

        if (UnitFactors.Ratio(slot.Unit, amount.Unit) is { } factor && line.Item.Ingredient.Package is null)
        {
            return (factor, amount.Unit);
        }

        return slot.Grams is { } grams ? (grams * 2 / (slot.Low + slot.High) ?? 0, "g") : null;
    }

    // Every printed measure that is of the slot's kind; where several stand in the line the hull of them.
    private static Interval? Printed(FormulaSlot slot, Ingredient ingredient)
    {
        // Juice, zest and sizes change what a count means; those are weighed instead.
        if ((ingredient.JuiceOrZestOf is not null && !slot.Name.Contains("peel", StringComparison.Ordinal)) || ingredient.SharesAmountWith is not null || (slot.Unit == "each" && Larger(slot, ingredient)))
        {
            return null;
        }

        Interval? found = null;
        foreach (Amount amount in ingredient.Measures)
        {
            Interval? one = null;
            if (ingredient.Package is { } package && amount == ingredient.Amount && package.Unit != amount.Unit)
            {
                one = UnitFactors.Ratio(package.Unit, slot.Unit) is { } size ? package.Value * size * amount.Value
                    : amount.Unit == slot.Unit && package.Unit == "inch" && package.Value.High <= PieceInches(slot) ? amount.Value : null;
            }
            else if (UnitFactors.Ratio(amount.Unit, slot.Unit) is { } factor)
            {
                one = amount.Value * factor;
            }

            if (one is { } read)
            {
                found = found is { } before ? before.Hull(read) : read;
            }
        }

        return found;
    }

    // "3/4-inch pieces": the length of a piece that the formula's own words give; 0 where they give none.
    private static double PieceInches(FormulaSlot slot)
    {
        int digit = slot.Name.AsSpan().IndexOfAnyInRange('0', '9');
        return digit >= 0 && NumberScan.TryNumber(slot.Name, digit, out int end, out double inches) && slot.Name.AsSpan(end).TrimStart('-').StartsWith("inch", StringComparison.Ordinal) ? inches : 0;
    }

    private static bool Larger(FormulaSlot slot, Ingredient ingredient) =>
        ingredient.Size == "large" && !slot.Name.Contains("large", StringComparison.Ordinal);

    private static Interval? Weighed(FormulaSlot slot, BatchItem item)
    {
        if (!item.Weighed || !item.Grams.IsBounded || item.Ingredient.Amount is null || item.Ingredient.SharesAmountWith is not null
            || slot.Grams is not { } grams || slot.Low is not { } low || slot.High is not { } high || grams <= 0)
        {
            return null;
        }

        return item.Grams * ((low + high) / 2 / grams);
    }
}
