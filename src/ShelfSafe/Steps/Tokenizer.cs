using System.Globalization;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Steps;

/// <summary>Cuts a sentence into words and numbers in one pass.</summary>
internal static class Tokenizer
{
    /// <summary>All tokens of a text in order.</summary>
    public static List<Token> Cut(string text, WordNumbers vocabulary)
    {
        List<Token> tokens = new((text.Length / 5) + 1);
        bool broken = false;
        int at = 0;
        while (at < text.Length)
        {
            char first = text[at];
            if (char.IsLetter(first))
            {
                int end = WordEnd(text, at);
                tokens.Add(Word(text, at, end, vocabulary, broken));
                (at, broken) = (end, IsJoint(text.AsSpan(at, end - at)));
            }
            else if (char.IsAsciiDigit(first) || Vulgar(first) > 0)
            {
                int end = Number(text, at, out double value);
                tokens.Add(new(at, end, 0, 0, 0, value, broken));
                (at, broken) = (end, false);
            }
            else
            {
                broken |= first is ',' or ';' or ':' or '.' or '!' or '?' or '(' or ')' or '\u2013' or '\u2014';
                at++;
            }
        }

        return tokens;
    }

    // "Do not stir, then blend", "without a lid until mushy": what stands before these words does not reach past them.
    private static bool IsJoint(ReadOnlySpan<char> word) =>
        word.Equals("then", StringComparison.OrdinalIgnoreCase)
        || word.Equals("and", StringComparison.OrdinalIgnoreCase)
        || word.Equals("but", StringComparison.OrdinalIgnoreCase)
        || word.Equals("until", StringComparison.OrdinalIgnoreCase)
        || word.Equals("till", StringComparison.OrdinalIgnoreCase);

    private static int WordEnd(string text, int at)
    {
        while (at < text.Length && (char.IsLetter(text[at]) || IsInnerMark(text, at)))
        {
            at++;
        }

        return at;
    }

    private static bool IsInnerMark(string text, int at) =>
        text[at] is ('\'' or '\u2019' or '\u00AD') && at + 1 < text.Length && char.IsLetter(text[at + 1]);

    private static Token Word(string text, int start, int end, WordNumbers vocabulary, bool broken)
    {
        Span<char> buffer = stackalloc char[WordStem.LongestWord];
        ReadOnlySpan<char> word = text.AsSpan(start, end - start);
        if (word.Length > buffer.Length)
        {
            return new(start, end, 0, 0, 0, double.NaN, broken);
        }

        int length = WordStem.Fold(word, buffer);
        (int stem, int exact, int prefix) = vocabulary.Find(buffer[..length]);
        return new(start, end, stem, exact, prefix, NumberWord(buffer[..length]), broken);
    }

    private static double NumberWord(ReadOnlySpan<char> word) => NumberWords.Of(word) is var number and > 0 ? number : double.NaN;

    private static int Number(string text, int at, out double value)
    {
        if (Vulgar(text[at]) is double part and > 0)
        {
            value = part;
            return at + 1;
        }

        int end = Digits(text, at);
        if (end + 1 < text.Length && text[end] is ('.' or ',') && char.IsAsciiDigit(text[end + 1]))
        {
            bool thousands = text[end] == ',' && Digits(text, end + 1) - end == 4;
            end = Digits(text, end + 1);
            value = Parse(text[at..end].Replace(",", thousands ? string.Empty : ".", StringComparison.Ordinal));
            return end;
        }

        value = Parse(text.AsSpan(at, end - at));
        int next = end < text.Length && text[end] == ' ' ? end + 1 : end;
        if (next < text.Length && Vulgar(text[next]) is double rest and > 0)
        {
            value += rest;
            return next + 1;
        }

        if (Slashed(text, at, end, out double fraction) is int last and > 0)
        {
            value = fraction;
            return last;
        }

        int after = Digits(text, next);
        if (next > end && after > next && Slashed(text, next, after, out double more) is int mixed and > 0)
        {
            value += more; // "1 1/2"
            return mixed;
        }

        return end;
    }

    // The end of "1/2" whose upper digits are given, or 0.
    private static int Slashed(string text, int from, int end, out double value)
    {
        value = 0;
        if (end + 1 >= text.Length || text[end] is not ('/' or '\u2044') || !char.IsAsciiDigit(text[end + 1]))
        {
            return 0;
        }

        int last = Digits(text, end + 1);
        double under = Parse(text.AsSpan(end + 1, last - end - 1));
        value = under > 0 ? Parse(text.AsSpan(from, end - from)) / under : double.NaN;
        return last;
    }

    private static int Digits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    private static double Parse(ReadOnlySpan<char> digits) =>
        double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    private static double Vulgar(char sign) => sign switch
    {
        '\u00BC' => 0.25,
        '\u00BD' => 0.5,
        '\u00BE' => 0.75,
        '\u2153' => 1.0 / 3,
        '\u2154' => 2.0 / 3,
        _ => 0,
    };
}
