using System.Buffers;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace ShelfSafe.Cli;

/// <summary>Reads text that someone else wrote: bounded, UTF-8 or nothing, and never an exception.</summary>
internal static class TextFile
{
    /// <summary>Largest input that is read, in bytes.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    private const int UsualBytes = 16 * 1024;

    private static readonly UTF8Encoding _strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file, or standard input where the path is <c>-</c>.</summary>
    /// <param name="path">The file, or <c>-</c>.</param>
    /// <param name="standardInput">Opens standard input.</param>
    /// <param name="wrong">Why it could not be read, without the path.</param>
    public static string? Read(string path, Func<Stream> standardInput, out string wrong)
    {
        if (path != RecipePaths.StandardInput)
        {
            return Read(path, out wrong);
        }

        using Stream stream = standardInput();
        return Read(stream, out wrong);
    }

    /// <summary>Reads a file; a byte-order mark stays in the text.</summary>
    /// <param name="path">The file.</param>
    /// <param name="wrong">Why it could not be read, without the path.</param>
    public static string? Read(string path, out string wrong)
    {
        if (path.Length == 0)
        {
            wrong = "the name is empty; name a file or folder";
            return null;
        }

        try
        {
            using SafeFileHandle file = File.OpenHandle(path);
            return Read(file, out wrong);
        }
        catch (FileNotFoundException)
        {
            wrong = "no such file or folder";
        }
        catch (DirectoryNotFoundException)
        {
            wrong = "no such file or folder";
        }
        catch (UnauthorizedAccessException)
        {
            wrong = Directory.Exists(path) ? "is a folder, not a file" : "may not be read: permission is missing";
        }
        catch (IOException broken)
        {
            wrong = $"cannot be read: {broken.Message}";
        }
        catch (ArgumentException)
        {
            wrong = "is no name that a file can have";
        }
        catch (NotSupportedException)
        {
            wrong = "is no name that a file can have";
        }

        return null;
    }

    // A file is read at its places, for a stream would cost more than the reading; a pipe has none.
    private static string? Read(SafeFileHandle file, out string wrong)
    {
        try
        {
            return ReadAll((held, at) => RandomAccess.Read(file, held.AsSpan(at), at), out wrong);
        }
        catch (NotSupportedException)
        {
            using FileStream stream = new(file, FileAccess.Read, bufferSize: 1);
            return Read(stream, out wrong);
        }
    }

    /// <summary>Reads a stream to its end, or as far as is allowed.</summary>
    public static string? Read(Stream stream, out string wrong) =>
        ReadAll((held, at) => stream.Read(held, at, held.Length - at), out wrong);

    // The reader fills the array from a place on and tells how many bytes it got; none at the end.
    private static string? ReadAll(Func<byte[], int, int> read, out string wrong)
    {
        byte[] held = ArrayPool<byte>.Shared.Rent(UsualBytes);
        try
        {
            int length = 0;
            int got;
            while ((got = read(held, length)) > 0)
            {
                length += got;
                if (length > MostBytes)
                {
                    wrong = "is larger than 16 MB; no recipe is that long";
                    return null;
                }

                held = length == held.Length ? Larger(held) : held;
            }

            return Decode(held.AsSpan(0, length), out wrong);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(held);
        }
    }

    private static byte[] Larger(byte[] full)
    {
        byte[] larger = ArrayPool<byte>.Shared.Rent(2 * full.Length);
        full.CopyTo(larger, 0);
        ArrayPool<byte>.Shared.Return(full);
        return larger;
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, out string wrong)
    {
        wrong = bytes switch
        {
            [] => "is empty",
            [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "is UTF-16 text; save it as UTF-8",
            _ when bytes.Contains((byte)0) => "is not a text file",
            _ => string.Empty,
        };
        if (wrong.Length > 0)
        {
            return null;
        }

        string text;
        try
        {
            text = _strict.GetString(bytes);
        }
        catch (DecoderFallbackException bad)
        {
            wrong = FormattableString.Invariant($"is not UTF-8 text from byte {bad.Index + 1} on; save it as UTF-8");
            return null;
        }

        if (text.AsSpan().Trim('\uFEFF').Trim().IsEmpty)
        {
            wrong = "is empty";
            return null;
        }

        return text;
    }
}
