using ShelfSafe.Heat;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>The published findings come out of the models; sizes and films are illustrative, no figure here is a process.</summary>
public class FindingsTests
{
    private const double Glass = 0.003;
    private const double InsideFilm = 200;
    private const double StarchSets = 80;
    private static readonly Cylinder Pint = ConductionModelTests.Pint;
    private static readonly Cylinder Quart = new(0.045, 0.080);

    // Illustrative compositions, no measured food: a broth that is almost water, a stew with flour.
    private static readonly ThermalProperties Broth = ChoiOkos.At(Composition.FromParts(95, 2, 0.5, 2, 0.2, 0.3), 90);
    private static readonly ThermalProperties Stew = ChoiOkos.At(Composition.FromParts(80, 6, 3, 9, 1, 1), 90);

    // Source: Tope in USDA AIB 410 (1977): starch that gels turns quick convection into slow conduction.
    [Fact]
    public void Lethality_PintThickenedWithStarch_IsFarBelowTheBrothyOne()
    {
        HeatHistory brothy = Brothy(Pint, Process(75));
        HeatHistory thick = new BrokenHeatingModel(new(Pint, Stew, 70, Glass), InsideFilm, StarchSets).Run(Process(75));

        Assert.True(AtEndOfHold(thick, 75) < AtEndOfHold(brothy, 75) / 4);
        Assert.True(thick.AccumulatedSeconds(LethalityScale.Botulinum) < brothy.AccumulatedSeconds(LethalityScale.Botulinum) / 2);
    }

    // Source: Ball and Olson's fh = 0.398/((1/r² + 0.427/l²) alpha): size counts by its square.
    [Fact]
    public void Temperature_QuartOfThickFood_LagsThePint()
    {
        HeatHistory pint = new ConductionModel(new(Pint, Stew, 70, Glass)).Run(Process(75));
        HeatHistory quart = new ConductionModel(new(Quart, Stew, 70, Glass)).Run(Process(75));

        Assert.True(quart.CentreAtCelsius(5_000) < pint.CentreAtCelsius(5_000) - 5);
        Assert.True(quart.AccumulatedSeconds(LethalityScale.Botulinum) < pint.AccumulatedSeconds(LethalityScale.Botulinum) / 2);
    }

    // Source: USDA AIB 539 (rev. 2015): weighted gauge 10 lb up to 1,000 ft, 15 lb above.
    [Fact]
    public void Steam_TenPoundsAt1500Metres_IsCoolerThanTheRowAllowsAndFifteenIsNot()
    {
        double row = CannerSteam.TemperatureCelsius(10 * HeatAnswers.PsiPascals, 1_000 * HeatAnswers.FootMetres);

        Assert.True(CannerSteam.TemperatureCelsius(10 * HeatAnswers.PsiPascals, 1_500) < row - 1);
        Assert.True(CannerSteam.TemperatureCelsius(15 * HeatAnswers.PsiPascals, 1_500) > row);
    }

    // Source: Choi and Okos: fat conducts a third of what water does, so oil insulates.
    [Fact]
    public void Temperature_OilStirredIn_SlowsTheCentre()
    {
        ThermalProperties oily = ChoiOkos.At(Composition.FromParts(60, 4.5, 27, 6.8, 0.7, 0.7), 90);

        Assert.True(oily.DiffusivitySquareMetresPerSecond < Stew.DiffusivitySquareMetresPerSecond * 0.95);
        Assert.True(Conducted(oily).CentreAtCelsius(3_000) < Conducted(Stew).CentreAtCelsius(3_000) - 1);

        static HeatHistory Conducted(ThermalProperties food) => new ConductionModel(new(Pint, food, 70, Glass)).Run(Process(75));
    }

    // Source: same, flour: it sets the liquid, and the earlier it sets the later the centre is hot.
    [Fact]
    public void Temperature_FlourThatSetsEarlier_SlowsTheCentreMore()
    {
        double[] at = [.. new[] { 75.0, 90, 105, 150 }.Select(sets => new BrokenHeatingModel(new(Pint, Stew, 70, Glass), InsideFilm, sets).Run(Process(75)).CentreAtCelsius(1_500))];

        Assert.True(at[0] < at[1] && at[1] < at[2] && at[2] < at[3], string.Join(", ", at));
    }

    // Source: Pakola and Andress (NCHFP, 2002): much of the lethality of tomatoes in small jars came in cooling.
    [Fact]
    public void Lethality_ThickPint_GoesOnAfterTheHold()
    {
        HeatHistory history = new ConductionModel(new(Pint, Stew, 70, Glass)).Run(Process(30));

        Assert.True(AtEndOfHold(history, 30) < history.AccumulatedSeconds(LethalityScale.Botulinum) / 2);
    }

    // Source: Dalton's law; venting as in USDA AIB 539 (rev. 2015), Guide 1.
    [Fact]
    public void Steam_AFifthOfAirLeftIn_IsCoolerAtTheSameGauge()
    {
        double pure = CannerSteam.TemperatureCelsius(10 * HeatAnswers.PsiPascals, 0);

        Assert.InRange(CannerSteam.TemperatureWithAirCelsius(10 * HeatAnswers.PsiPascals, 0, 0.2), pure - 9, pure - 5);
    }

    // The grid's own heating line, read off as in a heat-penetration test, is the one that the first term of the series predicts.
    [Fact]
    public void CentreCurve_ReadOffTheSolver_GivesRateAndLag()
    {
        HeatingCurve expected = new FiniteCylinderSeries(Pint, Stew, 500).CentreCurve;
        HeatHistory history = new ConductionModel(new(Pint, Stew, 25)).Run(RetortProfile.Constant(9_000, 115, 500));
        double early = Math.Log10(115 - history.CentreAtCelsius(4_500));
        double late = Math.Log10(115 - history.CentreAtCelsius(9_000));
        double rate = 4_500 / (early - late);

        Assert.Equal(expected.RateSeconds, rate, expected.RateSeconds * 0.01);
        Assert.Equal(expected.Lag, Math.Pow(10, late + (9_000 / rate)) / 90, 0.03);
    }

    private static HeatHistory Brothy(Cylinder jar, RetortProfile profile) => new WellMixedModel(new(jar, Broth, 70, Glass), InsideFilm).Run(profile);

    private static double AtEndOfHold(HeatHistory history, double minutes)
    {
        int end = history.Seconds.ToList().FindIndex(time => time >= 600 + (60 * minutes) - 1e-6) + 1;
        return LethalityScale.Botulinum.AccumulatedSeconds(history.Seconds.AsSpan()[..end], history.CentreCelsius.AsSpan()[..end]);
    }

    private static RetortProfile Process(double minutes) => RetortProfile.Canner(90, 600, 115.6, minutes * 60, 99, 1_500, 20, 3_600);
}
