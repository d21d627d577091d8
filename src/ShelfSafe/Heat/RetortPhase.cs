namespace ShelfSafe.Heat;

/// <summary>A stretch of time in which the surroundings of the jar change evenly.</summary>
/// <param name="Seconds">Length, above 0 and at most 2 days.</param>
/// <param name="FromCelsius">Temperature around the jar at the start, from 0 to 150 °C.</param>
/// <param name="ToCelsius">Temperature around the jar at the end, from 0 to 150 °C.</param>
/// <param name="FilmWattsPerSquareMetreKelvin">
/// Heat transfer outside the jar, above 0: thousands in condensing steam, hundreds in still water, about ten in still air; infinity for a jar whose
/// outside has the temperature of the surroundings.
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
public readonly record struct RetortPhase(double Seconds, double FromCelsius, double ToCelsius, double FilmWattsPerSquareMetreKelvin)
{
    /// <summary>Length, seconds.</summary>
    public double Seconds { get; } = Bounds.Positive(Seconds, 172_800, "s");

    /// <summary>Temperature around the jar at the start, °C.</summary>
    public double FromCelsius { get; } = Bounds.Within(FromCelsius, 0, 150, "°C");

    /// <summary>Temperature around the jar at the end, °C.</summary>
    public double ToCelsius { get; } = Bounds.Within(ToCelsius, 0, 150, "°C");

    /// <summary>Heat transfer outside the jar, W/(m² K).</summary>
    public double FilmWattsPerSquareMetreKelvin { get; } = Bounds.Positive(FilmWattsPerSquareMetreKelvin, double.PositiveInfinity, "W/(m² K)");

    /// <summary>Temperature around the jar at a time within the phase.</summary>
    internal double At(double seconds) => FromCelsius + ((ToCelsius - FromCelsius) * seconds / Seconds);
}
