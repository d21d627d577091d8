using System.Buffers;
using System.Text;

namespace ShelfSafe.Reports;

/// <summary>Takes UTF-8 and hands it on as text piece by piece, so that a long line is never held whole.</summary>
/// <param name="output">Receives the text.</param>
internal sealed class TextPieces(TextWriter output) : IBufferWriter<byte>
{
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();
    private byte[] _bytes = new byte[16_384];
    private char[] _text = [];

    /// <inheritdoc/>
    public void Advance(int count)
    {
        if (_text.Length <= count)
        {
            _text = new char[_bytes.Length + 1]; // one more for a letter that began in the piece before
        }

        output.Write(_text, 0, _decoder.GetChars(_bytes.AsSpan(0, count), _text, flush: false));
    }

    /// <inheritdoc/>
    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        if (_bytes.Length < sizeHint)
        {
            _bytes = new byte[sizeHint];
        }

        return _bytes;
    }

    /// <inheritdoc/>
    public Span<byte> GetSpan(int sizeHint = 0) => GetMemory(sizeHint).Span;
}
