using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Lessons;

public class LessonBookTests
{
    private const string Stew = """
        # Beef stew

        - 1 kg beef, cubed
        - 500 g carrots, sliced
        - 1 l water
        - 40 g flour

        1. Boil the beef, carrots and water for 5 minutes.
        2. Stir in the flour.
        """;

    private static readonly LessonBook Book = LessonBook.Create(RulePack.Default);
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    [Fact]
    public void Find_EveryTopicAndRule_HasTextSourceAndCommandAndNoPromise()
    {
        foreach (string asked in Book.Topics.Select(topic => topic.Id).Concat(Book.Rules))
        {
            Lesson lesson = Book.Find(asked, out _)!;

            Assert.Equal(asked, lesson.Id);
            Assert.NotEmpty(lesson.Sources);
            Assert.NotEmpty(lesson.TryIt);
            Assert.All(lesson.Sections.SelectMany(section => section.Paragraphs), text =>
            {
                Assert.DoesNotContain("safe", text, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain('{', text);
            });
            Assert.NotNull(Book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown));
        }
    }

    [Fact]
    public void Find_AFood_SaysAcidityAndPhAndNoMinutes()
    {
        string text = string.Join(' ', Book.Find("onions", out _)!.Sections.SelectMany(section => section.Paragraphs));

        Assert.Contains("Low-acid", text, StringComparison.Ordinal);
        Assert.Contains("Published pH", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" min", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vennting", "venting")]
    [InlineData("thickner", "thickener")]
    [InlineData("headspaces", "headspace")]
    public void Find_AWordThatDoesNotExist_GivesTheNearest(string asked, string nearest)
    {
        Assert.Null(Book.Find(asked, out IReadOnlyList<string> found));
        Assert.Contains(nearest, found);
    }

    [Fact]
    public void ForRecipe_AThickenedStew_ComparesAndCarriesNoLethality()
    {
        Illustration drawn = Book.Illustrator.ForRecipe(PictureKind.Sets, Vetter.Vet(Stew, Kitchen.Unknown), Kitchen.Unknown);

        LineFigure curves = Assert.IsType<LineFigure>(drawn.Figures[0]);
        Assert.Equal(2, curves.Lines.Length);
        Assert.Contains("degrees from", curves.Y.Name, StringComparison.Ordinal);
        Assert.True(curves.Lines[1].Y.Min() < -10); // far behind the thin example
        Assert.DoesNotContain(curves.Below, line => line.Contains("121", StringComparison.Ordinal));
        Assert.IsType<BarFigure>(drawn.Figures[1]);
        Assert.Contains(drawn.Figures[1].Below, line => line.Contains("chosen for the picture, not measured", StringComparison.Ordinal));
    }

    [Fact]
    public void ForRecipe_AnAmountThatCannotBeWeighed_SaysWhyThereIsNoPicture()
    {
        Illustration drawn = Book.Illustrator.ForRecipe(PictureKind.Sets, Vetter.Vet("# Soup\n\n- beef\n- 1 l water\n\n1. Boil.\n", Kitchen.Unknown), Kitchen.Unknown);

        Assert.Empty(drawn.Figures);
        Assert.StartsWith("No picture", Assert.Single(drawn.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Worked_ThickenedPint_ReachesFarLessThanTheThinOne()
    {
        LineFigure figure = Assert.IsType<LineFigure>(Book.Illustrator.Worked(PictureKind.Sets, Kitchen.Unknown).Figures[1]);

        double[] ends = [.. figure.Lines.Select(line => line.Y[^1])];
        Assert.Equal(100, ends[0], 6);
        Assert.True(ends[2] < ends[0] / 2, string.Join(", ", figure.Below)); // pint
        Assert.True(ends[3] < ends[2] / 1.5, string.Join(", ", figure.Below)); // quart
    }

    [Theory]
    [InlineData("lesson-numbers.csv", "starch-sets")]
    [InlineData("processes.csv", "soup-hot-quart-pc")]
    public void FromFiles_ARowThatAPictureNeedsIsMissing_IsAFaultThatNamesIt(string file, string row)
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files[file] = string.Join('\n', files[file].Split('\n').Where(line => !line.StartsWith(row + ",", StringComparison.Ordinal)));

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));
        Assert.Contains(faults, fault => fault.File == file && fault.ToString().Contains(row, StringComparison.Ordinal));
    }

    [Fact]
    public void FromFiles_ALessonWithoutSource_IsAFaultWithItsPlace()
    {
        Dictionary<string, string> files = RulesFolder.Files();
        files["lessons/venting.md"] = files["lessons/venting.md"].Replace("usda-g1-canners;kstate-vent;computed", string.Empty, StringComparison.Ordinal);

        Assert.Null(RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults));
        Assert.Equal(("lessons/venting.md", 9), (faults[0].File, faults[0].Line));
    }
}
