namespace ShelfSafe.Heat;

/// <summary>Bessel functions of the first kind, orders 0 and 1, for the cylinder series.</summary>
/// <remarks>
/// Bessel's integrals J0 = (1/π) ∫ cos(x sin θ) dθ and J1 = (1/π) ∫ sin θ sin(x sin θ) dθ from 0 to π. The integrands repeat after π, so that the
/// midpoint rule with more than x/2 + 15 points is exact to rounding (Abramowitz and Stegun 9.1.18; Trefethen and Weideman, SIAM Review 56:385).
/// </remarks>
internal static class Bessel
{
    /// <summary>J0 and J1 of 0 or more.</summary>
    public static (double J0, double J1) Of(double x)
    {
        int points = 24 + (int)x;
        double step = Math.PI / points;
        double zero = 0;
        double one = 0;

        // Both halves of the range give the same, so half of the points are enough.
        int half = points / 2;
        for (int i = 0; i < half; i++)
        {
            double sine = Math.Sin((i + 0.5) * step);
            (double s, double c) = Math.SinCos(x * sine);
            zero += 2 * c;
            one += 2 * sine * s;
        }

        if (points % 2 == 1)
        {
            zero += Math.Cos(x);
            one += Math.Sin(x);
        }

        return (zero / points, one / points);
    }
}
