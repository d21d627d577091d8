using System.Text;

namespace ShelfSafe.Cli;

/// <summary>A file that appears whole or not at all: written beside its place and moved there at the end.</summary>
internal sealed class WholeFile : IDisposable
{
    private readonly string _path;
    private readonly string _draft;
    private readonly StreamWriter _writer;
    private bool _kept;

    private WholeFile(string path, string draft, StreamWriter writer)
    {
        _path = path;
        _draft = draft;
        _writer = writer;
    }

    /// <summary>Receives the text.</summary>
    public TextWriter Writer => _writer;

    /// <summary>Starts a file.</summary>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static WholeFile Create(string path)
    {
        if (Directory.Exists(path) || Path.EndsInDirectorySeparator(path))
        {
            throw new IOException("is a folder");
        }

        string full = Path.GetFullPath(path);
        string folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
        {
            throw new DirectoryNotFoundException($"there is no folder {RecipePaths.Shown(folder)}");
        }

        string draft = Path.Combine(folder, $".{Path.GetFileName(full)}.{Path.GetRandomFileName()}");
        FileStream stream = new(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        return new(full, draft, new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { NewLine = "\n" });
    }

    /// <summary>Puts the finished file in its place.</summary>
    public void Keep()
    {
        _writer.Dispose();
        File.Move(_draft, _path, overwrite: true);
        _kept = true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            _writer.Dispose();
        }
        catch (IOException)
        {
            // The disk is full: what was not written is dropped with the draft.
        }

        if (!_kept)
        {
            File.Delete(_draft);
        }
    }
}
