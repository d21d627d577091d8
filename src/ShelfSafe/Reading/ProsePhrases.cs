using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Reading;

/// <summary>Cuts the foods with amounts out of a sentence, for recipes that have no list.</summary>
/// <remarks>Known gap: a food that is named without any amount stays in the sentence, where the steps are read for foods.</remarks>
internal static class ProsePhrases
{
    private const int LongestPhrase = 90;

    private static readonly string[] _stops =
    [
        " in ", " into ", " with ", " until ", " over ", " on ", " from ", " then ", " while ", " for ", " when ", " which ", " that ", " at ",
        " together", " through ", " per ", " till ", " after ", " before ", " so ", " is ", " are ", " to the ", " to it ", " to each ", " by ",
        " as ", " during ", " if ", " but ", " under ", " again", " onto ", " overnight", " take ", " give ", " gives ", " make ", " makes ", " yield ", " cook ", " stir ", " simmer ", " boil ", " bring ",
    ];

    /// <summary>The phrases of a sentence, in order.</summary>
    public static List<MappedText> Cut(MappedText sentence)
    {
        List<MappedText> phrases = [];
        string text = sentence.Text;
        int at = 0;
        while (at < text.Length)
        {
            bool wordStart = at == 0 || !char.IsLetterOrDigit(text[at - 1]);
            if (!wordStart || !IsAmountAt(text, at))
            {
                at++;
                continue;
            }

            int end = PhraseEnd(text, at);
            end = WithoutJoint(text, at, end);
            MappedText phrase = sentence.Cut(at, end);
            if (HasFoodWord(phrase.Text) && !IsForTheCanner(text, at, end))
            {
                phrases.Add(phrase);
            }

            at = Math.Max(end, at + 1);
        }

        return phrases;
    }

    // "Put 4 quarts of water in the canner": none of it goes into a jar.
    private static bool IsForTheCanner(string text, int at, int end)
    {
        ReadOnlySpan<char> rest = text.AsSpan(end);
        int clause = rest.IndexOfAny('.', ';', ',');
        return text.AsSpan(at, end - at).TrimEnd().EndsWith("water", StringComparison.OrdinalIgnoreCase)
            && (rest.StartsWith(" in ", StringComparison.OrdinalIgnoreCase) || rest.StartsWith(" into ", StringComparison.OrdinalIgnoreCase))
            && rest[..(clause < 0 ? rest.Length : clause)].Contains("canner", StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsAmountAt(string text, int at)
    {
        ReadOnlySpan<char> rest = text.AsSpan(at, Math.Min(text.Length - at, 60));
        if (IsVerb(rest, "quarter") || IsVerb(rest, "half"))
        {
            return false;
        }

        if (at > 0 && text[at - 1] is '.' or '/' or '°' or '-' or '–')
        {
            return false;
        }

        if (rest.StartsWith("the ", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("some ", StringComparison.OrdinalIgnoreCase)
            || rest.StartsWith("about ", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("another ", StringComparison.OrdinalIgnoreCase))
        {
            return (rest.StartsWith("the juice", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("the zest", StringComparison.OrdinalIgnoreCase))
                && AmountScan.StartsWithAmount(rest);
        }

        return AmountScan.StartsWithAmount(rest);
    }

    // "Quarter and core", "quarter about a pound": what is done, unless a measure or "of" follows.
    private static bool IsVerb(ReadOnlySpan<char> rest, string number)
    {
        if (!rest.StartsWith(number, StringComparison.OrdinalIgnoreCase) || rest.Length <= number.Length || rest[number.Length] != ' ')
        {
            return false;
        }

        ReadOnlySpan<char> next = AmountScan.UnitAfter(rest, number.Length);
        return next is "and" or "the" or "them" or "about" or "into" or "each" or "or" or "lengthwise" or "fill" or "way" or "full" or "cover";
    }

    private static int PhraseEnd(string text, int start)
    {
        int number = Math.Max(AmountScan.NumberEnd(text, start), start + 1);
        int limit = Math.Min(text.Length, start + LongestPhrase);
        int depth = 0;
        for (int i = number; i < limit; i++)
        {
            char c = text[i];
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth > 0)
            {
                continue;
            }

            bool spaced = i + 1 == text.Length || TextMarks.IsBlank(text[i + 1]);
            if (depth < 0 || c is ';' or ':' or '!' or '?' or '\u2192' or '\u00B7' or '\u2022' || (c is ',' && spaced) || (c is '.' && spaced && !IsMeasureBefore(text, i)))
            {
                return i;
            }

            if (c == ' ' && StopsAt(text, i))
            {
                return i;
            }
        }

        return limit;
    }

    // "5 lb beans and, if you like, salt": the joint is no part of the phrase.
    private static int WithoutJoint(string text, int start, int end)
    {
        ReadOnlySpan<char> phrase = text.AsSpan(start, end - start).TrimEnd();
        foreach (string joint in (ReadOnlySpan<string>)[" and", " or", " with", " plus"])
        {
            if (phrase.EndsWith(joint, StringComparison.OrdinalIgnoreCase))
            {
                return start + phrase.Length - joint.Length;
            }
        }

        return end;
    }

    private static bool StopsAt(string text, int at)
    {
        foreach (string stop in _stops)
        {
            if (string.Compare(text, at, stop, 0, stop.Length, StringComparison.OrdinalIgnoreCase) == 0)
            {
                return true;
            }
        }

        if (string.Compare(text, at, " and ", 0, 5, StringComparison.OrdinalIgnoreCase) != 0)
        {
            return false;
        }

        // "and" ends the phrase before an amount or a direction, not within "salt and pepper" or "a pint and a half of milk".
        if (SpelledNumber.TryRest(text, at + 1, out _, out _))
        {
            return false;
        }

        int end = at + 5;
        while (end < text.Length && char.IsLetter(text[end]))
        {
            end++;
        }

        string next = text[(at + 5)..end].ToLowerInvariant();
        ReadOnlySpan<char> rest = text.AsSpan(at + 5, Math.Min(text.Length - at - 5, 60));
        return AmountScan.StartsWithAmount(rest) || LineWords.IsVerb(next) || next is "the" or "it" or "them" or "you";
    }

    private static bool IsMeasureBefore(string text, int dot)
    {
        int start = dot;
        while (start > 0 && char.IsLetter(text[start - 1]))
        {
            start--;
        }

        return dot + 2 < text.Length && !char.IsUpper(text[dot + 2]) && LineWords.IsShortened(text[start..dot].ToLowerInvariant());
    }

    /// <summary>Whether more than numbers and measures is left: "half" or "2 jars" alone is no food.</summary>
    public static bool HasFoodWord(string phrase)
    {
        foreach (string word in HeadingWords.Normalise(phrase).Split(' '))
        {
            if (word.Length > 0 && char.IsLetter(word[0]) && !LineWords.IsMeasure(word) && !LineWords.IsNumber(word)
                && !LineWords.IsNotFoodUnit(word) && !LineWords.IsEquipment(word)
                && word is not ("a" or "an" or "of" or "the" or "more" or "less" or "or" or "and" or "to" or "about" or "it" or "them" or "in" or "inch" or "inches" or "solids" or "solid" or "thirds" or "fourths" or "quarters" or "drizzle" or "across" or "depth" or "headspace" or "half" or "at" or "time" or "way" or "little" or "bit" or "lot" or "piece" or "pieces" or "leave" or "whole" or "top" or "thick" or "long" or "lengths" or "cubes" or "slices" or "strips" or "dial" or "weighted" or "gauge" or "pressure" or "straight" or "core" or "wide" or "apart" or "side" or "sides"))
            {
                return true;
            }
        }

        return false;
    }
}
