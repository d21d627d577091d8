using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>A recipe as read: nothing is judged, identified or weighed yet.</summary>
/// <param name="Text">The text as it was read, a byte-order mark included.</param>
/// <param name="Title">First heading or front-matter title, cleaned; <see langword="null"/> where none is found.</param>
/// <param name="Yield">Servings or yield as printed.</param>
/// <param name="Parts">The dishes of the file, at least one.</param>
/// <param name="Problems">What could not be read, each with its place.</param>
public sealed record Recipe(
    string Text,
    string? Title,
    string? Yield,
    ImmutableArray<RecipePart> Parts,
    ImmutableArray<ReadingProblem> Problems);

/// <summary>One dish of a file. Groups that are combined before serving ("For the sauce") belong to one part.</summary>
/// <param name="Name">Heading of the dish, or <see langword="null"/> where the file holds one dish.</param>
/// <param name="Span">Place of the whole part.</param>
/// <param name="Ingredients">The ingredient lines in reading order.</param>
/// <param name="Steps">Every sentence of prose outside the ingredient block, notes included.</param>
public sealed record RecipePart(
    string? Name,
    SourceSpan Span,
    ImmutableArray<IngredientLine> Ingredients,
    ImmutableArray<StepSentence> Steps);

/// <summary>One line of the ingredient list.</summary>
/// <param name="Text">The line without list marker, check box and Markdown marks.</param>
/// <param name="Group">The label above it ("For the sauce"), or <see langword="null"/>.</param>
/// <param name="AtServing">Whether the group's heading says that its foods are only added when serving.</param>
/// <param name="FromProse">Whether it was cut from a sentence, for want of a list.</param>
public sealed record IngredientLine(MappedText Text, string? Group, bool AtServing, bool FromProse);

/// <summary>One sentence of the steps, notes or introduction.</summary>
/// <param name="Text">The sentence, cleaned.</param>
/// <param name="Heading">The heading it stands under, or <see langword="null"/>.</param>
/// <param name="Role">What kind of prose it is.</param>
public sealed record StepSentence(MappedText Text, string? Heading, StepRole Role);

/// <summary>What kind of prose a sentence belongs to.</summary>
public enum StepRole
{
    /// <summary>A direction.</summary>
    Step,

    /// <summary>Text before the ingredients: an introduction, timings, servings.</summary>
    Introduction,

    /// <summary>Notes, tips, storage, variations.</summary>
    Note,

    /// <summary>Text under a heading for serving.</summary>
    Serving,
}

/// <summary>Something in the text that could not be read.</summary>
/// <param name="Kind">What: <c>no-ingredients</c>, <c>line-too-long</c>, <c>nesting</c>, <c>too-large</c>, <c>several-dishes</c>.</param>
/// <param name="Span">Where.</param>
public sealed record ReadingProblem(string Kind, SourceSpan Span);
