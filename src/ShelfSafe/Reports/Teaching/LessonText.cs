using System.Globalization;
using ShelfSafe.Lessons;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Writes a lesson as plain text for a terminal, with pictures made of characters.</summary>
internal sealed class LessonText(Words words, TextStyle style) : LessonReport
{
    /// <inheritdoc/>
    public override string Page(Lesson lesson, Illustration drawn, string? recipe) => Written(page =>
    {
        page.Paragraph(lesson.Title, ink: TextPage.Ink.Bold);
        page.Gap();
        page.Paragraph(words["lesson.teaches"]);
        foreach (LessonSection section in lesson.Sections)
        {
            if (section.Heading.Length > 0)
            {
                page.Heading(section.Heading);
            }

            foreach (string paragraph in section.Paragraphs)
            {
                page.Gap();
                page.Paragraph(paragraph);
            }
        }

        if (recipe is not null)
        {
            page.Gap();
            page.Paragraph(words.With("lesson.recipe", recipe));
        }

        foreach (Figure figure in drawn.Figures)
        {
            Write(page, figure);
        }

        foreach (string note in drawn.Notes)
        {
            page.Gap();
            page.Paragraph(note);
        }

        List(page, words["lesson.try"], lesson.TryIt);
        List(page, words["lesson.see"], lesson.See.Select(static topic => $"shelfsafe why {topic}"));
        SourceList sources = new();
        sources.Mark(lesson.Sources);
        List(page, words["lesson.sources"], sources.Lines);
    });

    /// <inheritdoc/>
    public override string Topics(LessonBook book) => Written(page =>
    {
        page.Paragraph(words["lesson.teaches"]);
        page.Gap();
        page.Table([words["lesson.topics"], string.Empty], [.. book.Topics.Select(static topic => (System.Collections.Immutable.ImmutableArray<string>)[topic.Id, topic.Title])], 0);
        page.Heading(words["lesson.rules"]);
        page.Paragraph(string.Join(", ", book.Rules), 2);
        page.Gap();
        page.Paragraph(words["lesson.foods"]);
    });

    private string Written(Action<TextPage> write)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture) { NewLine = "\n" };
        write(new TextPage(output, style));
        return output.ToString();
    }

    private void Write(TextPage page, Figure figure)
    {
        page.Heading($"{words["lesson.pictures"]}: {figure.Title}");
        page.Paragraph(figure.Description);
        page.Gap();
        foreach (string line in CharacterPlot.Draw(figure))
        {
            page.Drawing(line);
        }

        page.Gap();
        foreach (string line in figure.Below)
        {
            page.Paragraph(line, 2, "- ");
        }
    }

    private static void List(TextPage page, string heading, IEnumerable<string> lines)
    {
        bool any = false;
        foreach (string line in lines)
        {
            if (!any)
            {
                page.Heading(heading);
                any = true;
            }

            page.Paragraph(line, 2, "- ");
        }
    }
}
