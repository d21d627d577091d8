using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Candidates;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>The published formulas through the front door: recognised in other words and sizes, and never after one dangerous change.</summary>
// Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guides 2 to 6, and the pages named in rules/formulas.csv.
public class FormulaVerdictTests(FormulaKitchen kitchen) : IClassFixture<FormulaKitchen>
{
    private static readonly RecipeVetter Vetter = RecipeVetter.Create(RulePack.Default);

    private static readonly (string Line, string Step)[] Dangers =
    [
        ("1 cup wheat flour", ""), ("1/2 cup cornstarch", ""), ("1 cup vegetable oil, extra, for flavour", ""), ("2 cups pasta", ""), ("2 cups rice", ""),
        ("1 cup milk", ""), ("1 lb chicken breast, diced", ""), ("2 cups potatoes, diced", ""), ("1 cup of granny's mystery mix", ""), ("", "Whisk in 3 tbsp flour at the end."),
    ];

    public static TheoryData<string> Timed() => FormulaJudgeTests.Timed();

    [Theory]
    [MemberData(nameof(Timed))]
    public void Vet_FormulaInOtherWordsAndSizes_GetsItsProcess(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        List<string> lost = [];
        for (int wording = 0; wording < 3; wording++)
        {
            foreach (double scale in (ReadOnlySpan<double>)[0.5, 1, 2])
            {
                VettingReport report = Vetter.Vet(FormulaKitchen.Write(formula, wording, scale), Kitchen.Unknown);
                if (report.Process.IsEmpty && report.ProcessAfterChanges.IsEmpty)
                {
                    lost.Add($"wording {wording}, size {scale}: {report.Outcome} {report.Category?.Id}: {string.Join(" | ", report.Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => $"{finding.Rule} {finding.Message}"))}");
                }
            }
        }

        Assert.True(lost.Count == 0, string.Join("\n", lost));
    }

    [Theory]
    [MemberData(nameof(Timed))]
    public void Vet_FormulaAsPrinted_NeedsNoChange(string id)
    {
        VettingReport report = Vetter.Vet(FormulaKitchen.Write(kitchen.Formula(id), 0, 1), Kitchen.Unknown);

        Assert.True(!report.Process.IsEmpty, $"{report.Outcome} {report.Category?.Id}: {string.Join(" | ", report.Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => $"{finding.Rule} {finding.Message}"))}");
    }

    [Theory]
    [MemberData(nameof(Timed))]
    public void Vet_FormulaWithADangerousFood_IsNeverPermittedAsWritten(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        foreach ((string line, string step) in Dangers)
        {
            for (int wording = 0; wording < 3; wording++)
            {
                VettingReport report = Vetter.Vet(FormulaKitchen.Write(formula, wording, 1, added: line, step: step), Kitchen.Unknown);
                Assert.True(report.Process.IsEmpty && report.Outcome != Outcome.DryStorage, $"{line}{step} in wording {wording}: {report.Outcome} {report.Category?.Id}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Timed))]
    public void Vet_FormulaWithMoreLowAcidOrLessAcid_IsNotTakenForIt(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        foreach (FormulaSlot slot in formula.Slots.Where(slot => slot.Role is FormulaRole.AtMost or FormulaRole.AtLeast && !slot.Discarded && slot.Presence == FormulaPresence.Required))
        {
            double factor = slot.Role == FormulaRole.AtMost ? 1.5 * slot.High!.Value / slot.Low!.Value : 0.5;
            if (formula.Slots.Count(other => other.Role != FormulaRole.Free && other.Presence == FormulaPresence.Required) == 1
                || (slot.Role == FormulaRole.AtMost && formula.Slots.All(other => other.Role is FormulaRole.AtMost or FormulaRole.Free)))
            {
                continue;
            }

            VettingReport report = Vetter.Vet(FormulaKitchen.Write(formula, 0, 1, other => ReferenceEquals(other, slot) ? factor : 1), Kitchen.Unknown);
            Assert.True(report.Category?.Id != id || report.Process.IsEmpty, $"{factor} of {slot.Name}");
        }
    }
}
