using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Equilibrium;
using ShelfSafe.Tests.Published;

namespace ShelfSafe.Tests.Equilibrium;

/// <summary>Rows of heat-checks.csv on pH and water activity.</summary>
internal static class ChemistryAnswers
{
    private const double SucroseK = 6.47;
    private const double HexoseK = 2.25;

    public static double Ph(NumberedCheck check)
    {
        ImmutableArray<Interval> citric = [Interval.Exactly(3.13), Interval.Exactly(4.76), Interval.Exactly(6.40)];
        ImmutableArray<Interval> steps =
            check.Has("pKa") ? [.. check.List("pKa").Select(Interval.Exactly)]
            : check.Has("Ka") ? [Interval.Exactly(-Math.Log10(check["Ka"]))]
            : check.Has("acetic_M") ? [Interval.Exactly(4.76)]
            : citric;
        AcidContent acid = new(steps, Interval.Exactly(check.Or("C_M", check.Or("acetic_M", 0))));
        FoodBuffer? buffer = check.Has("beta") ? new(Interval.Exactly(check["pH0"]), Interval.Exactly(check["beta"])) : null;
        MixPart part = new(Interval.Exactly(1), [acid], Interval.Exactly(check.Or("cation_M", 0)), buffer);
        return EquilibriumPh.Estimate([part], modelErrorPh: 0).WorkedExample.High;
    }

    public static double WaterActivityOf(NumberedCheck check) => check.Id switch
    {
        "AW-01" => WaterActivity.FromOsmotic(check["m"], check["phi"], ions: 2),
        "AW-02" => WaterActivity.SaltOsmoticCoefficient(6),
        "AW-03" => WaterActivity.Salt(check["m"]),
        "AW-04" => WaterActivity.Norrish(1_000, new Solute(check["m"], check["K"])),
        "AW-15" => WaterActivity.Grover(65.0 / 35),
        "AW-16" => WaterActivity.Salt(6.15),
        "AW-17" => WaterActivity.Norrish(17, Hexose(69.5), Sucrose(13.3)),
        "AW-18" => WaterActivity.Norrish(check["water"], Sucrose(check["sucrose"]), Hexose(check["invert"])),
        "AW-R1" => WaterActivity.Ross(check["aw1"], check["aw2"]),
        _ when check.Has("k1") => WaterActivity.SaturatedSalt(check["k1"], check["k2"], check["T_K"] - 273.15),
        _ when check.Quantity.Contains("sucrose", StringComparison.Ordinal) => WaterActivity.Norrish(100 - check["w%"], Sucrose(check["w%"])),
        _ => WaterActivity.Salt(SaltMolality(check["w%"])),
    };

    public static double SaltMolality(double percent) => percent / 58.443 / (100 - percent) * 1_000;

    public static Solute Sucrose(double grams) => Solute.FromGrams(grams, 342.3, SucroseK);

    public static Solute Hexose(double grams) => Solute.FromGrams(grams, 180.16, HexoseK);
}
