namespace ShelfSafe.Heat;

/// <summary>Temperature inside a canner from its gauge and the altitude, and back.</summary>
/// <remarks>
/// T = Tsat(p(altitude) + gauge): a gauge reads above the air around it, so the same reading is cooler higher up.
/// Sources: <see cref="StandardAtmosphere"/> and <see cref="WaterSaturation"/>. It explains the published altitude bands and replaces none of them.
/// </remarks>
public static class CannerSteam
{
    /// <summary>Highest gauge pressure taken, pascals; home canners stay near a quarter of it.</summary>
    public const double HighestGaugePascals = 400_000;

    /// <summary>Boiling point of water in an open pot.</summary>
    /// <param name="altitudeMetres">From -5,000 to 11,000 m.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside.</exception>
    public static double BoilingCelsius(double altitudeMetres) =>
        WaterSaturation.TemperatureCelsius(StandardAtmosphere.PressurePascals(altitudeMetres));

    /// <summary>Temperature of pure steam at a gauge pressure.</summary>
    /// <param name="gaugePascals">Pressure above the air around, from 0 to 400 kPa.</param>
    /// <param name="altitudeMetres">From -5,000 to 11,000 m.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double TemperatureCelsius(double gaugePascals, double altitudeMetres) =>
        TemperatureWithAirCelsius(gaugePascals, altitudeMetres, airFraction: 0);

    /// <summary>Temperature of steam with air left in it: why a canner is vented.</summary>
    /// <param name="gaugePascals">Pressure above the air around, from 0 to 400 kPa.</param>
    /// <param name="altitudeMetres">From -5,000 to 11,000 m.</param>
    /// <param name="airFraction">Share of air by volume (moles), from 0 to 0.9.</param>
    /// <returns>Temperature, °C; the gauge does not show the loss.</returns>
    /// <remarks>Dalton's law: the steam carries only (1 - air) of the pressure. Well mixed; real air gathers in pockets, which are cooler still.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double TemperatureWithAirCelsius(double gaugePascals, double altitudeMetres, double airFraction)
    {
        Bounds.Within(gaugePascals, 0, HighestGaugePascals, "Pa");
        Bounds.Within(airFraction, 0, 0.9, "of the volume");
        return WaterSaturation.TemperatureCelsius((1 - airFraction) * (StandardAtmosphere.PressurePascals(altitudeMetres) + gaugePascals));
    }

    /// <summary>Gauge pressure at which pure steam has a temperature.</summary>
    /// <param name="temperatureCelsius">From the boiling point there to 150 °C.</param>
    /// <param name="altitudeMetres">From -5,000 to 11,000 m.</param>
    /// <returns>Gauge pressure, pascals.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside; below the boiling point no gauge shows anything.</exception>
    public static double GaugePascals(double temperatureCelsius, double altitudeMetres)
    {
        Bounds.Within(temperatureCelsius, BoilingCelsius(altitudeMetres), 150, "°C");
        return WaterSaturation.PressurePascals(temperatureCelsius) - StandardAtmosphere.PressurePascals(altitudeMetres);
    }
}
