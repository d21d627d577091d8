namespace ShelfSafe.Steps;

/// <summary>All tokens of a sentence at a glance: the last six bits of their vocabulary numbers, and whether there is a number.</summary>
/// <remarks>A phrase that needs a bit which the sentence lacks cannot stand in it; one that needs none such may.</remarks>
/// <param name="Words">One bit for each vocabulary number; several numbers share one.</param>
/// <param name="Numbers">Whether a token is a number.</param>
internal readonly record struct TokenMask(ulong Words, bool Numbers)
{
    /// <summary>The mask of a sentence.</summary>
    public static TokenMask Of(List<Token> tokens)
    {
        ulong words = 0;
        bool numbers = false;
        foreach (Token token in tokens)
        {
            words |= Bit(token.Stem) | Bit(token.Exact) | Bit(token.Prefix);
            numbers |= !double.IsNaN(token.Number);
        }

        return new(words, numbers);
    }

    private static ulong Bit(int word) => word > 0 ? 1UL << (word & 63) : 0;
}
