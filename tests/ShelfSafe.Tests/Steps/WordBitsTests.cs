using ShelfSafe.Steps;
using Xunit;

namespace ShelfSafe.Tests.Steps;

public class WordBitsTests
{
    [Theory]
    [InlineData(new int[0])]
    [InlineData(new[] { 1 })]
    [InlineData(new[] { 63, 64, 65 })]
    [InlineData(new[] { 700, 700, 1_999 })]
    public void Has_EveryNumber_IsThatOfTheList(int[] words)
    {
        WordBits bits = new(words);

        Assert.All(Enumerable.Range(0, 2_200), number => Assert.Equal(words.Contains(number), bits.Has(number)));
        Assert.Equal(words.Distinct(), bits.Range.Where(bits.Has));
    }
}
