using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Whether the amount of a food really changed, and by how much.</summary>
/// <remarks>
/// Amounts in like units are compared as printed. Unlike ones (cups against grams) are compared by weight, and only ranges that
/// lie apart count: the same food weighed out instead of scooped has not changed.
/// </remarks>
/// <param name="tolerance">How far a kitchen measure may round away from another, share of the amount.</param>
internal sealed class AmountChange(double tolerance)
{
    /// <summary>After as a multiple of before, or <see langword="null"/> where they are the same or cannot be told apart.</summary>
    public Interval? Of(FoodGroup before, FoodGroup after)
    {
        if (Printed(before, after) is { } printed)
        {
            return printed.Before.High > 0 && Differs(printed.Before, printed.After, overlap: true) ? Factor(printed.Before, printed.After) : null;
        }

        Interval left = before.Grams;
        Interval right = after.Grams;
        if (Lines(before, after) is { } lines)
        {
            return lines;
        }

        return left.High > 0 && Differs(left, right, overlap: false) ? Factor(left, right) : null;
    }

    // The same lines and one besides: it is more, however wide the others are. "Flour" to roll out in and four spoons of flour besides may be any
    // amount more.
    private Interval? Lines(FoodGroup before, FoodGroup after)
    {
        string[] left = [.. before.Entries.Select(entry => WordFolding.Key(entry.Text)).Order(StringComparer.Ordinal)];
        string[] right = [.. after.Entries.Select(entry => WordFolding.Key(entry.Text)).Order(StringComparer.Ordinal)];
        bool more = left.Length < right.Length && left.All(right.Contains);
        bool less = right.Length < left.Length && right.All(left.Contains);
        if (!more && !less)
        {
            return null;
        }

        (FoodGroup small, FoodGroup large) = more ? (before, after) : (after, before);
        string[] own = more ? left : right;
        Interval rest = small.Grams;
        Interval extra = large.Entries.Where(entry => !own.Contains(WordFolding.Key(entry.Text))).Aggregate(Interval.Zero, (sum, entry) => sum + (entry.Grams ?? Interval.Unknown));
        if (!rest.IsBounded || !extra.IsBounded || rest.Low <= 0)
        {
            return more ? new(1, double.PositiveInfinity) : new(0, 1);
        }

        Interval raised = new(1 + (extra.Low / rest.High), 1 + (extra.High / rest.Low));
        return raised.High - 1 <= tolerance ? null : more ? raised : new(1 / raised.High, 1 / raised.Low);
    }

    /// <summary>
    /// After as a multiple of before, where both were measured in unlike ways and a change may hide between them;
    /// <see langword="null"/> where they are told apart, or are as good as equal.
    /// </summary>
    public Interval? Doubt(FoodGroup before, FoodGroup after)
    {
        Interval left = before.Grams;
        Interval right = after.Grams;
        if (Printed(before, after) is not null || !left.IsBounded || !right.IsBounded || left.Low <= 0 || Differs(left, right, overlap: false))
        {
            return null;
        }

        Interval factor = new(right.Low / left.High, right.High / left.Low);
        return factor.Low < 1 - tolerance || factor.High > 1 + tolerance ? factor : null;
    }

    /// <summary>Whether two ranges are different.</summary>
    /// <param name="overlap">Whether ranges that overlap may differ: true where both were printed in like units.</param>
    public bool Differs(Interval before, Interval after, bool overlap)
    {
        if (!overlap)
        {
            return after.Low > before.High * (1 + tolerance) || after.High < before.Low * (1 - tolerance);
        }

        bool low = Apart(before.Low, after.Low);
        bool high = before.IsBounded && after.IsBounded ? Apart(before.High, after.High) : before.IsBounded != after.IsBounded;
        return low || high;
    }

    private bool Apart(double before, double after) => Math.Abs(after - before) > tolerance * Math.Max(before, after);

    private static Interval Factor(Interval before, Interval after)
    {
        // Both ends move with the cook's one spoon or cup where the ranges are alike, else the widest that may be.
        double low = before.Low > 0 ? after.Low / before.Low : double.NaN;
        double high = before.High > 0 && before.IsBounded ? after.High / before.High : double.NaN;
        return double.IsFinite(low) && double.IsFinite(high)
            ? new(Math.Min(low, high), Math.Max(low, high))
            : new(0, double.PositiveInfinity);
    }

    private static (Interval Before, Interval After)? Printed(FoodGroup before, FoodGroup after)
    {
        string? unit = before.First.Amount?.Unit;
        return unit is not null && Sum(before, unit) is { } left && Sum(after, unit) is { } right ? (left, right) : null;
    }

    private static Interval? Sum(FoodGroup group, string unit)
    {
        Interval sum = Interval.Zero;
        foreach (IngredientReport entry in group.Entries)
        {
            if (entry.Amount is not { } amount || entry.Package is not null || !UnitFactors.Alike(amount.Unit, unit) || UnitFactors.Ratio(amount.Unit, unit) is not { } ratio)
            {
                return null;
            }

            sum += amount.Value * ratio;
        }

        return sum;
    }
}
