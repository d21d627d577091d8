using FsCheck.Xunit;
using ShelfSafe.Foods;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>Words as they stand, with their places.</summary>
[Properties(Replay = "(20261127,1)")]
public sealed class PlacedWordTests
{
    [Fact]
    public void Of_CapitalsAndACurvedApostrophe_AreSpeltPlainly() =>
        Assert.Equal([new(0, 5, "don't"), new(6, 10, "bake")], PlacedWord.Of("Don\u2019t bake!"));

    [Fact]
    public void Of_AHyphen_PartsWords() => Assert.Equal(["half", "inch", "2", "jars"], PlacedWord.Of("half-inch (2 jars)").Select(word => word.Plain));

    // The words stand where those of the text for foods stand, so that places of both can be compared.
    [Property]
    public void Of_AnyText_HasTheWordsOfTheRunningText(string? words)
    {
        string text = words ?? string.Empty;
        RunningText running = new(text);

        Assert.Equal(Enumerable.Range(0, running.Count).Select(i => (running.Start(i), running.End(i))), PlacedWord.Of(text).Select(word => (word.Start, word.End)));
    }
}
