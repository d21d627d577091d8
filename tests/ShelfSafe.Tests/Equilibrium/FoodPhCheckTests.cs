using System.Globalization;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Published;
using Xunit;

namespace ShelfSafe.Tests.Equilibrium;

/// <summary>pH of foods as read in nine published lists (ph-checks.csv, each row names its own) against the food table.</summary>
public class FoodPhCheckTests
{
    private static readonly Dictionary<string, FoodRow> Foods = RulePack.Default.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);

    public static TheoryData<string, string> Rows => [.. PublishedTable.Read("ph-checks.csv").Select(row => (row["food"], row["source"]))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Range_OfEachList_OverlapsOursAndNeverContradictsAcid(string food, string source)
    {
        Dictionary<string, string> check = PublishedTable.Read("ph-checks.csv").Single(row => row["food"] == food && row["source"] == source);
        FoodRow row = Foods[check["food_id"]];
        double low = double.Parse(check["ph_low"], CultureInfo.InvariantCulture);
        double high = double.Parse(check["ph_high"], CultureInfo.InvariantCulture);

        Assert.True((row.PhLow ?? 0) <= high && (row.PhHigh ?? 14) >= low, $"{food}: {low} to {high}, ours {row.PhLow} to {row.PhHigh}; {check["url"]}");

        // 21 CFR 114.3: the line between acid and low-acid lies at pH 4.6, and 4.6 itself is acid.
        Assert.False(row.Acidity == FoodAcidity.Acid && high > 4.6, $"{food} reaches {high} in {source}");
    }
}
