namespace ShelfSafe.Core;

/// <summary>A half-open run of UTF-16 units of the text as it was read.</summary>
/// <param name="Start">Offset of the first unit, from 0.</param>
/// <param name="End">Offset after the last unit; never below <paramref name="Start"/>.</param>
public readonly record struct SourceSpan(int Start, int End)
{
    /// <summary>Number of UTF-16 units.</summary>
    public int Length => End - Start;

    /// <summary>The smallest span that holds both.</summary>
    public SourceSpan Union(SourceSpan other) => new(Math.Min(Start, other.Start), Math.Max(End, other.End));

    /// <summary>Whether the two share at least one unit.</summary>
    public bool Overlaps(SourceSpan other) => Start < other.End && other.Start < End;
}
