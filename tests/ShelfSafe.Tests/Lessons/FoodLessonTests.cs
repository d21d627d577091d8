using System.Globalization;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Lessons;

/// <summary>What the food table says, told as a lesson.</summary>
public class FoodLessonTests
{
    private static readonly LessonBook Book = LessonBook.Create(RulePack.Default);

    [Fact]
    public void Find_EveryFoodAndEveryOtherWord_IsFoundWithItsSource()
    {
        List<string> missing = [];
        foreach (string word in RulePack.Default.Tables.Foods.Select(food => food.Name).Concat(RulePack.Default.Tables.Aliases.Select(alias => alias.Alias)))
        {
            if (Book.Find(word, out _) is not { Sources.Length: > 0 })
            {
                missing.Add(word);
            }
        }

        Assert.Empty(missing);
    }

    [Fact]
    public void Find_EveryFood_ToldNoTimeAndNoPressure()
    {
        foreach (FoodRow food in RulePack.Default.Tables.Foods)
        {
            Lesson lesson = Book.Find(food.Name, out _)!;
            Assert.All(lesson.Sections.Where(section => section.Heading.StartsWith("What the food table", StringComparison.Ordinal)).SelectMany(section => section.Paragraphs), line =>
            {
                Assert.DoesNotContain(" minutes", line, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain(" psi", line, StringComparison.OrdinalIgnoreCase);
            });
        }
    }

    [Fact]
    public void Find_AFoodWithAPublishedRange_SaysItAsTheTableDoes()
    {
        FoodRow tomato = RulePack.Default.Tables.Foods.First(food => food.Id == "tomato");

        string text = Text("tomatoes");

        Assert.Contains(tomato.PhHigh!.Value.ToString("0.0#", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
        Assert.Contains("not reliably at or below pH 4.6", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Worked_AFood_StandsOnItsOwnScale()
    {
        Lesson lesson = Book.Find("fig", out _)!;
        BarFigure scale = (BarFigure)Book.Illustrator.Worked(lesson, ShelfSafe.Core.Kitchen.Unknown).Figures[0];

        Assert.Equal("fig", Assert.Single(scale.Bars, bar => bar.Dark).Name);
    }

    [Fact]
    public void Find_ATopicThatIsAFoodToo_TellsOfBoth() => Assert.Contains("What the food table says of jam", Headings("jam"));

    // A word with two national meanings tells of both; the reader decides which one stands in the kitchen.
    [Fact]
    public void Find_AWordWithTwoMeanings_TellsBoth()
    {
        Lesson lesson = Book.Find("cornflour", out _)!;

        Assert.Equal(2, lesson.Sections.Length);
        Assert.Equal("cornflour", lesson.Title);
    }

    [Fact]
    public void Find_AFoodWithoutProcess_SaysWhyAndLeadsToItsRules()
    {
        Lesson lesson = Book.Find("wheat flour", out _)!;

        Assert.Contains("No home process is published", Text("wheat flour"), StringComparison.Ordinal);
        Assert.Contains("thickener", lesson.See);
    }

    [Fact]
    public void Find_ARuleThatIsAFoodToo_TellsOfBoth() => Assert.Contains("What the food table says of rice", Headings("rice"));

    [Fact]
    public void Find_ARuleThatIsOnlyAnotherWordForAFood_TellsOfTheRule() => Assert.DoesNotContain(Headings("thickener"), heading => heading.Contains("food table", StringComparison.Ordinal));

    private static IEnumerable<string> Headings(string asked) => Book.Find(asked, out _)!.Sections.Select(section => section.Heading);

    private static string Text(string asked) => string.Join(' ', Book.Find(asked, out _)!.Sections.SelectMany(section => section.Paragraphs));
}
