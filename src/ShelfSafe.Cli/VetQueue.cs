using System.Text;

namespace ShelfSafe.Cli;

/// <summary>Lists the work of a request one by one: files in their order, and the records of a file of many as they are read.</summary>
internal sealed class VetQueue(VetRequest request, Func<Stream> standardInput)
{
    private readonly PathGlobs _globs = new(request.Include, request.Exclude);

    /// <summary>The work, in the order in which it is reported.</summary>
    /// <param name="complain">Told of what cannot be read.</param>
    public IEnumerable<VetWork> All(Action<string> complain)
    {
        foreach (string path in request.Recipes.SelectMany(argument => RecipePaths.Expand(argument, _globs, complain)))
        {
            bool standard = string.Equals(path, RecipePaths.StandardInput, StringComparison.Ordinal);
            bool many = request.Input == RecipeKinds.JsonLines || (request.Input == RecipeKinds.Auto && !standard && RecipeKinds.OfName(path) == RecipeKinds.JsonLines);
            foreach (VetWork work in many ? Records(path, standard, complain) : [new VetWork(path, request.Input)])
            {
                yield return work;
            }
        }
    }

    // A record is a line, numbered as it stands in the file; an empty line is none.
    private IEnumerable<VetWork> Records(string path, bool standard, Action<string> complain)
    {
        using StreamReader? reader = Open(path, standard, complain);
        int number = 0;
        while (Line(reader, path, complain) is { } line)
        {
            number++;
            if (!line.AsSpan().Trim('\uFEFF').Trim().IsEmpty)
            {
                yield return new(path, RecipeKinds.JsonLines, line, number);
            }
        }
    }

    private static string? Line(StreamReader? reader, string path, Action<string> complain)
    {
        try
        {
            return reader?.ReadLine();
        }
        catch (IOException broken)
        {
            complain($"{RecipePaths.Shown(path)}: cannot be read to its end: {broken.Message}");
            return null;
        }
        catch (UnauthorizedAccessException)
        {
            complain($"{RecipePaths.Shown(path)}: is a folder, not a file");
            return null;
        }
    }

    private StreamReader? Open(string path, bool standard, Action<string> complain)
    {
        if (standard)
        {
            return new(standardInput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), detectEncodingFromByteOrderMarks: false);
        }

        try
        {
            return new(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), detectEncodingFromByteOrderMarks: false);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            complain($"{RecipePaths.Shown(path)}: cannot be read: {fault.Message}");
            return null;
        }
    }
}
