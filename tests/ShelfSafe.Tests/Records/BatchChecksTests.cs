using ShelfSafe.Records;
using Xunit;

namespace ShelfSafe.Tests.Records;

public sealed class BatchChecksTests
{
    [Theory]
    [InlineData(-1_501)]
    [InlineData(20_001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Wrong_AnAltitudeOfNoKitchen_IsRefused(double feet) =>
        Assert.Contains("-1500 to 20000 ft", BatchChecks.Wrong(SampleBatch.Soup with { AltitudeFeet = feet }), StringComparison.Ordinal);

    [Fact]
    public void Wrong_JarsTakenBeforeTheyWerePutUp_IsRefused() =>
        Assert.Equal(
            "jars taken out on 2024-10-02, before they were put up on 2024-10-03",
            BatchChecks.Wrong(SampleBatch.Soup with { Takings = [new(SampleBatch.Day.AddDays(-1), 1)] }));

    [Fact]
    public void Wrong_AnOrdinaryBatch_IsNothing() => Assert.Null(BatchChecks.Wrong(SampleBatch.Soup));
}
