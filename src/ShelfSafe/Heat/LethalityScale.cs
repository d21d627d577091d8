namespace ShelfSafe.Heat;

/// <summary>A scale that turns temperature and time into equivalent time at a reference temperature.</summary>
/// <remarks>
/// L = 10^((T - Tref)/z) and F = integral of L dt (Bigelow's general method, by trapezoids of any width). Source of form and of the figures for
/// <see cref="Botulinum"/>: lecture notes L7 on thermal process calculation and Simpson (ed.), Food Biochemistry and Food Processing,
/// 2nd ed. (2012), ch. 38. For lessons: a computed F permits no process.
/// </remarks>
/// <param name="ReferenceCelsius">Temperature at which a second counts as a second, from 0 to 150 °C.</param>
/// <param name="ZKelvin">Rise that makes the rate ten times larger, above 0 and at most 100 K.</param>
public readonly record struct LethalityScale(double ReferenceCelsius, double ZKelvin)
{
    private const double Lowest = -40;
    private const double Highest = 150;

    /// <summary>121.1 °C and z = 10 K, as usual for spores of <i>C. botulinum</i>; the sum on it is called F0.</summary>
    public static LethalityScale Botulinum => new(121.1, 10);

    /// <summary>250 °F and z = 18 °F, on which the printed tables of the canning trade stand: 121.11 °C.</summary>
    public static LethalityScale Fahrenheit250 => new((250 - 32) / 1.8, 10);

    /// <summary>Temperature at which a second counts as a second, °C.</summary>
    public double ReferenceCelsius { get; } = Bounds.Within(ReferenceCelsius, 0, Highest, "°C");

    /// <summary>Rise that makes the rate ten times larger, kelvin.</summary>
    public double ZKelvin { get; } = Bounds.Positive(ZKelvin, 100, "K");

    /// <summary>Lethal rate: seconds at the reference that one second is worth.</summary>
    /// <param name="temperatureCelsius">From -40 to 150 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside.</exception>
    public double Rate(double temperatureCelsius) =>
        Math.Pow(10, (Bounds.Within(temperatureCelsius, Lowest, Highest, "°C") - ReferenceCelsius) / ZKelvin);

    /// <summary>Accumulated lethality of a measured or computed temperature curve.</summary>
    /// <param name="seconds">Times in rising order; any spacing.</param>
    /// <param name="celsius">Temperature at each time, from -40 to 150 °C.</param>
    /// <returns>F in seconds at the reference; 0 for fewer than two points.</returns>
    /// <exception cref="ArgumentException">The two do not have the same length, or a time falls.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature lies outside.</exception>
    public double AccumulatedSeconds(ReadOnlySpan<double> seconds, ReadOnlySpan<double> celsius)
    {
        if (seconds.Length != celsius.Length)
        {
            throw new ArgumentException("each time needs one temperature", nameof(celsius));
        }

        double sum = 0;
        for (int i = 1; i < seconds.Length; i++)
        {
            double width = seconds[i] - seconds[i - 1];
            if (!(width >= 0))
            {
                throw new ArgumentException("times must not fall", nameof(seconds));
            }

            sum += width * (Rate(celsius[i - 1]) + Rate(celsius[i])) / 2;
        }

        return sum;
    }
}
