using System.Globalization;
using ShelfSafe.Heat;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>The grid solver against exact answers: series, superposition, the stirred limit, the heat balance.</summary>
public class ConductionModelTests
{
    /// <summary>A pint of thick food. Source of the size: an equivalent cylinder for a known volume, 38 mm by 55 mm half height.</summary>
    internal static readonly Cylinder Pint = new(0.038, 0.055);

    /// <summary>Source: diffusivity of vegetables near 50 °C by Choi and Okos, 1.5e-7 m²/s.</summary>
    internal static readonly ThermalProperties Thick = ConductionAnswers.Food(1.5e-7, 0.6);

    // Source of the exact values: Carslaw and Jaeger, product of the cylinder and slab series.
    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(3_000)]
    [InlineData(300)]
    [InlineData(30)]
    public void Run_UsualGridFromTwoMinutesOn_StaysWithinATenthOfAKelvinOfTheSeries(double film)
    {
        FiniteCylinderSeries exact = new(Pint, Thick, film);
        HeatHistory history = new ConductionModel(new(Pint, Thick, 25)).Run(RetortProfile.Constant(7_200, 115, film));

        double worst = history.Seconds.Zip(history.CentreCelsius, (time, celsius) => time < 120 ? 0 : Math.Abs(celsius - exact.TemperatureCelsius(time, 115, 25))).Max();

        Assert.True(worst < 0.1, string.Create(CultureInfo.InvariantCulture, $"off by {worst} K"));
        Assert.Equal(exact.MeanCelsius(7_200, 115, 25), history.FinalMeanCelsius, 0.1);
    }

    [Fact]
    public void Run_OffCentre_FollowsTheSeriesToo()
    {
        FiniteCylinderSeries exact = new(Pint, Thick, 500);
        ConductionGrid grid = new(20, 41);
        new ConductionModel(new(Pint, Thick, 25), grid).Run(RetortProfile.Constant(1_800, 115, 500), out double[] field);

        double dr = Pint.RadiusMetres / 19.5;
        for (int j = 0; j < 41; j += 5)
        {
            for (int i = 0; i < 20; i += 3)
            {
                double height = Math.Abs(((j + 0.5) / 41 * 2) - 1);
                Assert.Equal(exact.TemperatureCelsius(1_800, 115, 25, i * dr / Pint.RadiusMetres, height), field[(j * 20) + i], 0.15);
            }
        }
    }

    [Fact]
    public void Run_GridHalved_ErrorFallsWithTheSquare()
    {
        double[] errors = [ErrorAt(6, 1_800), ErrorAt(12, 1_800), ErrorAt(24, 1_800), ErrorAt(48, 1_800)];

        for (int i = 1; i < errors.Length; i++)
        {
            double order = Math.Log2(errors[i - 1] / errors[i]);
            Assert.True(order is > 1.7 and < 2.5, string.Create(CultureInfo.InvariantCulture, $"order {order}, errors {string.Join(", ", errors)}"));
        }
    }

    // Source of the rule: Duhamel's superposition (Carslaw and Jaeger): a ramp is a row of small steps, each answered by the series.
    [Fact]
    public void Run_ComeUpAndHold_FollowsTheSuperposedSeries()
    {
        FiniteCylinderSeries exact = new(Pint, Thick, 1_000);
        RetortProfile profile = new([new(900, 25, 115, 1_000), new(3_600, 115, 115, 1_000)]);
        HeatHistory history = new ConductionModel(new(Pint, Thick, 25)).Run(profile);

        foreach (double time in new[] { 600.0, 1_200, 2_400, 4_500 })
        {
            Assert.Equal(Superposed(exact, time), history.CentreAtCelsius(time), 0.1);
        }
    }

    // A food that conducts a thousand times better is nearly stirred: both models must then agree, but for the third of a kelvin that its centre still lags.
    [Fact]
    public void Run_PerfectConductor_AgreesWithTheStirredJar()
    {
        JarFilling jar = new(Pint, new(1_000, 4_000, 600), 25, 0.003);
        RetortProfile profile = RetortProfile.Canner(70, 600, 116, 1_800, 98, 1_200, 20, 3_600);

        HeatHistory conducted = new ConductionModel(jar, new(6, 11)).Run(profile);
        HeatHistory stirred = new WellMixedModel(jar, double.PositiveInfinity).Run(profile);

        foreach (double time in new[] { 300.0, 1_000, 2_400, 3_600, 7_000 })
        {
            Assert.Equal(stirred.CentreAtCelsius(time), conducted.CentreAtCelsius(time), 0.5);
        }
    }

    [Fact]
    public void Run_WholeCannerRun_ClosesTheHeatBalance()
    {
        RetortProfile profile = RetortProfile.Canner(70, 600, 116, 4_500, 98, 1_800, 20, 7_200);
        HeatHistory history = new ConductionModel(new(Pint, Thick, 60, 0.003)).Run(profile);

        Assert.Equal(1, history.AbsorbedJoules / history.StoredJoules, 1e-9);

        // The same balance at the end of the hold, where it is not a difference of large numbers.
        HeatHistory held = new ConductionModel(new(Pint, Thick, 60, 0.003)).Run(new(profile.Phases[..2]));
        Assert.Equal(1, held.AbsorbedJoules / held.StoredJoules, 1e-9);
    }

    [Fact]
    public void Run_SameTopAndBottom_StaysSymmetric()
    {
        new ConductionModel(new(Pint, Thick, 60, 0.003), new(8, 15)).Run(RetortProfile.Canner(70, 600, 116, 1_800, 98, 600, 20, 1_800), out double[] field);

        for (int j = 0; j < 7; j++)
        {
            for (int i = 0; i < 8; i++)
            {
                Assert.Equal(field[(j * 8) + i], field[((14 - j) * 8) + i], 1e-9);
            }
        }
    }

    [Fact]
    public void Run_JarAtTheTemperatureAround_DoesNotMove()
    {
        HeatHistory history = new ConductionModel(new(Pint, Thick, 80)).Run(RetortProfile.Constant(3_600, 80, 500));

        Assert.All(history.CentreCelsius, celsius => Assert.Equal(80, celsius, 1e-9));
        Assert.Equal(0, history.AbsorbedJoules, 1e-3);
    }

    /// <summary>Error at the centre after some time, the step falling with the grid.</summary>
    internal static double ErrorAt(int nodes, double seconds)
    {
        FiniteCylinderSeries exact = new(Pint, Thick, 500);
        ConductionGrid grid = new(nodes, (2 * nodes) + 1, 3_600);
        HeatHistory history = new ConductionModel(new(Pint, Thick, 25), grid).Run(RetortProfile.Constant(seconds, 115, 500));
        return Math.Abs(history.CentreCelsius[^1] - exact.TemperatureCelsius(seconds, 115, 25));
    }

    private static double Superposed(FiniteCylinderSeries exact, double time)
    {
        const int Steps = 900;
        const double Rise = 90.0 / Steps;
        double celsius = 25;
        for (int i = 0; i < Steps && i + 0.5 < time; i++)
        {
            celsius += exact.TemperatureCelsius(time - (i + 0.5), Rise, 0);
        }

        return celsius;
    }
}
