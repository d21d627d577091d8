using ShelfSafe.Heat;
using ShelfSafe.Tests.Equilibrium;
using ShelfSafe.Tests.Published;

namespace ShelfSafe.Tests.Heat;

/// <summary>Puts the inputs of a row of heat-checks.csv to the library.</summary>
internal static class HeatAnswers
{
    public const double FootMetres = 0.3048;
    public const double PsiPascals = 6894.757;

    public static double Of(NumberedCheck check) => check.Id.Split('-')[0] switch
    {
        "ATM" => Atmosphere(check),
        "SAT" => Saturation(check),
        "BOIL" => Fahrenheit(CannerSteam.BoilingCelsius(check["altitude_ft"] * FootMetres)),
        "GAU" => Gauge(check),
        "LET" => LethalityAnswers.Of(check),
        "BALL" => BallAnswers.Of(check),
        "STUM" => Stumbo(check),
        "CON" => ConductionAnswers.Of(check),
        "CHO" => Properties(check),
        "YLD" => Yield(check),
        "PH" => ChemistryAnswers.Ph(check),
        "AW" => ChemistryAnswers.WaterActivityOf(check),
        _ => throw new InvalidOperationException("no answer for " + check.Id),
    };

    public static double Fahrenheit(double celsius) => (celsius * 1.8) + 32;

    public static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;

    private static double Atmosphere(NumberedCheck check) =>
        check.Has("H_m") ? StandardAtmosphere.PressurePascals(check["H_m"])
        : check.Has("Z_m") ? StandardAtmosphere.GeopotentialMetres(check["Z_m"])
        : StandardAtmosphere.PressurePascals(check["altitude_ft"] * FootMetres) / PsiPascals;

    private static double Saturation(NumberedCheck check) =>
        check.Has("T_K") ? WaterSaturation.PressurePascals(check["T_K"] - 273.15) / 1e6
        : check.Has("p_MPa") ? WaterSaturation.TemperatureCelsius(check["p_MPa"] * 1e6) + 273.15
        : check.Has("T_C") ? WaterSaturation.PressurePascals(check["T_C"]) / 1e3
        : WaterSaturation.TemperatureCelsius(check["p_Pa"]);

    private static double Gauge(NumberedCheck check) =>
        check.Has("psig")
            ? Fahrenheit(CannerSteam.TemperatureCelsius(check["psig"] * PsiPascals, check["altitude_ft"] * FootMetres))
            : CannerSteam.GaugePascals(Celsius(240), check["altitude_ft"] * FootMetres) / PsiPascals;

    private static double Stumbo(NumberedCheck check) =>
        1.8 * FormulaTables.StumboDifferenceKelvin(check["fh/U"], check["jc"]);

    private static double Properties(NumberedCheck check)
    {
        Dictionary<string, double> parts = check.Has("wt%") ? check.Parts("wt%") : Pure(check.Quantity);
        Composition food = Composition.FromParts(
            parts.GetValueOrDefault("water"),
            parts.GetValueOrDefault("protein"),
            parts.GetValueOrDefault("fat"),
            parts.GetValueOrDefault("carbohydrate"),
            parts.GetValueOrDefault("fibre"),
            parts.GetValueOrDefault("ash"));
        ThermalProperties at = ChoiOkos.At(food, check["T_C"]);
        return check.Quantity switch
        {
            string text when text.Contains("density", StringComparison.Ordinal) => at.DensityKilogramsPerCubicMetre,
            string text when text.Contains("specific heat", StringComparison.Ordinal) => at.SpecificHeatJoulesPerKilogramKelvin,
            string text when text.Contains("conductivity", StringComparison.Ordinal) => at.ConductivityWattsPerMetreKelvin,
            _ => at.DiffusivitySquareMetresPerSecond,
        };
    }

    private static Dictionary<string, double> Pure(string quantity)
    {
        string[] names = ["water", "protein", "fat", "carbohydrate", "fibre", "ash"];
        return new(StringComparer.Ordinal) { [names.Single(name => quantity.Contains(" " + name, StringComparison.Ordinal))] = 1 };
    }

    private static double Yield(NumberedCheck check) =>
        check.Has("x0") ? BoilDown.WaterKilograms(check["m_kg"], check["x0"], check["x1"])
        : check.Has("m_kg") ? BoilDown.EvaporationJoules(check["m_kg"]) / 1e3
        : new Cylinder(check["neck_inner_mm"] / 2e3, check["headspace_mm"] / 2e3).VolumeCubicMetres * 1e6;
}
