namespace ShelfSafe.Heat;

/// <summary>The printed tables that give g for fh/U in the formula method, z = 10 K.</summary>
/// <remarks>
/// Source: Simpson (ed.), Food Biochemistry and Food Processing, 2nd ed. (2012), tables 38.6 (Ball, jc 1.41) and 38.9 (Stumbo 1973, of which only the
/// entries here were seen). Ball's entries at fh/U 0.7 and 0.8 are left out: they stand off the smooth curve by 0.047 and 0.038. Between entries log g is
/// interpolated over log fh/U, and Stumbo's g linearly over jc, in which it is linear to the printed digits.
/// </remarks>
public static class FormulaTables
{
    private static readonly (double Ratio, double LogFahrenheit)[] Ball =
    [
        (0.4, -1.79), (0.5, -1.29), (0.6, -0.949), (1, -0.273), (1.4, 0.042), (2, 0.298), (3, 0.525), (4, 0.655), (5, 0.742), (6, 0.805), (8, 0.894),
        (10, 0.955), (20, 1.112), (30, 1.187), (50, 1.27), (100, 1.365), (200, 1.447),
    ];

    private static readonly (double Ratio, double Fahrenheit)[] Stumbo10 = [(0.5, 0.0506), (1, 0.523), (5, 5.4), (10, 8.78), (20, 12.4)];
    private static readonly (double Ratio, double Fahrenheit)[] Stumbo14 = [(1, 0.6), (2, 2.21), (3, 3.68), (5, 6.03), (10, 9.86), (20, 14.11), (50, 20.3)];
    private static readonly (double Ratio, double Fahrenheit)[] Stumbo18 = [(1, 0.676), (5, 6.67), (10, 10.93), (20, 15.82)];

    /// <summary>g by Ball's printed table (jc 1.41, m + g 180 °F).</summary>
    /// <param name="rateOverLethality">fh/U, from 0.4 to 200.</param>
    /// <returns>g in kelvin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table has no such row.</exception>
    public static double BallDifferenceKelvin(double rateOverLethality)
    {
        Bounds.Within(rateOverLethality, Ball[0].Ratio, Ball[^1].Ratio, "(fh/U)");
        return Math.Pow(10, Between(Ball, rateOverLethality)) / 1.8;
    }

    /// <summary>g by Stumbo's printed table.</summary>
    /// <param name="rateOverLethality">fh/U: from 1 to 20, and where jc is exactly 1.0 from 0.5, exactly 1.4 to 50.</param>
    /// <param name="coolingLag">jc, from 1.0 to 1.8.</param>
    /// <returns>g in kelvin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The entries at hand do not reach there.</exception>
    public static double StumboDifferenceKelvin(double rateOverLethality, double coolingLag)
    {
        Bounds.Within(coolingLag, 1, 1.8, "(lag factor)");
        if (coolingLag == 1.4)
        {
            return Stumbo(Stumbo14, rateOverLethality);
        }

        (double low, (double, double)[] left, (double, double)[] right) = coolingLag < 1.4 ? (1.0, Stumbo10, Stumbo14) : (1.4, Stumbo14, Stumbo18);
        double share = (coolingLag - low) / 0.4;
        return share == 0
            ? Stumbo(left, rateOverLethality)
            : ((1 - share) * Stumbo(left, rateOverLethality)) + (share * Stumbo(right, rateOverLethality));
    }

    private static double Stumbo((double Ratio, double Fahrenheit)[] column, double rateOverLethality)
    {
        Bounds.Within(rateOverLethality, column[0].Ratio, column[^1].Ratio, "(fh/U)");
        (double, double)[] logs = Array.ConvertAll(column, entry => (entry.Ratio, Math.Log10(entry.Fahrenheit)));
        return Math.Pow(10, Between(logs, rateOverLethality)) / 1.8;
    }

    private static double Between((double Ratio, double Log)[] column, double ratio)
    {
        int above = 1;
        while (column[above].Ratio < ratio)
        {
            above++;
        }

        (double fromRatio, double from) = column[above - 1];
        (double toRatio, double to) = column[above];
        return from + ((to - from) * Math.Log(ratio / fromRatio) / Math.Log(toRatio / fromRatio));
    }
}
