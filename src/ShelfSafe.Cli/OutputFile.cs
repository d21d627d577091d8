namespace ShelfSafe.Cli;

/// <summary>Writes to a file, whole or not at all, or to standard output where none is named.</summary>
internal static class OutputFile
{
    /// <summary>Writes; complains and answers false where the file cannot be written.</summary>
    public static bool Write(string? path, TextWriter standard, Action<string> complain, Action<TextWriter> write)
    {
        if (path is null)
        {
            write(standard);
            return true;
        }

        try
        {
            using WholeFile file = WholeFile.Create(path);
            write(file.Writer);
            file.Keep();
            return true;
        }
        catch (IOException broken)
        {
            complain($"{path}: cannot be written: {broken.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            complain($"{path}: may not be written: permission is missing");
        }

        return false;
    }
}
