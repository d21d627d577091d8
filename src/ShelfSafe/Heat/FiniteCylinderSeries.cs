namespace ShelfSafe.Heat;

/// <summary>Exact conduction in a finite cylinder that is plunged into a medium of constant temperature.</summary>
/// <remarks>
/// The unaccomplished temperature is the product of that of a long cylinder and of a slab (Newman's rule). Source: Carslaw and Jaeger; the first term
/// gives fh = ln 10/(alpha (x_r²/r² + x_l²/l²)) and jh, which is Ball and Olson's fh = 0.398/((1/r² + 0.427/l²) alpha) and jh 2.04 at
/// infinite Biot number. A jar is no full cylinder, has headspace and stands on a rack; conduction is the slow end of what a jar does.
/// </remarks>
public sealed class FiniteCylinderSeries
{
    private readonly Cylinder _jar;
    private readonly double _diffusivity;
    private readonly TransientSeries _radial;
    private readonly TransientSeries _axial;

    /// <summary>Prepares the roots for a jar.</summary>
    /// <param name="jar">Size of the food.</param>
    /// <param name="food">Its properties, taken as constant.</param>
    /// <param name="surfaceWattsPerSquareMetreKelvin">Heat transfer at wall and ends, above 0; infinity for a surface at the temperature of the medium.</param>
    /// <param name="terms">Terms of each series, 1 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public FiniteCylinderSeries(Cylinder jar, ThermalProperties food, double surfaceWattsPerSquareMetreKelvin, int terms = 40)
    {
        Bounds.Positive(surfaceWattsPerSquareMetreKelvin, double.PositiveInfinity, "W/(m² K)");
        _jar = jar;
        _diffusivity = food.DiffusivitySquareMetresPerSecond;
        _radial = TransientSeries.Cylinder(surfaceWattsPerSquareMetreKelvin * jar.RadiusMetres / food.ConductivityWattsPerMetreKelvin, terms);
        _axial = TransientSeries.Slab(surfaceWattsPerSquareMetreKelvin * jar.HalfHeightMetres / food.ConductivityWattsPerMetreKelvin, terms);
    }

    /// <summary>fh and jh of the centre once the first term rules (from a Fourier number of 0.2 on).</summary>
    public HeatingCurve CentreCurve
    {
        get
        {
            double r = _radial.Roots[0] / _jar.RadiusMetres;
            double l = _axial.Roots[0] / _jar.HalfHeightMetres;
            return new(Math.Log(10) / (_diffusivity * ((r * r) + (l * l))), _radial.Coefficients[0] * _axial.Coefficients[0]);
        }
    }

    /// <summary>Temperature at a place.</summary>
    /// <param name="seconds">Time since the plunge, 0 or more.</param>
    /// <param name="mediumCelsius">Temperature of the medium.</param>
    /// <param name="initialCelsius">Temperature of the food at the start, the same everywhere.</param>
    /// <param name="radiusShare">0 on the axis to 1 at the wall.</param>
    /// <param name="heightShare">0 at half height to 1 at an end.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public double TemperatureCelsius(double seconds, double mediumCelsius, double initialCelsius, double radiusShare = 0, double heightShare = 0)
    {
        double ratio = _radial.Ratio(Fourier(seconds, _jar.RadiusMetres), radiusShare) * _axial.Ratio(Fourier(seconds, _jar.HalfHeightMetres), heightShare);
        return mediumCelsius - (ratio * (mediumCelsius - initialCelsius));
    }

    /// <summary>Mean temperature over the jar: what a stirred jar would show.</summary>
    /// <param name="seconds">Time since the plunge, 0 or more.</param>
    /// <param name="mediumCelsius">Temperature of the medium.</param>
    /// <param name="initialCelsius">Temperature of the food at the start.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public double MeanCelsius(double seconds, double mediumCelsius, double initialCelsius)
    {
        double ratio = _radial.MeanRatio(Fourier(seconds, _jar.RadiusMetres)) * _axial.MeanRatio(Fourier(seconds, _jar.HalfHeightMetres));
        return mediumCelsius - (ratio * (mediumCelsius - initialCelsius));
    }

    private double Fourier(double seconds, double length) => _diffusivity * Bounds.Within(seconds, 0, double.MaxValue, "s") / (length * length);
}
