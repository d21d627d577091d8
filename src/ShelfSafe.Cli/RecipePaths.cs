using System.IO.Enumeration;

namespace ShelfSafe.Cli;

/// <summary>Turns the arguments into the files to vet, folders walked in ordinal order.</summary>
internal static class RecipePaths
{
    /// <summary>Standard input.</summary>
    public const string StandardInput = "-";

    private static readonly string[] _extensions = [".md", ".markdown", ".txt", ".html", ".htm", ".xhtml", ".jsonld"];

    /// <summary>Lists the files of one argument; a plain file is listed as it is, whether or not it exists.</summary>
    /// <param name="argument">File, folder, or <c>-</c>.</param>
    /// <param name="globs">What to take and leave of a folder; its includes stand in place of the known endings.</param>
    /// <param name="complain">Told of folders that hold no recipe or cannot be read.</param>
    public static List<string> Expand(string argument, PathGlobs globs, Action<string> complain)
    {
        if (string.Equals(argument, StandardInput, StringComparison.Ordinal) || !Directory.Exists(argument))
        {
            return [argument];
        }

        List<string> found = [];
        bool whole = true;
        Walk(argument, Shown(argument).TrimEnd('/'), globs, found, path =>
        {
            whole = false;
            complain($"{path}: folder may not be read");
        });
        found.Sort(StringComparer.Ordinal);
        if (found.Count == 0 && whole)
        {
            complain($"{Shown(argument)}: folder holds no recipe; looked for {globs.Wanted ?? string.Join(", ", _extensions)}");
        }

        return found;
    }

    /// <summary>A path as reports show it, with <c>/</c> on every system; an empty one as two quotes.</summary>
    public static string Shown(string path) => path.Length == 0 ? "\"\"" : Path.DirectorySeparatorChar == '/' ? path : path.Replace(Path.DirectorySeparatorChar, '/');

    private static void Walk(string folder, string shown, PathGlobs globs, List<string> found, Action<string> unreadable)
    {
        // A work list, not recursion: a deep tree must not end the program. Linked folders are not followed, since they may form a ring.
        Stack<(string Folder, string Shown)> open = new([(folder, shown)]);
        while (open.TryPop(out (string Folder, string Shown) next))
        {
            try
            {
                foreach ((string name, bool isFolder) in Entries(next.Folder))
                {
                    string path = $"{next.Shown}/{name}";
                    if (isFolder)
                    {
                        DirectoryInfo inner = new(Path.Combine(next.Folder, name));
                        if (inner.LinkTarget is null)
                        {
                            open.Push((inner.FullName, path));
                        }
                    }
                    else if (globs.Takes(path[(shown.Length + 1)..], _extensions.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase)))
                    {
                        found.Add(path);
                    }
                }
            }
            catch (UnauthorizedAccessException)
            {
                unreadable(next.Shown);
            }
            catch (IOException)
            {
                unreadable(next.Shown);
            }
        }
    }

    // Names as the folder lists them: the system need not be asked about each file.
    private static FileSystemEnumerable<(string Name, bool IsFolder)> Entries(string folder) =>
        new(folder, static (ref FileSystemEntry entry) => (entry.FileName.ToString(), entry.IsDirectory), new EnumerationOptions { AttributesToSkip = 0, IgnoreInaccessible = false });
}
