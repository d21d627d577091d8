using System.Globalization;
using System.Text.RegularExpressions;
using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Changes;

/// <summary>The same recipe in other clothes is the same; each single dangerous change is found, and nothing else.</summary>
public class RecipeComparerTests
{
    private const string Soup = """
        # Bean and carrot soup

        ## Ingredients

        - 4 cups sliced carrots
        - 2 cups cooked kidney beans
        - 3 litres vegetable broth
        - 1 tsp salt
        - 1 tsp dried thyme

        ## Steps

        1. Boil the carrots and the kidney beans in the vegetable broth for 10 minutes.
        2. Season with the salt and the dried thyme.
        3. Fill hot jars half full with the drained pieces and top up with the broth.
        """;

    private const string Salsa = """
        # Tomato salsa

        ## Ingredients

        - 7 lb tomatoes, chopped
        - 2 cups chopped onions
        - 1 cup chopped bell peppers
        - 2 cups cider vinegar (5 percent)
        - 1 tsp salt

        ## Steps

        1. Simmer the tomatoes, onions, bell peppers, vinegar and salt for 20 minutes.
        2. Fill hot pint jars.
        """;

    // A cup is no exact part of a litre: nobody says whose cup it is (US 237 ml, metric 250 ml).
    [Theory]
    [InlineData("3 litres vegetable broth", "12 cups vegetable broth")]
    [InlineData("3 litres vegetable broth", "12 3/4 cups vegetable broth")]
    public void Compare_LitresAndCups_AreComparedAsRanges(string before, string after) =>
        Assert.Empty(Compare(Soup, Soup.Replace(before, after, StringComparison.Ordinal)).Changes);

    [Fact]
    public void Compare_FarFewerCupsThanLitres_IsStillACut() =>
        Assert.Equal("cut", Assert.Single(Compare(Soup, Soup.Replace("3 litres vegetable broth", "8 cups vegetable broth", StringComparison.Ordinal)).Changes).Kind);

    // Two onions weigh anything from small to large: a change could hide, so it is told with its bounds, and is none.
    [Fact]
    public void Compare_AChangeThatMayHide_IsToldWithItsBounds()
    {
        RecipeComparison comparison = Compare(Soup, Soup.Replace("4 cups sliced carrots", "500 g sliced carrots", StringComparison.Ordinal));

        Assert.True(comparison.IsSame);
        AmountDoubt doubt = Assert.Single(comparison.Unsure);
        Assert.Equal(("4 cups sliced carrots", "500 g sliced carrots"), (doubt.Before, doubt.After));
        Assert.InRange(1, doubt.Factor.Low, doubt.Factor.High);
        Assert.Empty(Compare(Soup, Soup).Unsure);
    }

    public static TheoryData<string> Samples => [.. SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Compare_ASampleWithItselfInOtherClothes_FindsNothing(string name)
    {
        string text = Sample(name).ReplaceLineEndings("\n");

        Assert.True(Compare(text, text).IsSame);
        Assert.True(Compare(text, text.ReplaceLineEndings("\r\n")).IsSame);
        Assert.True(Compare(text, Regex.Replace(text, "^- (?!\\[)", "* ", RegexOptions.Multiline)).IsSame);
        Assert.True(Compare(text, Reordered(text)).IsSame);
        Assert.True(Compare(text, Weighed(text)).IsSame);
    }

    [Theory]
    [InlineData(Soup)]
    [InlineData(Salsa)]
    public void Compare_CupsWeighedOut_FindsNothing(string recipe)
    {
        string weighed = Weighed(recipe);

        Assert.NotEqual(recipe, weighed);
        RecipeComparison comparison = Compare(recipe, weighed);
        Assert.Empty(comparison.Changes);
        Assert.True(comparison.IsSame);
    }

    // Source: University of Wisconsin-Madison Extension, Substitutions when canning (2020); USDA Guide 4, p. 4-18 to 4-19.
    [Theory]
    [InlineData("4 cups sliced carrots", "6 cups sliced carrots", "raised", "low-acid-tighter")]
    [InlineData("3 litres vegetable broth", "1.5 litres vegetable broth", "cut", "liquid-less")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 3 tbsp flour", "added", "thickener")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 4 tbsp olive oil", "added", "fat")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 200 g macaroni", "added", "pasta")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 200 g rice", "added", "pasta")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 250 ml cream", "added", "dairy")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 500 g beef, cubed", "added", "meat")]
    [InlineData("cooked kidney beans", "cooked black beans", "swapped", "low-acid-swap")]
    public void Compare_OneDangerousChangeOfASoup_FindsExactlyThat(string words, string now, string kind, string row) =>
        AssertOneChange(Soup, words, now, kind, row);

    // Source: USDA Guide 3, p. 3-19 to 3-26 (salsas: amounts of acid, tomatoes, peppers and onions are fixed).
    [Theory]
    [InlineData("2 cups cider vinegar", "1 cup cider vinegar", "cut", "acid-less")]
    [InlineData("(5 percent)", "(4 percent)", "label", "label")]
    [InlineData("cider vinegar (5 percent)", "cider vinegar", "label", "label")]
    [InlineData("- 2 cups cider vinegar (5 percent)\n", "", "left-out", "acid-less")]
    [InlineData("cider vinegar (5 percent)", "white vinegar (5 percent)", "swapped", "acid-less")]
    [InlineData("7 lb tomatoes", "4 lb tomatoes", "cut", "tomato-less")]
    [InlineData("2 cups chopped onions", "3 cups chopped onions", "raised", "low-acid-more")]
    public void Compare_OneDangerousChangeOfASalsa_FindsExactlyThat(string words, string now, string kind, string row) =>
        AssertOneChange(Salsa, words, now, kind, row);

    [Fact]
    public void Compare_HalfAsMuchMore_SaysByHowMuch()
    {
        IngredientChange change = Assert.Single(Compare(Soup, Soup.Replace("4 cups", "6 cups", StringComparison.Ordinal)).Changes);

        Assert.Equal(new Interval(1.5, 1.5), change.Factor);
    }

    // Source: University of Wisconsin-Madison Extension, Substitutions when canning (2020): dry seasonings may vary.
    [Fact]
    public void Compare_OneDryHerbForAnother_IsHarmless()
    {
        RecipeComparison comparison = Compare(Soup, Soup.Replace("dried thyme", "dried oregano", StringComparison.Ordinal));

        Assert.Equal(("swapped", false), (Assert.Single(comparison.Changes).Kind, comparison.Matters));
    }

    [Fact]
    public void Compare_AFoodKeptForServing_IsNamedWhenItGoesIntoTheJar()
    {
        string serving = Soup + "\n\n## To serve\n\n- 100 g cream\n";
        string inside = Soup.Replace("- 1 tsp salt", "- 1 tsp salt\n- 100 g cream", StringComparison.Ordinal);

        Assert.Contains(Compare(serving, inside).Changes, change => change.Matters);
    }

    [Fact]
    public void Compare_AThickeningStepAlone_IsANewWarning()
    {
        RecipeComparison comparison = Compare(Soup, Soup.Replace("2. Season", "2. Blend until smooth. Season", StringComparison.Ordinal));

        Assert.Empty(comparison.Changes);
        Assert.Contains(comparison.NewFindings, finding => finding.Rule == "dense");
        Assert.True(comparison.Matters);
    }

    // Runs of list lines that are all ingredients are turned upside down.
    private static string Reordered(string text)
    {
        HashSet<int> ingredients = [.. Vet(text).Ingredients.Select(entry => entry.Line)];
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            int end = i;
            while (end < lines.Length && ingredients.Contains(end + 1) && lines[end].StartsWith("- ", StringComparison.Ordinal))
            {
                end++;
            }

            Array.Reverse(lines, i, end - i);
            i = Math.Max(i, end - 1);
        }

        return string.Join('\n', lines);
    }

    // Cups become the grams that the measures table has for them, as a cook with a scale would write.
    private static string Weighed(string text)
    {
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        foreach (IngredientReport entry in Vet(text).Ingredients)
        {
            if (entry is { Amount.Unit: "cup", Measures.Length: 1, Package: null, Grams: { IsBounded: true } grams })
            {
                string middle = ((grams.Low + grams.High) / 2).ToString("0", CultureInfo.InvariantCulture);
                lines[entry.Line - 1] = Regex.Replace(lines[entry.Line - 1], "[0-9][0-9 /½¼¾]*cups?", middle + " g");
            }
        }

        return string.Join('\n', lines);
    }

    private static void AssertOneChange(string recipe, string words, string now, string kind, string row)
    {
        string before = recipe.ReplaceLineEndings("\n");

        RecipeComparison comparison = Compare(before, before.Replace(words, now, StringComparison.Ordinal));

        IngredientChange change = Assert.Single(comparison.Changes);
        Assert.Equal((kind, row, true), (change.Kind, change.RowId, change.Matters));
        Assert.NotEmpty(change.Sources);
        Assert.True(comparison.Matters);
    }

    // The amount of the first line is not told, so nobody knows how much more it is; but it is more.
    [Fact]
    public void Compare_MoreOfAFoodWithoutAnAmount_IsRaised()
    {
        string before = Soup.Replace("- 1 tsp salt\n", "- 1 tsp salt\n- wheat flour\n", StringComparison.Ordinal);

        IngredientChange change = Assert.Single(Compare(before, before.Replace("- wheat flour\n", "- wheat flour\n- 4 tbsp wheat flour\n", StringComparison.Ordinal)).Changes);

        Assert.Equal(("raised", true), (change.Kind, change.Matters));
    }

    [Fact]
    public void Compare_ALineBesideALineOfItsFood_IsRaisedThoughTheRangesMeet() =>
        Assert.Equal("raised", Assert.Single(Compare(Soup, Soup.Replace("- 1 tsp salt\n", "- 1 tsp salt\n- 150 g sliced carrots\n", StringComparison.Ordinal)).Changes).Kind);

    // "1-½" is the mixed number that "1-1/2" is.
    [Theory]
    [InlineData("1-1/2 cups cooked kidney beans", "1-½ cups cooked kidney beans")]
    [InlineData("1 1/2 cups cooked kidney beans", "1-½ cups cooked kidney beans")]
    public void Compare_OneNumberInTwoSpellings_FindsNothing(string before, string after) =>
        Assert.True(Compare(Soup.Replace("2 cups cooked kidney beans", before, StringComparison.Ordinal), Soup.Replace("2 cups cooked kidney beans", after, StringComparison.Ordinal)).IsSame);

    // More broth makes the oil a smaller share; the warning about the oil is milder then, and not gone.
    [Fact]
    public void Compare_AWarningThatIsOnlyMilder_IsNotCalledGone()
    {
        string before = Soup.Replace("- 1 tsp salt\n", "- 1 tsp salt\n- 60 ml olive oil\n", StringComparison.Ordinal).Replace("3 litres", "2 litres", StringComparison.Ordinal);
        RecipeComparison thinner = Compare(before, before.Replace("2 litres", "12 litres", StringComparison.Ordinal));
        RecipeComparison leaner = Compare(before, before.Replace("60 ml olive oil", "5 ml olive oil", StringComparison.Ordinal));

        Assert.DoesNotContain(thinner.GoneFindings, finding => finding.Rule == "fat");
        Assert.Contains(leaner.GoneFindings, finding => finding.Rule == "fat");
    }

    // Coriander among dry spices is the seed, beside fresh food the leaf: the words are the same, and no food was swapped.
    [Fact]
    public void Compare_TheSameLineReadOtherwiseBesideNewFood_IsNoChange()
    {
        const string Rub = "# Spice rub\n\n- 1 tbsp coriander\n- 1 tbsp cumin\n- 1 tsp cloves\n\n1. Mix everything and keep it dry.\n";

        IngredientChange change = Assert.Single(Compare(Rub, Rub.Replace("- 1 tsp cloves\n", "- 1 tsp cloves\n- 1 cup heavy cream\n", StringComparison.Ordinal)).Changes);

        Assert.Equal("1 cup heavy cream", change.After);
    }
}
