using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using Xunit;

namespace ShelfSafe.Tests.Reading.Amounts;

/// <summary>Numbers as recipes print them.</summary>
[Properties(Replay = "(20261125,1)")]
public sealed class NumberScanTests
{
    [Theory]
    [InlineData("2", 2, 2)]
    [InlineData("1.5", 1.5, 1.5)]
    [InlineData(".5", 0.5, 0.5)]
    [InlineData("1,5", 1.5, 1.5)]
    [InlineData("1,000", 1000, 1000)]
    [InlineData("½", 0.5, 0.5)]
    [InlineData("1½", 1.5, 1.5)]
    [InlineData("1 1/2", 1.5, 1.5)]
    [InlineData("1-1/2", 1.5, 1.5)]
    [InlineData("2 and 1/4", 2.25, 2.25)]
    [InlineData("3/4", 0.75, 0.75)]
    [InlineData("1\u20442", 0.5, 0.5)]
    [InlineData("2-3", 2, 3)]
    [InlineData("2 \u2013 3", 2, 3)]
    [InlineData("2 to 3", 2, 3)]
    [InlineData("2 or 3", 2, 3)]
    [InlineData("½-1", 0.5, 1)]
    [InlineData("up to 4", 0, 4)]
    [InlineData("at most 4", 0, 4)]
    [InlineData("no more than 4", 0, 4)]
    [InlineData("max. 4", 0, 4)]
    [InlineData("at least 2", 2, double.PositiveInfinity)]
    [InlineData("3+", 3, double.PositiveInfinity)]
    [InlineData("half a dozen", 6, 6)]
    [InlineData("a dozen", 12, 12)]
    [InlineData("two dozen", 24, 24)]
    [InlineData("1-2 dozen", 12, 24)]
    [InlineData("a couple", 2, 2)]
    [InlineData("one and a half", 1.5, 1.5)]
    [InlineData("2 and a half", 2.5, 2.5)]
    [InlineData("one-half", 0.5, 0.5)]
    [InlineData("twenty-one", 21, 21)]
    [InlineData("thirty two", 32, 32)]
    [InlineData("three-fourths", 0.75, 0.75)]
    [InlineData("a third", 1 / 3d, 1 / 3d)]
    [InlineData("two thirds", 2 / 3d, 2 / 3d)]
    [InlineData("one and three-quarters", 1.75, 1.75)]
    [InlineData("-3", -3, -3)]
    [InlineData("0", 0, 0)]
    [InlineData("1/0", double.PositiveInfinity, double.PositiveInfinity)]
    [InlineData("0/0", double.PositiveInfinity, double.PositiveInfinity)]
    public void TryRange_ANumberAsPrinted_IsRead(string text, double low, double high)
    {
        Assert.True(NumberScan.TryRange(text, 0, out int end, out Interval value));
        Assert.Equal(text.Length, end);
        Assert.Equal(low, value.Low, 6);
        Assert.Equal(high, value.High, 6);
    }

    [Theory]
    [InlineData("onion")]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("up to you")]
    public void TryRange_NoNumber_IsRefused(string text) => Assert.False(NumberScan.TryRange(text, 0, out _, out _));

    [Property]
    public void TryRange_AnyText_NeverThrowsOrRunsOver(string? text)
    {
        string line = text ?? string.Empty;
        _ = NumberScan.TryRange(line, 0, out int end, out _);
        Assert.InRange(end, 0, line.Length);
    }
}
