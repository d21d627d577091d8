using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>A cleaned run of text whose every character still knows where it stood in the file.</summary>
/// <remarks>Entities are decoded, link text is kept and soft breaks are one space, so offsets here are not file offsets.</remarks>
public sealed record MappedText
{
    // Where the text stands in the file as it stands here, the place of its first character; else the index of its first character in the lists.
    private readonly int _first;
    private readonly ImmutableArray<int> _starts;
    private readonly ImmutableArray<int> _ends;
    private Beside _beside;

    /// <summary>A text that stands in the file character for character.</summary>
    /// <param name="text">The cleaned text.</param>
    /// <param name="start">The file offset of its first character, in UTF-16 units from 0.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public MappedText(string text, int start)
        : this(text, start, default, default)
    {
    }

    /// <summary>A text whose characters stand anywhere.</summary>
    /// <param name="text">The cleaned text.</param>
    /// <param name="starts">For each character of <paramref name="text"/>, the file offset of the first unit it came from.</param>
    /// <param name="ends">For each character of <paramref name="text"/>, the file offset after the last unit it came from.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="ArgumentException">A list is not as long as the text.</exception>
    public MappedText(string text, ImmutableArray<int> starts, ImmutableArray<int> ends)
        : this(text, 0, starts, ends)
    {
        if (starts.IsDefault || ends.IsDefault || starts.Length != text.Length || ends.Length != text.Length)
        {
            throw new ArgumentException("Every character of the text needs a start and an end.", nameof(starts));
        }
    }

    private MappedText(string text, int first, ImmutableArray<int> starts, ImmutableArray<int> ends)
    {
        ArgumentNullException.ThrowIfNull(text);
        (Text, _first, _starts, _ends) = (text, first, starts, ends);
    }

    /// <summary>The cleaned text.</summary>
    public string Text { get; }

    /// <summary>Place in the file of the whole text.</summary>
    public SourceSpan Span => Map(0, Text.Length);

    /// <summary>What was found out of the words, beside them and no part of them.</summary>
    internal TextLook Look
    {
        get => _beside.Look ??= new();
        set => _beside.Look = value;
    }

    /// <summary>Place in the file of the characters from <paramref name="start"/> up to, not including, <paramref name="end"/>.</summary>
    public SourceSpan Map(int start, int end)
    {
        if (Text.Length == 0)
        {
            return default;
        }

        start = Math.Clamp(start, 0, Text.Length - 1);
        return end <= start ? new(StartOf(start), StartOf(start)) : new(StartOf(start), EndOf(Math.Min(end, Text.Length) - 1));
    }

    /// <summary>The file offset of the first unit that a character came from.</summary>
    /// <param name="index">Index of the character, from 0.</param>
    internal int StartOf(int index) => _starts.IsDefault ? _first + index : _starts[_first + index];

    /// <summary>The file offset after the last unit that a character came from.</summary>
    /// <param name="index">Index of the character, from 0.</param>
    internal int EndOf(int index) => _starts.IsDefault ? _first + index + 1 : _ends[_first + index];

    /// <summary>The characters from <paramref name="start"/> up to, not including, <paramref name="end"/>, which still know their places.</summary>
    internal MappedText Slice(int start, int end) => new(Text[start..end], _first + start, _starts, _ends);

    /// <summary>A part of the text that was cut before, from this text or one of the same words.</summary>
    internal MappedText Slice(TextPiece piece) => new(piece.Text, _first + piece.Start, _starts, _ends) { Look = piece.Look };

    // Two texts are equal whatever was found out of either.
    private struct Beside : IEquatable<Beside>
    {
        public TextLook? Look { get; set; }

        public readonly bool Equals(Beside other) => true;

        public override readonly bool Equals(object? obj) => obj is Beside;

        public override readonly int GetHashCode() => 0;
    }
}
