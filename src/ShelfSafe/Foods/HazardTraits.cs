namespace ShelfSafe.Foods;

/// <summary>Traits of the food table that reading must not lose.</summary>
internal static class HazardTraits
{
    /// <summary>Traits that a spelling or a modifier may not take away from what was written.</summary>
    public static IReadOnlySet<string> Kept { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "thickener", "pasta", "rice", "grain", "bread", "dairy", "egg", "seafood", "cured-meat", "offal", "meat", "poultry", "coconut-milk", "nut", "chocolate", "wild-mushroom", "fermented", "alcohol", "leavening"
    };

    /// <summary>Traits that make a food of the steps count though no list names it.</summary>
    public static IReadOnlyList<string> FromSteps { get; } =
        ["thickener", "pasta", "rice", "grain", "dairy", "egg", "coconut-milk", "nut", "chocolate", "cured-meat", "seafood", "offal", "gelatin", "fat", "alkaline"];
}
