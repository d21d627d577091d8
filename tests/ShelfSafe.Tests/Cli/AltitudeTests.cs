using ShelfSafe.Cli;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class AltitudeTests
{
    [Theory]
    [InlineData("1350 ft", 1_350)]
    [InlineData("1,350ft", 1_350)]
    [InlineData("0 m", 0)]
    [InlineData("-400 m", -1_312.3)]
    [InlineData("410 m", 1_345.1)]
    [InlineData("20000 feet", 20_000)]
    [InlineData("1350 FT", 1_350)]
    [InlineData("410.5 M", 1_346.8)]
    [InlineData("0.350 m", 1.1)]
    public void TryRead_ANumberWithItsUnit_GivesFeet(string text, double expected)
    {
        Assert.True(Altitude.TryRead(text, out double feet, out _));
        Assert.Equal(expected, feet, tolerance: 0.1);
    }

    [Theory]
    [InlineData("410")]
    [InlineData("410 km")]
    [InlineData("high")]
    [InlineData("")]
    [InlineData("1,35 m")]
    [InlineData("1.350,5 m")]
    [InlineData("1.350 m")] // thirteen hundred and fifty where the point divides thousands: one metre would give too low a pressure
    [InlineData("-1.200 ft")]
    [InlineData("20001 ft")]
    [InlineData("-500 m")]
    [InlineData("1e3 m")]
    [InlineData("NaN m")]
    public void TryRead_AnythingElse_IsRefusedInOneLine(string text)
    {
        Assert.False(Altitude.TryRead(text, out _, out string wrong));
        Assert.NotEmpty(wrong);
        Assert.DoesNotContain('\n', wrong);
    }
}
