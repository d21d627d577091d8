using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Tests.Measuring;
using Xunit;

namespace ShelfSafe.Tests.Published;

/// <summary>
/// Household amounts with the weight or volume that published kitchens found; each row names its own source.
/// Source: measure-checks.csv, columns source and url (NIST SP 430, USDA SR28, extension and almanac lists).
/// </summary>
public class MeasureChecks
{
    public static TheoryData<string> Ids
    {
        get
        {
            TheoryData<string> data = [];
            foreach (Dictionary<string, string> row in PublishedTable.Read("measure-checks.csv"))
            {
                data.Add(row["id"]);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Weigh_PublishedAmount_HoldsTheTypicalFigureWithoutGoingFarBeyondTheRange(string id)
    {
        Dictionary<string, string> check = PublishedTable.Read("measure-checks.csv").Single(row => row["id"] == id);
        string phrase = check["phrase"];
        string region = phrase.Contains("UK", StringComparison.Ordinal) ? "uk" : phrase.Contains("Australian", StringComparison.Ordinal) ? "au" : "us";

        Weighing weighing = KitchenScale.Shared.Weigh(Plain(phrase), region);

        Interval? found = check["unit"] == "g" ? weighing.Grams : weighing.CupMillilitres ?? weighing.Millilitres;
        Assert.True(found is not null, $"{phrase}: {weighing.Basis}");
        (double min, double max, double typical) = (Number(check["min"]), Number(check["max"]), Number(check["typical"]));
        string text = string.Create(CultureInfo.InvariantCulture, $"{phrase}: {found.Value.Low:0.##} to {found.Value.High:0.##}, published {min} to {max}, typical {typical} ({weighing.Basis})");
        Assert.True(found.Value.Low <= typical * 1.01 && found.Value.High >= typical * 0.99, text);
        Assert.True(found.Value.Low >= min * 0.4 && found.Value.High <= max * 2, text);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    // The country stands in a note of the phrase; in a recipe it comes from the kitchen.
    private static string Plain(string phrase) =>
        phrase.EndsWith("recipe)", StringComparison.Ordinal) ? phrase[..phrase.IndexOf(" (", StringComparison.Ordinal)] : phrase;
}
