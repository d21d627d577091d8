using System.Collections.Immutable;

namespace ShelfSafe.Records;

/// <summary>One batch as it stands in the log. Anything can be recorded; only <see cref="Standing"/> says what may be printed of it.</summary>
/// <param name="Lot">Lot code, empty until the log gives one.</param>
/// <param name="Date">Day it was put up, in the kitchen's own calendar.</param>
/// <param name="Title">Title of the recipe.</param>
/// <param name="Recipe">Text of the recipe at that time, as it was read.</param>
/// <param name="File">Name of the recipe's file, or empty.</param>
/// <param name="PlainText">Whether the text is no Markdown.</param>
/// <param name="Region">Country whose kitchen words were used, or empty.</param>
/// <param name="Outcome">Outcome of the verdict at that time, a word of the report.</param>
/// <param name="Acidity">Acidity of the verdict at that time, a word of the report.</param>
/// <param name="PackVersion">Version of the rule pack that judged.</param>
/// <param name="PackSha256">SHA-256 of that pack.</param>
/// <param name="Process">The process used.</param>
/// <param name="AltitudeFeet">Altitude of the kitchen in feet, or <see langword="null"/>.</param>
/// <param name="Jars">Jars that went into the canner, at least one.</param>
/// <param name="Sealed">Jars that sealed, or <see langword="null"/> until somebody looked.</param>
/// <param name="Failed">Jars that did not seal or broke, or <see langword="null"/> until somebody looked.</param>
/// <param name="Takings">Jars taken out since, oldest first.</param>
/// <param name="Published">Whether the process used meets a published one for this recipe and kitchen.</param>
/// <param name="Boil">Whether guidance asks to boil the food before it is tasted.</param>
/// <param name="Notes">The cook's notes, or empty.</param>
public sealed record BatchRecord(
    string Lot,
    DateOnly Date,
    string Title,
    string Recipe,
    string File,
    bool PlainText,
    string Region,
    string Outcome,
    string Acidity,
    string PackVersion,
    string PackSha256,
    ProcessUsed Process,
    double? AltitudeFeet,
    int Jars,
    int? Sealed,
    int? Failed,
    ImmutableArray<Taking> Takings,
    bool Published,
    bool Boil,
    string Notes)
{
    /// <summary>Jars taken out so far.</summary>
    public int Taken => Takings.IsDefaultOrEmpty ? 0 : Takings.Sum(static taking => taking.Jars);

    /// <summary>Jars still there: those that sealed, or all until somebody looked, less those taken out.</summary>
    public int InStock => (Sealed ?? Jars) - Taken;

    /// <summary>What a label and a stock line may say.</summary>
    public ShelfStanding Standing => !Published ? ShelfStanding.FreezeOrThrowAway
        : Sealed is null ? ShelfStanding.SealsUnchecked
        : ShelfStanding.PublishedProcess;
}
