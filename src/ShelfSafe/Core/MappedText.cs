using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>A cleaned run of text whose every character still knows where it stood in the file.</summary>
/// <remarks>Entities are decoded, link text is kept and soft breaks are one space, so offsets here are not file offsets.</remarks>
/// <param name="Text">The cleaned text.</param>
/// <param name="Offsets">For each character of <paramref name="Text"/> the file offset it came from, then one more: the offset after the last.</param>
public sealed record MappedText(string Text, ImmutableArray<int> Offsets)
{
    /// <summary>Place in the file of the characters from <paramref name="start"/> up to <paramref name="end"/>.</summary>
    public SourceSpan Map(int start, int end)
    {
        if (end <= start)
        {
            return new(Offsets[start], Offsets[start]);
        }

        // The end comes from the last character, so that a mark after it stays outside the span.
        int last = end - 1;
        int width = Offsets[end] - Offsets[last];
        bool plain = width == 1 || (end < Text.Length && width > 1 && char.IsWhiteSpace(Text[last]));
        return new(Offsets[start], plain ? Offsets[last] + 1 : Offsets[end] < Offsets[last] ? Offsets[last] + 1 : Offsets[end]);
    }

    /// <summary>Place in the file of the whole text.</summary>
    public SourceSpan Span => Map(0, Text.Length);
}
