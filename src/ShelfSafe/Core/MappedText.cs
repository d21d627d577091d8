using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>A cleaned run of text whose every character still knows where it stood in the file.</summary>
/// <remarks>Entities are decoded, link text is kept and soft breaks are one space, so offsets here are not file offsets.</remarks>
/// <param name="Text">The cleaned text.</param>
/// <param name="Starts">For each character of <paramref name="Text"/>, the file offset of the first unit it came from.</param>
/// <param name="Ends">For each character of <paramref name="Text"/>, the file offset after the last unit it came from.</param>
public sealed record MappedText(string Text, ImmutableArray<int> Starts, ImmutableArray<int> Ends)
{
    private Look _look;

    /// <summary>What was looked up for the text last, beside it and no part of it; <see langword="null"/> where nothing was.</summary>
    internal object? LookedUp
    {
        get => _look.Value;
        set => _look = new(value);
    }

    /// <summary>Place in the file of the characters from <paramref name="start"/> up to, not including, <paramref name="end"/>.</summary>
    public SourceSpan Map(int start, int end)
    {
        if (Text.Length == 0)
        {
            return default;
        }

        start = Math.Clamp(start, 0, Text.Length - 1);
        return end <= start ? new(Starts[start], Starts[start]) : new(Starts[start], Ends[Math.Min(end, Text.Length) - 1]);
    }

    /// <summary>Place in the file of the whole text.</summary>
    public SourceSpan Span => Map(0, Text.Length);

    // Two texts are equal whatever was looked up for either.
    private readonly struct Look(object? value) : IEquatable<Look>
    {
        public object? Value => value;

        public bool Equals(Look other) => true;

        public override bool Equals(object? obj) => obj is Look;

        public override int GetHashCode() => 0;
    }
}
