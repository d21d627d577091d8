using ShelfSafe.Core;

namespace ShelfSafe.Equilibrium;

/// <summary>Equilibrium pH of a mixture by charge balance, as an interval that holds every case within the given amounts and constants.</summary>
/// <remarks>
/// [H+] + cations - Kw/[H+] - sum C n(pH) + sum β (pH0 - pH) = 0, each term times the mass of its part; no activity correction. The left side falls with pH
/// whatever the amounts are, so the highest possible pH is where the largest possible left side is zero, and the lowest where the smallest is: the interval
/// is exact for the model, with nothing lost by counting a part twice. Sources: charge balance as in Butler and Cogley (1998) p. 123 and Price et al.,
/// J. Food Sci. 85:918 (2020), whose predictions for pure acids stayed within 0.11 of the meter. Kw is that of 25 °C.
/// </remarks>
public static class EquilibriumPh
{
    private const double Lowest = 0;
    private const double Highest = 14;

    /// <summary>Estimates the pH of a mixture.</summary>
    /// <param name="parts">Everything in the mixture; at least one part that is surely there.</param>
    /// <param name="modelErrorPh">
    /// By how much the model itself may be wrong, 0 to 7: about 0.1 for pure acids, 0.3 for juice and vinegar, 0.5 for vegetables with acid.
    /// </param>
    /// <returns>The interval, cut off at pH 0 and 14.</returns>
    /// <exception cref="ArgumentException">No part is surely there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The error lies outside.</exception>
    public static PhEstimate Estimate(IReadOnlyList<MixPart> parts, double modelErrorPh)
    {
        if (!(modelErrorPh >= 0 && modelErrorPh <= 7))
        {
            throw new ArgumentOutOfRangeException(nameof(modelErrorPh), modelErrorPh, "must lie from 0 to 7 (pH)");
        }

        if (!parts.Any(part => part.Kilograms.Low > 0))
        {
            throw new ArgumentException("at least one part must have a mass above 0", nameof(parts));
        }

        double low = Root(parts, upper: false) - modelErrorPh;
        double high = Root(parts, upper: true) + modelErrorPh;
        return new(new Interval(Math.Max(Lowest, low), Math.Min(Highest, high)));
    }

    /// <summary>One end of the interval by bisection, outward: the last half that still may hold a case counts as holding it.</summary>
    private static double Root(IReadOnlyList<MixPart> parts, bool upper)
    {
        double low = Lowest;
        double high = Highest;
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            double charge = 0;
            foreach (MixPart part in parts)
            {
                charge += part.Charge(middle, upper);
            }

            (low, high) = charge > 0 ? (middle, high) : (low, middle);
        }

        return upper ? high : low;
    }
}
