namespace ShelfSafe.Reading;

/// <summary>Where a row stands: heading level, list or table number, depth, numbering.</summary>
internal readonly record struct RowPlace(int Level = 0, int Block = 0, int Depth = 0, bool Ordered = false);
