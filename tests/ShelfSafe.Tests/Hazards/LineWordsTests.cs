using System.Collections.Immutable;
using ShelfSafe.Hazards;
using Xunit;

namespace ShelfSafe.Tests.Hazards;

/// <summary>Words of a card in a line: whole words in any case, or their beginning where a star ends them.</summary>
public sealed class LineWordsTests
{
    [Theory]
    [InlineData("2 cups Smoked paprika", "smoked", true)]
    [InlineData("2 cups unsmoked paprika", "smoked", false)]
    [InlineData("2 cups smokeds, smoked", "smoked", true)]
    [InlineData("2 cups smoke", "smoked", false)]
    [InlineData("2 cups SMOKING paprika", "smok*", true)]
    [InlineData("2 cups besmoking paprika", "smok*", false)]
    [InlineData("ssmok smok", "smok", true)]
    [InlineData("fat-free milk", "fat-free", true)]
    [InlineData("fat free milk", "fat-free", false)]
    [InlineData("", "smoked", false)]
    public void HasAny_PlainAndAccentedLines_AreReadAlike(string line, string word, bool expected)
    {
        ImmutableArray<string> words = ["nothing of this", word];
        Assert.Equal(expected, LineWords.HasAny(line, words));
        Assert.Equal(expected, LineWords.HasAny($"cr\u00E8me, {line}", words)); // a letter beyond ASCII takes the other way
    }

    [Fact]
    public void HasAny_AccentedWord_IsFoundInItsOwnLetters()
    {
        Assert.True(LineWords.HasAny("300 ml CR\u00C8ME fra\u00EEche", ["cr\u00E8me"]));
        Assert.False(LineWords.HasAny("300 ml creme fraiche", ["cr\u00E8me"]));
    }
}
