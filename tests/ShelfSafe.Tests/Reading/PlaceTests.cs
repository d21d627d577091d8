using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Reading;
using Xunit;
using static ShelfSafe.Tests.Reading.ReadingCases;

namespace ShelfSafe.Tests.Reading;

[Properties(Replay = "(20261125,1)")]
public sealed class PlaceTests
{
    private const string Sample = "# Stew\n\n> Old note.\n\n## Ingredients\n\n- **2 kg** venison\n\t- 1 [onion](/onion)\n\n| 2 | beets |\n|---|---|\n| 3 | leeks |\n\n## Method\n\nBoil it\nlong. Add &frac12; cup\\* salt.\n";

    private static readonly string[] _pieces =
    [
        "# Jam\n", "## Ingredients\n", "## Method\n", "- 2 kg plums\n", "  - salt\n", "1. Boil it.\n", "| 1 | egg |\n", "|---|---|\n", "\n", "> note\n",
        "**Sauce**\n", "For serving:\n", "<ul><li>1 egg</li>\n", "&amp; ", "\\* ", "[a](b) ", "[^1] ", "[^1]: fat\n", "\t", "\r", "\r\n", "\0", "\uFEFF", "---\n",
        "title: x\n", "```\n", "½ cup ", "Add 2 kg of plums. ", "\u00A0", "~~", "`", "<", "![x](y)", "\uD83C", "• 1 egg\n", "- [ ] 1 egg\n",
    ];

    [Theory]
    [InlineData("- **2 kg** plums\n", 1, 5)]
    [InlineData("\uFEFF- 2 kg plums\n", 1, 3)]
    [InlineData("---\ntitle: x\n---\n- 2 kg plums\n", 4, 3)]
    [InlineData("\uFEFF---\r\ntitle: x\r\n---\r\n\r\n- 2 kg plums\r\n", 5, 3)]
    [InlineData("# x\r\r- 2 kg plums\r", 3, 3)]
    [InlineData("# x\n\n| 2 kg | plums |\n|---|---|\n", 3, 3)]
    [InlineData("# x\n\n> - 2 kg plums\n", 3, 5)]
    [InlineData("# x\n\n-\t2 kg plums\n", 3, 3)]
    public void Read_Ingredient_KnowsItsLineAndColumn(string text, int line, int column)
    {
        IngredientLine found = Assert.Single(Read(text).Parts[0].Ingredients);
        Assert.Equal("2 kg plums", found.Text.Text);
        Assert.Equal((line, column), new LineTable(text).At(found.Text.Span.Start));
    }

    [Fact]
    public void Read_EntityEscapeAndLink_MapToTheirOwnUnits()
    {
        const string text = "- 2 &amp; 3 \\* [ripe](/r) plums\n";
        MappedText line = Assert.Single(Read(text).Parts[0].Ingredients).Text;
        Assert.Equal("2 & 3 * ripe plums", line.Text);
        Assert.Equal("&amp;", Source(text, line.Map(2, 3)));
        Assert.Equal("*", Source(text, line.Map(6, 7)));
        Assert.Equal("ripe", Source(text, line.Map(8, 12)));
        Assert.Equal("plums", Source(text, line.Map(13, 18)));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Read_OtherLineEnds_ChangeOnlyPlaces(string end)
    {
        Recipe before = Read(Sample);
        Recipe after = Read(Sample.Replace("\n", end, StringComparison.Ordinal));
        Assert.Equal(Shape(before), Shape(after));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Read_OtherCulture_ChangesNothing(string culture)
    {
        const string text = "# STEW\n\n## INGREDIENTS\n\n- 2 KG VENISON\n\n## DIRECTIONS\n\nSIMMER IT.\n";
        string expected = Shape(Read(text));
        CultureInfo kept = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(expected, Shape(Read(text)));
        }
        finally
        {
            CultureInfo.CurrentCulture = kept;
        }
    }

    [Fact]
    public void Read_NoBreakSpacesAndSmartQuotes_AreKept() =>
        Assert.Equal(["2\u00A0kg “sweet” plums"], Lines("## You’ll need\n\n- 2\u00A0kg “sweet” plums\u00A0\n"));

    [Fact]
    public void Read_PlainText_TakesLinesAsLines()
    {
        const string text = "Plum jam\nIngredients\n2 kg plums\n500 g sugar\nMethod\nBoil it.\n";
        Recipe recipe = Read(text, plainText: true);
        Assert.Equal("Plum jam", recipe.Title);
        Assert.Equal(["2 kg plums", "500 g sugar"], recipe.Parts[0].Ingredients.Select(line => line.Text.Text));
    }

    [Property(MaxTest = 200)]
    public Property Read_AnyPieces_StayInsideTheText() => Prop.ForAll(
        Gen.Elements(_pieces).ListOf().Select(pieces => string.Concat(pieces)).ToArbitrary(), StaysInside);

    [Property(MaxTest = 200)]
    public void Read_AnyString_StaysInsideTheText(string? text) => Assert.True(StaysInside(text ?? string.Empty));

    [Property(MaxTest = 2000)]
    public Property Read_LineEndsSwapped_ChangesOnlyPlaces() => Prop.ForAll(
        Gen.Elements(_pieces.Where(piece => !piece.Contains('\r', StringComparison.Ordinal)).ToArray()).ListOf().Select(pieces => string.Concat(pieces)).ToArbitrary(),
        text => Shape(Read(text)) == Shape(Read(text.Replace("\n", "\r\n", StringComparison.Ordinal))));

    private static bool StaysInside(string text)
    {
        foreach (bool plain in new[] { false, true })
        {
            foreach (SourceSpan span in Spans(Read(text, plain)))
            {
                if (span.Start < 0 || span.End < span.Start || span.End > text.Length)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static string Source(string text, SourceSpan span) => text[span.Start..span.End];

    private static string Shape(Recipe recipe) => string.Join('\n', recipe.Parts.SelectMany(part =>
        part.Ingredients.Select(line => $"{part.Name}|{line.Group}|{line.AtServing}|{line.Text.Text}")
            .Concat(part.Steps.Select(step => $"{part.Name}|{step.Heading}|{step.Role}|{step.Text.Text}"))))
        + string.Join(',', recipe.Problems.Select(problem => problem.Kind)) + recipe.Title + recipe.Yield;
}
