using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ShelfSafe.Equilibrium;
using Xunit;

namespace ShelfSafe.Tests.Equilibrium;

/// <summary>Laws of water activity; the published values stand in heat-checks.csv.</summary>
[Properties(MaxTest = 100, Replay = "(20261125,1)")]
public class WaterActivityTests
{
    [Property]
    public Property Norrish_MoreSugar_IsAlwaysDrier() => Prop.ForAll(Gen.Choose(1, 500).ToArbitrary(), Gen.Choose(0, 500).ToArbitrary(), (sucrose, hexose) =>
    {
        double aw = WaterActivity.Norrish(100, ChemistryAnswers.Sucrose(sucrose), ChemistryAnswers.Hexose(hexose));
        return aw > WaterActivity.Norrish(100, ChemistryAnswers.Sucrose(sucrose + 5), ChemistryAnswers.Hexose(hexose)) && aw is > 0 and < 1;
    });

    [Property]
    public Property Norrish_IdealSolute_IsRaoult() => Prop.ForAll(Gen.Choose(0, 500).ToArbitrary(), tenths =>
        Math.Abs(WaterActivity.Norrish(100, new Solute(tenths / 1e2, 0)) - WaterActivity.Raoult(100, tenths / 1e2)) < 1e-12);

    [Property]
    public Property Salt_Stronger_IsAlwaysDrier() => Prop.ForAll(Gen.Choose(0, 6_190).ToArbitrary(), thousandths =>
        WaterActivity.Salt(thousandths / 1e3) > WaterActivity.Salt((thousandths + 1) / 1e3));

    // Source: sugar for fruit a kilogram each, boiled to jam, was read at 0.92 (nordicsugar.com, shelf life of jam); far from 0.85.
    [Fact]
    public void Norrish_EqualSugarAndFruit_IsFarAboveTheLine() =>
        Assert.InRange(WaterActivity.Norrish(880, ChemistryAnswers.Sucrose(1_000), ChemistryAnswers.Hexose(80)), 0.90, 0.94);

    // Source: both rules were made for jam and fondant; Money and Born treat sugars alike, so they agree there within a few hundredths.
    [Fact]
    public void MoneyBorn_StrongSyrup_IsNearNorrish() =>
        Assert.Equal(WaterActivity.Norrish(100, ChemistryAnswers.Sucrose(186)), WaterActivity.MoneyBorn(186 / 342.3), 0.03);

    [Fact]
    public void Ross_Nothing_IsPureWater() => Assert.Equal(1, WaterActivity.Ross());

    [Fact]
    public void Arguments_Nonsense_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.Salt(7));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.Norrish(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.Grover(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.Ross(1.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.Raoult(100, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Solute(-1, 6));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.SaturatedSalt(1, 1, 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterActivity.MoneyBorn(-1));
    }
}
