using System.Text;

namespace ShelfSafe.Cli;

/// <summary>A file that appears whole or not at all: written beside its place and moved there at the end.</summary>
/// <remarks>A device or a pipe (<c>/dev/stdout</c>) is no file that could be put in place of another: it is written as it is.</remarks>
internal sealed class WholeFile : IDisposable
{
    private readonly string _path;
    private readonly string? _draft;
    private readonly StreamWriter _writer;
    private bool _kept;

    private WholeFile(string path, string? draft, StreamWriter writer)
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

        if (Standard(path) is { } open)
        {
            return new(path, draft: null, Text(open()));
        }

        string full = Path.GetFullPath(path);
        if (File.Exists(full))
        {
            FileStream there = new(full, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
            if (IsDevice(there))
            {
                return new(full, draft: null, Text(there)); // not opened again: the reader of a pipe takes a closing for the end
            }

            there.Dispose();
            full = File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full; // a link stays a link
        }

        string folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
        {
            throw new DirectoryNotFoundException($"there is no folder {RecipePaths.Shown(folder)}");
        }

        string draft = Path.Combine(folder, $".{Path.GetFileName(full)}.{Path.GetRandomFileName()}");
        FileStream stream = new(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        if (!OperatingSystem.IsWindows() && File.Exists(full))
        {
            File.SetUnixFileMode(stream.SafeFileHandle, File.GetUnixFileMode(full)); // who may read it stays as it was
        }

        return new(full, draft, Text(stream));
    }

    // These names mean the open output itself and not the file that it may lead to, in which others may write as well.
    private static Func<Stream>? Standard(string path) => OperatingSystem.IsWindows() ? null : path switch
    {
        "/dev/stdout" or "/dev/fd/1" or "/proc/self/fd/1" => Console.OpenStandardOutput,
        "/dev/stderr" or "/dev/fd/2" or "/proc/self/fd/2" => Console.OpenStandardError,
        _ => null,
    };

    // What can neither be moved in nor be cut is no plain file. Opening also tells of a file that may not be written.
    private static bool IsDevice(FileStream stream) => !stream.CanSeek || (stream.Length == 0 && !IsCut(stream));

    private static bool IsCut(FileStream empty)
    {
        try
        {
            empty.SetLength(0);
            return true;
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static StreamWriter Text(Stream stream) => new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { NewLine = "\n" };

    /// <summary>Puts the finished file in its place.</summary>
    public void Keep()
    {
        _writer.Dispose();
        if (_draft is not null)
        {
            File.Move(_draft, _path, overwrite: true);
        }

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

        if (!_kept && _draft is not null)
        {
            File.Delete(_draft);
        }
    }
}
