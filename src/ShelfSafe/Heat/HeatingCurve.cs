namespace ShelfSafe.Heat;

/// <summary>The straight heating line of the formula method: log10(RT - T) falls by one in each <paramref name="RateSeconds"/>.</summary>
/// <remarks>
/// T = RT - jh (RT - IT) 10^(-t/fh). Source: Ball (1923) as laid out in Simpson (ed.), Food Biochemistry and Food Processing, 2nd ed. (2012),
/// ch. 38, and the heat-penetration protocol of the Canadian Food Inspection Agency. Holds after the first lag; earlier the line lies below the food.
/// </remarks>
/// <param name="RateSeconds">fh: seconds for one log cycle, above 0 and at most 10 days.</param>
/// <param name="Lag">jh: (RT - pseudo-initial)/(RT - IT), above 0 and at most 10.</param>
public readonly record struct HeatingCurve(double RateSeconds, double Lag)
{
    /// <summary>fh, seconds.</summary>
    public double RateSeconds { get; } = Bounds.Positive(RateSeconds, 864_000, "s");

    /// <summary>jh, without unit.</summary>
    public double Lag { get; } = Bounds.Positive(Lag, 10, "(lag factor)");

    /// <summary>Temperature on the line.</summary>
    /// <param name="seconds">Time since corrected zero, 0 or more.</param>
    /// <param name="retortCelsius">RT: temperature of the heating medium.</param>
    /// <param name="initialCelsius">IT: temperature of the food at the start.</param>
    /// <returns>Temperature at the slowest point, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature lies outside -40 to 150 °C, or the time is negative.</exception>
    public double TemperatureCelsius(double seconds, double retortCelsius, double initialCelsius)
    {
        Bounds.Within(seconds, 0, double.MaxValue, "s");
        return retortCelsius - (Lag * Difference(retortCelsius, initialCelsius) * Math.Pow(10, -seconds / RateSeconds));
    }

    /// <summary>Heating time after which the slowest point is a given difference below the retort: B = fh log10(jh Ih / g).</summary>
    /// <param name="retortCelsius">RT: temperature of the heating medium.</param>
    /// <param name="initialCelsius">IT: temperature of the food at the start.</param>
    /// <param name="finalDifferenceKelvin">g: RT - T when heating stops, above 0.</param>
    /// <returns>B in seconds from corrected zero; 0 where the difference is already smaller. It explains and is no process time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public double HeatingSeconds(double retortCelsius, double initialCelsius, double finalDifferenceKelvin)
    {
        Bounds.Positive(finalDifferenceKelvin, 200, "K");
        double start = Lag * Difference(retortCelsius, initialCelsius);
        return start <= finalDifferenceKelvin ? 0 : RateSeconds * Math.Log10(start / finalDifferenceKelvin);
    }

    internal static double Difference(double retortCelsius, double initialCelsius)
    {
        Bounds.Within(retortCelsius, -40, 150, "°C");
        Bounds.Within(initialCelsius, -40, 150, "°C");
        return retortCelsius - initialCelsius;
    }
}
