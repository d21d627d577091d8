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

        int list = part.Ingredients.Where(line => !line.FromProse || part.Steps.Any(step => IsLine(step, line))).Select(line => line.Text.Span.Start).DefaultIfEmpty(0).Min();
        bool later = part.Steps.Any(step => step.Role == StepRole.Step && step.Text.Span.Start > list && !part.Ingredients.Any(line => IsLine(step, line)));
        if (recipe.Yield is { Length: > 0 } yield && yield.Trim().Length > 0 && !part.Steps.Any(step => step.Text.Text.Contains(yield, StringComparison.OrdinalIgnoreCase)))
        {
            string words = yield.Trim().TrimEnd('.');
            draft.Steps.Add(new(char.IsLetter(words[0]) ? $"{char.ToUpperInvariant(words[0])}{words[1..]}." : $"Makes {words}.", DraftSection.Introduction));
        }

        foreach (StepSentence step in part.Steps)
        {
            if (part.Ingredients.Any(line => IsLine(step, line)) || Labels.Contains(step.Text.Text.Trim().TrimEnd(':'), StringComparer.OrdinalIgnoreCase))
            {
                continue;
            }

            // What stands before the list is no direction where directions follow it.
            bool before = later && step.Role == StepRole.Step && step.Text.Span.Start < list;
            draft.Steps.Add(new(step.Text.Text, before ? DraftSection.Introduction : Section(step.Role)));
        }

        return draft;
    }

    // A nested list is read both ways: its foods are lines already, its label is printed anew.
    private static bool IsLine(StepSentence step, IngredientLine line) => line.Text.Span.Overlaps(step.Text.Span)
        && (!line.FromProse || line.Text.Text.Trim().TrimEnd('.') == step.Text.Text.Trim().TrimEnd('.'));

    private static DraftSection Section(StepRole role) => role switch
    {
        StepRole.Introduction => DraftSection.Introduction,
        StepRole.Step => DraftSection.Method,
        StepRole.Note => DraftSection.Notes,
        StepRole.Serving => DraftSection.Serving,
    };
}
