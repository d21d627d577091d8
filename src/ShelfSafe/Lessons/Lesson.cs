using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>One lesson: a step of the work, a rule or a food.</summary>
/// <param name="Id">Topic, rule id or food id.</param>
/// <param name="Title">Plain title.</param>
/// <param name="Sections">The text; at least one section.</param>
/// <param name="Sources">Published sources, at least one.</param>
/// <param name="TryIt">Commands of this program.</param>
/// <param name="See">Words that find further lessons.</param>
/// <param name="Foods">Ids of the foods it tells of, which its picture shows; empty for a lesson on something else.</param>
public sealed record Lesson(
    string Id,
    string Title,
    ImmutableArray<LessonSection> Sections,
    PictureKind Picture,
    ImmutableArray<SourceReference> Sources,
    ImmutableArray<string> TryIt,
    ImmutableArray<string> See,
    ImmutableArray<string> Foods);

/// <summary>A part of a lesson.</summary>
/// <param name="Heading">Heading, or empty.</param>
/// <param name="Paragraphs">Paragraphs of plain text.</param>
public sealed record LessonSection(string Heading, ImmutableArray<string> Paragraphs);

/// <summary>The pictures of a lesson, and what is to be said where there are none.</summary>
/// <param name="Notes">Sentences in plain words.</param>
public sealed record Illustration(ImmutableArray<Figure> Figures, ImmutableArray<string> Notes)
{
    /// <summary>Nothing drawn and nothing said.</summary>
    public static Illustration Nothing { get; } = new([], []);
}
