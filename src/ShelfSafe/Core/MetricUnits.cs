namespace ShelfSafe.Core;

/// <summary>Metric figures beside the published ones. The published figure governs.</summary>
internal static class MetricUnits
{
    /// <summary>Centimetres in an inch, exactly.</summary>
    public const double CentimetresPerInch = 2.54;

    private const double KilopascalsPerPsi = 6.894757; // pound-force an inch squared, rounded at the seventh figure
    private const double MillimetresPerInch = 10 * CentimetresPerInch;

    /// <summary>Gauge pressure in whole kilopascals, rounded up, toward more pressure.</summary>
    public static double Kilopascals(double psi) => Math.Ceiling(psi * KilopascalsPerPsi);

    /// <summary>A length in whole millimetres, nearest.</summary>
    public static double Millimetres(double inches) => Math.Round(inches * MillimetresPerInch, MidpointRounding.AwayFromZero);
}
