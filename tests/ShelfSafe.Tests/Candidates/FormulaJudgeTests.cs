using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;
using Outcome = ShelfSafe.Core.Outcome;

namespace ShelfSafe.Tests.Candidates;

// Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guides 2 to 6, and the pages named in rules/formulas.csv.
public class FormulaJudgeTests(FormulaKitchen kitchen) : IClassFixture<FormulaKitchen>
{
    private static readonly (string Line, string Step)[] Dangers =
    [
        ("1 cup wheat flour", ""), ("1/2 cup cornstarch", ""), ("1 cup vegetable oil, extra, for flavour", ""), ("2 cups pasta", ""), ("2 cups rice", ""),
        ("1 cup milk", ""), ("1 lb chicken breast, diced", ""), ("2 cups potatoes, diced", ""), ("1 cup of granny's mystery mix", ""), ("", "Whisk in 3 tbsp flour at the end."),
    ];

    public static TheoryData<string> Timed()
    {
        TheoryData<string> data = [];
        List<PackFault> faults = [];
        foreach (FormulaRow formula in FormulaTable.Read(RulePack.Default, faults).Where(formula => formula.Seen && !formula.ProcessRows.IsEmpty))
        {
            data.Add(formula.Id);
        }

        return data;
    }

    [Fact]
    public void Read_OwnTables_HasNoFault() => Assert.Empty(kitchen.Faults);

    [Theory]
    [MemberData(nameof(Timed))]
    public void Judge_FormulaInOtherWordsAndSizes_IsRecognised(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        List<string> lost = [];
        for (int wording = 0; wording < 3; wording++)
        {
            foreach (double scale in (ReadOnlySpan<double>)[0.5, 1, 2])
            {
                string text = FormulaKitchen.Write(formula, wording, scale);
                if (!kitchen.Covering(text).TryGetValue(id, out FormulaVerdict? verdict) || verdict.Candidate.Processes.IsEmpty)
                {
                    lost.Add($"wording {wording}, size {scale}: {Why(id, text)}");
                }
            }
        }

        Assert.True(lost.Count == 0, string.Join("\n", lost));
    }

    // Common practice: a dish of meat without its meat is another dish.
    [Fact]
    public void Vet_AChiliOfMeat_IsNearNoPepperSauce() =>
        Assert.DoesNotContain(
            BuiltIn.Vetter.Vet("# Elk chili\n\n- 3 lb ground elk\n- 1 lb dry kidney beans\n- 2 28-oz cans tomatoes\n- 2 onions\n- 3 green peppers\n- 1 beer\n\nSimmer 2 hours.\n", Kitchen.Unknown).Nearest,
            static near => near.Swap.Contains("elk", StringComparison.Ordinal));

    // Source: USDA AIB 539 (2015) Guide 6, p. 6-15: four to six onions of 2 to 2 1/2 inches; a line without a size may mean larger ones.
    [Theory]
    [InlineData("4 to 6 onions, peeled and thinly sliced", true)]
    [InlineData("4 to 6 onions (2- to 2 1/2-inch across), peeled and thinly sliced", false)]
    public void Judge_FoodOfOneSizeInTheFormula_AsksForTheSizeAndNotToLeaveItOut(string onions, bool asked)
    {
        VettingReport report = BuiltIn.Vetter.Vet($"# Pickled beets\n\n- 7 lb beets, 2 to 2 1/2 inches across\n- 4 cups vinegar (5%)\n- 1 1/2 tsp canning salt\n- 2 cups sugar\n- 2 cups water\n- 2 cinnamon sticks\n- 12 whole cloves\n- {onions}\n\n1. Cook the beets until tender, slip off the skins and slice them. Bring the vinegar, salt, sugar and water to a boil with the spices in a bag. Add the beets and onions and simmer 5 minutes. Take out the bag.\n2. Fill hot pint jars, leaving 1/2 inch headspace. Process in a boiling-water canner.\n", Kitchen.Unknown);

        Assert.Equal(asked, report.Findings.Any(static finding => finding.Message.Contains("another kind or size", StringComparison.Ordinal)));
        Assert.DoesNotContain(report.Findings, static finding => finding.Message.Contains("is not part of", StringComparison.Ordinal));
        Assert.DoesNotContain(report.Nearest, static near => near.Swap.Contains("onion", StringComparison.Ordinal) && near.Id == "pickled-beets");
        Assert.Equal(asked, report.Outcome != Outcome.BoilingWater);
    }

    [Theory]
    [MemberData(nameof(Timed))]
    public void Judge_WithADangerousFood_IsRefused(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        foreach ((string line, string step) in Dangers)
        {
            for (int wording = 0; wording < 3; wording++)
            {
                string text = FormulaKitchen.Write(formula, wording, 1, added: line, step: step);
                Assert.True(kitchen.Covering(text).Count == 0, $"{line}{step}: {string.Join(", ", kitchen.Covering(text).Keys)}\n{text}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Timed))]
    public void Judge_WithMoreLowAcidOrLessAcid_IsRefused(string id)
    {
        FormulaRow formula = kitchen.Formula(id);
        foreach (FormulaSlot slot in formula.Slots.Where(slot => !slot.Discarded && slot.Presence != FormulaPresence.Instead))
        {
            double factor = slot.Role switch { FormulaRole.AtMost => 1.5 * slot.High!.Value / slot.Low!.Value, FormulaRole.AtLeast => 0.5, FormulaRole.Fixed => 0.5, FormulaRole.Free => 0 };
            bool only = formula.Slots.Count(other => other.Role != FormulaRole.Free && other.Presence == FormulaPresence.Required) == 1;
            if (factor == 0 || only || (slot.Role == FormulaRole.AtMost && formula.Slots.All(other => other.Role is FormulaRole.AtMost or FormulaRole.Free)))
            {
                continue;
            }

            string text = FormulaKitchen.Write(formula, 0, 1, other => ReferenceEquals(other, slot) ? factor : 1);
            Assert.True(!kitchen.Covering(text).ContainsKey(id), $"{factor} of {slot.Name}\n{text}");
        }
    }

    [Theory]
    [InlineData("vinegar (4%)", Judgement.Refuses)]
    [InlineData("vinegar", Judgement.AdmitsAfter)]
    [InlineData("vinegar (5%)", Judgement.Admits)]
    [InlineData("rice vinegar", Judgement.Refuses)]
    [InlineData("bottled lemon juice", Judgement.Admits)]
    [InlineData("lemon juice", Judgement.Refuses)]
    public void Judge_VinegarOfAChileSalsa_NeedsFivePercent(string vinegar, object expected)
    {
        string text = $"# Salsa\n\n- 5 lb tomatoes, peeled and chopped\n- 2 lb chile peppers, chopped\n- 1 lb onions, chopped\n- 1 cup {vinegar}\n- 3 tsp salt\n\n1. Boil all for 10 minutes.\n2. Fill the jars.\n";
        Judgement judged = kitchen.Judge.Judge(kitchen.Judge.Look(kitchen.Batch(text))).Where(verdict => verdict.Formula.Id == "chile-salsa").Select(verdict => verdict.Candidate.Judgement).DefaultIfEmpty(Judgement.Refuses).Single();
        Assert.Equal((Judgement)expected, judged);
    }

    [Fact]
    public void Judge_TooManyPeppers_NamesTheAmountWithinTheTestedOne()
    {
        const string Text = "# Salsa\n\n- 5 lb tomatoes, chopped\n- 3 lb chile peppers, chopped\n- 1 lb onions, chopped\n- 1 cup vinegar (5%)\n\n1. Boil for 10 minutes.\n2. Fill the jars.\n";
        FormulaVerdict verdict = Assert.Single(kitchen.Judge.Judge(kitchen.Judge.Look(kitchen.Batch(Text))));
        Assert.Equal(Judgement.Refuses, verdict.Candidate.Judgement);
        Assert.Contains(verdict.Candidate.Findings, finding => finding.Instead.Contains("2 lb", StringComparison.Ordinal));
        Assert.Contains(verdict.Differences, difference => !difference.Allowed && difference.Tested.High == 2);
    }

    [Fact]
    public void Nearest_OfASalsaWithoutProcess_AreThreeSalsasAtTheCooksScale()
    {
        const string Text = "# Salsa\n\n- 2 kg tomatoes, chopped\n- 1 kg onions, chopped\n- 200 g corn\n\n1. Boil for 10 minutes.\n";
        (FormulaRow Formula, List<FormulaLine> Lines, bool OfKind)[] nearest = [.. kitchen.Judge.Nearest(kitchen.Judge.Look(kitchen.Batch(Text))).Take(3)];
        Assert.Equal(3, nearest.Length);
        Assert.All(nearest, near => Assert.True(near.OfKind));
        Assert.All(nearest, near => Assert.Contains("salsa", near.Formula.Kinds));
    }

    private string Why(string id, string text)
    {
        FormulaVerdict? verdict = kitchen.Judge.Of(kitchen.Formula(id), kitchen.Batch(text));
        return string.Join("; ", verdict.Candidate.Findings.Select(finding => finding.Message + " " + finding.Instead)) + "\n" + text;
    }
}
