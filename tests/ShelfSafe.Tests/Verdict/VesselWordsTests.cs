using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>
/// What the directions do with jar, lid and canner against the published directions. Each phrase stands in a recipe that is permitted without it.
/// Source: USDA AIB 539 (2015) Guide 1 p. 1-10 to 1-26 (jars, lids, headspace, canners, cooling); NCHFP 2014, Can I can in a multi-cooker?
/// </summary>
public sealed class VesselWordsTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Theory]
    [InlineData("to the rim.")]
    [InlineData("until it spills over.")]
    [InlineData("with no need to leave any room at the top.")]
    [InlineData("so that no air is left.")]
    [InlineData(". Fill each as high as it will go.")]
    [InlineData(". Cover with wax paper and string.")]
    [InlineData("and cover with liquid to the very top.")]
    [InlineData("with liquid. Headspace does not matter.")]
    [InlineData(". Ladle the hot carrots into cold jars.")]
    [InlineData(". Fill them straight from the fridge.")]
    [InlineData("with cold carrots and tap water.")]
    [InlineData(". Use one-piece lids.")]
    [InlineData(". Use one piece metal lids.")]
    [InlineData(". Use lug lids.")]
    [InlineData(". Recycle your lids.")]
    [InlineData(". Top with a quarter inch of beeswax.")]
    [InlineData(". Cover the tops with foil.")]
    [InlineData(". There is no need to remove air bubbles.")]
    [InlineData(". Don't bother with the bubbles.")]
    [InlineData(". You don't need to run a knife round the jar for bubbles.")]
    [InlineData(". Skip wiping the rims.")]
    [InlineData(". Leave the rims sticky.")]
    [InlineData(". A small crack in the jar does no harm.")]
    [InlineData(". Use chipped jars for this.")]
    [InlineData(". Hairline cracks are no problem.")]
    [InlineData(". Use washed honey jars.")]
    [InlineData(". Fill any jars you have saved.")]
    [InlineData(". Fill the biggest jars you have.")]
    public void Vet_FillingUnlikeThePublished_IsTold(string words) => IsTold(Carrots($"Fill hot pint jars with hot carrots and liquid {words}", "Adjust lids and process in a pressure canner."));

    [Theory]
    [InlineData("Cool the jars lid-side down.")]
    [InlineData("Tip each jar over once to sterilise the lid.")]
    [InlineData("Cool the canner under the tap.")]
    [InlineData("Open the canner as soon as the time is up.")]
    [InlineData("Put the hot jars in the fridge to seal faster.")]
    [InlineData("If a lid has not sealed, press it down.")]
    [InlineData("If a jar does not seal, screw the lid tighter.")]
    [InlineData("Jars that fail to seal can be kept too.")]
    [InlineData("Take out the jars and tighten the lids.")]
    public void Vet_JarsHandledOtherwiseAfterwards_IsTold(string step) => IsTold(Carrots("Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace.", $"Adjust lids and process in a pressure canner. {step}"));

    // "Process" alone was taken for a canner, whatever stood behind it.
    [Theory]
    [InlineData("Process the jars in the crock of the cooker.")]
    [InlineData("Process in a multi-cooker for 30 minutes.")]
    [InlineData("Process in the slow cooker.")]
    [InlineData("Process in a rice cooker for an hour.")]
    [InlineData("Process in a pressure saucepan.")]
    [InlineData("Process in a stockpot for 25 minutes.")]
    [InlineData("Process in the sink with boiling water.")]
    [InlineData("Process in hot ashes.")]
    [InlineData("Use your electric pressure pot for 25 minutes.")]
    [InlineData("Put on the lids. They will pop by themselves.")]
    public void Vet_DeviceThatIsNoCanner_IsTold(string step) => IsTold(Carrots("Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace.", step));

    [Theory]
    [InlineData("leaving 1/8 inch headspace", true)]
    [InlineData("leaving 3 inches of headspace", true)]
    [InlineData("with a headspace of 5 mm", true)]
    [InlineData("headspace 1/4 inch", true)]
    [InlineData("to within 1/4 inch of the rim", true)]
    [InlineData("leaving 1 cm at the top", true)]
    [InlineData("leaving 1 to 2 inches headspace", true)]
    [InlineData("leaving 1-inch headspace", false)]
    [InlineData("leaving an inch of headspace", false)]
    [InlineData("to within 2.5 cm of the rim", false)]
    [InlineData("leaving 1 inch (2.5 cm) headspace", false)]
    public void Vet_PrintedHeadspace_IsHeldAgainstThePublished(string headspace, bool other)
    {
        VettingReport report = Carrots($"Fill hot pint jars with hot carrots, cut in 2-inch pieces, and liquid, {headspace}.", "Adjust lids and process in a pressure canner, the water 3 inches deep.");

        Assert.Equal(other, report.Findings.Any(static one => one.Rule == "own-process" && one.Message.Contains("1 inch of headspace", StringComparison.Ordinal)));
        Assert.Equal(other ? Outcome.PressureAfterChanges : Outcome.Pressure, report.Outcome);
    }

    [Theory]
    [InlineData("Remove air bubbles with a plastic spatula and adjust headspace.")]
    [InlineData("Run a knife around the inside so that no bubbles are left.")]
    [InlineData("Do not leave air bubbles in the jars.")]
    [InlineData("Do not forget to wipe the rims.")]
    [InlineData("Wipe the rims of the jars with a dampened clean paper towel.")]
    [InlineData("Discard chipped or cracked jars.")]
    [InlineData("Check the jars for nicks and cracks.")]
    [InlineData("Center the lids and screw the bands down fingertip tight.")]
    public void Vet_PublishedHandling_StaysAsItWas(string step) =>
        Assert.Equal(Outcome.Pressure, Carrots("Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace. " + step, "Adjust lids and process in a pressure canner. Let the canner cool by itself. If a jar has not sealed, put it in the refrigerator and use it soon.").Outcome);

    [Theory]
    [InlineData("Process in a pressure canner.")]
    [InlineData("Process in your pressure canner as the table says.")]
    [InlineData("Process as usual in the canner.")]
    [InlineData("Process 25 minutes in a dial-gauge canner.")]
    [InlineData("Process in the pressure canner in batches.")]
    public void Vet_NamedCanner_IsNoOtherHeat(string step) =>
        Assert.Equal(Outcome.Pressure, Carrots("Fill hot pint jars with hot carrots and liquid, leaving 1-inch headspace.", step).Outcome);

    private static void IsTold(VettingReport report)
    {
        Finding finding = Assert.Single(report.Findings.Where(static one => one.Rule == "unsafe-method").OrderByDescending(static one => one.Level).Take(1));
        Assert.True(finding.Level == FindingLevel.Caution || (finding.Level > FindingLevel.Caution && report.Outcome != Outcome.Pressure), $"{finding.Level}, {report.Outcome}");
    }

    private static VettingReport Carrots(string fill, string process) =>
        Vetter.Vet($"# Canned carrots\n\n- 11 lb carrots, peeled and sliced\n- 4 quarts water\n- 3 tbsp canning salt\n\n1. Wash, peel and slice the carrots.\n2. Cover with boiling water, bring to a boil and simmer for 5 minutes.\n3. {fill}\n4. {process}\n", Kitchen.Unknown);
}
