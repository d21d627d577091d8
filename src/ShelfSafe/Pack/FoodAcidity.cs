namespace ShelfSafe.Pack;

/// <summary>Acidity class of one food, as the food table gives it.</summary>
public enum FoodAcidity
{
    /// <summary>Above pH 4.6, or not known: the cautious reading.</summary>
    LowAcid,

    /// <summary>The published range straddles pH 4.6.</summary>
    Borderline,

    /// <summary>The whole published range is at or below pH 4.6.</summary>
    Acid,

    /// <summary>Too little water to matter.</summary>
    Dry,
}
