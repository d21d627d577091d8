using ShelfSafe.Pack;
using ShelfSafe.Steps;
using ShelfSafe.Tests.Foods;
using Xunit;

namespace ShelfSafe.Tests.Steps;

/// <summary>Runs the two examples that each row of the table brings along.</summary>
public sealed class StepFactRowTests
{
    private static readonly List<StepFactRow> Rows = StepFactRow.Read(RulePack.Default.Text(StepFactRow.File), []);

    [Fact]
    public void Rows_OfThePack_CompileWithoutFault()
    {
        List<PackFault> faults = [];
        _ = new StepReader(StepFactRow.Read(RulePack.Default.Text(StepFactRow.File), faults), faults, FoodFixture.NewTexts());
        Assert.Empty(faults);
    }

    [Fact]
    public void ExampleHit_OfEachRow_GivesItsFactByThatRowAlone() =>
        Assert.Empty(Failures(row => row.ExampleHit.Length > 0 && !Alone(row, row.ExampleHit)));

    [Fact]
    public void ExampleMiss_OfEachRow_DoesNotGiveItsFact()
    {
        StepReader all = StepReader.Create(RulePack.Default, FoodFixture.NewTexts());
        Assert.Empty(Failures(row => row.ExampleMiss.Length > 0 && all.Read(StepParts.Of(row.ExampleMiss)).Any(fact => fact.Id == row.Fact)));
    }

    [Fact]
    public void Examples_OfEachRow_ArePresent() =>
        Assert.Empty(Failures(row => row.ExampleHit.Length == 0 || row.ExampleMiss.Length == 0));

    private static bool Alone(StepFactRow row, string text) =>
        new StepReader([.. Rows.Where(other => other.IsList), row], [], FoodFixture.NewTexts()).Read(StepParts.Of(text)).Any(fact => fact.Id == row.Fact);

    private static List<string> Failures(Func<StepFactRow, bool> fails) =>
        [.. Rows.Where(row => !row.IsList && fails(row)).Select(row => $"{row.Line} {row.Fact}: {row.Pattern}")];
}
