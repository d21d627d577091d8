using static ShelfSafe.Reading.Amounts.NumberScan;

namespace ShelfSafe.Reading.Amounts;

/// <summary>Reads numbers that are written as words: "half a dozen", "a couple of", "one and a half".</summary>
internal static class SpelledNumber
{
    /// <summary>Reads a number in words at an offset; false where none stands there.</summary>
    /// <param name="end">Offset after it and the little words that belong to it.</param>
    public static bool TryRead(string text, int at, out int end, out double value)
    {
        ReadOnlySpan<char> word = WordLook.At(text, at, out end);
        if (word is "a" or "an")
        {
            int next = Skip(text, end);
            ReadOnlySpan<char> second = WordLook.At(text, next, out int secondEnd);
            if (second is "couple" or "dozen" or "half" or "quarter")
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
        int more = Skip(text, end);
        if (WordLook.At(text, more, out int moreEnd) is "dozen")
        {
            value *= 12;
            end = moreEnd;
        }
        else if (WordLook.At(text, more, out moreEnd) is "and" && WordLook.At(text, Skip(text, moreEnd), out int aEnd) is "a" && WordLook.At(text, Skip(text, aEnd), out int halfEnd) is "half")
        {
            value += 0.5;
            end = halfEnd;
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
