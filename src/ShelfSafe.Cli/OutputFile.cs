using System.CommandLine;

namespace ShelfSafe.Cli;

/// <summary>Writes to a file, whole or not at all, or to standard output where none is named; never over what the run reads.</summary>
internal static class OutputFile
{
    private static readonly StringComparison SamePath = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    /// <summary>The option <c>--output</c>.</summary>
    public static Option<string?> Option(string description)
    {
        Option<string?> output = new("--output", "-o") { HelpName = "FILE", Description = description };
        output.Validators.Add(static result =>
        {
            if (result.Tokens.Any(static token => string.IsNullOrWhiteSpace(token.Value)))
            {
                result.AddError("--output: the name is empty; name a file");
            }
        });
        return output;
    }

    /// <summary>Whether the file may be written; complains where it is one that the run reads.</summary>
    /// <param name="path">The output file, or <see langword="null"/> for standard output.</param>
    /// <param name="recipes">The recipes that are read; <c>-</c> is none of them.</param>
    /// <param name="others">Other files that are read, each with what it is, such as "the kitchen profile".</param>
    /// <param name="complain">Receives what is wrong.</param>
    public static bool IsFree(string? path, IEnumerable<string?> recipes, IEnumerable<(string? Path, string What)> others, Action<string> complain)
    {
        if (path is null)
        {
            return true;
        }

        foreach ((string? input, string what) in recipes.Select(static recipe => (recipe, "the recipe")).Concat(others))
        {
            if (input is not (null or RecipePaths.StandardInput) && IsSame(path, input))
            {
                complain($"{RecipePaths.Shown(path)}: is {what} itself; name another output file");
                return false;
            }
        }

        return true;
    }

    /// <summary>Writes; complains and answers false where the file cannot be written.</summary>
    public static bool Write(string? path, TextWriter standard, Action<string> complain, Action<TextWriter> write)
    {
        if (path is null)
        {
            write(standard);
            return true;
        }

        return Guard(path, complain, () =>
        {
            using WholeFile file = WholeFile.Create(path);
            write(file.Writer);
            file.Keep();
        });
    }

    /// <summary>Does work that writes a file; complains and answers false where the file cannot be written.</summary>
    public static bool Guard(string path, Action<string> complain, Action work)
    {
        try
        {
            work();
            return true;
        }
        catch (IOException broken)
        {
            complain($"{RecipePaths.Shown(path)}: output cannot be written: {broken.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            complain($"{RecipePaths.Shown(path)}: output may not be written: permission is missing");
        }
        catch (Exception broken) when (broken is ArgumentException or NotSupportedException)
        {
            complain($"{RecipePaths.Shown(path)}: is no name that a file can have");
        }

        return false;
    }

    private static bool IsSame(string left, string right) => Full(left) is { } one && Full(right) is { } other && string.Equals(one, other, SamePath);

    // Where a link leads counts; a name that no file can have is no file that is read.
    private static string? Full(string path)
    {
        try
        {
            string full = Path.GetFullPath(path);
            return File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Path.GetFullPath(path);
        }
        catch (Exception fault) when (fault is ArgumentException or NotSupportedException)
        {
            return null;
        }
    }
}
