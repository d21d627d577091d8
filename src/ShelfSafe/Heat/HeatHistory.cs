using System.Collections.Immutable;

namespace ShelfSafe.Heat;

/// <summary>How a jar fared: temperature at its slowest point against time, and the heat that went in.</summary>
/// <param name="Seconds">Times, rising from 0.</param>
/// <param name="CentreCelsius">Temperature at the geometric centre; in a well-mixed jar everywhere.</param>
/// <param name="RetortCelsius">Temperature around the jar.</param>
/// <param name="AbsorbedJoules">Heat that passed the surface inward, less what passed outward.</param>
/// <param name="StoredJoules">Heat held at the end above that at the start, from the temperatures alone.</param>
/// <param name="FinalMeanCelsius">Mean temperature of the food at the end.</param>
public sealed record HeatHistory(
    ImmutableArray<double> Seconds,
    ImmutableArray<double> CentreCelsius,
    ImmutableArray<double> RetortCelsius,
    double AbsorbedJoules,
    double StoredJoules,
    double FinalMeanCelsius)
{
    /// <summary>Accumulated lethality at the centre, in seconds at the reference of the scale. It teaches; it permits nothing.</summary>
    public double AccumulatedSeconds(LethalityScale scale) => scale.AccumulatedSeconds(Seconds.AsSpan(), CentreCelsius.AsSpan());

    /// <summary>Temperature at the centre at a time, by straight lines between the points.</summary>
    /// <param name="seconds">From 0 to the last time.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside.</exception>
    public double CentreAtCelsius(double seconds)
    {
        Bounds.Within(seconds, Seconds[0], Seconds[^1], "s");
        int at = Seconds.BinarySearch(seconds);
        if (at >= 0)
        {
            return CentreCelsius[at];
        }

        int above = ~at;
        double share = (seconds - Seconds[above - 1]) / (Seconds[above] - Seconds[above - 1]);
        return CentreCelsius[above - 1] + (share * (CentreCelsius[above] - CentreCelsius[above - 1]));
    }

    /// <summary>This history and one that starts where it ends.</summary>
    internal HeatHistory Then(HeatHistory next)
    {
        double end = Seconds[^1];
        return new(
            [.. Seconds, .. next.Seconds.Skip(1).Select(time => time + end)],
            [.. CentreCelsius, .. next.CentreCelsius.Skip(1)],
            [.. RetortCelsius, .. next.RetortCelsius.Skip(1)],
            AbsorbedJoules + next.AbsorbedJoules,
            StoredJoules + next.StoredJoules,
            next.FinalMeanCelsius);
    }
}
