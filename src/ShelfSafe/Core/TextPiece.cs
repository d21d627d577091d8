namespace ShelfSafe.Core;

/// <summary>A part of a text, with what was found out of its words.</summary>
/// <param name="Start">Index of its first character in the text, from 0.</param>
/// <param name="Text">Its words.</param>
/// <param name="Look">What was found out of them.</param>
internal sealed record TextPiece(int Start, string Text, TextLook Look);
