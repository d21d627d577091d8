namespace ShelfSafe.Heat;

/// <summary>Pressure of the standard atmosphere at an altitude.</summary>
/// <remarks>
/// p = 101325 (1 - 0.0065 H / 288.15)^n with n = g0 M0 / (R* L). Source: U.S. Standard Atmosphere 1976 (ISO 2533), lowest layer.
/// Weather moves the real pressure by some 2 to 3 %, which is about 0.6 to 0.8 K at the boiling point.
/// </remarks>
public static class StandardAtmosphere
{
    /// <summary>Lowest altitude of the layer, metres.</summary>
    public const double LowestMetres = -5_000;

    /// <summary>Highest altitude of the layer, metres.</summary>
    public const double HighestMetres = 11_000;

    private const double SeaLevelPascals = 101_325;
    private const double SeaLevelKelvin = 288.15;
    private const double LapseKelvinPerMetre = 0.0065;
    private const double Exponent = 9.80665 * 28.9644 / (8314.32 * LapseKelvinPerMetre);
    private const double EarthRadiusMetres = 6_356_766;

    /// <summary>Air pressure at an altitude.</summary>
    /// <param name="altitudeMetres">Geopotential altitude above sea level, from -5,000 to 11,000 m; at 1,000 m it differs from the geometric by 0.16 m.</param>
    /// <returns>Absolute pressure, pascals.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside the layer.</exception>
    public static double PressurePascals(double altitudeMetres)
    {
        Bounds.Within(altitudeMetres, LowestMetres, HighestMetres, "m");
        return SeaLevelPascals * Math.Pow(1 - (LapseKelvinPerMetre * altitudeMetres / SeaLevelKelvin), Exponent);
    }

    /// <summary>Altitude at which the standard atmosphere has a pressure: the inverse of <see cref="PressurePascals"/>.</summary>
    /// <param name="pressurePascals">Absolute pressure, from about 22.6 kPa (11,000 m) to 177.7 kPa (-5,000 m).</param>
    /// <exception cref="ArgumentOutOfRangeException">No altitude of the layer has the pressure.</exception>
    public static double AltitudeMetres(double pressurePascals)
    {
        Bounds.Within(pressurePascals, PressurePascals(HighestMetres), PressurePascals(LowestMetres), "Pa");
        return SeaLevelKelvin / LapseKelvinPerMetre * (1 - Math.Pow(pressurePascals / SeaLevelPascals, 1 / Exponent));
    }

    /// <summary>Geopotential altitude of a geometric one: H = r0 Z / (r0 + Z), r0 = 6,356,766 m.</summary>
    /// <param name="geometricMetres">Height by the measuring tape, from -5,000 to 11,000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height lies outside the layer.</exception>
    public static double GeopotentialMetres(double geometricMetres)
    {
        Bounds.Within(geometricMetres, LowestMetres, HighestMetres, "m");
        return EarthRadiusMetres * geometricMetres / (EarthRadiusMetres + geometricMetres);
    }
}
