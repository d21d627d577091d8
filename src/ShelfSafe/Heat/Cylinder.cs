namespace ShelfSafe.Heat;

/// <summary>The food in a jar as an upright cylinder.</summary>
/// <param name="RadiusMetres">Inner radius, above 0 and at most 1 m.</param>
/// <param name="HalfHeightMetres">Half the height of the food, above 0 and at most 1 m.</param>
/// <exception cref="ArgumentOutOfRangeException">A length lies outside.</exception>
public readonly record struct Cylinder(double RadiusMetres, double HalfHeightMetres)
{
    /// <summary>Inner radius, metres.</summary>
    public double RadiusMetres { get; } = Bounds.Positive(RadiusMetres, 1, "m");

    /// <summary>Half the height, metres.</summary>
    public double HalfHeightMetres { get; } = Bounds.Positive(HalfHeightMetres, 1, "m");

    /// <summary>Volume, m³.</summary>
    public double VolumeCubicMetres => 2 * Math.PI * RadiusMetres * RadiusMetres * HalfHeightMetres;

    /// <summary>Wall and both ends, m².</summary>
    public double SurfaceSquareMetres => 2 * Math.PI * RadiusMetres * ((2 * HalfHeightMetres) + RadiusMetres);

    /// <summary>
    /// The cylinder that holds a known volume at a known inner height, r = sqrt(V/(π H)): printed jar diameters are outside ones and contradict
    /// the volumes, so volume is the better start.
    /// </summary>
    /// <param name="volumeCubicMetres">Food in the jar, above 0 and at most 1 m³.</param>
    /// <param name="heightMetres">Height of the food, above 0 and at most 2 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static Cylinder FromVolume(double volumeCubicMetres, double heightMetres) => new(
        Math.Sqrt(Bounds.Positive(volumeCubicMetres, 1, "m³") / (Math.PI * Bounds.Positive(heightMetres, 2, "m"))),
        heightMetres / 2);
}
