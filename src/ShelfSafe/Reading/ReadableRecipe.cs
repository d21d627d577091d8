namespace ShelfSafe.Reading;

/// <summary>A recipe as text that can be vetted.</summary>
/// <param name="Text">The text; lines and columns of a report count in it.</param>
/// <param name="IsPlain">Whether it is no Markdown.</param>
public sealed record ReadableRecipe(string Text, bool IsPlain);
