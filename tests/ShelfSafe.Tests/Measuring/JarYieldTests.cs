using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Measuring;

public class JarYieldTests
{
    private readonly JarYield _jars = KitchenScale.Shared.Weigher.Jars;

    // Source: USDA AIB 539 (rev. 2015), Guide 1 p. 1-17: a canner load is 7 quarts or 8 to 9 pints.
    [Theory]
    [InlineData("quart", 7)]
    [InlineData("pint", 8)]
    public void Plan_OneFullCanner_IsAtLeastOneLoad(string jar, int jars)
    {
        JarPlan fill = _jars.Plan(Interval.Exactly(1), jar, 1)!;

        JarPlan plan = _jars.Plan(Interval.Exactly(fill.FillMillilitres.Low * jars), jar, 1)!;

        Assert.Equal(jars, plan.Jars.High);
        Assert.Equal(1, plan.Loads.High);
    }

    // Source: USDA AIB 539 (rev. 2015): Guide 2 p. 2-19, 17 1/2 pounds of peaches for 7 quarts, 11 for 9 pints; Guide 3 p. 3-9, 21 pounds of
    // tomatoes for 7 quarts, 13 for 9 pints; Guide 2, pears, 17 1/2 pounds for 7 quarts.
    [Theory]
    [InlineData("Peaches, halved or sliced", 17.5, "quart", 7)]
    [InlineData("Peaches, halved or sliced", 11, "pint", 9)]
    [InlineData("Pears, halved", 17.5, "quart", 7)]
    [InlineData("Carrots, sliced or diced", 17.5, "quart", 7)] // Guide 4, carrots
    [InlineData("Beans, snap and Italian, green or wax", 14, "quart", 7)] // Guide 4 p. 4-8
    [InlineData("Beans, snap and Italian, green or wax", 9, "pint", 9)]
    [InlineData("Beets, whole, cubed or sliced", 21, "quart", 7)] // Guide 4 p. 4-9
    [InlineData("Tomatoes, whole or halved, packed in water", 21, "quart", 7)]
    [InlineData("Tomatoes, whole or halved, packed in water", 13, "pint", 9)]
    public void Packed_ThePublishedWeight_FillsThePublishedJars(string product, double pounds, string jar, int jars)
    {
        Interval volume = _jars.Packed(Interval.Exactly(pounds * 453.59237), product, 0.5)!.Value;

        JarPlan plan = _jars.Plan(volume, jar, 0.5)!;

        Assert.InRange(jars, plan.Jars.Low, plan.Jars.High);
        Assert.True(plan.Jars.High <= jars * 1.5);
    }

    [Fact]
    public void Packed_ProductWithoutAPublishedWeight_IsNone() => Assert.Null(_jars.Packed(Interval.Exactly(1_000), "Tuna", 1));

    [Fact]
    public void Plan_MoreHeadspace_NeverNeedsFewerJars()
    {
        JarPlan half = _jars.Plan(Interval.Exactly(5_000), "pint", 0.5)!;
        JarPlan inch = _jars.Plan(Interval.Exactly(5_000), "pint", 1)!;

        Assert.True(inch.Jars.High >= half.Jars.High && inch.FillMillilitres.High < half.FillMillilitres.High);
    }

    [Fact]
    public void Plan_UnknownVolumeJarOrHeadspace_IsRefused()
    {
        Assert.Null(_jars.Plan(Interval.Unknown, "pint", 1));
        Assert.Null(_jars.Plan(Interval.Exactly(500), "thimble", 1));
        Assert.Null(_jars.Plan(Interval.Exactly(500), "half-pint", 9));
        Assert.Null(_jars.Plan(Interval.Exactly(500), "pint", double.NaN));
    }

    // Source: USDA SR28 (NDB 04053, 11282): olive oil is all fat, an onion nearly all water.
    [Fact]
    public void Compositions_OilAndOnion_AreAsPublished()
    {
        Assert.True(KitchenScale.Shared.Weigher.Compositions.Of(KitchenScale.Food("olive-oil"))!.Fat!.Value.Low > 99);
        Assert.InRange(KitchenScale.Shared.Weigher.Compositions.Of(KitchenScale.Food("onion"))!.Water!.Value.Low, 85, 92);
    }

    [Fact]
    public void Compositions_FoodWithoutARow_AreUnknown() =>
        Assert.Null(KitchenScale.Shared.Weigher.Compositions.Of(KitchenScale.Food("onion") with { Id = "no-such-food" }));

    // Source: US Dry Bean Council and published bean tables: dry beans weigh two to three times as much once cooked.
    [Fact]
    public void Yields_DryBeansCooked_GainTwiceToThrice()
    {
        Interval factor = KitchenScale.Shared.Weigher.Yields.Factor(KitchenScale.Food("kidney-bean"), "dry", "cooked")!.Value;

        Assert.True(factor.Low <= 2.5 && factor.High >= 3);
        Assert.Null(KitchenScale.Shared.Weigher.Yields.Factor(KitchenScale.Food("kidney-bean"), "raw", "pickled"));
    }

    [Fact]
    public void Tables_OfTheBuiltInPack_HaveNoFault()
    {
        List<PackFault> faults = [];
        MeasureTables tables = MeasureTableReader.Read(RulePack.Default.Text, faults);

        Assert.Empty(faults);
        HashSet<string> foods = [.. RulePack.Default.Tables.Foods.Select(food => food.Id)];
        Assert.All(tables.Likes.All, like => Assert.Contains(like.Food, foods));
        Assert.True(tables.Measures.All.Length == tables.Measures.All.Select(row => (row.Food, row.Measure, row.State)).Distinct().Count());
    }
}
