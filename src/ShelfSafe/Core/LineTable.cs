namespace ShelfSafe.Core;

/// <summary>Turns offsets into lines and columns, both from 1, columns in UTF-16 units as in SARIF 2.1.0 section 3.30.</summary>
/// <remarks>Lines end at LF, CRLF or CR only. A byte-order mark at the start counts for nothing.</remarks>
public sealed class LineTable
{
    private readonly int[] _starts;
    private readonly int _skipped;

    /// <summary>Reads the line starts of a text.</summary>
    public LineTable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<int> starts = [0];
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }

        _starts = [.. starts];
        _skipped = text.Length > 0 && text[0] == '\uFEFF' ? 1 : 0;
    }

    /// <summary>Number of lines, at least 1.</summary>
    public int Count => _starts.Length;

    /// <summary>Line and column of an offset, both from 1.</summary>
    /// <param name="offset">Offset in UTF-16 units, from 0; the end of the text is a place too.</param>
    public (int Line, int Column) At(int offset)
    {
        int index = Array.BinarySearch(_starts, offset);
        int line = index >= 0 ? index : ~index - 1;
        int column = offset - _starts[line] + 1;
        return (line + 1, line == 0 ? Math.Max(1, column - _skipped) : column);
    }

    /// <summary>Offset at which a line starts.</summary>
    /// <param name="line">Number of the line, from 1 to <see cref="Count"/>.</param>
    /// <exception cref="IndexOutOfRangeException">The text has no such line.</exception>
    public int StartOf(int line) => _starts[line - 1];
}
