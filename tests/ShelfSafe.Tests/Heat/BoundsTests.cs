using System.Collections.Immutable;
using ShelfSafe.Heat;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>Physical nonsense is refused, and the message names the valid range.</summary>
public class BoundsTests
{
    private static readonly ThermalProperties Food = ConductionModelTests.Thick;
    private static readonly JarFilling Jar = new(ConductionModelTests.Pint, Food, 20);

    public static TheoryData<string, string> Nonsense => new()
    {
        { "altitude of 20 km", "11000 m" },
        { "500 degrees", "150 °C" },
        { "negative radius", "above 0 and at most 1 m" },
        { "negative gauge", "from 0 to 400000 Pa" },
        { "not a number", "11000 m" },
        { "more shares than one", "as the sum of all mass fractions" },
        { "no water at all", "in one common unit of mass" },
        { "frozen food", "from 0 to 150 °C" },
        { "even nodes", "must be odd" },
        { "vacuum", "Pa" },
        { "gauge for cold steam", "°C" },
        { "negative time", "s" },
        { "z of zero", "K" },
        { "beyond the table", "(fh/U)" },
        { "beyond the lag", "(lag factor)" },
        { "no resistance", "give one of them a resistance" },
        { "thinner by boiling", "as a share" },
        { "nothing left", "nothing is left" },
        { "insulated", "(Biot number" },
        { "place outside", "from the middle (0) to the surface (1)" },
        { "time outside history", "s" },
    };

    [Theory]
    [MemberData(nameof(Nonsense))]
    public void Argument_PhysicalNonsense_IsRefusedWithTheValidRange(string what, string range)
    {
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(() => Try(what));

        Assert.Contains(range, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Accumulated_ListsThatDoNotMatch_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => LethalityScale.Botulinum.AccumulatedSeconds([0, 1], [100]));
        Assert.Throws<ArgumentException>(() => LethalityScale.Botulinum.AccumulatedSeconds([1, 0], [100, 100]));
        Assert.Throws<ArgumentException>(() => DecimalReduction.FitZKelvin([100], [10]));
        Assert.Throws<ArgumentException>(() => DecimalReduction.FitZKelvin([100, 110], [10, 20]));
        Assert.Throws<ArgumentException>(() => new RetortProfile(ImmutableArray<RetortPhase>.Empty));
    }

    private static object Try(string what) => what switch
    {
        "altitude of 20 km" => StandardAtmosphere.PressurePascals(20_000),
        "500 degrees" => RetortProfile.Constant(60, 500, 100),
        "negative radius" => new Cylinder(-0.04, 0.05),
        "negative gauge" => CannerSteam.TemperatureCelsius(-1, 0),
        "not a number" => StandardAtmosphere.PressurePascals(double.NaN),
        "more shares than one" => ChoiOkos.At(new(0.9, 0.2, 0, 0, 0, 0), 20),
        "no water at all" => Composition.FromParts(0, 0, 0, 0, 0, 0),
        "frozen food" => ChoiOkos.At(new(1, 0, 0, 0, 0, 0), -5),
        "even nodes" => new ConductionGrid(8, 16),
        "vacuum" => WaterSaturation.TemperatureCelsius(10),
        "gauge for cold steam" => CannerSteam.GaugePascals(90, 0),
        "negative time" => new FiniteCylinderSeries(Jar.Shape, Food, 100).MeanCelsius(-1, 100, 20),
        "z of zero" => new LethalityScale(121.1, 0),
        "beyond the table" => FormulaTables.BallDifferenceKelvin(0.1),
        "beyond the lag" => FormulaTables.StumboDifferenceKelvin(5, 2.5),
        "no resistance" => new WellMixedModel(Jar, double.PositiveInfinity).Run(RetortProfile.Constant(60, 100, double.PositiveInfinity)),
        "thinner by boiling" => BoilDown.WaterKilograms(3, 0.08, 0.05),
        "nothing left" => RetortProfile.Constant(60, 100, 100).After(60),
        "insulated" => TransientSeries.Slab(0),
        "place outside" => TransientSeries.Slab(1).Ratio(1, 2),
        "time outside history" => new WellMixedModel(Jar, 100).Run(RetortProfile.Constant(60, 100, 100)).CentreAtCelsius(61),
        _ => throw new InvalidOperationException(what),
    };
}
