namespace ShelfSafe.Heat;

/// <summary>Food in a jar: size, properties, wall and starting temperature.</summary>
/// <param name="Shape">Size of the food.</param>
/// <param name="Food">Its properties, taken as constant.</param>
/// <param name="InitialCelsius">Temperature at the start, the same everywhere, from 0 to 150 °C.</param>
/// <param name="WallSquareMetresKelvinPerWatt">
/// Resistance of the glass (thickness over conductivity), 0 or more; 3 mm of glass at 1 W/(m K), as recalled, are 0.003 m² K/W.
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
public readonly record struct JarFilling(Cylinder Shape, ThermalProperties Food, double InitialCelsius, double WallSquareMetresKelvinPerWatt = 0)
{
    /// <summary>Temperature at the start, °C.</summary>
    public double InitialCelsius { get; } = Bounds.Within(InitialCelsius, 0, 150, "°C");

    /// <summary>Resistance of the glass, m² K/W.</summary>
    public double WallSquareMetresKelvinPerWatt { get; } = Bounds.Within(WallSquareMetresKelvinPerWatt, 0, 10, "m² K/W");

    /// <summary>Heat that the filling takes up per kelvin, J/K.</summary>
    public double HeatCapacityJoulesPerKelvin => Shape.VolumeCubicMetres * Food.HeatCapacityJoulesPerCubicMetreKelvin;

    /// <summary>The same filling at another starting temperature.</summary>
    internal JarFilling StartingAt(double celsius) => new(Shape, Food, celsius, WallSquareMetresKelvinPerWatt);
}
