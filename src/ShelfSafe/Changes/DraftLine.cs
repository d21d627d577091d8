namespace ShelfSafe.Changes;

/// <summary>A line of the ingredient list.</summary>
internal sealed class DraftLine(string text, string? group, int offset)
{
    /// <summary>The line as it is printed now.</summary>
    public string Text { get; set; } = text;

    /// <summary>The label above it, or <see langword="null"/>.</summary>
    public string? Group { get; } = group;

    /// <summary>Offset in the original file, or -1 where it was added.</summary>
    public int Offset { get; } = offset;

    /// <summary>Where it went.</summary>
    public DraftPlace Place { get; set; }
}
