using ShelfSafe.Lessons;
using ShelfSafe.Reports.Html;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Writes a lesson as one HTML file without script or outside asset, with its pictures as SVG inside.</summary>
internal sealed class LessonHtml(Words words) : LessonReport
{
    /// <inheritdoc/>
    public override string Page(Lesson lesson, Illustration drawn, string? recipe)
    {
        ReportHtmlText page = Begun(lesson.Title);
        foreach (LessonSection section in lesson.Sections)
        {
            if (section.Heading.Length > 0)
            {
                page.Heading(section.Heading);
            }

            foreach (string paragraph in section.Paragraphs)
            {
                page.Element("p", paragraph);
            }
        }

        if (recipe is not null)
        {
            page.Element("p", words.With("lesson.recipe", recipe));
        }

        foreach (Figure figure in drawn.Figures)
        {
            FigureHtml.Write(page, words, figure);
        }

        foreach (string note in drawn.Notes)
        {
            page.Element("p", note);
        }

        page.List(words["lesson.try"], lesson.TryIt.Select(Code));
        page.List(words["lesson.see"], lesson.See.Select(static topic => Code($"shelfsafe why {topic}")));
        page.List(words["lesson.sources"], lesson.Sources.Select(Source));
        return Ended(page);
    }

    /// <inheritdoc/>
    public override string Topics(LessonBook book)
    {
        ReportHtmlText page = Begun(words["lesson.list"]);
        page.List(words["lesson.topics"], book.Topics.Select(static topic => $"{Code(topic.Id)} {ReportHtmlText.Safe(topic.Title)}"));
        page.List(words["lesson.rules"], book.Rules.Select(Code));
        page.Element("p", words["lesson.foods"]);
        return Ended(page);
    }

    private static string Code(string text) => $"<code>{ReportHtmlText.Safe(text)}</code>";

    // Only an https address of the rule pack becomes a link.
    private static string Source(SourceReference source) => source.Url.StartsWith("https://", StringComparison.Ordinal)
        ? $"{ReportHtmlText.Safe(source.Text)} <a href=\"{ReportHtmlText.Safe(source.Url)}\">{ReportHtmlText.Safe(source.Url)}</a>"
        : ReportHtmlText.Safe(source.Url.Length == 0 ? source.Text : $"{source.Text} {source.Url}");

    private static string Ended(ReportHtmlText page) => page.Raw("</article>\n").Raw(ReportHtmlShell.End).ToString();

    private ReportHtmlText Begun(string title)
    {
        ReportHtmlText page = new();
        page.Raw(ReportHtmlShell.Start(words, title)).Raw("<article>\n");
        page.Element("h1", title);
        page.Raw("<p class=\"verdict\"><strong>").Text(words["lesson.teaches"]).Raw("</strong></p>\n");
        return page;
    }
}
