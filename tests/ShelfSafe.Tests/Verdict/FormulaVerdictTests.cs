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
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

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

    // Source: NCHFP, Fig Preserves (how/can_07/fig_preserves.html): the syrup is boiled down until as thick as honey; figs lie above pH 4.6.
    [Theory]
    [InlineData("Drop the figs into the syrup, a few at a time, and cook rapidly until clear. Take out the figs. Boil the syrup until thick. Pour it over the figs.", true)]
    [InlineData("Drop the figs into the syrup, a few at a time, and simmer for 10 minutes.", false)]
    public void Vet_FigsInSyrup_GetTheTimeOfPreservesOnlyIfTheSyrupIsBoiledDown(string step, bool permitted)
    {
        VettingReport report = Vetter.Vet($"# Fig Preserves\n\n- 3 quarts figs\n- 3 quarts boiling water\n- 4 cups sugar\n- 1 1/2 quarts water\n- 2 lemons, thinly sliced (optional)\n\n1. Pour the boiling water over the figs. Let stand 15 minutes, drain and discard the liquid.\n2. Boil the sugar, 1 1/2 quarts water and lemon for 10 minutes. Remove and discard the lemon slices. {step}\n3. Reheat to boiling. Fill hot, sterile half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner.\n", Kitchen.Unknown);

        Assert.Equal(permitted, !report.Process.IsEmpty);
        Assert.Equal(permitted, report.Category?.Id == "fig-preserves");
    }

    // Source: NCHFP, each recipe by its name (addresses in formulas.csv), and NCHFP, Cranberry Sauce (how/can_02/cran_sauce.html).
    [Theory]
    [InlineData("blackberry-jam-powdered-pectin", "6 cups crushed blackberries (about 3 quart boxes berries)|1 package powdered pectin|8 1/2 cups sugar", 5)]
    [InlineData("plum-jam-liquid-pectin", "4 1/2 cups crushed plums (about 2 1/2 pounds plums)|7 1/2 cups sugar|1 pouch liquid pectin", 5)]
    [InlineData("plum-jam-liquid-pectin", "4 1/2 cups crushed plums (about 2 1/2 pounds plums)|7 1/2 cups sugar|1 (3 oz) pouch liquid pectin", 5)]
    [InlineData("grape-jelly-powdered-pectin", "5 cups grape juice (about 3 1/2 pounds Concord grapes and 1 cup water)|1 package powdered pectin|7 cups sugar", 5)]
    [InlineData("cranberry-sauce", "4 cups cranberries|1 cup water|2 cups sugar", 15)]
    public void Vet_PublishedListInItsOwnWords_GetsTheTimeOfItsTable(string id, string lines, int minutes)
    {
        string name = kitchen.Formula(id).Name;
        VettingReport report = Vetter.Vet($"# {name}\n\n- {lines.Replace("|", "\n- ", StringComparison.Ordinal)}\n\n1. Bring to a full boil with everything but the sugar. Add the sugar and boil hard.\n2. Fill hot, sterile half-pint jars. Process in a boiling-water canner.\n", Kitchen.Unknown);

        Assert.Equal(id, report.Category?.Id);
        Assert.Contains(report.Process, process => process.Minutes == minutes);
    }

    // Source: NCHFP, Plum Jam with liquid pectin: one pouch; the pectin maker's amounts hold (USDA AIB 539 (2015) Guide 7, p. 7-7).
    [Theory]
    [InlineData("2 pouches liquid pectin")]
    [InlineData("1 package powdered pectin")]
    [InlineData("1 package gelatin")]
    public void Vet_OtherSetThanPublished_IsNoPublishedJam(string set)
    {
        VettingReport report = Vetter.Vet($"# Plum jam\n\n- 4 1/2 cups crushed plums\n- 7 1/2 cups sugar\n- {set}\n\n1. Boil hard for a minute.\n2. Fill hot, sterile half-pint jars. Process in a boiling-water canner.\n", Kitchen.Unknown);

        Assert.Empty(report.Process);
    }
}
