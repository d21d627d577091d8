namespace ShelfSafe.Foods;

/// <summary>A food named in running text.</summary>
/// <param name="Start">Offset of its first character in the text.</param>
/// <param name="End">Offset after its last character.</param>
/// <param name="Words">Its words, folded and singular.</param>
/// <param name="Match">What it means.</param>
public sealed record FoodMention(int Start, int End, string Words, FoodMatch Match);
