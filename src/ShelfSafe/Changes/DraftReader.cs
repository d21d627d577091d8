using ShelfSafe.Reading;

namespace ShelfSafe.Changes;

/// <summary>Copies a recipe as it was read into a draft, word for word.</summary>
internal static class DraftReader
{
    private static readonly string[] Labels = ["ingredients", "steps", "method", "directions", "instructions"];

    /// <summary>The draft of the first dish.</summary>
    /// <param name="recipe">The recipe as read.</param>
    /// <param name="untitled">Title of a recipe that has none.</param>
    public static Draft Read(Recipe recipe, string untitled)
    {
        RecipePart part = recipe.Parts.FirstOrDefault(one => !one.Ingredients.IsEmpty) ?? recipe.Parts[0];
        Draft draft = new(recipe.Title ?? untitled);
        foreach (IngredientLine line in part.Ingredients)
        {
            draft.Lines.Add(new(line.Text.Text, line.AtServing ? null : line.Group, line.Text.Span.Start) { Place = line.AtServing ? DraftPlace.Serving : DraftPlace.Kept });
        }

        foreach (StepSentence step in part.Steps)
        {
            // A nested list is read both ways: its foods are lines already, its label is printed anew.
            bool line = part.Ingredients.Any(other => !other.FromProse && other.Text.Span.Overlaps(step.Text.Span));
            if (line || Labels.Contains(step.Text.Text.Trim().TrimEnd(':'), StringComparer.OrdinalIgnoreCase))
            {
                continue;
            }

            draft.Steps.Add(new(step.Text.Text, Section(step.Role)));
        }

        return draft;
    }

    private static DraftSection Section(StepRole role) => role switch
    {
        StepRole.Introduction => DraftSection.Introduction,
        StepRole.Step => DraftSection.Method,
        StepRole.Note => DraftSection.Notes,
        StepRole.Serving => DraftSection.Serving,
    };
}
