namespace ShelfSafe.Reading;

/// <summary>What a single line looks like at a glance: the evidence from which lists are sorted.</summary>
/// <param name="HasAmount">It begins with an amount, or holds a number with a measure.</param>
/// <param name="StartsWithAmount">It begins with an amount.</param>
/// <param name="IsVerb">It begins with a verb of the kitchen that is no food.</param>
/// <param name="IsTiming">It states a time, a yield or another fact about the recipe.</param>
/// <param name="IsEquipment">Its last words name a tool.</param>
/// <param name="Words">Number of words.</param>
internal readonly record struct LineShape(
    bool HasAmount, bool StartsWithAmount, bool IsVerb, bool IsTiming, bool IsEquipment, int Words)
{
    private const int LongestLine = 400;

    /// <summary>Most words in a line that only names a tool.</summary>
    private const int LongestTool = 10;

    /// <summary>Looks at a line.</summary>
    public static LineShape Of(string text)
    {
        ReadOnlySpan<char> shown = text.AsSpan(0, Math.Min(text.Length, LongestLine));
        string words = HeadingWords.Normalise(shown);
        int space = words.IndexOf(' ', StringComparison.Ordinal);
        string first = space < 0 ? words : words[..space];
        bool timing = IsTimingLine(words, shown);
        int count = Count(words);
        AmountScan.Result amount = AmountScan.Look(shown);
        return new(
            !timing && (amount.AtStart || amount.Measured),
            !timing && amount.AtStart,
            LineWords.IsPlainVerb(first) || (LineWords.IsVerb(first) && count > 7),
            timing,
            count <= LongestTool && NamesTool(words),
            count);
    }

    private static bool IsTimingLine(string words, ReadOnlySpan<char> shown)
    {
        if (!LineWords.IsTiming(words, out int named))
        {
            return false;
        }

        // "Serves 8" needs no colon; "Time to eat" is no timing.
        int colon = shown.IndexOfAny(':', '|', '=');
        bool colonAfterName = colon >= 0 && HeadingWords.Normalise(shown[..colon]).Length <= named + 8;
        bool numberNext = words.Length > named + 1 && (char.IsAsciiDigit(words[named + 1]) || LineWords.IsNumber(FirstWord(words.AsSpan(named + 1))));
        return colonAfterName || (numberNext && !words.StartsWith("from", StringComparison.Ordinal));
    }

    private static ReadOnlySpan<char> FirstWord(ReadOnlySpan<char> words)
    {
        int space = words.IndexOf(' ');
        return space < 0 ? words : words[..space];
    }

    private static bool NamesTool(string words)
    {
        foreach (Range range in words.AsSpan().Split(' '))
        {
            if (LineWords.IsEquipment(words.AsSpan()[range]))
            {
                return true;
            }
        }

        return false;
    }

    private static int Count(string words)
    {
        int count = words.Length == 0 ? 0 : 1;
        foreach (char c in words)
        {
            count += c == ' ' ? 1 : 0;
        }

        return count;
    }
}
