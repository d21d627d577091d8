namespace ShelfSafe.Heat;

/// <summary>Ball's formula method: lethality of a straight heating line and the cooling after it.</summary>
/// <remarks>
/// Source: Ball (1923) in Simpson (ed.), Food Biochemistry and Food Processing, 2nd ed. (2012), ch. 38; the cooling hyperbola with its constants 0.3,
/// 0.175 and 0.657 as recalled from Ball and Olson (1957). The direct integration gives log g larger than the printed table by 0.007 to 0.030, so the
/// print is the more cautious. For lessons: no number from here permits a process.
/// </remarks>
public static class BallFormula
{
    /// <summary>Cooling lag factor of the printed table.</summary>
    public const double CoolingLag = 1.41;

    /// <summary>m + g of the printed table: 180 °F between the retort and the cooling water, in kelvin.</summary>
    public const double RetortToWaterKelvin = 100;

    private const double ComeUpCredit = 0.42;
    private const double CountedBelowRetortKelvin = 80 / 1.8;
    private const double Ln10 = 2.302585092994046;

    /// <summary>Fi: seconds at the retort temperature that are worth one second at the reference.</summary>
    /// <param name="scale">Reference temperature and z.</param>
    /// <param name="retortCelsius">From -40 to 150 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside.</exception>
    public static double SecondsPerReferenceSecond(LethalityScale scale, double retortCelsius) => 1 / scale.Rate(retortCelsius);

    /// <summary>Operator's time from steam-up: Pt = B - 0.42 of the come-up time (Ball credits 42 % of it).</summary>
    /// <param name="heatingSeconds">B, 0 or more.</param>
    /// <param name="comeUpSeconds">Time the retort takes to its temperature, 0 or more.</param>
    /// <returns>Seconds, never below 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    public static double OperatorSeconds(double heatingSeconds, double comeUpSeconds) =>
        Math.Max(0, Bounds.Within(heatingSeconds, 0, 864_000, "s") - (ComeUpCredit * Bounds.Within(comeUpSeconds, 0, 864_000, "s")));

    /// <summary>U/fh: lethality of heating and cooling, as time at the retort temperature, for each second of fh.</summary>
    /// <param name="finalDifferenceKelvin">g: RT - T when heating stops, above 0 and below 44 K.</param>
    /// <param name="zKelvin">z, above 0 and at most 100 K.</param>
    /// <param name="coolingLag">jc, from 0.7 to 5.</param>
    /// <param name="retortToWaterKelvin">m + g: retort less cooling water, from 50 to 150 K.</param>
    /// <returns>U/fh without unit; fc is taken equal to fh.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double LethalityPerRate(double finalDifferenceKelvin, double zKelvin = 10, double coolingLag = CoolingLag, double retortToWaterKelvin = RetortToWaterKelvin)
    {
        double g = Bounds.Positive(finalDifferenceKelvin, 44, "K");
        double z = Bounds.Positive(zKelvin, 100, "K");
        double jc = Bounds.Within(coolingLag, 0.7, 5, "(lag factor)");
        double m = Bounds.Within(retortToWaterKelvin, 50, 150, "K") - g;

        double heating = Simpson(logX => Math.Pow(10, -Math.Exp(logX) / z), Math.Log(g), Math.Log(CountedBelowRetortKelvin), 400) / Ln10;
        double bend = Math.Log10(jc / 0.657);
        double atEnd = Math.Pow(10, -g / z);
        double first = Simpson(t => Math.Pow(10, -Hyperbola(t, m) / z), 0, bend, 400);
        double second = Simpson(t => Math.Pow(10, -m * (1 - (jc * Math.Pow(10, -t))) / z), bend, bend + 1, 400);
        return heating + (atEnd * (first + second));
    }

    /// <summary>g for a wanted fh/U, by direct integration: the inverse of <see cref="LethalityPerRate"/>.</summary>
    /// <param name="rateOverLethality">fh/U, from 0.3 to 300.</param>
    /// <param name="zKelvin">z, above 0 and at most 100 K.</param>
    /// <param name="coolingLag">jc, from 0.7 to 5.</param>
    /// <returns>g in kelvin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double FinalDifferenceKelvin(double rateOverLethality, double zKelvin = 10, double coolingLag = CoolingLag)
    {
        Bounds.Within(rateOverLethality, 0.3, 300, "(fh/U)");
        double low = Math.Log(1e-5);
        double high = Math.Log(44);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            bool deeper = LethalityPerRate(Math.Exp(middle), zKelvin, coolingLag) > 1 / rateOverLethality;
            (low, high) = deeper ? (middle, high) : (low, middle);
        }

        return Math.Exp((low + high) / 2);
    }

    /// <summary>Drop below the temperature at the end of heating, time in units of fc.</summary>
    private static double Hyperbola(double time, double m) => 0.3 * m * (Math.Sqrt(1 + (time / 0.175 * (time / 0.175))) - 1);

    private static double Simpson(Func<double, double> f, double from, double to, int pieces)
    {
        double width = (to - from) / pieces;
        double sum = f(from) + f(to);
        for (int i = 1; i < pieces; i++)
        {
            sum += (i % 2 == 0 ? 2 : 4) * f(from + (i * width));
        }

        return sum * width / 3;
    }
}
