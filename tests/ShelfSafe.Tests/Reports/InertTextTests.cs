using ShelfSafe.Reports;
using Xunit;

namespace ShelfSafe.Tests.Reports;

public sealed class InertTextTests
{
    [Theory]
    [InlineData("plain words", "plain words")]
    [InlineData("a\r\n\tb", "a b")]
    [InlineData("a\u001b[2Jb", "a\uFFFD[2Jb")]
    [InlineData("a\u202Eb", "a\uFFFDb")]
    [InlineData("crème brûlée 鍋", "crème brûlée 鍋")]
    [InlineData("👩\u200D🍳", "👩\u200D🍳")]
    [InlineData("", "")]
    public void Of_Text_KeepsWordsAndTakesThePowerOfMarks(string text, string expected) => Assert.Equal(expected, InertText.Of(text));

    [Theory]
    [InlineData("plain words (of 2) stay!", "plain words (of 2) stay!")]
    [InlineData(" one  too\tmany ", "one too many")]
    [InlineData("", "")]
    [InlineData(" ", "")]
    [InlineData("bell\u0007", "bell\uFFFD")]
    public void Of_WhiteSpaceAndControls_LeavesOneSpaceAndAMark(string text, string expected) => Assert.Equal(expected, InertText.Of(text));

    [Fact]
    public void Of_ALongText_IsCutAtTheSameLengthWhateverItsLetters()
    {
        Assert.Equal(new string('a', 2_000), InertText.Of(new string('a', 2_000)));
        Assert.Equal(new string('a', 2_000) + "…", InertText.Of(new string('a', 2_001)));
        Assert.Equal(new string('ä', 2_000) + "…", InertText.Of(new string('ä', 2_001)));
    }

    [Fact]
    public void Of_HalfASurrogatePair_IsReplaced() => Assert.Equal("a\uFFFD", InertText.Of("a" + '\uD83C'));

    [Fact]
    public void Of_AVeryLongText_IsCut() => Assert.InRange(InertText.Of(new string('x', 100_000)).Length, 1_000, 2_001);

    [Theory]
    [InlineData("abc", 3)]
    [InlineData("鍋", 2)]
    [InlineData("🎃", 2)]
    [InlineData("e\u0301", 1)]
    public void Columns_Text_CountsWhatATerminalShows(string text, int expected) => Assert.Equal(expected, InertText.Columns(text));
}
