using System.Globalization;
using FsCheck.Xunit;
using ShelfSafe.Reading.Amounts;
using Xunit;

namespace ShelfSafe.Tests.Reading.Amounts;

/// <summary>Numbers of a running text, each read once.</summary>
[Properties(Replay = "(20261127,1)")]
public sealed class NumberWalkTests
{
    [Theory]
    [InlineData("Put 1 tablespoon in each pint, 2 in a quart", "1 2 1")]
    [InlineData("add 2 to 3 cups, then another 1 1/2", "2-3 1.5")]
    [InlineData("450g/1 lb of carrots", "450 1")]
    [InlineData("b1 and c2", "")]
    [InlineData("no number here", "")]
    public void In_RunningText_GivesEachNumberOnce(string text, string expected) => Assert.Equal(expected, Print(NumberWalk.In(text)));

    [Fact]
    public void In_Strict_LeavesOutWhatFollowsAMark() => Assert.Equal("450", Print(NumberWalk.In("450g/1 lb", strict: true)));

    [Fact]
    public void In_Nested_AlsoReadsTheNumbersWithin() => Assert.Equal("5.5 0.5", Print(NumberWalk.In("5 1/2", strict: true, nested: true)));

    [Fact]
    public void In_FromAndEnd_BoundWhereANumberBegins() => Assert.Equal("2", Print(NumberWalk.In("1, 2, 3", from: 2, end: 5)));

    [Fact]
    public void Next_BlanksBehindTheNumber_ArePassedOver()
    {
        NumberWalk walk = NumberWalk.In("take 2  cups");

        Assert.True(walk.MoveNext());
        Assert.Equal("take 2  cups".IndexOf("cups", StringComparison.Ordinal), walk.Current.Next("take 2  cups"));
    }

    [Property]
    public void In_AnyText_StaysInsideAndNeverStepsBack(string? words)
    {
        string text = words ?? string.Empty;
        int last = 0;
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            Assert.InRange(number.Start, last, text.Length - 1);
            Assert.InRange(number.End, number.Start + 1, text.Length);
            last = number.End;
        }
    }

    private static string Print(NumberWalk walk)
    {
        List<string> all = [];
        foreach (PrintedNumber number in walk)
        {
            string low = number.Value.Low.ToString(CultureInfo.InvariantCulture);
            all.Add(number.Value.High > number.Value.Low ? low + "-" + number.Value.High.ToString(CultureInfo.InvariantCulture) : low);
        }

        return string.Join(' ', all);
    }
}
