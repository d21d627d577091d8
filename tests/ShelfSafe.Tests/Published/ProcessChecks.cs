using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Published;

/// <summary>
/// Figures read in other publications than the one the process table was typed from; each row names its own.
/// Source: process-checks.csv, columns source and url (Clemson HGIC, Michigan State University Extension, PNW 421 and others).
/// </summary>
public class ProcessChecks
{
    public static TheoryData<string> Numbers
    {
        get
        {
            TheoryData<string> data = [];
            foreach (Dictionary<string, string> row in PublishedTable.Read("process-checks.csv"))
            {
                data.Add(row["n"]);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Lines_PublishedAltitudeAndGauge_GiveThePrintedFigures(string number)
    {
        Dictionary<string, string> check = PublishedTable.Read("process-checks.csv").Single(row => row["n"] == number);
        ProcessRow row = RulePack.Default.Tables.Processes.Single(process => process.Id == check["process_id"]);
        string? gauge = check["gauge"] is "dial" or "weighted" ? check["gauge"] : null;
        Kitchen kitchen = new(double.Parse(check["altitude_ft"], CultureInfo.InvariantCulture), gauge);

        if (check["expected_psi"] is "none-published" or "not-recommended")
        {
            Assert.DoesNotContain(ProcessSelector.Lines([row], kitchen), line => line.Gauge == gauge);
            return;
        }

        ProcessLine line = Assert.Single(ProcessSelector.Lines([row], kitchen), line => line.Gauge == gauge);

        Assert.Equal(check["expected_minutes"], line.Minutes.ToString(CultureInfo.InvariantCulture));
        Assert.Equal(check["expected_psi"] is "" or "boiling-water" ? null : double.Parse(check["expected_psi"], CultureInfo.InvariantCulture), line.Psi);
    }

    // Source: USDA AIB 539 (rev. 2015), tables of Guides 2 to 7: a figure stands in each printed band and nowhere else.
    [Fact]
    public void Lines_EveryRowThroughEveryBand_FollowTheTable()
    {
        int seen = 0;
        foreach (ProcessRow row in RulePack.Default.Tables.Processes)
        {
            foreach ((string? gauge, IReadOnlyList<AltitudeBand> bands) in new (string?, IReadOnlyList<AltitudeBand>)[] { (null, row.BoilingWater), ("dial", row.Dial), ("weighted", row.Weighted) })
            {
                foreach (AltitudeBand band in bands)
                {
                    foreach (double feet in new[] { band.FromFeet, double.IsFinite(band.ToFeet) ? band.ToFeet : band.FromFeet + 3_000 })
                    {
                        ProcessLine[] lines = [.. ProcessSelector.Lines([row], new Kitchen(feet, gauge)).Where(line => line.Gauge == gauge)];
                        Assert.Equal(row.Pack == "either" ? ["hot", "raw"] : [row.Pack], lines.Select(line => line.Pack));
                        Assert.All(lines, line => Assert.Equal(band.Figure, gauge is null ? line.Minutes : line.Psi));
                        seen++;
                    }
                }

                double top = bands.Count == 0 ? 0 : bands[^1].ToFeet;
                if (bands.Count > 0 && double.IsFinite(top))
                {
                    Assert.DoesNotContain(ProcessSelector.Lines([row], new Kitchen(top + 1, gauge)), line => line.Gauge == gauge);
                }
            }
        }

        Assert.True(seen > 1_000);
    }

    // Source: 21 CFR 114.3(b), (d): the line between acid and low-acid food is pH 4.6, and 4.6 itself counts as acid.
    [Fact]
    public void Foods_CountedAcid_EndAtOrBelowTheStatutoryLimit()
    {
        foreach (FoodRow food in RulePack.Default.Tables.Foods)
        {
            Assert.False(food is { Acidity: FoodAcidity.Acid, PhHigh: > 4.6 }, food.Id);
        }
    }

    [Fact]
    public void Foods_NotAcid_EndAboveTheLimitOrAreUnknown()
    {
        foreach (FoodRow food in RulePack.Default.Tables.Foods)
        {
            Assert.False(food is { Acidity: FoodAcidity.Acid, PhHigh: null } && food.Group is not ("acid" or "fruit"), food.Id);
        }
    }
}
