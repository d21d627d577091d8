using ShelfSafe.Heat;
using ShelfSafe.Tests.Published;

namespace ShelfSafe.Tests.Heat;

/// <summary>Rows of heat-checks.csv on conduction.</summary>
internal static class ConductionAnswers
{
    public static double Of(NumberedCheck check)
    {
        bool slab = check.Quantity.Contains("slab", StringComparison.Ordinal);
        return check.Id switch
        {
            "CON-01" or "CON-02" or "CON-03" or "CON-04" => TransientSeries.Cylinder(double.PositiveInfinity, 4).Roots[(int)check["n"] - 1],
            "CON-05" or "CON-06" => First(slab, double.PositiveInfinity).Coefficients[0],
            "CON-07" => First(slab: false, double.PositiveInfinity).Coefficients[0] * First(slab: true, double.PositiveInfinity).Coefficients[0],
            "CON-08" => Math.Log(10) / Square(First(slab: false, double.PositiveInfinity).Roots[0]),
            "CON-09" => Square(First(slab: true, double.PositiveInfinity).Roots[0] / First(slab: false, double.PositiveInfinity).Roots[0]),
            "CON-F1" or "CON-F2" => Jar(check, Food(check["alpha"], 0.6), double.PositiveInfinity).CentreCurve.RateSeconds / 60,
            "CON-W1" => LongCan(check),
            "CON-W3" => Jar(check, new(check["rho"], check["c"], check["k"]), check["h"]).TemperatureCelsius(check["t_s"], check["T1_C"], check["T0_C"]),
            "CON-W4" => new FiniteCylinderSeries(new(check["D_m"] / 2, check["H_m"] / 2), Food(check["alpha"], check["k"]), check["h"]).TemperatureCelsius(check["t_s"], check["T1_C"], check["T0_C"]),
            "CON-W2" or "CON-W2x" => Jar(check, Food(check["alpha"], check["k"]), check["h"]).TemperatureCelsius(check["t_s"], check["T1_C"], check["T0_C"]),
            _ when check.Has("Fo") => (slab ? TransientSeries.Slab(double.PositiveInfinity) : TransientSeries.Cylinder(double.PositiveInfinity)).Ratio(check["Fo"]),
            _ when check.Quantity.Contains("zeta", StringComparison.Ordinal) => First(slab, check["Bi"]).Roots[0],
            _ => First(slab, check["Bi"]).Coefficients[0],
        };
    }

    /// <summary>A material with a given diffusivity and conductivity; the split of rho and cp does not matter.</summary>
    public static ThermalProperties Food(double diffusivity, double conductivity) => new(1_000, conductivity / (diffusivity * 1_000), conductivity);

    private static TransientSeries First(bool slab, double biot) => slab ? TransientSeries.Slab(biot, 1) : TransientSeries.Cylinder(biot, 1);

    private static double Square(double value) => value * value;

    private static FiniteCylinderSeries Jar(NumberedCheck check, ThermalProperties food, double film) => new(new(check["r_m"], check["half_height_m"]), food, film);

    private static double LongCan(NumberedCheck check)
    {
        double ratio = TransientSeries.Cylinder(check["h"] * check["r_m"] / check["k"]).Ratio(check["alpha"] * check["t_s"] / Square(check["r_m"]));
        return check["T1_C"] - (ratio * (check["T1_C"] - check["T0_C"]));
    }
}
