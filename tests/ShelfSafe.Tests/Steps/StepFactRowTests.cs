using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Steps;
using ShelfSafe.Tests.Foods;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Steps;

/// <summary>Runs the examples that each row of the table brings along.</summary>
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
        Assert.Empty(Failures(row => row.Hits.Any(example => !Alone(row, example))));

    [Fact]
    public void ExampleMiss_OfEachRow_DoesNotGiveItsFact()
    {
        StepReader all = StepReader.Create(RulePack.Default, FoodFixture.NewTexts());
        Assert.Empty(Failures(row => row.Misses.Any(example => all.Read(StepParts.Of(example)).Any(fact => fact.Id == row.Fact))));
    }

    [Fact]
    public void Examples_OfEachRow_ArePresent() =>
        Assert.Empty(Failures(row => row.Hits.Count == 0 || row.Misses.Count == 0));

    // A method that is heard without a row of words would be dropped in silence; a row that nothing hears would never be told.
    [Fact]
    public void UnsafeMethods_TheirFacts_AreTheUnsafeFactsThatAreHeard() =>
        Assert.Equal(
            Rows.Select(static row => row.Fact).Where(static fact => fact.StartsWith("unsafe-", StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal),
            CsvTable.Read("unsafe-methods.csv", RulePack.Default.Text("unsafe-methods.csv"), TableKeys.UnsafeMethods.Header, static row => row.Text("fact"), []).Order(StringComparer.Ordinal));

    [Fact]
    public void UnsafeMethods_EachExampleOfTheirFacts_IsAFindingOfTheVetter()
    {
        RecipeVetter vetter = BuiltIn.Vetter;
        Assert.Empty(Failures(row => row.Fact.StartsWith("unsafe-", StringComparison.Ordinal) && row.Hits.Any(example => !Told(vetter, example))));
    }

    // A fact of a card that nothing makes would never be found.
    [Fact]
    public void Cards_EachStepFactTheyName_IsMadeByARowOrByTheJars()
    {
        HashSet<string> known = [.. Rows.Select(static row => row.Fact), JarSteps.OtherHeat, JarSteps.Heated, JarSteps.Filled, JarSteps.Canner, JarSteps.Pressure];
        PackTables tables = RulePack.Default.Tables;
        IEnumerable<Check> checks =
        [
            .. tables.Hazards.SelectMany(static card => card.Rows.Select(static row => row.Check).Concat(card.Cases.Select(static one => one.Check))),
            .. tables.Categories.SelectMany(static card => card.Applies.Concat(card.Gates.Select(static gate => gate.Check))),
        ];
        Assert.All(checks.SelectMany(static check => check.Terms).Where(static term => term.Kind == TermKind.Step).SelectMany(static term => term.Values), fact => Assert.Contains(fact, known));
    }

    private static bool Alone(StepFactRow row, string text) =>
        new StepReader([.. Rows.Where(other => other.IsList), row], [], FoodFixture.NewTexts()).Read(StepParts.Of(text)).Any(fact => fact.Id == row.Fact);

    private static bool Told(RecipeVetter vetter, string example) =>
        vetter.Vet("# Dish\n\n## Ingredients\n- 2 lb carrots\n- 1 cup water\n\n## Directions\n" + string.Join(' ', example.Split(" / ")) + "\n", Kitchen.Unknown)
            .Findings.Any(static finding => finding.Rule == "unsafe-method");

    private static List<string> Failures(Func<StepFactRow, bool> fails) =>
        [.. Rows.Where(row => !row.IsList && fails(row)).Select(row => $"{row.Line} {row.Fact}: {row.Pattern}")];
}
