using static ShelfSafe.Reading.Amounts.NumberScan;

namespace ShelfSafe.Reading.Amounts;

/// <summary>Reads numbers that are written as words: "half a dozen", "a couple of", "one and a half", "three-fourths".</summary>
internal static class SpelledNumber
{
    /// <summary>Reads a number in words at an offset; false where none stands there.</summary>
    /// <param name="end">Offset after it and the little words that belong to it.</param>
    public static bool TryRead(string text, int at, out int end, out double value)
    {
        if (TryFraction(text, at, out end, out value))
        {
            end = AfterOf(text, end);
            return true;
        }

        ReadOnlySpan<char> word = WordLook.At(text, at, out end);
        if (word is "a" or "an")
        {
            int next = Skip(text, end);
            ReadOnlySpan<char> second = WordLook.At(text, next, out int secondEnd);
            if (second is "couple" or "dozen")
            {
                value = Value(second);
                end = AfterOf(text, secondEnd);
                return true;
            }

            value = 1;
            return true;
        }

        value = Value(word);
        if (value == 0)
        {
            return false;
        }

        return word is "half" or "quarter" or "couple" or "dozen" ? Part(text, ref end, ref value) : Whole(text, ref end, ref value);
    }

    /// <summary>Reads a fraction in words: "one-half", "three fourths", "a third".</summary>
    public static bool TryFraction(ReadOnlySpan<char> text, int at, out int end, out double value)
    {
        value = 0;
        ReadOnlySpan<char> word = WordLook.At(text, at, out end);
        double top = word is "a" or "an" ? 1 : NumberWords.Of(word);
        bool joined = end < text.Length && (text[end] is '-' or '\u2010' or '\u2011' || char.IsWhiteSpace(text[end]));
        if (top is 0 or > 7 || !joined)
        {
            end = at;
            return false;
        }

        ReadOnlySpan<char> part = WordLook.At(text, end + 1, out end);
        double parts = top == 1 ? Parts(part) : part is [.. var one, 's'] ? Parts(one) : part is "halves" ? 2 : top > 1 && text[..end].EndsWith("-quarter", StringComparison.OrdinalIgnoreCase) ? 4 : 0;
        value = parts == 0 ? 0 : top / parts;
        return parts > top;
    }

    /// <summary>Reads what is said behind a measure: "three pounds <em>and a half</em> of sugar", "a pint <em>and a quarter</em>, ...".</summary>
    /// <param name="at">Offset of "and".</param>
    public static bool TryRest(ReadOnlySpan<char> text, int at, out int end, out double value)
    {
        value = 0;
        if (WordLook.At(text, at, out end) is not "and" || end >= text.Length || !TryFraction(text, end + 1, out end, out value))
        {
            return false;
        }

        return end >= text.Length || text[end] is ',' or ';' or '.' or ')' || WordLook.At(text, end + 1, out _) is "of";
    }

    // Into how many parts a lower-case word divides, or 0.
    private static double Parts(ReadOnlySpan<char> word) => word switch
    {
        "half" => 2,
        "third" => 3,
        "fourth" or "quarter" => 4,
        "fifth" => 5,
        "sixth" => 6,
        "eighth" => 8,
        _ => 0,
    };

    // What a lower-case word counts, or 0.
    private static double Value(ReadOnlySpan<char> word) => word switch
    {
        "dozen" => 12,
        "half" => 0.5,
        "quarter" => 0.25,
        "couple" => 2,
        _ => NumberWords.Of(word),
    };

    // "half a dozen", "half a teaspoon", "a quarter of a pound", "half dozen".
    private static bool Part(string text, ref int end, ref double value)
    {
        int next = Skip(text, end);
        ReadOnlySpan<char> follow = WordLook.At(text, next, out int followEnd);
        if (follow is "a" or "an")
        {
            int third = Skip(text, followEnd);
            if (WordLook.At(text, third, out int dozenEnd) is "dozen")
            {
                value *= 12;
                end = dozenEnd;
                return true;
            }

            end = followEnd;
            return true;
        }

        if (follow is "dozen")
        {
            value *= 12;
            end = followEnd;
            return true;
        }

        end = AfterOf(text, end);
        return true;
    }

    // "two dozen", "one and a half".
    private static bool Whole(string text, ref int end, ref double value)
    {
        int more = end < text.Length && text[end] == '-' ? end + 1 : Skip(text, end);
        if (value >= 20 && NumberWords.Of(WordLook.At(text, more, out int oneEnd)) is > 0 and < 10 and var ones)
        {
            value += ones; // "twenty-one"
            end = oneEnd;
        }

        more = Skip(text, end);
        if (WordLook.At(text, more, out int moreEnd) is "dozen")
        {
            value *= 12;
            end = moreEnd;
        }
        else if (WordLook.At(text, more, out moreEnd) is "and" && TryFraction(text, Skip(text, moreEnd), out int partEnd, out double part))
        {
            value += part; // "one and a half", "one and three-fourths"
            end = partEnd;
        }

        return true;
    }

    // "a couple of onions", "a quarter of a pound": the little words belong to the number.
    private static int AfterOf(string text, int end)
    {
        int next = Skip(text, end);
        if (WordLook.At(text, next, out int ofEnd) is not "of")
        {
            return end;
        }

        next = Skip(text, ofEnd);
        return WordLook.At(text, next, out int aEnd) is "a" or "an" ? aEnd : ofEnd;
    }
}
