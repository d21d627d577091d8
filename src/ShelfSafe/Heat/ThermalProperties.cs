namespace ShelfSafe.Heat;

/// <summary>How a material stores and conducts heat.</summary>
/// <param name="DensityKilogramsPerCubicMetre">Above 0 and at most 25,000 kg/m³.</param>
/// <param name="SpecificHeatJoulesPerKilogramKelvin">Above 0 and at most 20,000 J/(kg K).</param>
/// <param name="ConductivityWattsPerMetreKelvin">Above 0 and at most 1,000 W/(m K).</param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
public readonly record struct ThermalProperties(double DensityKilogramsPerCubicMetre, double SpecificHeatJoulesPerKilogramKelvin, double ConductivityWattsPerMetreKelvin)
{
    /// <summary>Density, kg/m³.</summary>
    public double DensityKilogramsPerCubicMetre { get; } = Bounds.Positive(DensityKilogramsPerCubicMetre, 25_000, "kg/m³");

    /// <summary>Specific heat, J/(kg K).</summary>
    public double SpecificHeatJoulesPerKilogramKelvin { get; } = Bounds.Positive(SpecificHeatJoulesPerKilogramKelvin, 20_000, "J/(kg K)");

    /// <summary>Thermal conductivity, W/(m K).</summary>
    public double ConductivityWattsPerMetreKelvin { get; } = Bounds.Positive(ConductivityWattsPerMetreKelvin, 1_000, "W/(m K)");

    /// <summary>Heat that one cubic metre takes up per kelvin, J/(m³ K).</summary>
    public double HeatCapacityJoulesPerCubicMetreKelvin => DensityKilogramsPerCubicMetre * SpecificHeatJoulesPerKilogramKelvin;

    /// <summary>Thermal diffusivity k/(rho cp), m²/s; preferred to a table of its own, which differs by up to 5 %.</summary>
    public double DiffusivitySquareMetresPerSecond => ConductivityWattsPerMetreKelvin / HeatCapacityJoulesPerCubicMetreKelvin;
}
