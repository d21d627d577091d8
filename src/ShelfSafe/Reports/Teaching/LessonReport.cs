using ShelfSafe.Lessons;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Writes a lesson for people. Every form begins with the sentence that the page teaches and neither sets, shortens nor permits a process.</summary>
public abstract class LessonReport
{
    /// <summary>Words for the forms that a lesson may have.</summary>
    public static IReadOnlyList<string> Known { get; } = ["text", "markdown", "html"];

    /// <summary>The writer for one of the known words.</summary>
    /// <param name="format">One of <see cref="Known"/>.</param>
    /// <param name="style">Width and colour of the text form.</param>
    /// <exception cref="ArgumentOutOfRangeException">The word is not known.</exception>
    public static LessonReport Create(string format, TextStyle style) => format switch
    {
        "text" => new LessonText(Words.Read(), style),
        "markdown" => new LessonMarkdown(Words.Read()),
        "html" => new LessonHtml(Words.Read()),
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, "known: " + string.Join(", ", Known)),
    };

    /// <summary>A lesson with its pictures.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="drawn">Its pictures, and what is to be said where there are none.</param>
    /// <param name="recipe">Title or file of the recipe that the pictures are drawn for, or <see langword="null"/> for the worked example.</param>
    public abstract string Page(Lesson lesson, Illustration drawn, string? recipe);

    /// <summary>All that may be asked for: topics, rules, and a word on foods.</summary>
    public abstract string Topics(LessonBook book);
}
