using System.Text;

namespace ShelfSafe.Cli;

/// <summary>Reads a file of many records line by line: each line bounded and UTF-8 or told as bad, whatever stands around it.</summary>
/// <param name="stream">The file.</param>
internal sealed class RecordLines(Stream stream)
{
    private static readonly UTF8Encoding _strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly byte[] _piece = new byte[65_536];
    private int _at;
    private int _end;

    /// <summary>The next line without its line feed, or <see langword="null"/> at the end.</summary>
    /// <param name="wrong">Why the line cannot be read, or empty.</param>
    /// <exception cref="IOException">The file cannot be read to its end.</exception>
    public string? Next(out string wrong)
    {
        using MemoryStream line = new();
        bool any = false;
        bool tooLong = false;
        while (_at < _end || Fill())
        {
            any = true;
            ReadOnlySpan<byte> rest = _piece.AsSpan(_at, _end - _at);
            int feed = rest.IndexOf((byte)'\n');
            ReadOnlySpan<byte> part = feed < 0 ? rest : rest[..feed];
            _at += feed < 0 ? part.Length : feed + 1;
            tooLong |= line.Length + part.Length > TextFile.MostBytes;
            if (!tooLong)
            {
                line.Write(part);
            }

            if (feed >= 0)
            {
                break;
            }
        }

        wrong = tooLong ? "is larger than 16 MB; no recipe is that long" : string.Empty;
        return !any ? null : tooLong ? string.Empty : Decode(line.GetBuffer().AsSpan(0, (int)line.Length), out wrong);
    }

    private static string Decode(ReadOnlySpan<byte> bytes, out string wrong)
    {
        wrong = string.Empty;
        try
        {
            return _strict.GetString(bytes);
        }
        catch (DecoderFallbackException bad)
        {
            wrong = FormattableString.Invariant($"is not UTF-8 text from byte {bad.Index + 1} on");
            return string.Empty;
        }
    }

    private bool Fill()
    {
        _at = 0;
        _end = stream.Read(_piece, 0, _piece.Length);
        return _end > 0;
    }
}
