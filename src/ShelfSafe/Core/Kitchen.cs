using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>The kitchen a recipe is judged for. Nothing here permits a process that the tables do not print.</summary>
/// <param name="AltitudeFeet">Altitude above sea level in feet, or <see langword="null"/> where it was not given.</param>
/// <param name="Gauge"><c>dial</c>, <c>weighted</c>, or <see langword="null"/>.</param>
/// <param name="Jar">Usual jar, or <see langword="null"/> for all that a table prints.</param>
/// <param name="Region">Country code: settles words with regional meanings, and tells whose authority is quoted; or empty.</param>
public sealed record Kitchen(double? AltitudeFeet = null, string? Gauge = null, string? Jar = null, string Region = "")
{
    /// <summary>A kitchen of which nothing is known.</summary>
    public static Kitchen Unknown { get; } = new();

    /// <summary>Kinds of canner in the kitchen: <c>boiling-water</c>, <c>atmospheric-steam</c>, <c>pressure</c>, <c>electric</c>; empty where it was not told.</summary>
    public ImmutableArray<string> Canners { get; init; } = [];

    /// <summary>Day of the last test of the dial gauge, or <see langword="null"/>.</summary>
    public DateOnly? GaugeTested { get; init; }

    /// <summary>The day on which the recipe is judged, against which the test of the gauge is held; <see langword="null"/> where it was not told.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>Jars that one canner load takes, or <see langword="null"/> for the canner of the table.</summary>
    public CannerCapacity? Capacity { get; init; }

    /// <summary>Whether metric figures are added in brackets to the published ones.</summary>
    public bool Metric { get; init; }

    /// <summary>The profile that the kitchen was read from, as a path, or <see langword="null"/>.</summary>
    public string? File { get; init; }
}
