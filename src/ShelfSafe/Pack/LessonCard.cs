using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>A card of <c>rules/lessons/</c>: one step of the work in plain words.</summary>
/// <param name="Id">Topic, the file's name.</param>
/// <param name="Title">Plain title.</param>
/// <param name="Names">Other words under which the lesson is looked for.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>, at least one.</param>
/// <param name="See">Topics or rule ids that go further.</param>
/// <param name="Paragraphs">The lesson, at most 250 words in all.</param>
/// <param name="TryIt">Commands of this program, at least one.</param>
public sealed record LessonCard(
    string Id,
    string Title,
    ImmutableArray<string> Names,
    PictureKind Picture,
    ImmutableArray<string> Sources,
    ImmutableArray<string> See,
    ImmutableArray<string> Paragraphs,
    ImmutableArray<string> TryIt);
