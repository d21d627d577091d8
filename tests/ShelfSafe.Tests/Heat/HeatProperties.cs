using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ShelfSafe.Heat;

namespace ShelfSafe.Tests.Heat;

/// <summary>A made-up jar in a made-up canner.</summary>
public sealed record JarSketch(double RadiusMetres, double HalfHeightMetres, double WaterShare, double InitialCelsius, double HoldCelsius, double HoldSeconds, double Film)
{
    internal JarFilling Filling => new(
        new(RadiusMetres, HalfHeightMetres),
        ChoiOkos.At(Composition.FromParts(WaterShare, (1 - WaterShare) / 3, (1 - WaterShare) / 6, (1 - WaterShare) / 2, 0, 0), 80),
        InitialCelsius,
        0.003);

    internal RetortProfile Profile(double longer = 0, double hotter = 0) =>
        RetortProfile.Canner(80, 600, HoldCelsius + hotter, HoldSeconds + longer, 95, 1_200, 20, 1_800, Film);
}

/// <summary>Makes jars for FsCheck.</summary>
public static class Jars
{
    public static Arbitrary<JarSketch> Jar() =>
        (from radius in Gen.Choose(25, 60)
         from height in Gen.Choose(30, 120)
         from water in Gen.Choose(40, 98)
         from initial in Gen.Choose(10, 90)
         from hold in Gen.Choose(100, 122)
         from minutes in Gen.Choose(5, 90)
         from film in Gen.Elements(100.0, 500, 3_000, double.PositiveInfinity)
         select new JarSketch(radius / 1e3, height / 1e3, water / 1e2, initial, hold, minutes * 60, film)).ToArbitrary();
}

/// <summary>Laws of the heat room.</summary>
[Properties(Arbitrary = [typeof(Jars)], MaxTest = 60, Replay = "(20261125,1)")]
public class HeatProperties
{
    private static readonly ConductionGrid Coarse = new(8, 15);

    [Property]
    public Property Pressure_HigherUp_AlwaysFalls() => Prop.ForAll(Gen.Choose(-5_000, 10_999).ToArbitrary(), metres =>
        StandardAtmosphere.PressurePascals(metres + 1) < StandardAtmosphere.PressurePascals(metres)
        && CannerSteam.BoilingCelsius(metres + 1) < CannerSteam.BoilingCelsius(metres)
        && Math.Abs(StandardAtmosphere.AltitudeMetres(StandardAtmosphere.PressurePascals(metres)) - metres) < 1e-6);

    [Property]
    public Property Saturation_ThereAndBack_IsTheSame() => Prop.ForAll(Gen.Choose(0, 37_394).ToArbitrary(), hundredths =>
        Math.Abs(WaterSaturation.TemperatureCelsius(WaterSaturation.PressurePascals(hundredths / 100.0)) - (hundredths / 100.0)) < 2e-6);

    // The billionth of a kelvin keeps a gauge of nothing from rounding to just below the boiling point, which is refused.
    [Property]
    public Property Gauge_ThereAndBack_IsTheSame() => Prop.ForAll(Gen.Choose(0, 3_000).ToArbitrary(), Gen.Choose(0, 100_000).ToArbitrary(), (metres, pascals) =>
        Math.Abs(CannerSteam.GaugePascals(CannerSteam.TemperatureCelsius(pascals, metres) + 1e-9, metres) - pascals) < 0.1);

    [Property]
    public Property Steam_MoreGaugeLessAirOrLowerDown_IsNeverCooler() => Prop.ForAll(Gen.Choose(0, 3_000).ToArbitrary(), Gen.Choose(0, 100_000).ToArbitrary(), Gen.Choose(0, 80).ToArbitrary(), (metres, pascals, air) =>
    {
        double here = CannerSteam.TemperatureWithAirCelsius(pascals, metres, air / 100.0);
        return here <= CannerSteam.TemperatureWithAirCelsius(pascals + 500, metres, air / 100.0)
            && here <= CannerSteam.TemperatureCelsius(pascals, metres)
            && here >= CannerSteam.TemperatureWithAirCelsius(pascals, metres + 10, air / 100.0);
    });

    [Property]
    public bool Centre_EveryModel_StaysBetweenStartAndSurroundings(JarSketch jar) => Models(jar).All(model =>
    {
        HeatHistory history = model.Run(jar.Profile());
        double hottest = Math.Max(jar.InitialCelsius, jar.HoldCelsius) + 1e-9;
        double coldest = Math.Min(20, jar.InitialCelsius) - 1e-9;
        return history.CentreCelsius.All(celsius => celsius <= hottest && celsius >= coldest);
    });

    [Property]
    public bool Centre_WhileHeating_NeverPassesTheRetort(JarSketch jar) => Models(jar).All(model =>
    {
        RetortProfile heating = new([new(600, Math.Max(80, jar.InitialCelsius), jar.HoldCelsius, jar.Film), new(jar.HoldSeconds, jar.HoldCelsius, jar.HoldCelsius, jar.Film)]);
        HeatHistory history = model.Run(heating);
        return history.CentreCelsius.Zip(history.RetortCelsius, (centre, retort) => centre <= retort + 1e-9).All(below => below);
    });

    [Property]
    public bool Lethality_LongerOrHotter_NeverFalls(JarSketch jar) => Models(jar).All(model =>
    {
        double once = model.Run(jar.Profile()).AccumulatedSeconds(LethalityScale.Botulinum);
        double longer = model.Run(jar.Profile(longer: 300)).AccumulatedSeconds(LethalityScale.Botulinum);
        double hotter = model.Run(jar.Profile(hotter: 2)).AccumulatedSeconds(LethalityScale.Botulinum);

        // Other phase lengths give other time steps, and the trapezoids then differ in the fifth digit.
        double slack = 1 - 1e-4;
        return longer >= once * slack && hotter >= once * slack;
    });

    [Property]
    public bool Lethality_TwoStretches_Add(JarSketch jar)
    {
        HeatHistory history = new ConductionModel(jar.Filling, Coarse).Run(jar.Profile());
        int cut = history.Seconds.Length / 3;
        ReadOnlySpan<double> times = history.Seconds.AsSpan();
        ReadOnlySpan<double> celsius = history.CentreCelsius.AsSpan();
        LethalityScale scale = LethalityScale.Botulinum;
        double whole = scale.AccumulatedSeconds(times, celsius);
        double parts = scale.AccumulatedSeconds(times[..(cut + 1)], celsius[..(cut + 1)]) + scale.AccumulatedSeconds(times[cut..], celsius[cut..]);
        return Math.Abs(whole - parts) <= 1e-9 * Math.Max(1, whole);
    }

    [Property]
    public bool Balance_EveryModel_Closes(JarSketch jar) => Models(jar).All(model =>
    {
        HeatHistory history = model.Run(jar.Profile());
        double scale = jar.Filling.HeatCapacityJoulesPerKelvin * 100;
        return Math.Abs(history.AbsorbedJoules - history.StoredJoules) <= 1e-9 * scale
            && Math.Abs(history.StoredJoules - (jar.Filling.HeatCapacityJoulesPerKelvin * (history.FinalMeanCelsius - jar.InitialCelsius))) <= 1e-9 * scale;
    });

    [Property]
    public bool Solver_AnyJar_StaysNearTheSeries(JarSketch jar)
    {
        JarFilling filling = new(jar.Filling.Shape, jar.Filling.Food, jar.InitialCelsius);
        double seconds = jar.HoldSeconds + 600;
        double exact = new FiniteCylinderSeries(filling.Shape, filling.Food, jar.Film).TemperatureCelsius(seconds, jar.HoldCelsius, jar.InitialCelsius);
        return Math.Abs(new ConductionModel(filling).Run(RetortProfile.Constant(seconds, jar.HoldCelsius, jar.Film)).CentreCelsius[^1] - exact) < 0.1;
    }

    [Property]
    public bool Formula_ThickerJar_NeedsLonger(JarSketch jar)
    {
        HeatingCurve curve = new FiniteCylinderSeries(jar.Filling.Shape, jar.Filling.Food, 500).CentreCurve;
        HeatingCurve larger = new FiniteCylinderSeries(new(jar.RadiusMetres * 1.1, jar.HalfHeightMetres), jar.Filling.Food, 500).CentreCurve;
        double g = FormulaTables.BallDifferenceKelvin(10);
        return larger.HeatingSeconds(jar.HoldCelsius, jar.InitialCelsius, g) >= curve.HeatingSeconds(jar.HoldCelsius, jar.InitialCelsius, g);
    }

    private static IJarModel[] Models(JarSketch jar) =>
    [
        new ConductionModel(jar.Filling, Coarse),
        new WellMixedModel(jar.Filling, 300),
        new BrokenHeatingModel(jar.Filling, 300, 75, Coarse),
    ];
}
