using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>The measure tables, ready for look-up by food.</summary>
internal sealed class MeasureIndex(MeasureTables tables)
{
    /// <summary>Size of a mass or volume unit in a country, or all national sizes where it is not known.</summary>
    public UnitFactorRow? Unit(string unit, string region)
    {
        ImmutableArray<UnitFactorRow> rows = tables.Units.With("unit", unit);
        return rows.LastOrDefault(row => row.Region == region) ?? rows.LastOrDefault(row => row.Region.Length == 0);
    }

    /// <summary>Wide default weight of a counted unit, g.</summary>
    public Interval? Package(string group, string unit)
    {
        ImmutableArray<PackageRow> rows = tables.Packages.With("unit", unit);
        return (rows.LastOrDefault(row => row.Group == group) ?? rows.LastOrDefault(row => row.Group == "*"))?.Grams;
    }

    /// <summary>Wide defaults of a food group.</summary>
    public GroupWeightRow Group(string group) =>
        tables.Groups.First("group", group) ?? tables.Groups.First("group", "*") ?? throw new KeyNotFoundException(group);

    /// <summary>Composition of a published food, or <see langword="null"/>.</summary>
    public Composition? CompositionOf(string like) => tables.Compositions.With("food", like) is [.., Composition last] ? last : null;

    /// <summary>The published foods that stand for a food, at least one row: where there is none, the food itself.</summary>
    public IReadOnlyList<LikeRow> LikesOf(FoodRow food) =>
        tables.Likes.With("food", food.Id) is { IsEmpty: false } rows
            ? rows
            : [new LikeRow(food.Id, food.Id, false, string.Empty, food.Has("thin-liquid") || food.Group is "water" or "alcohol")];

    /// <summary>Rows of measures of a published food.</summary>
    public IReadOnlyList<MeasureRow> MeasuresOf(string like) => tables.Measures.With("food", like);

    /// <summary>The published foods that may stand for a food in a printed state; the worst of several is the caller's.</summary>
    public ImmutableArray<LikeRow> Matching(FoodRow food, PrintedState printed)
    {
        IReadOnlyList<LikeRow> all = LikesOf(food);
        string[] wanted = printed.IsCanned || food.Has("canned-legume") || PrintedState.Has(food.Name, "canned") ? ["canned", "cooked"]
            : printed.IsCooked ? ["cooked"]
            : printed.IsFrozen ? ["frozen"]
            : printed.IsDry ? ["dry"]
            : printed.IsLiquid ? ["liquid"]
            : [];
        foreach (string state in wanted)
        {
            ImmutableArray<LikeRow> named = [.. all.Where(row => row.State == state)];
            if (named.Length > 0)
            {
                return named;
            }
        }

        // Beans without a word on their state may be dry, cooked or from a tin; other foods are taken as bought.
        if (food.Group == "legume-dried" && wanted.Length == 0)
        {
            return [.. all];
        }

        ImmutableArray<LikeRow> bought = [.. all.Where(row => row.State is not ("cooked" or "canned"))];
        return bought.Length > 0 ? bought : [.. all];
    }
}
