using ShelfSafe.Heat;
using ShelfSafe.Tests.Published;

namespace ShelfSafe.Tests.Heat;

/// <summary>Rows of heat-checks.csv on lethality.</summary>
internal static class LethalityAnswers
{
    public static double Of(NumberedCheck check) => check.Id switch
    {
        "LET-07" or "LET-08" => Scale(check).AccumulatedSeconds([0, 60 * check["t_min"]], [check["T_C"], check["T_C"]]) / 60,
        "LET-09" or "LET-10" or "LET-11" => DecimalReduction.Seconds(60 * check["D121.1_min"], LethalityScale.Botulinum, check["T_C"], reductions: 12) / 60,
        "LET-12D" => DecimalReduction.Seconds(60 * check["D_min"], LethalityScale.Botulinum, 121.1, reductions: 12) / 60,
        "LET-G1" => Minutes(Times(check), check.List("T_F")) / 2.52,
        "LET-G2" => Minutes(Times(check), check.List("T_F")),
        "LET-G3" => SumOfRates(check),
        "LET-G4" => HalfWeights(check),
        "LET-G5" => Steps(check),
        "LET-G6" => LethalityScale.Botulinum.AccumulatedSeconds(Seconds(check.List("t_min")), check.List("T_C")) / 60,
        "LET-Z1" or "LET-Z2" => DecimalReduction.FitZKelvin(check.List("T_C"), check.List("D_min")),
        "LET-W1" => RateAt(10) / RateAt(15),
        _ when check.Has("T_F") => LethalityScale.Fahrenheit250.Rate(HeatAnswers.Celsius(check["T_F"])),
        _ => Scale(check).Rate(check["T_C"]),
    };

    private static LethalityScale Scale(NumberedCheck check) => new(check["Tref_C"], check["z_C"]);

    private static double[] Times(NumberedCheck check) => [.. Enumerable.Range(0, check.List("T_F").Length).Select(i => 4.0 * i)];

    private static double[] Seconds(double[] minutes) => Array.ConvertAll(minutes, minute => 60 * minute);

    private static double Minutes(double[] minutes, double[] fahrenheit) =>
        LethalityScale.Fahrenheit250.AccumulatedSeconds(Seconds(minutes), Array.ConvertAll(fahrenheit, HeatAnswers.Celsius)) / 60;

    // The list of temperatures was not seen, only the sum of the rates: one temperature with that rate, cold before and after, has the same area.
    private static double SumOfRates(NumberedCheck check)
    {
        double width = 60 * check["dt_min"];
        return LethalityScale.Botulinum.AccumulatedSeconds([0, width, 2 * width], [-40, CelsiusOf(LethalityScale.Botulinum, check["sumL"]), -40]) / 60;
    }

    // Likewise: temperatures that have these rates are put in, the ends at half weight.
    private static double HalfWeights(NumberedCheck check)
    {
        LethalityScale scale = LethalityScale.Botulinum;
        double interior = CelsiusOf(scale, check["sumL_interior"]);
        double end = CelsiusOf(scale, check.List("L_ends")[1]);
        return scale.AccumulatedSeconds([0, 300, 600], [-40, interior, end]) / 60;
    }

    private static double CelsiusOf(LethalityScale scale, double rate) => scale.ReferenceCelsius + (scale.ZKelvin * Math.Log10(rate));

    private static double Steps(NumberedCheck check)
    {
        double[] minutes = check.List("minutes");
        return check.List("T_F").Select((fahrenheit, i) => Minutes([0, minutes[i]], [fahrenheit, fahrenheit])).Sum();
    }

    private static double RateAt(double psi) => LethalityScale.Fahrenheit250.Rate(CannerSteam.TemperatureCelsius(psi * HeatAnswers.PsiPascals, 0));
}
