using System.Text;
using ShelfSafe.Lessons;
using static ShelfSafe.Reports.MarkdownText;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Writes a lesson as Markdown; a picture is told in words and drawn with characters in a block of code.</summary>
internal sealed class LessonMarkdown(Words words) : LessonReport
{
    /// <inheritdoc/>
    public override string Page(Lesson lesson, Illustration drawn, string? recipe)
    {
        StringBuilder page = new();
        page.Append("# ").Append(Of(lesson.Title)).Append("\n\n> ").Append(Of(words["lesson.teaches"])).Append("\n\n");
        foreach (LessonSection section in lesson.Sections)
        {
            if (section.Heading.Length > 0)
            {
                page.Append("## ").Append(Of(section.Heading)).Append("\n\n");
            }

            foreach (string paragraph in section.Paragraphs)
            {
                page.Append(Of(paragraph)).Append("\n\n");
            }
        }

        if (recipe is not null)
        {
            page.Append(Of(words.With("lesson.recipe", recipe))).Append("\n\n");
        }

        foreach (Figure figure in drawn.Figures)
        {
            Write(page, figure);
        }

        foreach (string note in drawn.Notes)
        {
            page.Append(Of(note)).Append("\n\n");
        }

        List(page, words["lesson.try"], lesson.TryIt.Select(Code));
        List(page, words["lesson.see"], lesson.See.Select(static topic => Code($"shelfsafe why {topic}")));
        List(page, words["lesson.sources"], lesson.Sources.Select(static source => Of(source.Text) + MarkdownReport.Address(source.Url)));
        return page.ToString().TrimEnd() + "\n";
    }

    /// <inheritdoc/>
    public override string Topics(LessonBook book)
    {
        StringBuilder page = new();
        page.Append("# ").Append(Of(words["lesson.list"])).Append("\n\n> ").Append(Of(words["lesson.teaches"])).Append("\n\n");
        List(page, words["lesson.topics"], book.Topics.Select(static topic => $"{Code(topic.Id)} {Of(topic.Title)}"));
        List(page, words["lesson.rules"], book.Rules.Select(Code));
        page.Append(Of(words["lesson.foods"])).Append('\n');
        return page.ToString();
    }

    private static void List(StringBuilder page, string heading, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            page.Append("## ").Append(Of(heading)).Append("\n\n").AppendJoin('\n', all.Select(static line => "- " + line)).Append("\n\n");
        }
    }

    // A command comes from the rule pack; the back tick, which would end it, is taken out.
    private static string Code(string text) => $"`{InertText.Of(text).Replace('`', '\'')}`";

    private void Write(StringBuilder page, Figure figure)
    {
        page.Append("## ").Append(Of($"{words["lesson.pictures"]}: {figure.Title}")).Append("\n\n").Append(Of(figure.Description)).Append("\n\n```text\n");
        foreach (string line in CharacterPlot.Draw(figure))
        {
            page.Append(line.Replace('`', '\'')).Append('\n');
        }

        page.Append("```\n\n");
        foreach (string line in figure.Below)
        {
            page.Append("- ").Append(Of(line)).Append('\n');
        }

        page.Append('\n');
    }
}
