using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Teaching;
using Xunit;

namespace ShelfSafe.Tests.Reports.Teaching;

/// <summary>Pictures: well-formed, nothing fetched, hostile text inert, told in words, legible without colour.</summary>
public class PictureTests
{
    private const int WidestPlot = 78;
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly Illustrator Illustrator = LessonBook.Create(RulePack.Default).Illustrator;

    public static TheoryData<PictureKind> Kinds => [.. Enum.GetValues<PictureKind>().Where(kind => kind != PictureKind.None)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Draw_EveryPicture_IsWellFormedNamedAndFetchesNothing(PictureKind kind)
    {
        foreach (Figure figure in Illustrator.Worked(kind, Kitchen.Unknown).Figures)
        {
            string drawn = SvgPicture.Draw(figure);
            XElement root = Parsed(drawn);

            Assert.Equal("img", root.Attribute("role")!.Value);
            Assert.Equal(figure.Title, root.Attribute("aria-label")!.Value);
            Assert.Empty(root.DescendantsAndSelf().Attributes("id")); // several pictures, and several recipes, share a page
            Assert.Equal(figure.Title, root.Element(Svg + "title")!.Value);
            Assert.Equal(figure.Description, root.Element(Svg + "desc")!.Value);
            Assert.Contains(figure.X.Name, root.Descendants(Svg + "text").Select(text => text.Value));
            Assert.DoesNotContain("href", drawn, StringComparison.Ordinal);
            Assert.DoesNotContain("url(", drawn, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", drawn, StringComparison.Ordinal);
            Assert.DoesNotContain("<!", drawn, StringComparison.Ordinal);
            Assert.Equal(1, drawn.Split("http").Length - 1); // the name space alone
            Assert.InRange(drawn.Length, 500, 30_000);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Draw_EveryPicture_IsBlackWhiteOrGreyAndCurvesDifferInDashes(PictureKind kind)
    {
        foreach (Figure figure in Illustrator.Worked(kind, Kitchen.Unknown).Figures)
        {
            XElement root = Parsed(SvgPicture.Draw(figure));
            string[] inks = [.. root.DescendantsAndSelf().Attributes().Where(at => at.Name.LocalName is "fill" or "stroke").Select(at => at.Value).Distinct()];
            Assert.All(inks, ink => Assert.True(ink is "#000" or "#fff" or "#444" or "none", ink));
            string[] dashes = [.. root.Elements(Svg + "polyline").Select(line => line.Attribute("stroke-dasharray")?.Value ?? string.Empty)];
            Assert.Equal(dashes.Length, dashes.Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(dashes.Length * 2, root.Elements(Svg + "circle").Count()); // a letter on the curve and one in the legend
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void CharacterPlot_EveryPicture_FitsATerminalAndNamesItsAxes(PictureKind kind)
    {
        foreach (Figure figure in Illustrator.Worked(kind, Kitchen.Unknown).Figures)
        {
            IReadOnlyList<string> plot = CharacterPlot.Draw(figure);

            Assert.All(plot, line => Assert.InRange(InertText.Columns(line), 1, WidestPlot));
            Assert.Contains(plot, line => line.Trim() == figure.X.Name);
            Assert.True(figure is not LineFigure lines || plot[0] == lines.Y.Name);
        }
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Draw_AnyCulture_GivesTheSameBytes(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string[] expected = [.. All()];
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(expected, All());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Property(MaxTest = 200, Replay = "(20261125,1)")]
    public Property Draw_AnyText_StaysData() => Prop.ForAll(Gen.Elements('<', '>', '&', '"', '\'', ']', '-', '\u0000', '\u001b', '\u202E', '\uD83C', '\uFFFE', 'a', ' ', '`', '\n').ArrayOf().Select(letters => new string(letters) + "<script>alert(1)</script>").ToArbitrary(), text =>
    {
        Figure[] figures =
        [
            new BarFigure(text, text, new(text, 0, 1, 0.5), [new(text, 0, 1, Dark: true)], 0.5, text, [text]),
            new LineFigure(text, text, new(text, 0, 1, 0.5), new(text, 0, 1, 0.5), [new(text, [0, 1], [0, 1])], [text]),
        ];
        return figures.All(figure =>
            !Parsed(SvgPicture.Draw(figure)).Descendants(Svg + "script").Any()
            && CharacterPlot.Draw(figure).All(line => !line.Any(char.IsControl)));
    });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1e300)]
    public void Draw_ANumberThatIsNone_IsDrawnAtTheEdge(double value)
    {
        LineFigure figure = new("t", "d", new("x", 0, 1, 0.5), new("y", 0, 1, 0.5), [new("l", [0, 1], [0, value])], []);

        Assert.DoesNotContain("NaN", SvgPicture.Draw(figure), StringComparison.Ordinal);
        Assert.NotEmpty(CharacterPlot.Draw(figure));
    }

    [Fact]
    public void Draw_NoBarsAndNoName_IsAnEmptyField()
    {
        BarFigure none = new("t", "d", new("x", 0, 1, 0.5), [], null, string.Empty, []);
        BarFigure nameless = none with { Bars = [new(string.Empty, 0, 1)] };

        Assert.All((Figure[])[none, nameless], figure => Assert.True(Parsed(SvgPicture.Draw(figure)).HasElements && CharacterPlot.Draw(figure).Count > 2));
    }

    private static IEnumerable<string> All() => Enum.GetValues<PictureKind>()
        .SelectMany(kind => Illustrator.Worked(kind, new Kitchen(1_345)).Figures)
        .SelectMany(figure => CharacterPlot.Draw(figure).Append(SvgPicture.Draw(figure)));

    private static XElement Parsed(string svg)
    {
        using XmlReader reader = XmlReader.Create(new StringReader(svg), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return XElement.Load(reader);
    }
}
