using ShelfSafe.Foods;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>A note is worked out once a text, and stays with its own text and its own room.</summary>
public sealed class TextNoteTests
{
    private readonly ReadTexts _texts = new(FoodFixture.Catalogue, LineWordTable.Of(RulePack.Default, []));
    private int _worked;

    [Fact]
    public void Of_TheSameTextTwice_IsWorkedOutOnce()
    {
        TextNote<string?> nothing = _texts.Note<string?>(_ =>
        {
            _worked++;
            return null;
        });
        ReadText text = _texts.Of("Brown the beef.");
        Assert.Null(nothing.Of(text));
        Assert.Null(nothing.Of(text));
        Assert.Equal(1, _worked);
    }

    [Fact]
    public void Of_TwoNotesOfTwoTexts_AreKeptApart()
    {
        TextNote<int> lengths = _texts.Note(text => text.Text.Length);
        TextNote<string> firsts = _texts.Note(text => text.Text[..1]);
        (ReadText beef, ReadText plum) = (_texts.Of("beef"), _texts.Of("a plum"));
        for (int round = 0; round < 2; round++)
        {
            Assert.Equal((4, "b"), (lengths.Of(beef), firsts.Of(beef)));
            Assert.Equal((6, "a"), (lengths.Of(plum), firsts.Of(plum)));
        }
    }
}
