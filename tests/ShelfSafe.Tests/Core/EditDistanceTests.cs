using ShelfSafe.Core;
using Xunit;

namespace ShelfSafe.Tests.Core;

public sealed class EditDistanceTests
{
    private static readonly string[] _known = ["vet", "table", "rules", "--format", "--fail-on"];

    [Theory]
    [InlineData("vte", "vet")]
    [InlineData("vett", "vet")]
    [InlineData("tabel", "table")]
    [InlineData("tble", "table")]
    [InlineData("--frmat", "--format")]
    [InlineData("--fromat", "--format")]
    [InlineData("xyz", null)]
    [InlineData("", null)]
    [InlineData("v", null)]
    [InlineData("cook", null)]
    public void Nearest_AWord_IsTheKnownWordWithinTwoSlips(string typed, string? expected) => Assert.Equal(expected, EditDistance.Nearest(typed, _known));
}
