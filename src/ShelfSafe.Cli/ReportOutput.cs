using System.Text;

namespace ShelfSafe.Cli;

/// <summary>Where the reports of a run go: text that is UTF-8 already goes by the writer that would make it so.</summary>
/// <param name="output">Receives the reports.</param>
/// <param name="holds">
/// Whether whole reports may be held back until many can be written at once: each write to a pipe wakes its reader. Never where someone
/// waits for the report of one record before sending the next.
/// </param>
internal sealed class ReportOutput(TextWriter output, bool holds)
{
    private const int MostHeld = 256 * 1024; // bytes

    private readonly Stream? _stream = output is StreamWriter { Encoding: UTF8Encoding } writer ? writer.BaseStream : null;
    private readonly byte[] _held = holds ? new byte[MostHeld] : [];
    private int _length;

    /// <summary>Writes text.</summary>
    public void Write(string text)
    {
        if (text.Length > 0)
        {
            Write(Encoding.UTF8.GetBytes(text));
        }
    }

    /// <summary>Writes text that is UTF-8 already.</summary>
    public void Write(byte[] text)
    {
        if (_stream is null)
        {
            output.Write(Encoding.UTF8.GetString(text));
            return;
        }

        if (_length + text.Length > _held.Length)
        {
            Flush();
        }

        if (text.Length > _held.Length)
        {
            _stream.Write(text);
        }
        else
        {
            text.CopyTo(_held, _length);
            _length += text.Length;
        }
    }

    /// <summary>The writer itself, once all that was held is written, for a report that is written as it comes.</summary>
    public TextWriter Writer()
    {
        Flush();
        return output;
    }

    /// <summary>Writes all that is held.</summary>
    public void Flush()
    {
        output.Flush();
        if (_length > 0)
        {
            _stream!.Write(_held, 0, _length);
            _length = 0;
        }
    }
}
