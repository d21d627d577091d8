using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Candidates;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Hazards;

public sealed class MeantCardsTests(FormulaKitchen kitchen) : IClassFixture<FormulaKitchen>
{
    private static readonly CardShelf<HazardCard> Hazards = RulePack.Default.Tables.HazardShelf;
    private static readonly CardShelf<CategoryCard> Categories = RulePack.Default.Tables.CategoryShelf;

    public static TheoryData<string> Samples => [.. SampleFolder.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Of_ACardThatIsLeftOut_HasNoRowThatHolds(string sample)
    {
        Batch batch = kitchen.Batch(File.ReadAllText(SampleFolder.Of(sample)));
        HashSet<int> meant = [.. MeantCards.Of(Hazards, batch)];

        Assert.InRange(meant.Count, 1, Hazards.Count - 1);
        Assert.All(Enumerable.Range(0, Hazards.Count).Where(card => !meant.Contains(card)), card =>
            Assert.DoesNotContain(Hazards[card].Rows, row => row.Check.Terms[0].Kind != TermKind.ByProgram && HoldsAnywhere(row.Check, batch)));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Of_ACategoryThatIsLeftOut_DoesNotApply(string sample)
    {
        Batch batch = kitchen.Batch(File.ReadAllText(SampleFolder.Of(sample)));
        HashSet<int> meant = [.. MeantCards.Of(Categories, batch)];

        Assert.All(Enumerable.Range(0, Categories.Count).Where(card => !meant.Contains(card)), card =>
            Assert.DoesNotContain(Categories[card].Applies, check => HoldsAnywhere(check, batch)));
    }

    [Fact]
    public void Of_CardsOfAFolder_AreThoseOfTheBuiltInPack()
    {
        CardShelf<HazardCard> folder = RulePack.Load(RulesFolder.Path, out ImmutableArray<PackFault> faults)!.Tables.HazardShelf;
        Batch batch = kitchen.Batch("# Stew\n\n- 1 kg beef\n- 3 tbsp flour\n- 1 cup cream\n\n1. Whisk in the flour and blend it.\n");

        Assert.Empty(faults);
        Assert.Equal(MeantCards.Of(Hazards, batch), MeantCards.Of(folder, batch));
        Assert.Contains(Hazards.Find("thickener"), MeantCards.Of(Hazards, batch));
        Assert.DoesNotContain(Hazards.Find("chocolate"), MeantCards.Of(Hazards, batch));
    }

    private static bool HoldsAnywhere(Check check, Batch batch) => Enum.GetValues<Acidity>().Any(acidity =>
        TermJudge.Holds(check, null, batch, acidity) || batch.Items.Any(item => TermJudge.Holds(check, item, batch, acidity)));
}
