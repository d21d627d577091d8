using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Plans;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Plans;

/// <summary>Each line of the run sheet stands in the guide's procedure, on the page that it names.</summary>
public class RunSheetBuilderTests
{
    private static readonly RunSheetBuilder _builder = RunSheetBuilder.Create(RulePack.Default);

    private const string Beans = """
        # Beans in water

        - 1 kg dried kidney beans
        - 4 litres water
        - 1 tbsp salt

        1. Soak the kidney beans overnight in cold water and drain them.
        2. Boil the kidney beans in fresh water for 30 minutes.
        """;

    // Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 1, p. 1-13 to 1-26 and Guide 4, p. 4-18.
    [Theory]
    [InlineData("gauge", null, null)] // p. 1-20; a weighted gauge needs no check
    [InlineData("canner", "at least 4 quart jars", "p. 1-19 to 1-21")]
    [InlineData("meat-soup", "cook until tender", "Guide 4, p. 4-18")]
    [InlineData("boil-soup", "Boil for 5 minutes", "Guide 4, p. 4-18")]
    [InlineData("soup-half", "half full with the drained pieces", "Guide 4, p. 4-18")]
    [InlineData("headspace", "Leave 1 inch of headspace", "Guide 1, p. 1-13")]
    [InlineData("bubbles", "air bubbles", "Guide 1, p. 1-13 to 1-14")]
    [InlineData("rims", "Wipe the rims", "Guide 1, p. 1-16")]
    [InlineData("water", "2 to 3 inches of hot water", "Guide 1, p. 1-21")]
    [InlineData("vent", "flow for 10 minutes", "Guide 1, p. 1-20 to 1-22")]
    [InlineData("start", "Start to count when the gauge shows 15 pounds", "Guide 1, p. 1-22")]
    [InlineData("hold", "Hold 15 pounds for 75 minutes", "Guide 1, p. 1-22")]
    [InlineData("fall", "start the full 75 minutes again", "Guide 1, p. 1-22")]
    [InlineData("cool", "Let the pressure fall by itself", "Guide 1, p. 1-22")]
    [InlineData("wait", "Wait 10 minutes, then lift the lid", "Guide 1, p. 1-22")]
    [InlineData("rest", "12 to 24 hours", "Guide 1, p. 1-25")]
    [InlineData("seal", "check each seal", "Guide 1, p. 1-25")]
    [InlineData("unsealed", "within 24 hours, hot, with a new lid and the full time", "Guide 1, p. 1-26")]
    public void Build_ASoup_FollowsTheGuideLineByLine(string id, string? words, string? page) =>
        Holds(Sheet(Sample("vegetable-beef-soup.md")), id, words, page);

    // Source: the same guide, Guide 4, p. 4-18: the meat of a soup is cooked until tender; "precook to rare" belongs to meat alone, Guide 5.
    [Fact]
    public void Build_ASoupUnderTheRowOfItsMeat_KeepsTheSoupsOwnCooking() =>
        Assert.DoesNotContain(Sheet(Sample("vegetable-beef-soup.md")).Recipes[0].Prepare, step => step.Text.Contains("rare", StringComparison.Ordinal));

    // Source: the same guide, Guide 2, p. 2-19: peaches, quarts, 1,001 to 3,000 ft: hot 30 minutes, raw 35.
    [Theory]
    [InlineData("Fill hot jars with the hot fruit", "hot", 30)]
    [InlineData("Fill hot jars with the raw fruit", "raw", 35)]
    [InlineData("Fill the jars with the fruit", "raw", 35)] // not said: the longer time
    public void PlanChoice_ARecipeThatNamesItsPack_TakesThatRow(string words, string pack, int minutes)
    {
        string recipe = Sample("peach-halves.md").Replace("Fill hot jars with the hot fruit", words, StringComparison.Ordinal);

        ShelfSafe.Verdict.ProcessLine? line = PlanChoice.Of(Vetter.Vet(recipe, Hall with { Jar = "quart" })).Process;

        Assert.Equal((pack, minutes), (line?.Pack, line?.Minutes));
    }

    // Source: the same guide, Guide 1, p. 1-17 to 1-18: 1 inch of water over the jars, 2 inches where the time is more than 30 minutes.
    [Theory]
    [InlineData("raw", "canner-bw-deep", "canner-bw")]
    [InlineData("hot", "canner-bw", "canner-bw-deep")]
    public void Build_WaterOverTheJars_IsToldOnce(string pack, string told, string untold)
    {
        RunSheet sheet = _builder.Build([("x", Vetter.Vet(Sample("peach-halves.md").Replace("the hot fruit", $"the {pack} fruit", StringComparison.Ordinal), Hall with { Jar = "quart" }))]);

        Assert.Contains(sheet.Before, step => step.Id == told);
        Assert.DoesNotContain(sheet.Before, step => step.Id == untold);
    }

    // Source: the same guide, Guide 1, p. 1-14 to 1-18; Guide 2, p. 2-19.
    [Theory]
    [InlineData("canner-bw", "1 inch of boiling water over the jars", "Guide 1, p. 1-17 to 1-18")]
    [InlineData("water-bw", "180 °F (82 °C)", "Guide 1, p. 1-18")]
    [InlineData("start-bw", "boils hard all over", "Guide 1, p. 1-18")]
    [InlineData("hold-bw", "Keep the water over the jars", "Guide 1, p. 1-18")]
    [InlineData("fall-bw", "bring it back to a hard boil and start the full", "Guide 1, p. 1-18")]
    [InlineData("wait-bw", "wait 5 minutes", "Guide 1, p. 1-18")]
    [InlineData("vent", null, null)]
    [InlineData("sterile", null, null)] // p. 1-14 to 1-15: only under 10 minutes
    public void Build_Peaches_FollowTheGuideLineByLine(string id, string? words, string? page) =>
        Holds(Sheet(Sample("peach-halves.md")), id, words, page);

    // Source: the same guide, Guide 4, p. 4-5 (soak 12 to 18 hours, boil 30 minutes).
    [Theory]
    [InlineData("soak", "soak for 12 to 18 hours", "Guide 4, p. 4-5")]
    [InlineData("beans", "boil for 30 minutes", "Guide 4, p. 4-5")]
    [InlineData("hold", "for 75 minutes", "Guide 1, p. 1-22")]
    [InlineData("meat-soup", null, null)]
    public void Build_DriedBeans_SoakThemFirst(string id, string? words, string? page) => Holds(Sheet(Beans), id, words, page);

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-5: soak 12 to 18 hours.
    [Fact]
    public void Build_DriedBeans_SoakBeforeTheStart()
    {
        TimetableEntry soak = Sheet(Beans).Timetable.First();

        Assert.True(soak.Start < 0);
        Assert.Equal(18 * 60, soak.Minutes);
    }

    [Fact]
    public void Build_SeveralRecipes_NeverMixesThemInALoad()
    {
        RunSheet sheet = _builder.Build([("soup", VetPints(Sample("vegetable-beef-soup.md"))), ("beans", VetPints(Beans)), ("peaches", VetPints(Sample("peach-halves.md")))]);

        // Each canner has one load at a time: no two holds of one method overlap.
        foreach (IGrouping<string, (TimetableEntry Entry, string Method)> canner in sheet.Timetable
            .Where(entry => sheet.Recipes.Any(recipe => recipe.Title == entry.Recipe && recipe.Canner.Any(step => step.Text == entry.Text)))
            .Select(entry => (entry, sheet.Recipes.First(recipe => recipe.Title == entry.Recipe).Process.Method))
            .GroupBy(pair => pair.Method, StringComparer.Ordinal))
        {
            int free = int.MinValue;
            foreach ((TimetableEntry entry, _) in canner.OrderBy(pair => pair.Entry.Start))
            {
                Assert.True(entry.Start >= free, $"{entry.Recipe}: {entry.Text}");
                free = entry.Start + entry.Minutes;
            }
        }

        Assert.Equal(3, sheet.Recipes.Length);
        Assert.All(sheet.Recipes, recipe => Assert.Contains(sheet.Timetable, entry => entry.Recipe == recipe.Title && entry.Minutes == recipe.Process.Minutes));
    }

    [Theory]
    [InlineData("venison-and-chickpea-stew.md", "no-process")]
    [InlineData("green-tomato-chutney.md", "no-process")]
    public void Of_WithoutAProcessAsWritten_IsSentToAdapt(string name, string problem) =>
        Assert.Equal(problem, PlanChoice.Of(Vet(Sample(name))).Problem);

    [Fact]
    public void Of_WithoutAltitudeOrGauge_GivesNoRow()
    {
        string soup = Sample("vegetable-beef-soup.md");

        Assert.Equal("altitude", PlanChoice.Of(Vetter.Vet(soup, Kitchen.Unknown)).Problem);
        Assert.Equal("gauge", PlanChoice.Of(Vetter.Vet(soup, new(AltitudeFeet: 500))).Problem);
        Assert.Null(PlanChoice.Of(Vetter.Vet(soup, new(AltitudeFeet: 500, Gauge: "dial", Jar: "half-gallon"))).Process);
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: 60 minutes for pints of soup, 75 for quarts, so the jar must be known.
    [Fact]
    public void Of_WithoutAJar_AsksForItAndTakesNone() =>
        Assert.Equal("jar", PlanChoice.Of(Vet(Sample("vegetable-beef-soup.md"))).Problem);

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-20: dial gauges are checked each year.
    [Fact]
    public void Build_ADialGauge_AsksForItsYearlyCheck() =>
        Assert.Contains(_builder.Build([("soup", Vetter.Vet(Sample("vegetable-beef-soup.md"), new(AltitudeFeet: 500, Gauge: "dial", Jar: "pint")))]).Before, step => step.Id == "gauge");

    // Source: University of Wisconsin-Madison Extension, Using an atmospheric steam canner (2015): a full column of steam of 6 to 8 inches
    // through the whole time, hot jars with hot liquid, at most 45 minutes; never opened: National Center for Home Food Preservation.
    [Theory]
    [InlineData("come-up-steam", "6 to 8 inches long")]
    [InlineData("come-up-steam", "212 °F (100 °C) near sea level")]
    [InlineData("start-steam", "full column of steam")]
    [InlineData("hold-steam", "Do not open the canner, and add no water.")]
    [InlineData("hold-steam", "45 minutes and no more")]
    [InlineData("cool-steam", "still air")]
    [InlineData("fall-steam", "start the full")]
    public void Build_ASteamCanner_FollowsItsOwnProcedure(string id, string words)
    {
        RunSheet sheet = Steamed("Fill hot jars with the hot fruit");

        Holds(sheet, id, words, string.Empty);
        Holds(sheet, "water-bw", null, null);
        Holds(sheet, "hot-steam", null, null);
    }

    // Source: the same page: filled with hot liquid, raw or hot pack.
    [Fact]
    public void Build_ARawPackForASteamCanner_AsksForBoilingLiquid() => Holds(Steamed("Fill hot jars with the raw fruit"), "hot-steam", "boiling liquid", "(2015)");

    // Conversions: 15 psi is 103.4 kPa, rounded up; 1 inch is 25.4 mm.
    [Fact]
    public void Build_AMetricKitchen_SeesMetricFiguresBehindThePublishedOnes()
    {
        RunSheet sheet = _builder.Build([("soup", Vetter.Vet(Sample("vegetable-beef-soup.md"), Hall with { Jar = "pint", Metric = true }))]);

        Holds(sheet, "hold", "Hold 15 pounds (104 kPa) for 75 minutes", string.Empty);
        Holds(sheet, "headspace", "Leave 1 inch (25 mm) of headspace", string.Empty);
        Holds(sheet, "water", "2 to 3 inches (5 to 8 cm) of hot water", string.Empty);
        Assert.True(sheet.Metric);
        Assert.DoesNotContain(Sheet(Sample("vegetable-beef-soup.md")).Recipes[0].Canner, step => step.Text.Contains("kPa", StringComparison.Ordinal) || step.Text.Contains('[', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("4 kg green beans, trimmed", "Wash and cut the green beans.")]
    [InlineData("4 kg Green Beans", "Wash and cut the green beans.")]
    [InlineData("4 kg of spinach", "Wash and cut the spinach.")]
    public void Build_AFood_IsCalledAsTheRecipeWritesIt(string line, string words)
    {
        RunSheet sheet = Sheet($"# For winter\n\n- {line}\n- 4 litres water\n\n1. Boil the vegetables in the water for 5 minutes.\n2. Fill the hot jars with them and the boiling water, and process in a pressure canner.\n");

        Holds(sheet, "vegetables", words, string.Empty);
    }

    // Source: USDA Complete Guide to Home Canning, Guide 4, p. 4-8: 14 pounds of snap beans fill 7 quarts; the covering water fills only the gaps.
    [Fact]
    public void Build_APlainVegetable_IsCountedByThePublishedWeight()
    {
        const string recipe = "# For winter\n\n- 14 lb green beans\n- water\n\n1. Boil the green beans in water for 5 minutes.\n2. Fill the hot jars with them and the boiling water, and process in a pressure canner.\n";

        PlannedRecipe planned = _builder.Build([("beans", Vetter.Vet(recipe, Hall with { Jar = "quart" }))]).Recipes[0];

        Assert.InRange(7, planned.Jars.Low, planned.Jars.High);
        Assert.False(Vetter.Vet(recipe.Replace("- water", "- 7 lb carrots\n- water", StringComparison.Ordinal), Hall with { Jar = "quart" }).Measures.JarYield?.ByPublishedWeight ?? false);
    }

    // Source: New Mexico Environment Department, The danger zone: hot food at 140 °F or more; what stood below it for 2 hours is in doubt.
    [Fact]
    public void Build_LowAcidFoodThatWaitsForALaterLoad_IsKeptHot()
    {
        Holds(Sheet(Sample("vegetable-beef-soup.md")), "waiting", "above 140 °F (60 °C)", "The danger zone");
        Holds(Sheet(Sample("peach-halves.md")), "waiting", null, null);
        Holds(Sheet(Beans.Replace("1 kg", "250 g", StringComparison.Ordinal).Replace("4 litres", "1 litre", StringComparison.Ordinal)), "waiting", null, null);
    }

    [Fact]
    public void Build_MoreThanADaysWork_SaysSo()
    {
        (string, VettingReport) soup = ("soup", VetPints(Sample("vegetable-beef-soup.md")));

        Assert.True(_builder.Build([soup, ("beans", VetPints(Beans)), ("broth", VetPints(Sample("clear-beef-broth.md")))]).TooLong);
        Assert.False(Sheet(Beans.Replace("1 kg", "250 g", StringComparison.Ordinal).Replace("4 litres", "1 litre", StringComparison.Ordinal)).TooLong);
    }

    [Fact]
    public void Build_JarsOfSeveralRecipes_AreCountedOnce()
    {
        VettingReport soup = VetPints(Sample("vegetable-beef-soup.md"));
        VettingReport broth = VetPints(Sample("clear-beef-broth.md"));

        RunSheetStep jars = Assert.Single(_builder.Build([("soup", soup), ("broth", broth)]).Before, step => step.Id == "jars");

        Assert.StartsWith($"Look over {soup.Measures.JarYield!.Jars.High + broth.Measures.JarYield!.Jars.High:0} pint jars.", jars.Text, StringComparison.Ordinal);
    }

    private static RunSheet Steamed(string fill) =>
        _builder.Build([("x", Vetter.Vet(Sample("peach-halves.md").Replace("Fill hot jars with the hot fruit", fill, StringComparison.Ordinal), Hall with { Jar = "pint", Canners = ["atmospheric-steam"] }))]);

    private static RunSheet Sheet(string text) => _builder.Build([("recipe", VetPints(text))]);

    private static void Holds(RunSheet sheet, string id, string? words, string? page)
    {
        PlannedRecipe recipe = sheet.Recipes[0];
        RunSheetStep? step = sheet.Before.Concat(recipe.Prepare).Concat(recipe.Fill).Concat(recipe.Canner).Concat(recipe.Trouble).Concat(sheet.After).FirstOrDefault(step => step.Id == id);
        if (words is null)
        {
            Assert.Null(step);
            return;
        }

        Assert.NotNull(step);
        Assert.Contains(words, step.Text, StringComparison.Ordinal);
        Assert.EndsWith(page!, step.Source, StringComparison.Ordinal);
    }
}
