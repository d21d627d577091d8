using ShelfSafe.Core;

namespace ShelfSafe.Measuring;

/// <summary>What one amount weighs and fills.</summary>
/// <param name="Grams">Edible grams as printed (a tin: its whole contents), or <see langword="null"/> where nothing can be said.</param>
/// <param name="Millilitres">Volume in the pot without air gaps, or <see langword="null"/>.</param>
/// <param name="Basis">How it was found, in a few words for the report ("3 each at 110 to 400 g").</param>
/// <param name="CupMillilitres">Volume as cups measure it, air gaps counted, or <see langword="null"/>.</param>
/// <param name="IsAbsurd">Whether the printed amount is nothing, negative, or more than any kitchen's; then nothing is weighed.</param>
public sealed record Weighing(Interval? Grams, Interval? Millilitres, string Basis, Interval? CupMillilitres = null, bool IsAbsurd = false)
{
    /// <summary>Nothing can be said, for the reason given.</summary>
    internal static Weighing Nothing(string why, bool absurd = false) => new(null, null, why, null, absurd);
}
