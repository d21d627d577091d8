using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>What one key of the food lookup means: a food, or a choice where a word has two regional meanings.</summary>
internal sealed class FoodEntry(FoodRow first, bool regional, bool own)
{
    private readonly List<FoodRow> _foods = [first];
    private bool _regional = regional;

    /// <summary>What the key means.</summary>
    public FoodMatch Match { get; private set; } = new Identified(first, OnTheCooksWord: own);

    /// <summary>Adds another food of the same key.</summary>
    /// <param name="regionalToo">Whether its row is for a region.</param>
    /// <param name="settled">Whether the recipe's region or the cook settles it.</param>
    public void Add(FoodRow food, bool regionalToo, bool settled)
    {
        if (settled)
        {
            _foods.Clear();
        }

        // A plain name stays what it is; only rows of regions make a word ambiguous.
        if (!_foods.Contains(food) && (settled || regionalToo || _regional))
        {
            _foods.Add(food);
        }

        _regional |= regionalToo;
        Match = _foods.Count == 1 ? new Identified(_foods[0], OnTheCooksWord: own) : new OneOf([.. _foods]);
    }
}
