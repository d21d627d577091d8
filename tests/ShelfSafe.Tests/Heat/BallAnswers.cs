using ShelfSafe.Heat;
using ShelfSafe.Tests.Published;

namespace ShelfSafe.Tests.Heat;

/// <summary>Rows of heat-checks.csv on the formula method, in minutes and degrees Fahrenheit as printed.</summary>
internal static class BallAnswers
{
    private static readonly HeatingCurve Worked = new(50 * 60, 1.8);

    public static double Of(NumberedCheck check) => check.Id switch
    {
        "BALL-W1" => Worked.HeatingSeconds(Celsius(250), Celsius(150), FormulaTables.StumboDifferenceKelvin(10, 1.4)) / 60,
        "BALL-W2" => Worked.HeatingSeconds(Celsius(250), Celsius(150), FormulaTables.BallDifferenceKelvin(10)) / 60,
        "BALL-W3" => BallFormula.SecondsPerReferenceSecond(LethalityScale.Fahrenheit250, Celsius(check["RT_F"])),
        "BALL-W4" => check["F0_min"] * BallFormula.SecondsPerReferenceSecond(LethalityScale.Fahrenheit250, Celsius(check["RT_F"])),
        "BALL-W5" => check["fh_min"] * BallFormula.LethalityPerRate(check["g_F"] / 1.8),
        "BALL-W6" => BallFormula.OperatorSeconds(60 * check["B_min"], 60 * check["CUT_min"]) / 60,
        "BALL-W7" => Worked.HeatingSeconds(Celsius(250), Celsius(180), check["g"] / 1.8) / 60,
        "BALL-W8" => Fahrenheit(Worked.TemperatureCelsius(60 * check["t_min"], Celsius(250), Celsius(150))),
        "BALL-W9" => Fahrenheit(new BrokenHeatingCurve(new(60 * check["fh_min"], check["jh"]), 60 * check["xbh_min"], 60 * check["f2_min"]).TemperatureCelsius(60 * check["t_min"], Celsius(check["RT_F"]), Celsius(check["IT_F"]))),
        _ => Math.Log10(1.8 * BallFormula.FinalDifferenceKelvin(check["fh/U"])),
    };

    private static double Celsius(double fahrenheit) => HeatAnswers.Celsius(fahrenheit);

    private static double Fahrenheit(double celsius) => HeatAnswers.Fahrenheit(celsius);
}
