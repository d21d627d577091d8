using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ShelfSafe.Equilibrium;
using ShelfSafe.Pack;
using Xunit;
using Interval = ShelfSafe.Core.Interval;

namespace ShelfSafe.Tests.Equilibrium;

/// <summary>A made-up mixture: a vegetable, another food, vinegar and water, in hundredths of a kilogram.</summary>
public sealed record MixSketch(int Vegetable, int More, int Vinegar, int Water, int OwnTenths, int BufferThousandths, int AcidHundredths)
{
    internal static ImmutableArray<Interval> Acetic => [Interval.Exactly(4.76)];

    internal IReadOnlyList<MixPart> Parts(Interval factor) =>
    [
        MixPart.Food(factor * (Vegetable / 100.0), new(new(OwnTenths / 10.0, (OwnTenths / 10.0) + 0.3), factor * (BufferThousandths / 1e3))),
        MixPart.Acid(factor * (Vinegar / 100.0), new(Acetic, factor * (AcidHundredths / 1e2))),
        MixPart.Water(factor * (Water / 100.0)),
    ];
}

/// <summary>Makes mixtures for FsCheck.</summary>
public static class Mixes
{
    public static Arbitrary<MixSketch> Mix() =>
        (from vegetable in Gen.Choose(1, 300)
         from more in Gen.Choose(1, 300)
         from vinegar in Gen.Choose(0, 200)
         from water in Gen.Choose(0, 200)
         from own in Gen.Choose(47, 68)
         from buffer in Gen.Choose(5, 60)
         from acid in Gen.Choose(5, 120)
         select new MixSketch(vegetable, more, vinegar, water, own, buffer, acid)).ToArbitrary();
}

/// <summary>The pH solver.</summary>
[Properties(Arbitrary = [typeof(Mixes)], MaxTest = 200, Replay = "(20261125,1)")]
public class EquilibriumPhTests
{
    private static readonly Interval One = Interval.Exactly(1);

    [Property]
    public bool Estimate_LowAcidFoodAdded_NeverFalls(MixSketch mix)
    {
        // Only into a mixture that is at or below the food's own pH: two low-acid foods pull at each other.
        double before = Upper(mix.Parts(One));
        MixPart added = MixPart.Food(Interval.Exactly(mix.More / 100.0), new(new(6.9, 7), new(0.01, 0.03)));
        return before > 6.9 || Upper([.. mix.Parts(One), added]) >= before - 1e-9;
    }

    [Property]
    public bool Estimate_AcidAdded_NeverRises(MixSketch mix) =>
        Upper([.. mix.Parts(One), MixPart.Acid(One, new(MixSketch.Acetic, Interval.Exactly(5)))]) <= Upper(mix.Parts(One)) + 1e-9;

    [Property]
    public bool Estimate_ScaledBatch_IsTheSame(MixSketch mix) =>
        Math.Abs(Upper(mix.Parts(One)) - Upper([.. mix.Parts(One), .. mix.Parts(One)])) < 1e-9;

    [Property]
    public bool Estimate_Order_DoesNotMatter(MixSketch mix)
    {
        Interval there = EquilibriumPh.Estimate(mix.Parts(new(0.8, 1.2)), 0).WorkedExample;
        Interval back = EquilibriumPh.Estimate([.. mix.Parts(new(0.8, 1.2)).Reverse()], 0).WorkedExample;
        return Math.Abs(there.Low - back.Low) < 1e-12 && Math.Abs(there.High - back.High) < 1e-12;
    }

    [Property]
    public bool Estimate_EveryCaseInside_LiesInTheInterval(MixSketch mix)
    {
        Interval whole = EquilibriumPh.Estimate(mix.Parts(new(0.7, 1.4)), 0).WorkedExample;
        return new[] { 0.7, 0.85, 1, 1.2, 1.4 }.All(factor =>
        {
            Interval one = EquilibriumPh.Estimate(mix.Parts(Interval.Exactly(factor)), 0).WorkedExample;
            return one.Low >= whole.Low - 1e-9 && one.High <= whole.High + 1e-9;
        });
    }

    [Property]
    public bool Estimate_WiderAmounts_NeverNarrow(MixSketch mix)
    {
        Interval narrow = EquilibriumPh.Estimate(mix.Parts(new(0.9, 1.1)), 0).WorkedExample;
        Interval wide = EquilibriumPh.Estimate(mix.Parts(new(0.5, 2)), 0).WorkedExample;
        return wide.Low <= narrow.Low && wide.High >= narrow.High;
    }

    // The corners of the box, tried one by one, give the two ends: the interval loses nothing and adds nothing.
    [Property]
    public bool Estimate_CornersOfTheBox_AreItsEnds(MixSketch mix)
    {
        Interval whole = EquilibriumPh.Estimate(mix.Parts(new(0.7, 1.4)), 0).WorkedExample;
        List<double> corners = [];
        for (int bits = 0; bits < 64; bits++)
        {
            double[] end = [.. Enumerable.Range(0, 6).Select(bit => (bits >> bit & 1) == 0 ? 0.7 : 1.4)];
            double own = (mix.OwnTenths / 10.0) + ((bits >> 5 & 1) * 0.3);
            corners.Add(Upper(
            [
                MixPart.Food(Interval.Exactly(mix.Vegetable / 100.0 * end[0]), new(Interval.Exactly(own), Interval.Exactly(mix.BufferThousandths / 1e3 * end[1]))),
                MixPart.Acid(Interval.Exactly(mix.Vinegar / 100.0 * end[2]), new(MixSketch.Acetic, Interval.Exactly(mix.AcidHundredths / 1e2 * end[3]))),
                MixPart.Water(Interval.Exactly(mix.Water / 100.0 * end[4])),
            ]));
        }

        return Math.Abs(corners.Max() - whole.High) < 1e-9 && Math.Abs(corners.Min() - whole.Low) < 1e-9;
    }

    // Source: one part of 5 % vinegar to 20 parts of a vegetable of pH 5.6: from 4.4 to 4.8 as the buffering goes from 0.01 to 0.03.
    [Fact]
    public void Estimate_LittleVinegarInMuchVegetable_StraddlesTheLine()
    {
        PhEstimate estimate = EquilibriumPh.Estimate(
            [MixPart.Food(Interval.Exactly(20), new(Interval.Exactly(5.6), new(0.01, 0.03))), MixPart.Acid(One, new(MixSketch.Acetic, Interval.Exactly(0.8327)))],
            modelErrorPh: 0);

        Assert.InRange(estimate.WorkedExample.Low, 4.3, 4.5);
        Assert.InRange(estimate.UpperEnd, 4.7, 4.9);
    }

    [Fact]
    public void Estimate_UnboundedBuffer_ReachesTheFoodsOwnPh()
    {
        PhEstimate estimate = EquilibriumPh.Estimate(
            [MixPart.Food(One, new(new(5.6, 6.2), new(0.01, double.PositiveInfinity))), MixPart.Acid(One, new(MixSketch.Acetic, Interval.Exactly(0.8)))],
            modelErrorPh: 0);

        Assert.Equal(6.2, estimate.UpperEnd, 1e-6);
        Assert.True(estimate.WorkedExample.Low < 4);
    }

    [Fact]
    public void Estimate_UnknownAmountOfAFood_ReachesItsOwnPh()
    {
        PhEstimate estimate = EquilibriumPh.Estimate(
            [MixPart.Food(Interval.Unknown, new(Interval.Exactly(6), new(0.01, 0.02))), MixPart.Acid(One, new(MixSketch.Acetic, Interval.Exactly(0.8)))],
            modelErrorPh: 0);

        // The food's water adds its own trace of acid and base, so its buffer meets the charge balance a hair above.
        Assert.Equal(6, estimate.UpperEnd, 2e-4);
    }

    [Fact]
    public void Estimate_ModelError_WidensBothEndsWithinTheScale()
    {
        MixPart[] parts = [MixPart.Acid(One, new(MixSketch.Acetic, Interval.Exactly(0.8)))];
        Interval bare = EquilibriumPh.Estimate(parts, 0).WorkedExample;
        Interval wide = EquilibriumPh.Estimate(parts, 0.3).WorkedExample;

        Assert.Equal(bare.Low - 0.3, wide.Low, 1e-9);
        Assert.Equal(bare.High + 0.3, wide.High, 1e-9);
        Assert.Equal(14, EquilibriumPh.Estimate([MixPart.Water(One)], 7).UpperEnd, 1e-6);
    }

    [Fact]
    public void Estimate_PureWater_IsNeutral() => Assert.Equal(7, EquilibriumPh.Estimate([MixPart.Water(One)], 0).UpperEnd, 1e-6);

    [Fact]
    public void Arguments_Nonsense_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumPh.Estimate([MixPart.Water(One)], -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumPh.Estimate([MixPart.Water(One)], double.NaN));
        Assert.Throws<ArgumentException>(() => EquilibriumPh.Estimate([], 0));
        Assert.Throws<ArgumentException>(() => EquilibriumPh.Estimate([MixPart.Water(new(0, 1))], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MixPart.Water(new(-1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MixPart.Water(new(2, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FoodBuffer(new(5, 15), Interval.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new AcidContent([], One));
        Assert.Throws<ArgumentOutOfRangeException>(() => new AcidContent([Interval.Exactly(40)], One));
    }

    // Source: rules/acids.csv and rules/foods.csv: even with much vinegar a low-acid food of unknown buffering is never shown below its own pH.
    [Fact]
    public void Estimate_EveryLowAcidFoodWithUnboundedBuffering_IsShownAtItsOwnPh()
    {
        ChemistryTables tables = ChemistryTables.Read(RulePack.Default.Text, []);
        AcidRow acetic = tables.Acids.Single(row => row.Id == "acetic");
        BufferRow unknown = tables.Buffers.Single(row => row.Id == "legume");
        FoodRow[] foods = [.. RulePack.Default.Tables.Foods.Where(food => food.Acidity == FoodAcidity.LowAcid && food.PhHigh is not null)];

        Assert.NotEmpty(foods);
        Assert.All(foods, food =>
        {
            PhEstimate estimate = EquilibriumPh.Estimate(
                [MixPart.Food(One, new(new(food.PhLow ?? 0, food.PhHigh!.Value), unknown.MolesPerKilogramPh)), MixPart.Acid(One, new(acetic.PKa, Interval.Exactly(0.8327)))],
                modelErrorPh: 0.5);
            Assert.True(estimate.UpperEnd >= food.PhHigh);
        });
    }

    private static double Upper(IReadOnlyList<MixPart> parts) => EquilibriumPh.Estimate(parts, 0).UpperEnd;
}
