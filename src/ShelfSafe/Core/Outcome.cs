namespace ShelfSafe.Core;

/// <summary>What published guidance offers for the recipe as written.</summary>
public enum Outcome
{
    /// <summary>Too much could not be identified or weighed to say more.</summary>
    CannotTell,

    /// <summary>An acid product with a published boiling-water process.</summary>
    BoilingWater,

    /// <summary>A published boiling-water process covers it once the listed changes are made.</summary>
    BoilingWaterAfterChanges,

    /// <summary>Low-acid, and a published pressure process covers it as written.</summary>
    Pressure,

    /// <summary>A published pressure process covers it once the listed changes are made.</summary>
    PressureAfterChanges,

    /// <summary>Acid and low-acid foods in proportions no published recipe covers.</summary>
    TestedRecipeOnly,

    /// <summary>No published process; freeze or refrigerate.</summary>
    FreezeOrChill,

    /// <summary>A dry mix: keep dry, no canning.</summary>
    DryStorage,

    /// <summary>Bread, cake, fried or fresh dish: nothing to put up.</summary>
    NotAJarFood,
}
