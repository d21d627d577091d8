using System.Globalization;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Pack;

public class PackWordsTests
{
    [Fact]
    public void TryGet_AskedForOften_AnswersAsBefore()
    {
        string[] words = [.. Enumerable.Range(0, 300).Select(static number => "Wort " + number.ToString(CultureInfo.InvariantCulture)), "sauté", string.Empty];
        PackWords table = Table(words);

        for (int round = 0; round < 20; round++)
        {
            for (int i = 0; i < words.Length; i++)
            {
                Assert.True(table.TryGet(words[i], out int number));
                Assert.Equal(7 * i, number);
                Assert.False(table.Has(words[i] + "x"));
            }
        }

        Assert.Equal(words, table.All);
    }

    [Fact]
    public void Has_NoWords_FindsNothing()
    {
        PackWords none = Table([]);

        Assert.False(none.Has(string.Empty));
        Assert.Equal(0, none.Count);
    }

    private static PackWords Table(string[] words)
    {
        PackImage image = PackImage.Of(writer =>
        {
            ImageSection section = new();
            ImageMap.Write(writer, section, [.. words.Select(static (word, i) => (word, 7 * i))]);
            writer.Add("words", section);
        });
        return new(image, image.Section("words"));
    }
}
