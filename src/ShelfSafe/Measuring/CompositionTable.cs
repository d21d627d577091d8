using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Composition of foods, g per 100 g, by the published foods that stand for them.</summary>
public sealed class CompositionTable
{
    private readonly MeasureIndex _index;

    internal CompositionTable(MeasureIndex index) => _index = index;

    /// <summary>Composition of a food in the state its line prints; several published foods are joined, the wider wins.</summary>
    /// <returns>The composition, or <see langword="null"/> where none is published: callers then count the worst.</returns>
    public Composition? Of(Ingredient ingredient, FoodRow food)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(food);
        return Join(_index.Matching(food, new PrintedState(ingredient)));
    }

    /// <summary>Composition of a food in any state.</summary>
    /// <returns>The composition, or <see langword="null"/> where none is published: callers then count the worst.</returns>
    public Composition? Of(FoodRow food)
    {
        ArgumentNullException.ThrowIfNull(food);
        return Join(_index.LikesOf(food));
    }

    private Composition? Join(IEnumerable<LikeRow> likes) =>
        likes.Select(like => _index.CompositionOf(like.Like))
            .OfType<Composition>()
            .Aggregate((Composition?)null, (joined, own) => joined is null ? own : Hull(joined, own));

    private static Composition Hull(Composition left, Composition right) => new(
        Hull(left.Water, right.Water),
        Hull(left.Protein, right.Protein),
        Hull(left.Fat, right.Fat),
        Hull(left.Carbohydrate, right.Carbohydrate),
        Hull(left.Fibre, right.Fibre),
        Hull(left.Starch, right.Starch),
        Hull(left.Ash, right.Ash),
        Hull(left.Density, right.Density),
        left.Source + " " + right.Source);

    // Unknown in one of them is unknown in all: it must not pass for what the other has.
    private static Interval? Hull(Interval? left, Interval? right) => left is { } own && right is { } other ? own.Hull(other) : null;
}
