using System.Collections.Immutable;
using ShelfSafe.Core;
using Xunit;

namespace ShelfSafe.Tests.Core;

public sealed class CannerCapacityTests
{
    private static readonly CannerCapacity _own = new(null, ImmutableSortedDictionary<string, int>.Empty.Add("pint", 16).Add("quart", 5));

    // Never more jars than fit: a larger jar's number holds for a smaller one, and never the reverse.
    [Theory]
    [InlineData("half-pint", 16, 16)]
    [InlineData("pint", 16, 16)]
    [InlineData("pint-and-a-half", 5, 5)]
    [InlineData("quart", 5, 5)]
    [InlineData("half-gallon", 3, 5)]
    public void Of_EachSize_IsTheNextLargerTold(string jar, int low, int high) => Assert.Equal(new Interval(low, high), _own.Of(jar, new(3, 9)));

    [Fact]
    public void Of_ANumberForAnyJar_HoldsForAll() => Assert.Equal(Interval.Exactly(9), new CannerCapacity(9, ImmutableSortedDictionary<string, int>.Empty).Of("quart", new(7, 7)));
}
