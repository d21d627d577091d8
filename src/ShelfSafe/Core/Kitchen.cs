namespace ShelfSafe.Core;

/// <summary>The kitchen a recipe is judged for. Nothing here permits a process that the tables do not print.</summary>
/// <param name="AltitudeFeet">Altitude above sea level in feet, or <see langword="null"/> where it was not given.</param>
/// <param name="Gauge"><c>dial</c>, <c>weighted</c>, or <see langword="null"/>.</param>
/// <param name="Jar">Usual jar, or <see langword="null"/> for all that a table prints.</param>
/// <param name="Region">Country code that settles words with regional meanings, or empty.</param>
public sealed record Kitchen(double? AltitudeFeet = null, string? Gauge = null, string? Jar = null, string Region = "")
{
    /// <summary>A kitchen of which nothing is known.</summary>
    public static Kitchen Unknown { get; } = new();
}
