using ShelfSafe.Heat;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>The stirred and the setting jar, the profile and the printed tables.</summary>
public class ModelTests
{
    private static readonly JarFilling Jar = new(ConductionModelTests.Pint, ConductionModelTests.Thick, 60, 0.003);

    // An independent answer: the same equation in a hundred thousand small steps.
    [Fact]
    public void WellMixed_WholeRun_AgreesWithSmallSteps()
    {
        RetortProfile profile = RetortProfile.Canner(80, 600, 116, 1_200, 98, 900, 20, 1_800);
        HeatHistory history = new WellMixedModel(Jar, 300).Run(profile);
        const double Step = 0.05;
        double celsius = 60;
        foreach (RetortPhase phase in profile.Phases)
        {
            double rate = Jar.Shape.SurfaceSquareMetres / (((1 / phase.FilmWattsPerSquareMetreKelvin) + 0.003 + (1 / 300.0)) * Jar.HeatCapacityJoulesPerKelvin);
            for (double time = 0; time < phase.Seconds - (Step / 2); time += Step)
            {
                double around = phase.FromCelsius + ((phase.ToCelsius - phase.FromCelsius) * (time + (Step / 2)) / phase.Seconds);
                celsius += Step * rate * (around - celsius);
            }
        }

        Assert.Equal(celsius, history.CentreCelsius[^1], 0.01);
    }

    [Fact]
    public void WellMixed_CurveInAPhase_IsItsHeatingLine()
    {
        RetortPhase phase = new(3_600, 116, 116, 3_000);
        WellMixedModel model = new(Jar, 300);

        Assert.Equal(model.CurveIn(phase).TemperatureCelsius(900, 116, 60), model.Run(new([phase])).CentreAtCelsius(900), 1e-9);
    }

    [Fact]
    public void BrokenHeating_NeverReachingItsSetting_StaysStirred()
    {
        RetortProfile profile = RetortProfile.Constant(3_600, 90, 500);

        Assert.Equal(new WellMixedModel(Jar, 300).Run(profile).CentreCelsius, new BrokenHeatingModel(Jar, 300, 95).Run(profile).CentreCelsius);
    }

    [Fact]
    public void BrokenHeating_SetFromTheStart_IsConduction()
    {
        RetortProfile profile = RetortProfile.Constant(3_600, 110, 500);

        Assert.Equal(new ConductionModel(Jar).Run(profile).CentreCelsius, new BrokenHeatingModel(Jar, 300, 50).Run(profile).CentreCelsius);
    }

    [Fact]
    public void BrokenHeating_SettingPartway_FollowsStirredThenLags()
    {
        RetortProfile profile = RetortProfile.Canner(80, 600, 116, 3_600, 98, 900, 20, 1_800);
        HeatHistory stirred = new WellMixedModel(Jar, 300).Run(profile);
        HeatHistory broken = new BrokenHeatingModel(Jar, 300, 85).Run(profile);
        int set = broken.CentreCelsius.ToList().FindIndex(celsius => celsius >= 85);

        Assert.Equal(stirred.CentreCelsius[..(set + 1)], broken.CentreCelsius[..(set + 1)]);
        Assert.True(broken.CentreAtCelsius(1_500) < stirred.CentreAtCelsius(1_500) - 5);
        Assert.Equal(profile.Seconds, broken.Seconds[^1], 1e-6);
        Assert.Equal(Jar.HeatCapacityJoulesPerKelvin * (broken.FinalMeanCelsius - 60), broken.StoredJoules, 1e-3);
    }

    [Fact]
    public void After_MiddleOfAPhase_KeepsTheRest()
    {
        RetortProfile left = RetortProfile.Canner(80, 600, 116, 1_200, 98, 900, 20, 1_800).After(300);

        Assert.Equal([300, 1_200, 900, 1_800], left.Phases.Select(phase => phase.Seconds));
        Assert.Equal(98, left.Phases[0].FromCelsius, 1e-9);
        Assert.Equal(3, RetortProfile.Canner(80, 600, 116, 1_200, 98, 900, 20, 1_800).After(600).Phases.Length);
    }

    [Theory]
    [InlineData(0.45)]
    [InlineData(7)]
    [InlineData(150)]
    public void BallTable_BetweenEntries_StaysNearTheIntegration(double ratio) =>
        Assert.InRange(Math.Log10(BallFormula.FinalDifferenceKelvin(ratio) / FormulaTables.BallDifferenceKelvin(ratio)), 0, 0.04);

    // Source: 250 °F is 121.11 °C; 121.1 against 121.11 changes F by 0.26 %.
    [Fact]
    public void Scales_OfBothUnits_DifferByAQuarterOfAPerCent() =>
        Assert.Equal(1.0026, LethalityScale.Botulinum.Rate(115) / LethalityScale.Fahrenheit250.Rate(115), 1e-4);

    [Fact]
    public void BrokenCurve_WithoutABreakYet_IsTheStraightLine()
    {
        HeatingCurve line = new(600, 1.2);
        BrokenHeatingCurve broken = new(line, 1_800, 3_600);

        Assert.Equal(line.TemperatureCelsius(900, 116, 60), broken.TemperatureCelsius(900, 116, 60));
        Assert.Equal(115.969, broken.TemperatureCelsius(3_000, 116, 60), 0.001);
        Assert.Equal(2_500, broken.HeatingSeconds(116, 60, 116 - broken.TemperatureCelsius(2_500, 116, 60)), 1e-6);
        Assert.Equal(0, line.HeatingSeconds(116, 110, 50));
    }

    // Source: Abramowitz and Stegun, table 9.1.
    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(1, 0.7651976866, 0.4400505857)]
    [InlineData(5, -0.1775967713, -0.3275791376)]
    [InlineData(17.5, -0.1031103982, -0.1634199694)]
    public void Bessel_TableValues_AreMet(double x, double zero, double one)
    {
        (double j0, double j1) = Bessel.Of(x);

        Assert.Equal(zero, j0, 1e-10);
        Assert.Equal(one, j1, 1e-10);
    }

    [Fact]
    public void Bessel_LargeArgument_KeepsTheWronskianOfTheRecurrence()
    {
        // J0' = -J1, by differences, far out.
        const double Step = 1e-5;
        foreach (double x in new[] { 40.0, 100, 300, 600 })
        {
            Assert.Equal(-Bessel.Of(x).J1, (Bessel.Of(x + Step).J0 - Bessel.Of(x - Step).J0) / (2 * Step), 1e-8);
        }
    }

    [Fact]
    public void Series_MeanOfTheSlab_IsTheMeanOfItsPlaces()
    {
        TransientSeries slab = TransientSeries.Slab(5);
        double mean = Enumerable.Range(0, 1_000).Average(i => slab.Ratio(0.1, (i + 0.5) / 1_000));

        Assert.Equal(mean, slab.MeanRatio(0.1), 1e-6);
    }

    [Fact]
    public void Series_MeanOfTheCylinder_WeighsRings()
    {
        TransientSeries cylinder = TransientSeries.Cylinder(5, 20);
        double mean = Enumerable.Range(0, 1_000).Sum(i => cylinder.Ratio(0.1, (i + 0.5) / 1_000) * 2 * (i + 0.5) / 1e6);

        Assert.Equal(mean, cylinder.MeanRatio(0.1), 1e-6);
    }
}
