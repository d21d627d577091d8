namespace ShelfSafe.Heat;

/// <summary>The saturation line of water: at which temperature it boils at a pressure, and back.</summary>
/// <remarks>
/// Source: IAPWS R7-97(2012), industrial formulation 1997, region 4, equations 29 to 31 with the coefficients of table 34;
/// checked against tables 35 and 36 to all printed digits. Valid from 0 °C to the critical point at 373.946 °C. At 101,325 Pa it gives 99.974 °C
/// (temperature scale of 1990), not 100.
/// </remarks>
public static class WaterSaturation
{
    private const double Zero = 273.15;
    private const double HighestCelsius = 647.096 - Zero;
    private const double LowestPascals = 611.212677;
    private const double HighestPascals = 22_064_000;

    private const double N1 = 0.11670521452767e4;
    private const double N2 = -0.72421316703206e6;
    private const double N3 = -0.17073846940092e2;
    private const double N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7;
    private const double N6 = 0.14915108613530e2;
    private const double N7 = -0.48232657361591e4;
    private const double N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849;
    private const double N10 = 0.65017534844798e3;

    /// <summary>Saturation pressure of water (equation 30).</summary>
    /// <param name="temperatureCelsius">From 0 to 373.946 °C.</param>
    /// <returns>Absolute pressure, pascals.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside.</exception>
    public static double PressurePascals(double temperatureCelsius)
    {
        double kelvin = Bounds.Within(temperatureCelsius, 0, HighestCelsius, "°C") + Zero;
        double theta = kelvin + (N9 / (kelvin - N10));
        double a = (theta * theta) + (N1 * theta) + N2;
        double b = (N3 * theta * theta) + (N4 * theta) + N5;
        double c = (N6 * theta * theta) + (N7 * theta) + N8;
        double root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        return Math.Pow(root, 4) * 1e6;
    }

    /// <summary>Saturation (boiling) temperature of water (equation 31).</summary>
    /// <param name="pressurePascals">Absolute pressure, from 611.213 Pa to 22.064 MPa.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure lies outside.</exception>
    public static double TemperatureCelsius(double pressurePascals)
    {
        double beta = Math.Sqrt(Math.Sqrt(Bounds.Within(pressurePascals, LowestPascals, HighestPascals, "Pa") / 1e6));
        double e = (beta * beta) + (N3 * beta) + N6;
        double f = (N1 * beta * beta) + (N4 * beta) + N7;
        double g = (N2 * beta * beta) + (N5 * beta) + N8;
        double d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        double sum = N10 + d;
        return ((sum - Math.Sqrt((sum * sum) - (4 * (N9 + (N10 * d))))) / 2) - Zero;
    }
}
