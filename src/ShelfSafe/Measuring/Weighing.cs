using ShelfSafe.Core;

namespace ShelfSafe.Measuring;

/// <summary>What one amount weighs and fills.</summary>
/// <param name="Grams">Edible grams as printed (a tin: its whole contents), or <see langword="null"/> where nothing can be said.</param>
/// <param name="Millilitres">Volume in the pot without air gaps, or <see langword="null"/>.</param>
/// <param name="Basis">How it was found, in a few words for the report ("3 onions at 110 to 400 g").</param>
public sealed record Weighing(Interval? Grams, Interval? Millilitres, string Basis);
