namespace ShelfSafe.Heat;

/// <summary>D and z values of a micro-organism.</summary>
/// <remarks>
/// D is the time that leaves a tenth of the spores, log-linear in temperature with slope -1/z (Bigelow). Source of form and figures: lecture notes L7
/// on thermal process calculation; Odlaug and Pflug, Applied and Environmental Microbiology 34:23 (1977).
/// </remarks>
public static class DecimalReduction
{
    /// <summary>Time for a number of decimal reductions at a temperature.</summary>
    /// <param name="decimalSeconds">D at the reference temperature, above 0 and at most a day.</param>
    /// <param name="scale">Reference temperature and z of the organism.</param>
    /// <param name="temperatureCelsius">From -40 to 150 °C.</param>
    /// <param name="reductions">How many tenfold falls, from 0 to 20.</param>
    /// <returns>Seconds at the temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double Seconds(double decimalSeconds, LethalityScale scale, double temperatureCelsius, double reductions)
    {
        Bounds.Positive(decimalSeconds, 86_400, "s");
        Bounds.Within(reductions, 0, 20, "reductions");
        return reductions * decimalSeconds / scale.Rate(temperatureCelsius);
    }

    /// <summary>z from D values at several temperatures: least squares of log D against temperature.</summary>
    /// <param name="celsius">At least two different temperatures.</param>
    /// <param name="decimalSeconds">D at each, above 0.</param>
    /// <returns>z in kelvin.</returns>
    /// <exception cref="ArgumentException">Fewer than two pairs, or only one temperature.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A D value is not above 0.</exception>
    public static double FitZKelvin(ReadOnlySpan<double> celsius, ReadOnlySpan<double> decimalSeconds)
    {
        if (celsius.Length != decimalSeconds.Length || celsius.Length < 2)
        {
            throw new ArgumentException("give at least two temperatures, each with a D value", nameof(celsius));
        }

        double meanT = 0;
        double meanLog = 0;
        for (int i = 0; i < celsius.Length; i++)
        {
            meanT += celsius[i] / celsius.Length;
            meanLog += Math.Log10(Bounds.Positive(decimalSeconds[i], double.MaxValue, "s", nameof(decimalSeconds))) / celsius.Length;
        }

        double across = 0;
        double along = 0;
        for (int i = 0; i < celsius.Length; i++)
        {
            across += (celsius[i] - meanT) * (Math.Log10(decimalSeconds[i]) - meanLog);
            along += (celsius[i] - meanT) * (celsius[i] - meanT);
        }

        return along > 0 && across < 0 ? -along / across : throw new ArgumentException("D must fall over at least two temperatures", nameof(celsius));
    }
}
