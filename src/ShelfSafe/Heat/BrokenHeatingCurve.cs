namespace ShelfSafe.Heat;

/// <summary>A heating line with a break: the food heats fast until something in it sets, then slowly.</summary>
/// <remarks>
/// log10(RT - T) = log10(jh Ih) - xb/fh - (t - xb)/f2 after the break. Source: Ball and Olson, Sterilization in Food Technology (1957), form as
/// recalled; that starch which gels in the can breaks the line is told of cream-style corn and condensed soup (Tope in USDA AIB 410).
/// </remarks>
/// <param name="Before">The line before the break.</param>
/// <param name="BreakSeconds">xb: time of the break, 0 or more.</param>
/// <param name="RateAfterSeconds">f2: seconds for one log cycle after the break, above 0 and at most 10 days.</param>
public readonly record struct BrokenHeatingCurve(HeatingCurve Before, double BreakSeconds, double RateAfterSeconds)
{
    /// <summary>xb, seconds.</summary>
    public double BreakSeconds { get; } = Bounds.Within(BreakSeconds, 0, 864_000, "s");

    /// <summary>f2, seconds.</summary>
    public double RateAfterSeconds { get; } = Bounds.Positive(RateAfterSeconds, 864_000, "s");

    /// <summary>Temperature on the line.</summary>
    /// <param name="seconds">Time since corrected zero, 0 or more.</param>
    /// <param name="retortCelsius">RT: temperature of the heating medium.</param>
    /// <param name="initialCelsius">IT: temperature of the food at the start.</param>
    /// <returns>Temperature at the slowest point, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public double TemperatureCelsius(double seconds, double retortCelsius, double initialCelsius)
    {
        if (seconds <= BreakSeconds)
        {
            return Before.TemperatureCelsius(seconds, retortCelsius, initialCelsius);
        }

        double atBreak = retortCelsius - Before.TemperatureCelsius(BreakSeconds, retortCelsius, initialCelsius);
        return retortCelsius - (atBreak * Math.Pow(10, -(Bounds.Within(seconds, 0, double.MaxValue, "s") - BreakSeconds) / RateAfterSeconds));
    }

    /// <summary>Heating time after which the slowest point is a given difference below the retort.</summary>
    /// <param name="retortCelsius">RT: temperature of the heating medium.</param>
    /// <param name="initialCelsius">IT: temperature of the food at the start.</param>
    /// <param name="finalDifferenceKelvin">g: RT - T when heating stops, above 0.</param>
    /// <returns>Seconds from corrected zero. It explains and is no process time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public double HeatingSeconds(double retortCelsius, double initialCelsius, double finalDifferenceKelvin)
    {
        double unbroken = Before.HeatingSeconds(retortCelsius, initialCelsius, finalDifferenceKelvin);
        if (unbroken <= BreakSeconds)
        {
            return unbroken;
        }

        double atBreak = retortCelsius - Before.TemperatureCelsius(BreakSeconds, retortCelsius, initialCelsius);
        return BreakSeconds + (RateAfterSeconds * Math.Log10(atBreak / finalDifferenceKelvin));
    }
}
