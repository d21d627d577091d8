namespace ShelfSafe.Pack;

/// <summary>Settles a card's choices of number, <c>{is|are}</c>, where no ingredient tells how many there are.</summary>
internal static class NumberChoice
{
    /// <summary>The text with each choice of number, <c>{is|are}</c>, as it is said of one thing.</summary>
    public static string Singular(string text)
    {
        int open = text.IndexOf('{', StringComparison.Ordinal);
        while (open >= 0)
        {
            int close = text.IndexOf('}', open);
            int bar = close < 0 ? -1 : text.IndexOf('|', open, close - open);
            text = bar < 0 ? text : string.Concat(text.AsSpan(0, open), text.AsSpan(open + 1, bar - open - 1), text.AsSpan(close + 1));
            open = text.IndexOf('{', bar < 0 ? open + 1 : open);
        }

        return text;
    }
}
