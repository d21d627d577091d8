using System.Globalization;

namespace ShelfSafe.Foods;

/// <summary>Brings food words to one form: lower case, no accents, hyphens as blanks, each word singular.</summary>
/// <remarks>Works on invariant rules and a table of its own, so that the culture of the machine plays no part.</remarks>
internal static class WordFolding
{
    private static readonly HashSet<string> Unchanged = new(StringComparer.Ordinal)
    {
        "asparagus", "couscous", "hummus", "molasses", "swiss", "brussels", "schnapps", "lens", "cress", "watercress", "grass", "lemongrass", "bass",
        "octopus", "hibiscus", "citrus", "cactus", "hollandaise", "mayonnaise", "bouillabaisse", "foie", "gras", "gas", "is", "this",
        "us", "plus", "less", "boneless", "skinless", "seedless", "its", "series", "haggis", "pastis", "anis", "cassis", "albus", "pus", "molass", "express", "press", "glass", "hass", "swede", "as", "herbes", "provence", "has", "les", "des",
    };

    /// <summary>The words of a phrase, folded.</summary>
    public static string[] Words(string phrase) => Words(phrase, null);

    /// <summary>The words of a phrase, folded, with their places.</summary>
    /// <param name="phrase">The phrase.</param>
    /// <param name="places">Receives for each word the offset of its first letter and that after its last.</param>
    public static string[] Words(string phrase, List<(int Start, int End)>? places)
    {
        List<string> words = [];
        (int start, int end) = (0, 0);
        char[] word = [];
        int length = 0;
        for (int i = 0; i <= phrase.Length; i++)
        {
            char c = i == phrase.Length ? ' ' : phrase[i];
            if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            {
                (start, end) = (length == 0 ? i : start, i + 1);
                Append(ref word, ref length, c, phrase.Length);
                continue;
            }

            char second = '\0';
            c = char.IsAsciiLetterUpper(c) ? (char)(c | 0x20) : Fold(char.ToLowerInvariant(c), out second);
            if (char.IsLetterOrDigit(c) || c == '%')
            {
                (start, end) = (length == 0 ? i : start, i + 1);
                Append(ref word, ref length, c, phrase.Length);
                if (second != '\0')
                {
                    Append(ref word, ref length, second, phrase.Length);
                }
            }
            else if (length > 0 && !Joins(c))
            {
                words.Add(new string(word, 0, length));
                places?.Add((start, end));
                length = 0;
            }
        }

        return [.. words];
    }

    /// <summary>The words of a phrase, folded and singular, joined by blanks.</summary>
    public static string Key(string phrase) => string.Join(' ', Words(phrase).Select(Singular));

    /// <summary>Singular of a folded English word.</summary>
    public static string Singular(string word)
    {
        if (word.Length < 4 || word[^1] != 's')
        {
            return word;
        }

        char[] letters = word.ToCharArray();
        int length = Singular(letters);
        return length == word.Length ? word : new string(letters, 0, length);
    }

    /// <summary>Makes a folded English word singular where it stands and returns its new length.</summary>
    public static int Singular(Span<char> word)
    {
        int all = word.Length;
        if (all < 4 || word[^1] != 's' || word[^2] is 's' or 'u' || Unchanged.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word))
        {
            return all;
        }

        if (word.EndsWith("ies"))
        {
            if (word is "pies" or "cookies" or "brownies" or "veggies" or "smoothies")
            {
                return all - 1;
            }

            if (word is "chillies" or "chilies")
            {
                return all - 2;
            }

            word[all - 3] = 'y';
            return all - 2;
        }

        if (word.EndsWith("ves") && word is not ("olives" or "chives" or "cloves" or "endives" or "preserves" or "gloves"))
        {
            word[all - 3] = 'f';
            return word is "knifes" or "wifes" ? all - 1 : all - 2;
        }

        bool hissing = word.EndsWith("oes") ? word is not ("shoes" or "toes")
            : (word.EndsWith("ches") && word is not ("quiches" or "brioches" or "ceviches")) || word.EndsWith("shes") || word.EndsWith("xes") || word.EndsWith("sses");
        return hissing ? all - 2 : all - 1;
    }

    /// <summary>Folds one word of a text into a buffer; -1 where a sign inside parts it into several.</summary>
    /// <param name="raw">A run of letters, digits and apostrophes.</param>
    /// <param name="target">At least twice as long.</param>
    public static int Fold(ReadOnlySpan<char> raw, Span<char> target)
    {
        int length = 0;
        foreach (char letter in raw)
        {
            char second = '\0';
            char c = char.IsAsciiLetterUpper(letter) ? (char)(letter | 0x20) : letter < 128 ? letter : Fold(char.ToLowerInvariant(letter), out second);
            if (char.IsLetterOrDigit(c))
            {
                target[length++] = c;
                if (second != '\0')
                {
                    target[length++] = second;
                }
            }
            else if (!Joins(c))
            {
                return -1;
            }
        }

        return length;
    }

    // An apostrophe, soft hyphen or trade sign joins: "cow's" is "cows".
    private static bool Joins(char c) => c is '\'' or '\u2019' or '\u00AD' or '\u2122' or '\u00AE';

    private static void Append(ref char[] word, ref int length, char c, int most)
    {
        if (word.Length == 0)
        {
            word = new char[(2 * most) + 2];
        }

        word[length++] = c;
    }

    private static char Fold(char c, out char second)
    {
        second = '\0';
        if (c < 128)
        {
            return c;
        }

        switch (c)
        {
            case 'ß': second = 's'; return 's';
            case 'œ': second = 'e'; return 'o';
            case 'æ': second = 'e'; return 'a';
            case 'ı': return 'i';
            default: break;
        }

        return CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark ? '\u00AD' : Table.GetValueOrDefault(c, c);
    }

    private static readonly Dictionary<char, char> Table = MakeTable();

    private static Dictionary<char, char> MakeTable()
    {
        Dictionary<char, char> table = [];
        foreach ((string letters, char plain) in (ReadOnlySpan<(string, char)>)
            [("àáâãäåāăąạảấầẩẫậắằẳẵặ", 'a'), ("çćčĉċ", 'c'), ("ďđð", 'd'), ("èéêëēėęěẹẻẽếềểễệ", 'e'), ("ĝğġģ", 'g'), ("ìíîïīįỉịĩ", 'i'), ("ķ", 'k'), ("łĺļľ", 'l'),
             ("ñńňņ", 'n'), ("òóôõöøōőọỏốồổỗộơớờởỡợ", 'o'), ("ŕřŗ", 'r'), ("śšşș", 's'), ("ťţț", 't'), ("ùúûüūůűųụủưứừửữự", 'u'), ("ýÿỳỷỹ", 'y'), ("žźż", 'z')])
        {
            foreach (char letter in letters)
            {
                table[letter] = plain;
            }
        }

        return table;
    }
}
