namespace ShelfSafe.Reading;

/// <summary>A line end inside a paragraph.</summary>
/// <param name="Index">Index of the space that stands for it in the cleaned text.</param>
/// <param name="Hard">Whether the writer asked for a new line (two spaces, a backslash, a break tag).</param>
internal readonly record struct LineBreak(int Index, bool Hard);
