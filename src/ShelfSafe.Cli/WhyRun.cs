using ShelfSafe.Lessons;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Teaching;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>One run of <c>why</c>: finds the lesson, vets the recipe where one is given, and writes the page.</summary>
internal sealed class WhyRun(WhyRequest request, Func<Stream> standardInput, Terminal terminal, Surroundings around)
{
    /// <summary>Runs, and returns the exit code: 0 for a page, 2 for anything that was wrong.</summary>
    public int Run(TextWriter output, TextWriter error)
    {
        if (Page(message => App.Complain(error, message)) is not { } page)
        {
            return ExitCode.Trouble;
        }

        return OutputFile.Write(request.OutputFile, output, message => App.Complain(error, message), file => file.Write(page)) ? ExitCode.Permitted : ExitCode.Trouble;
    }

    private string? Page(Action<string> complain)
    {
        VetRequest asVet = request.AsVet();
        if (!OutputFile.IsFree(request.OutputFile, [request.RecipeFile], asVet.OtherFiles(around), complain) || VetSetup.Read(asVet, around, complain) is not { } setup)
        {
            return null;
        }

        LessonBook book = LessonBook.Create(setup.Rules);
        LessonReport report = LessonReport.Create(request.Format, request.OutputFile is null ? terminal.Style : new TextStyle());
        if (request.Topic.Trim().Length == 0)
        {
            return Nothing(complain) ? report.Topics(book) : null;
        }

        if (book.Find(request.Topic, out IReadOnlyList<string> nearest) is not { } lesson)
        {
            complain(book.Unknown(request.Topic, nearest));
            return null;
        }

        if (request.RecipeFile is not { } file)
        {
            return report.Page(lesson, book.Illustrator.Worked(lesson, setup.Kitchen), recipe: null);
        }

        if (Text(file, out string wrong) is not { } text)
        {
            complain($"{RecipePaths.Shown(file)}: {wrong}");
            return null;
        }

        VettingReport vetted = setup.Vetter.Vet(text, setup.Kitchen, RecipeKinds.OfName(file) == RecipeKinds.Text);
        return report.Page(lesson, book.Illustrator.ForRecipe(lesson.Picture, vetted, setup.Kitchen), vetted.Title ?? RecipePaths.Shown(file));
    }

    // A recipe without a topic would be dropped in silence.
    private bool Nothing(Action<string> complain)
    {
        if (request.RecipeFile is null)
        {
            return true;
        }

        complain("--recipe draws the picture of a lesson, and no lesson was named; for the list: shelfsafe why");
        return false;
    }

    private string? Text(string file, out string wrong)
    {
        if (file == RecipePaths.StandardInput || RecipeKinds.OfName(file) is RecipeKinds.Markdown or RecipeKinds.Text)
        {
            return TextFile.Read(file, standardInput, out wrong);
        }

        wrong = "why reads recipes in Markdown or plain text only";
        return null;
    }
}
