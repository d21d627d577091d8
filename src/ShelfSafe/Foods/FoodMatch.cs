using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>What a phrase of the recipe means in the food table.</summary>
public abstract record FoodMatch
{
    /// <summary>Every food the phrase may mean; empty where none was found.</summary>
    public abstract ImmutableArray<FoodRow> Candidates { get; }

    /// <summary>Whether it may carry the trait: an unread food may carry any.</summary>
    public bool MayHave(string trait)
    {
        foreach (FoodRow food in Candidates)
        {
            if (food.Has(trait))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>Exactly one food.</summary>
/// <param name="Food">The food.</param>
/// <param name="Corrected">Whether a spelling slip was forgiven.</param>
/// <param name="OnTheCooksWord">Whether the kitchen's own alias file says so.</param>
public sealed record Identified(FoodRow Food, bool Corrected = false, bool OnTheCooksWord = false) : FoodMatch
{
    /// <inheritdoc/>
    public override ImmutableArray<FoodRow> Candidates => [Food];
}

/// <summary>A word with two meanings: each counts as in, and the worse decides.</summary>
/// <param name="Foods">The foods it may mean, two or more.</param>
public sealed record OneOf(ImmutableArray<FoodRow> Foods) : FoodMatch
{
    /// <inheritdoc/>
    public override ImmutableArray<FoodRow> Candidates => Foods;
}

/// <summary>No food of the table: counts as low-acid and untested.</summary>
/// <param name="Words">What could not be read.</param>
public sealed record Unidentified(string Words) : FoodMatch
{
    /// <inheritdoc/>
    public override ImmutableArray<FoodRow> Candidates => [];
}
