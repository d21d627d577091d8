using System.Collections.Immutable;
using ShelfSafe.Heat;
using ShelfSafe.Pack;

namespace ShelfSafe.Lessons;

/// <summary>Boiling point and steam temperature against altitude, and against air left in the canner.</summary>
internal sealed class CannerPictures(ImmutableArray<ProcessRow> processes, WordTable words)
{
    /// <summary>One pound a square inch in pascals, from the exact pound and inch.</summary>
    public const double PsiPascals = 6894.757293168;

    /// <summary>International foot, exact.</summary>
    public const double FootMetres = 0.3048;

    private const string Example = "soup-hot-pint-pc";
    private const double HighestFeet = 10_000;
    private const int Points = 50;

    /// <summary>The published row of the worked example.</summary>
    public ProcessRow Row => processes.First(row => string.Equals(row.Id, Example, StringComparison.Ordinal));

    /// <summary>Minutes of the published row of the worked example for a jar: pint or quart.</summary>
    public double Minutes(string jar) => processes.First(row => string.Equals(row.Id, Example.Replace("pint", jar, StringComparison.Ordinal), StringComparison.Ordinal)).Minutes;

    /// <summary>Pounds of the printed weighted-gauge band, or of the highest where none is printed for the altitude.</summary>
    public double Psi(double feet)
    {
        foreach (AltitudeBand band in Row.Weighted)
        {
            if (Math.Ceiling(feet) <= band.ToFeet)
            {
                return band.Figure;
            }
        }

        return Row.Weighted[^1].Figure;
    }

    /// <summary>Steam temperature at a printed pressure, °C.</summary>
    public static double Steam(double psi, double feet, double air = 0) => CannerSteam.TemperatureWithAirCelsius(psi * PsiPascals, feet * FootMetres, air);

    /// <summary>Boiling point, the printed bands, and the lowest pressure kept everywhere.</summary>
    /// <param name="feet">Altitude of the kitchen, or <see langword="null"/>.</param>
    public Figure Altitude(double? feet)
    {
        double lowest = Row.Weighted[0].Figure;
        ImmutableArray<double> x = [.. Enumerable.Range(0, Points + 1).Select(i => HighestFeet * i / Points)];
        FigureLine[] lines =
        [
            new(words["figure.boiling"], x, [.. x.Select(at => CannerSteam.BoilingCelsius(at * FootMetres))]),
            new(words["figure.weighted"], x, [.. x.Select(at => Steam(Psi(at), at))]),
            Dial(x),
            new(words.With("figure.kept", lowest), x, [.. x.Select(at => Steam(lowest, at))]),
        ];
        ImmutableArray<string> below = feet is { } kitchen
            ? [words.With("figure.kitchen", Math.Round(kitchen), Math.Round(CannerSteam.BoilingCelsius(kitchen * FootMetres), 1), Math.Round((CannerSteam.BoilingCelsius(kitchen * FootMetres) * 1.8) + 32)), words["figure.weather"]]
            : [words["figure.weather"]];
        return new LineFigure(words["figure.altitude"], words["figure.altitude.words"], new(words["axis.altitude"], 0, HighestFeet, 2_000), new(words["axis.celsius"], 85, 125, 5), [.. lines], below);
    }

    /// <summary>Temperature at the printed pressure with air left in, at sea level.</summary>
    public Figure Air()
    {
        double psi = Row.Weighted[0].Figure;
        ImmutableArray<double> x = [.. Enumerable.Range(0, Points + 1).Select(i => 50.0 * i / Points)];
        FigureLine line = new(words.With("figure.air.line", psi), x, [.. x.Select(at => Steam(psi, 0, at / 100))]);
        return new LineFigure(words["figure.air"], words["figure.air.words"], new(words["axis.air"], 0, 50, 10), new(words["axis.celsius"], 90, 120, 5), [line], []);
    }

    // Above the last printed band there is no line.
    private FigureLine Dial(ImmutableArray<double> x)
    {
        double[] printed = [.. x.Where(at => at <= Row.Dial[^1].ToFeet)];
        return new(words["figure.dial"], [.. printed], [.. printed.Select(at => Steam(Row.Dial.First(band => at <= band.ToFeet).Figure, at))]);
    }
}
