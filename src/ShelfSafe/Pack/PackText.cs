namespace ShelfSafe.Pack;

/// <summary>One file of a pack as its reader takes it: text, or a table that the build has cut into cells.</summary>
internal readonly struct PackText
{
    private readonly string? _text;

    /// <summary>A file as it stands on disk.</summary>
    public PackText(string text) => _text = text;

    /// <summary>A table of the built-in pack.</summary>
    public PackText(ImageTable cells) => Cells = cells;

    /// <summary>The cells, or <see langword="null"/> where the file is text.</summary>
    public ImageTable? Cells { get; }

    public static implicit operator PackText(string text) => new(text);

    /// <summary>The text; empty for a table that has been cut.</summary>
    public override string ToString() => _text ?? string.Empty;
}
