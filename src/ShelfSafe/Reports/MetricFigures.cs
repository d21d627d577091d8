using ShelfSafe.Core;

namespace ShelfSafe.Reports;

/// <summary>Metric figures in brackets after the published ones, for a kitchen that asks for them. The published figure governs.</summary>
internal static class MetricFigures
{
    /// <summary>Gauge pressure in kilopascals, rounded up, toward more pressure.</summary>
    public static string Pressure(Words words, double psi) => " " + words.With("metric.pressure", TextNumbers.Whole(MetricUnits.Kilopascals(psi)));

    /// <summary>Headspace in whole millimetres.</summary>
    public static string Headspace(Words words, double inches) => " " + words.With("metric.headspace", TextNumbers.Whole(MetricUnits.Millimetres(inches)));

    /// <summary>An altitude band in metres, both ends rounded down, so that a kitchen between two bands reads the higher one; empty where the table prints none.</summary>
    public static string Band(Words words, Interval feet) => (feet.Low > 0, feet.IsBounded) switch
    {
        (false, false) => string.Empty,
        (true, false) => " " + words.With("metric.band-from", Metres(feet.Low)),
        (false, true) => " " + words.With("metric.band-to", Metres(feet.High)),
        (true, true) => " " + words.With("metric.band-between", Metres(feet.Low), Metres(feet.High)),
    };

    private static string Metres(double feet) => TextNumbers.Whole(Math.Floor(feet * TextNumbers.MetresPerFoot));
}
