namespace ShelfSafe.Core;

/// <summary>The words that stand for enum values in every machine-readable output.</summary>
public static class Names
{
    /// <summary>Kebab-case word of an outcome.</summary>
    public static string Of(Outcome outcome) => outcome switch
    {
        Outcome.CannotTell => "cannot-tell",
        Outcome.BoilingWater => "boiling-water",
        Outcome.BoilingWaterAfterChanges => "boiling-water-after-changes",
        Outcome.Pressure => "pressure",
        Outcome.PressureAfterChanges => "pressure-after-changes",
        Outcome.TestedRecipeOnly => "tested-recipe-only",
        Outcome.FreezeOrChill => "freeze-or-chill",
        Outcome.DryStorage => "dry-storage",
        Outcome.NotAJarFood => "not-a-jar-food",
    };

    /// <summary>Kebab-case word of an acidity class.</summary>
    public static string Of(Acidity acidity) => acidity switch
    {
        Acidity.Unknown => "unknown",
        Acidity.Acid => "acid",
        Acidity.Acidified => "acidified",
        Acidity.LowAcid => "low-acid",
        Acidity.Dry => "dry",
    };

    /// <summary>Word of a level.</summary>
    public static string Of(FindingLevel level) => level switch
    {
        FindingLevel.Note => "note",
        FindingLevel.Caution => "caution",
        FindingLevel.Change => "change",
        FindingLevel.Stop => "stop",
    };
}
