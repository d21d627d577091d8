using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes what the published table has for a food.</summary>
/// <param name="words">Words for people.</param>
/// <param name="style">Width and colours.</param>
public sealed class TableReport(Words words, TextStyle style)
{
    /// <summary>Writes one answer.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="kitchen">The kitchen it was looked up for.</param>
    public void Write(TextWriter output, ProcessAnswer answer, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(kitchen);
        TextPage page = new(output, style);
        SourceList sources = new();
        page.Paragraph(InertText.Of(answer.Food ?? answer.Asked), ink: TextPage.Ink.Bold);
        if (!answer.Whole)
        {
            page.Paragraph(words.With("table.part", InertText.Of(answer.Asked), answer.Food!), 2);
        }

        new TextKitchen(page, words, sources).WriteNotes([.. answer.Notes.Where(static note => note.Id is not ("altitude-missing" or "beyond-table"))]); // told below in its own words
        if (!answer.Lines.IsEmpty)
        {
            if (answer is { ByName: true, Food: not null })
            {
                WriteNone(page, answer);
            }

            new TextProcesses(page, words, sources).WriteLines(answer.Lines, kitchen, "heading.table");
            page.Paragraph(words[answer.ByName ? "table.recipe-alone" : "table.plain"], 2);
        }
        else if (answer.BeyondTable)
        {
            page.Paragraph(words["table.beyond"], 2);
        }
        else
        {
            WriteNone(page, answer);
            if (!IsByOtherMethod(answer) && !answer.Recipes.IsEmpty)
            {
                page.Paragraph(string.Join("; ", answer.Recipes), 2, words["table.recipes"] + ": ");
            }
        }

        new TextElsewhere(page, words, sources).WriteSources();
    }

    private void WriteNone(TextPage page, ProcessAnswer answer)
    {
        page.Paragraph(words[answer.Food is null ? "table.unknown" : IsByOtherMethod(answer) ? "table.other-method" : "table.none"], 2);
        if (!IsByOtherMethod(answer) && answer.WhyNot.Length > 0)
        {
            page.Paragraph(Why(answer.WhyNot), 2, words["table.why"] + ": ");
        }
    }

    // The food has its published process, and none of them is of the method that was asked for.
    private static bool IsByOtherMethod(ProcessAnswer answer) => answer.Food is not null && answer.WhyNot.StartsWith("yes: ", StringComparison.Ordinal);

    // The food table tells in its own words that only closed recipes hold a food, or that it is a seasoning.
    private string Why(string why)
    {
        const string Recipe = "recipe: ";
        return why.StartsWith(Recipe, StringComparison.Ordinal) ? words.With("food.process-recipe", why[Recipe.Length..])
            : why == "as-minor" ? words["food.process-minor"]
            : why;
    }
}
