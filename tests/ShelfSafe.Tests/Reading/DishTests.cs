using ShelfSafe.Reading;
using Xunit;
using static ShelfSafe.Tests.Reading.ReadingCases;

namespace ShelfSafe.Tests.Reading;

public sealed class DishTests
{
    [Fact]
    public void Read_RepeatedTitles_ArePartsWithTheirOwnLines()
    {
        Recipe recipe = Read("# Plum jam\n\n## Ingredients\n\n- 2 kg plums\n\n## Method\n\nBoil.\n\n# Bean stew\n\n## Ingredients\n\n- 1 kg beans\n\n## Method\n\nSimmer.\n");
        Assert.Equal(["Plum jam", "Bean stew"], recipe.Parts.Select(part => part.Name));
        Assert.Equal(["2 kg plums", "1 kg beans"], recipe.Parts.Select(part => Assert.Single(part.Ingredients).Text.Text));
        Assert.Equal(recipe.Parts[0].Span.End, recipe.Parts[1].Span.Start);
    }

    [Fact]
    public void Read_DishesUnderOneTitle_AreParts() =>
        Assert.Equal(2, Read("# Pantry\n\n## Plum jam\n\n- 2 kg plums\n\n1. Boil it.\n\n## Bean stew\n\n- 1 kg beans\n\n1. Simmer it.\n").Parts.Length);

    [Fact]
    public void Read_DishThatNamesTheOther_IsOneBatch() =>
        Assert.Single(Read("# Supper\n\n## Venison stew\n\n- 1 kg venison\n\n1. Add the dumplings.\n\n## Herb dumplings\n\n- 200 g flour\n\n1. Knead it.\n").Parts);

    [Fact]
    public void Read_GroupsWithSharedDirections_AreOneBatch() =>
        Assert.Single(Read("# Supper\n\n## Crisp pork\n\n- 1 kg pork\n\n## Red cabbage\n\n- 1 kg cabbage\n\n## Method\n\nCook both.\n").Parts);

    [Fact]
    public void Read_VariationWithItsOwnList_IsAPart()
    {
        Recipe recipe = Read("# Bean pot\n\n- 1 kg beans\n- 2 onions\n\nSimmer.\n\n## Variation: with barley\n\n- 1 kg beans\n- 200 g barley\n- 2 onions\n\nSimmer longer.\n");
        Assert.Equal(2, recipe.Parts.Length);
        Assert.Equal(3, recipe.Parts[1].Ingredients.Length);
    }

    [Theory]
    [InlineData("---\ntitle: \"Plum jam\"\nservings: 8\n---\n\n- 2 kg plums\n", "Plum jam", "servings: 8")]
    [InlineData("# Plum jam\n\nServes 8\n\n- 2 kg plums\n", "Plum jam", "Serves 8")]
    [InlineData("# Plum jam\n\n*Makes 6 pints*\n\n- 2 kg plums\n", "Plum jam", "Makes 6 pints")]
    [InlineData("# Plum jam\n\n- 🍽️ Servings: 4\n\n## Ingredients\n\n- 2 kg plums\n", "Plum jam", "Servings: 4")]
    [InlineData("Plum jam\n========\n\n**Yield:** 5 jars\n\n- 2 kg plums\n", "Plum jam", null)]
    [InlineData("## Ingredients\n\n- 2 kg plums\n", null, null)]
    public void Read_TitleAndYield_AreKeptAsPrinted(string text, string? title, string? yield)
    {
        Recipe recipe = Read(text);
        Assert.Equal(title, recipe.Title);
        if (yield is not null)
        {
            Assert.Equal(yield, recipe.Yield);
        }
    }

    [Fact]
    public void Read_FrontMatterList_IsRead()
    {
        Recipe recipe = Read("---\ntitle: Jam\ningredients:\n  - 2 kg plums\n  - 500 g sugar\n---\n\nBoil 20 minutes.\n");
        Assert.Equal(["2 kg plums", "500 g sugar"], recipe.Parts[0].Ingredients.Select(line => line.Text.Text));
        Assert.Equal(StepRole.Step, Assert.Single(recipe.Parts[0].Steps).Role);
    }
}
