using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Teaching;
using Xunit;

namespace ShelfSafe.Tests.Reports.Teaching;

/// <summary>Lessons in every form: each says that it teaches, is inert, and is the same everywhere.</summary>
public class LessonReportTests
{
    private static readonly LessonBook Book = LessonBook.Create(RulePack.Default);

    public static TheoryData<string> Formats => [.. LessonReport.Known];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Page_EveryTopicAndRule_SaysFirstThatItTeaches(string format)
    {
        LessonReport report = LessonReport.Create(format, new TextStyle());
        foreach (string id in Book.Topics.Select(topic => topic.Id).Concat(Book.Rules).Append("onion"))
        {
            Lesson lesson = Book.Find(id, out _)!;
            string page = string.Join(' ', report.Page(lesson, Book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown), null).Split((char[])['\n', ' '], StringSplitOptions.RemoveEmptyEntries));
            int teaches = page.IndexOf("neither sets, shortens nor permits a process", StringComparison.Ordinal);

            Assert.True(teaches > 0, id);
            Assert.True(teaches < page.IndexOf(lesson.Sections[0].Paragraphs[0].Split(' ')[0], page.IndexOf("permits", StringComparison.Ordinal), StringComparison.Ordinal), id);
            Assert.DoesNotContain("{0}", page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Topics_List_NamesEveryLessonAndRule(string format)
    {
        string list = LessonReport.Create(format, new TextStyle()).Topics(Book);

        Assert.All(Book.Topics, topic => Assert.Contains(topic.Title, list, StringComparison.Ordinal));
        Assert.All(Book.Rules, rule => Assert.Contains(rule, list, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Page_HostileRecipeTitle_StaysText(string format)
    {
        Lesson lesson = Book.Find("thickener", out _)!;
        string page = LessonReport.Create(format, new TextStyle()).Page(lesson, Book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown), "<script>alert(1)</script> [x](http://evil.example) \u001b[31m");

        Assert.DoesNotContain('\u001b', page);
        Assert.True(format == "text" || !page.Contains("<script>", StringComparison.Ordinal));
        Assert.True(format != "markdown" || page.Contains("\\[x\\]", StringComparison.Ordinal));
    }

    [Fact]
    public void Html_Page_FetchesNothingAndHoldsItsPictures()
    {
        Lesson lesson = Book.Find("thickener", out _)!;
        string page = LessonReport.Create("html", new TextStyle()).Page(lesson, Book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown), null);

        Assert.Equal(2, page.Split("<svg ").Length - 1);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
        Assert.All((string[])["<script", " src=", "@import", "<link", "<img"], mark => Assert.DoesNotContain(mark, page, StringComparison.Ordinal));
    }

    [Fact]
    public void Markdown_Page_TellsEachPictureInWordsAndDrawsItInABlock()
    {
        Lesson lesson = Book.Find("altitude", out _)!;
        Illustration drawn = Book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown);
        string page = LessonReport.Create("markdown", new TextStyle()).Page(lesson, drawn, null);

        Assert.Equal(2, page.Split("```").Length - 1);
        Assert.Contains(drawn.Figures[0].Description, page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Page_AnyCulture_GivesTheSameBytes(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string expected = Everything();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(expected, Everything());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Everything()
    {
        LessonBook book = LessonBook.Create(RulePack.Default);
        return string.Concat(LessonReport.Known.SelectMany(format => ((string[])["ALTITUDE", "thickener", "acid", "fig", "dairy"]).Select(asked =>
        {
            Lesson lesson = book.Find(asked, out _)!;
            return LessonReport.Create(format, new TextStyle()).Page(lesson, book.Illustrator.Worked(lesson.Picture, new Kitchen(1_345)), null);
        })));
    }
}
