using ShelfSafe.Equilibrium;
using ShelfSafe.Heat;
using ShelfSafe.Tests.Equilibrium;
using ShelfSafe.Tests.Published;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>The rows of heat-checks.csv whose id holds -X: why the library does not follow the print.</summary>
public class KnownDisagreementTests
{
    // Source: engineersedge.com, reproduced standard atmosphere: 12.682 psia at 4,000 ft; its neighbours and the formula ask for 12.692.
    [Fact]
    public void Atmosphere_MisprintAt4000Feet_IsNotFollowed() => Assert.Equal(12.692, Psia(4_000), 0.0015);

    // Source: webpal.org elevation table (194.7 °F at 10,000 ft, isothermal air) and resourcenepal.com (75.5 °C at 8,000 m): both too warm.
    [Fact]
    public void Boiling_TablesOfIsothermalAir_RunTooWarm()
    {
        Assert.Equal(193.66, HeatAnswers.Fahrenheit(CannerSteam.BoilingCelsius(10_000 * HeatAnswers.FootMetres)), 0.02);
        Assert.Equal(73.1, CannerSteam.BoilingCelsius(8_000), 0.1);
    }

    // Source: Simpson (ed.) 2012, table 38.6, entries at fh/U 0.7 and 0.8: the line between their neighbours does not pass through them.
    [Theory]
    [InlineData(0.7, -0.736)]
    [InlineData(0.8, -0.544)]
    public void BallTable_TwoEntriesOffTheCurve_AreLeftOut(double ratio, double printed) =>
        Assert.InRange(Math.Log10(1.8 * FormulaTables.BallDifferenceKelvin(ratio)), printed - 0.04, printed - 0.002);

    // Source: University of Michigan web module: 988 K read off a chart; the series gives 904 K.
    [Fact]
    public void Series_MichiganChart_Is84KelvinOff()
    {
        double ratio = TransientSeries.Cylinder(50 * 0.01).Ratio(1.0 / (870 * 3_000) * 600 / 1e-4, place: 0.5);
        Assert.Equal(904, 1_000 - (700 * ratio), 1.0);
    }

    // Source: Cengel, solutions manual, hot-dog problem: Fo 0.20 read off a chart for theta0 0.47 at 1/Bi 0.15; one term gives 0.274.
    [Fact]
    public void Series_CengelHotDog_NeedsALargerFourierNumber()
    {
        TransientSeries one = TransientSeries.Cylinder(1 / 0.15, terms: 1);
        Assert.Equal(0.274, Math.Log(one.Coefficients[0] / 0.47) / (one.Roots[0] * one.Roots[0]), 0.002);
    }

    // Source: a public program that carries the ASHRAE variant 4.1289 kJ/(kg K) for water; real water has 4.18.
    [Fact]
    public void ChoiOkos_Water_FollowsRealWater() =>
        Assert.InRange(ChoiOkos.At(new(1, 0, 0, 0, 0, 0), 25).SpecificHeatJoulesPerKilogramKelvin, 4_170, 4_185);

    // Sources: a web page that claims pH 2.7 for 1 % citric acid; Miller, Food Chemistry, table 1.2 (lemon juice 2.2, part of whose acid is a salt).
    [Fact]
    public void CitricAcid_PureSolution_IsMoreAcidThanPrintOrJuice()
    {
        Assert.Equal(2.23, PhOf("PH-X1"), 0.01);
        Assert.Equal(1.87, PhOf("PH-X2"), 0.01);
    }

    // Source: a water activity table that pairs 15 % salt with 0.87; Robinson and Stokes and Pitzer give 0.892. Raoult at saturation: 0.82, not 0.753.
    [Fact]
    public void Salt_PrintAndIdealSolution_DifferFromMeasurement()
    {
        Assert.Equal(0.892, WaterActivity.Salt(ChemistryAnswers.SaltMolality(15)), 0.001);
        Assert.Equal(0.82, WaterActivity.Raoult(1_000, 2 * 6.15), 0.005);
    }

    private static double Psia(double feet) => StandardAtmosphere.PressurePascals(feet * HeatAnswers.FootMetres) / HeatAnswers.PsiPascals;

    private static double PhOf(string id) => ChemistryAnswers.Ph(NumberedCheck.All().Single(row => row.Id == id));
}
