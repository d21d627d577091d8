using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Plans;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>What a kitchen's canners, gauge and country make of a verdict: lines and notes, and never another outcome.</summary>
public sealed class KitchenAdviceTests
{
    private const string Soup = "vegetable-beef-soup.md";
    private const string Peaches = "peach-halves.md";

    private static readonly RecipeVetter _vetter = BuiltIn.Vetter;
    private static readonly Kitchen _hall = new(AltitudeFeet: 1_345, Gauge: "weighted", Jar: "pint");

    public static TheoryData<string, string> SamplesAndCanners
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string name in SampleFolder.Names)
            {
                foreach (string canner in KitchenTables.Kinds)
                {
                    all.Add(name, canner);
                }
            }

            return all;
        }
    }

    // Only lines change with the canner: no outcome, no finding, and never a shorter time, a lower pressure or a band of its own.
    [Theory]
    [MemberData(nameof(SamplesAndCanners))]
    public void Vet_AnyCanner_LeavesVerdictAndAddsNothingBelowThePublished(string name, string canner)
    {
        VettingReport bare = Vet(name, _hall);
        VettingReport report = Vet(name, _hall with { Canners = [canner] });

        Assert.Equal(bare.Outcome, report.Outcome);
        Assert.Equal(bare.Findings.Select(finding => (finding.Rule, finding.Level, finding.Message)), report.Findings.Select(finding => (finding.Rule, finding.Level, finding.Message)));
        HashSet<(string, int, double?, Interval)> published = [.. bare.Process.Concat(bare.ProcessAfterChanges).Select(Figures)];
        Assert.All(report.Process.Concat(report.ProcessAfterChanges), line => Assert.Contains(Figures(line), published));
    }

    // Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), Guide 1, p. 1-8: low-acid food needs a pressure canner.
    [Theory]
    [InlineData("boiling-water")]
    [InlineData("atmospheric-steam")]
    public void Vet_LowAcidWithoutAPressureCanner_PutsTheFreezerFirst(string canner)
    {
        VettingReport report = Vet(Soup, _hall with { Canners = [canner] });

        Assert.Equal("no-pressure-canner", report.KitchenNotes[0].Id);
        Assert.Contains("freez", report.KitchenNotes[0].Instead, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(report.FreezerFirst);
        Assert.Contains(report.Storage, advice => advice.Where == "freezer");
        Assert.All(report.Process, line => Assert.Equal("pressure", line.Method));
        Assert.Equal("canner", PlanChoice.Of(report).Problem);
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: soups in a pressure canner.
    [Fact]
    public void Vet_LowAcidWithAPressureCanner_HasNoNoteAndNoFreezerPlan()
    {
        VettingReport report = Vet(Soup, _hall with { Canners = ["boiling-water", "pressure"] });

        Assert.Empty(report.KitchenNotes);
        Assert.Empty(report.FreezerFirst);
        Assert.NotEmpty(report.Process);
        Assert.Empty(PlanChoice.Of(report).Problem);
    }

    // Source: National Center for Home Food Preservation, Burning issue: canning in electric multi-cookers.
    [Theory]
    [InlineData(Soup, "electric")]
    [InlineData(Soup, "electric", "boiling-water")]
    [InlineData(Peaches, "electric")]
    public void Vet_WithAnElectricApplianceAlone_YieldsNoTime(string name, params string[] canners)
    {
        VettingReport report = Vet(name, _hall with { Canners = [.. canners] });

        Assert.Empty(report.Process);
        Assert.Equal("electric", report.KitchenNotes[0].Id);
        Assert.NotEmpty(report.FreezerFirst);
        Assert.Null(report.Measures.JarYield);
        Assert.Equal("canner", PlanChoice.Of(report).Problem);
    }

    // Source: National Center for Home Food Preservation, Burning issue: canning in electric multi-cookers.
    [Fact]
    public void Vet_WithAnElectricApplianceBesideACanner_SaysThatTheTimesAreNotForIt()
    {
        VettingReport report = Vet(Soup, _hall with { Canners = ["electric", "pressure"] });

        Assert.NotEmpty(report.Process);
        Assert.Equal("electric-beside", Assert.Single(report.KitchenNotes).Id);
    }

    [Fact]
    public void Vet_WithoutAnAltitude_AsksForItFirst() => Assert.Equal("altitude-missing", Vet(Soup, Kitchen.Unknown).KitchenNotes[0].Id);

    // Source: USDA Complete Guide to Home Canning, AIB 539 (rev. 2015): no dial-gauge figure is printed above 8,000 ft.
    [Fact]
    public void Vet_AboveTheDialTable_SaysThatNoRowReaches()
    {
        VettingReport report = Vet(Soup, new(AltitudeFeet: 8_001, Gauge: "dial") { Canners = ["pressure"], GaugeTested = new(2026, 1, 1) });

        Assert.Empty(report.Process);
        KitchenNote note = Assert.Single(report.KitchenNotes);
        Assert.Equal("beyond-gauge", note.Id);
        Assert.Contains("lists here: weighted", note.Instead, StringComparison.Ordinal);
        Assert.True(report.LacksRow);
        Assert.NotEmpty(report.FreezerFirst);
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 4, vegetable soups: pints and quarts alone; Guide 1, p. 1-13: half-gallon jars are for very acid juices only.
    [Theory]
    [InlineData(1_345.0)]
    [InlineData(null)]
    public void Vet_JarThatNoRowIsFor_NamesTheJarsOfTheTable(double? feet)
    {
        VettingReport report = Vet(Soup, new(feet, Gauge: "weighted", Jar: "half-gallon"));

        Assert.Equal("beyond-jar", report.KitchenNotes[0].Id);
        Assert.Contains("half-gallon", report.KitchenNotes[0].Text, StringComparison.Ordinal);
        Assert.Contains("lists: pint, quart.", report.KitchenNotes[0].Instead, StringComparison.Ordinal);
        Assert.True(report.LacksRow);
        Assert.NotEmpty(report.Storage);
    }

    [Fact]
    public void Vet_RowForThisKitchen_LacksNone() => Assert.False(Vet(Soup, new(1_345, "weighted", "pint")).LacksRow);

    // Source: USDA AIB 539 (2015), dial gauge tables: the last band ends at 8,000 feet.
    [Fact]
    public void Vet_AboveTheDialTable_StillTellsTheCountry() =>
        Assert.Contains("country", Vet(Soup, new(AltitudeFeet: 8_001, Gauge: "dial", Region: "au")).KitchenNotes.Select(note => note.Id));

    // Source: the same; the boiling-water tables print "above 6,000 ft" and no end.
    [Theory]
    [InlineData(8_000, false)]
    [InlineData(8_000.5, true)]
    public void Vet_AboveEightThousandFeet_IsWarnedOfTheOpenBand(double feet, bool expected) =>
        Assert.Equal(expected, Vet(Peaches, new(AltitudeFeet: feet)).KitchenNotes.Any(note => note.Id == "very-high"));

    // Source: USDA Complete Guide, Guide 1, p. 1-20: dial gauges are checked each year; weights need no test.
    [Theory]
    [InlineData("dial", null, "gauge-untested")]
    [InlineData("dial", "2025-11-26", "gauge-due")]
    [InlineData("dial", "2025-11-27", null)]
    [InlineData("dial", "2026-11-27", null)]
    [InlineData("weighted", null, null)]
    public void Vet_TheGauge_IsRemindedOfItsYearlyTest(string gauge, string? tested, string? expected)
    {
        Kitchen kitchen = _hall with { Gauge = gauge, GaugeTested = tested is null ? null : DateOnly.ParseExact(tested, "yyyy-MM-dd", null), AsOf = new(2026, 11, 27) };

        Assert.Equal(expected, Vet(Soup, kitchen).KitchenNotes.SingleOrDefault()?.Id);
        Assert.Empty(Vet(Peaches, kitchen).KitchenNotes);
    }

    // Source: Food Safety Information Council (Australia), Home bottling and canning; National Health Service, Botulism.
    [Theory]
    [InlineData("au", "not to bottle low-acid food", true)]
    [InlineData("uk", "No national times", false)]
    [InlineData("nz", "No national times", false)]
    [InlineData("de", "No national canner times", false)]
    [InlineData("za", "is not known here", false)]
    public void Vet_ACountryWithoutNationalTimes_IsToldForLowAcidFoodAlone(string country, string words, bool freezer)
    {
        VettingReport report = Vet(Soup, _hall with { Region = country });

        KitchenNote note = Assert.Single(report.KitchenNotes);
        Assert.Contains(words, note.Text, StringComparison.Ordinal);
        Assert.NotEmpty(note.Sources);
        Assert.Equal(freezer, !report.FreezerFirst.IsEmpty);
        Assert.Empty(Vet(Peaches, _hall with { Region = country }).KitchenNotes);
    }

    [Theory]
    [InlineData("us")]
    [InlineData("ca")]
    public void Vet_ACountryWithPressureCannerGuidance_HasNoNote(string country) => Assert.Empty(Vet(Soup, _hall with { Region = country }).KitchenNotes);

    // Source: National Center for Home Food Preservation, Using atmospheric steam canners; Willmore and others, Food Protection Trends 35(3) (2015).
    [Theory]
    [InlineData(1_000)]
    [InlineData(6_001)]
    public void Vet_AcidFoodInASteamCanner_TakesTheMinutesOfBoilingWater(int feet)
    {
        VettingReport report = Vet(Peaches, new(AltitudeFeet: feet) { Canners = ["atmospheric-steam"] });

        ProcessLine[] water = [.. report.Process.Where(line => line.Method == "boiling-water")];
        ProcessLine[] steam = [.. report.Process.Where(line => line.Method == "atmospheric-steam")];
        Assert.NotEmpty(steam);
        Assert.Equal(water.Select(line => (line.RowId, line.Minutes)), steam.Select(line => (line.RowId, line.Minutes)));
        Assert.All(steam, line => Assert.Contains("45 minutes", line.Note, StringComparison.Ordinal));
        Assert.Contains("steam", report.KitchenNotes.Select(note => note.Id));
        Assert.Equal("atmospheric-steam", PlanChoice.Of(Vet(Peaches, new(AltitudeFeet: feet, Jar: "quart") { Canners = ["atmospheric-steam"] })).Process!.Method);
    }

    [Fact]
    public void Vet_WithoutASteamCanner_HasNoSteamLine() =>
        Assert.DoesNotContain(Vet(Peaches, _hall with { Canners = ["boiling-water"] }).Process, line => line.Method == "atmospheric-steam");

    // Source: National Center for Home Food Preservation, Burning issue: atmospheric steam canners.
    // Every row of the table: acid or acidified alone, up to 45 minutes with the altitude counted in, up to a quart.
    [Fact]
    public void Lines_OfAllRowsInASteamCanner_StayWithinTheLimits()
    {
        PackTables tables = RulePack.Default.Tables;
        SteamRule steam = new KitchenAdvice(tables, static key => new(key, key, string.Empty, string.Empty)).SteamFor(new() { Canners = ["atmospheric-steam"] })!;
        Dictionary<string, ProcessRow> rows = tables.Processes.ToDictionary(row => row.Id, StringComparer.Ordinal);

        ProcessLine[] lines = [.. ProcessSelector.Lines(tables.Processes, Kitchen.Unknown, steam: steam).Where(line => line.Method == "atmospheric-steam")];

        Assert.Equal((45, "quart"), (steam.Row.MostMinutes, steam.Row.LargestJar));
        Assert.NotEmpty(lines);
        Assert.All(lines, line =>
        {
            ProcessRow row = rows[line.RowId];
            Assert.True(row is { Method: "boiling-water", Acidity: "acid" or "acidified" });
            Assert.InRange(line.Minutes, 1, 45);
            Assert.NotEqual("half-gallon", row.Jar);
            Assert.Null(line.Psi);
        });
    }

    // Source: USDA Complete Guide, Guide 3 (crushed tomatoes): 35 to 50 minutes by altitude, so the highest band is too long for steam.
    [Fact]
    public void Find_TooLongAProcess_HasNoSteamLine()
    {
        ProcessTable table = ProcessTable.Create(RulePack.Default);

        Assert.NotEmpty(table.Find("tomato juice", new(AltitudeFeet: 500, Jar: "pint"), "atmospheric-steam").Lines);
        Assert.Empty(table.Find("tomato juice", new(AltitudeFeet: 6_500, Jar: "pint"), "atmospheric-steam").Lines);
        Assert.Empty(table.Find("green beans", Kitchen.Unknown, "atmospheric-steam").Lines);
    }

    [Fact]
    public void Find_SteamAskedForByName_IsLookedUpInAnyKitchen()
    {
        ProcessAnswer answer = ProcessTable.Create(RulePack.Default).Find("peaches", _hall with { Canners = ["pressure"] }, "atmospheric-steam");

        Assert.NotEmpty(answer.Lines);
        Assert.Empty(answer.Notes);
        Assert.Empty(ProcessTable.Create(RulePack.Default).Find("peaches", _hall with { Canners = ["electric"] }, "atmospheric-steam").Lines);
    }

    [Fact]
    public void Vet_TheKitchensOwnCapacity_CountsTheLoads()
    {
        JarYieldReport table = Vet(Soup, _hall).Measures.JarYield!;
        JarYieldReport own = Vet(Soup, _hall with { Capacity = new(4, System.Collections.Immutable.ImmutableSortedDictionary<string, int>.Empty) }).Measures.JarYield!;

        Assert.Null(table.JarsALoad);
        Assert.Equal(Interval.Exactly(4), own.JarsALoad);
        Assert.Equal(table.Jars, own.Jars);
        Assert.Equal(Math.Ceiling(own.Jars.High / 4), own.Loads.High);
    }

    private static (string RowId, int Minutes, double? Psi, Interval Band) Figures(ProcessLine line) => (line.RowId, line.Minutes, line.Psi, line.AltitudeFeet);

    private static VettingReport Vet(string name, Kitchen kitchen) => _vetter.Vet(File.ReadAllText(SampleFolder.Of(name)), kitchen);
}
