using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>A line with its place in the recipe decided.</summary>
/// <param name="Text">The words.</param>
/// <param name="IsIngredient">An ingredient line; otherwise a sentence.</param>
/// <param name="Heading">Group of an ingredient, heading of a sentence.</param>
/// <param name="AtServing">Ingredient that is only added when serving.</param>
/// <param name="Role">Kind of prose.</param>
/// <param name="IsLoose">Prose under no known heading: introduction before the ingredients, directions after.</param>
/// <param name="Dish">Index of the heading row that names its dish, or -1.</param>
/// <param name="MayHoldFoods">Prose of a paragraph that lists foods too, where no other list stands: its amounts count as in.</param>
internal sealed record SortedLine(
    MappedText Text, bool IsIngredient, string? Heading, bool AtServing, StepRole Role, bool IsLoose, int Dish, bool MayHoldFoods = false);
