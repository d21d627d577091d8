using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Exactly one food as filled. A choice gives one item a food, each from nothing to the printed amount.</summary>
/// <param name="Ingredient">The entry it came from.</param>
/// <param name="Line">Number of that entry within the batch; items of one choice share it.</param>
/// <param name="Words">The recipe's words for this very food.</param>
/// <param name="Food">The food, or <see langword="null"/> where it is not identified.</param>
/// <param name="Grams">Edible grams; <see cref="Interval.Unknown"/> where nothing can be said.</param>
/// <param name="Millilitres">Volume in the pot; <see cref="Interval.Unknown"/> where nothing can be said.</param>
/// <param name="Weighed">Whether an amount could be read and weighed, or a seasoning amount was taken for it.</param>
/// <param name="FromSteps">Whether only the steps name it.</param>
public sealed record BatchItem(
    Ingredient Ingredient,
    int Line,
    string Words,
    FoodRow? Food,
    Presence Presence,
    Interval Grams,
    Interval Millilitres,
    bool Weighed,
    bool FromSteps = false)
{
    /// <summary>Whether it counts in the jar.</summary>
    public bool InJar => Presence != Presence.AtServing;

    /// <summary>Whether the food carries the trait; an unread food carries none that a card could name, it has findings of its own.</summary>
    public bool Has(string trait) => Food is not null && Food.Has(trait);

    /// <summary>The food's acidity class; an unread food is low-acid.</summary>
    public FoodAcidity Acidity => Food?.Acidity ?? FoodAcidity.LowAcid;
}
