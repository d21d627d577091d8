namespace ShelfSafe.Cli;

/// <summary>Lists the work of a request one by one: files in their order, and the records of a file of many as they are read.</summary>
internal sealed class VetQueue
{
    private readonly VetRequest _request;
    private readonly Func<Stream> _standardInput;
    private readonly Action<string> _complain;
    private readonly List<string> _paths;

    /// <summary>Lists the files.</summary>
    /// <param name="request">What the cook asked for.</param>
    /// <param name="standardInput">Opens standard input.</param>
    /// <param name="complain">Told of what cannot be read.</param>
    public VetQueue(VetRequest request, Func<Stream> standardInput, Action<string> complain)
    {
        _request = request;
        _standardInput = standardInput;
        _complain = complain;
        PathGlobs globs = new(request.Include, request.Exclude);
        _paths = [.. request.Recipes.SelectMany(argument => RecipePaths.Expand(argument, globs, complain))];
    }

    /// <summary>Number of inputs, or <see langword="null"/> where one of them holds many records.</summary>
    public int? Total => _paths.Exists(HoldsMany) ? null : _paths.Count;

    /// <summary>The files, in the order in which they are read.</summary>
    public IReadOnlyList<string> Paths => _paths;

    /// <summary>The work, in the order in which it is reported.</summary>
    public IEnumerable<VetWork> All()
    {
        foreach (string path in _paths)
        {
            foreach (VetWork work in HoldsMany(path) ? Records(path) : [new VetWork(path, _request.Input)])
            {
                yield return work;
            }
        }
    }

    private static bool IsStandard(string path) => string.Equals(path, RecipePaths.StandardInput, StringComparison.Ordinal);

    private bool HoldsMany(string path) => _request.Input == RecipeKinds.JsonLines
        || (_request.Input == RecipeKinds.Auto && !IsStandard(path) && RecipeKinds.OfName(path) == RecipeKinds.JsonLines);

    // A record is a line, numbered as it stands in the file; an empty line is none.
    private IEnumerable<VetWork> Records(string path)
    {
        using Stream? stream = Open(path);
        if (stream is null)
        {
            yield break;
        }

        RecordLines lines = new(stream);
        int number = 0;
        while (Next(lines, path, out string wrong) is { } line)
        {
            number++;
            if (wrong.Length > 0 || !line.AsSpan().Trim('\uFEFF').Trim().IsEmpty)
            {
                yield return new(path, RecipeKinds.JsonLines, line, number, wrong);
            }
        }

        if (number == 0)
        {
            _complain($"{RecipePaths.Shown(path)}: is empty");
        }
    }

    private string? Next(RecordLines lines, string path, out string wrong)
    {
        try
        {
            return lines.Next(out wrong);
        }
        catch (IOException broken)
        {
            _complain($"{RecipePaths.Shown(path)}: cannot be read to its end: {broken.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            _complain($"{RecipePaths.Shown(path)}: is a folder, not a file");
        }

        wrong = string.Empty;
        return null;
    }

    private Stream? Open(string path)
    {
        if (IsStandard(path))
        {
            return _standardInput();
        }

        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 1);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            _complain($"{RecipePaths.Shown(path)}: no such file or folder");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            _complain($"{RecipePaths.Shown(path)}: cannot be read: {fault.Message}");
        }

        return null;
    }
}
