using ShelfSafe.Lessons;
using ShelfSafe.Reports.Html;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Writes a picture into a page, under a heading, with its words below: of a lesson, or of a report.</summary>
internal static class FigureHtml
{
    /// <summary>Writes one picture.</summary>
    /// <param name="page">The page.</param>
    /// <param name="words">Words of the headings.</param>
    /// <param name="figure">The picture as numbers and words.</param>
    public static void Write(ReportHtmlText page, Words words, Figure figure)
    {
        page.Heading($"{words["lesson.pictures"]}: {figure.Title}");
        page.Raw("<figure class=\"finding\">\n").Raw(SvgPicture.Draw(figure)).Raw("<figcaption>").Text(figure.Description).Raw("</figcaption>\n</figure>\n");
        page.Raw("<ul>\n");
        foreach (string line in figure.Below)
        {
            page.Element("li", line);
        }

        page.Raw("</ul>\n");
    }
}
