using System.Globalization;
using System.Text;

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
    public static string[] Words(string phrase)
    {
        List<string> words = [];
        StringBuilder word = new();
        foreach (char raw in phrase)
        {
            char c = Fold(char.ToLowerInvariant(raw), out char second);
            if (char.IsLetterOrDigit(c) || c == '%')
            {
                word.Append(c);
                if (second != '\0')
                {
                    word.Append(second);
                }
            }
            else if (c is '\'' or '\u2019' or '\u00AD' or '\u2122' or '\u00AE')
            {
                // An apostrophe, soft hyphen or trade sign joins: "cow's" is "cows".
            }
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }

        if (word.Length > 0)
        {
            words.Add(word.ToString());
        }

        return [.. words];
    }

    /// <summary>The words of a phrase, folded and singular, joined by blanks.</summary>
    public static string Key(string phrase) => string.Join(' ', Words(phrase).Select(Singular));

    /// <summary>Singular of a folded English word.</summary>
    public static string Singular(string word)
    {
        if (word.Length < 4 || Unchanged.Contains(word) || word[^1] != 's' || word[^2] is 's' or 'u' && word.EndsWith("us", StringComparison.Ordinal))
        {
            return word;
        }

        if (word is "chilies" or "chillies")
        {
            return word[..^2];
        }

        if (word.EndsWith("ies", StringComparison.Ordinal))
        {
            return word is "pies" or "cookies" or "brownies" or "veggies" or "smoothies" or "pattypans" ? word[..^1] : word[..^3] + "y";
        }

        if (word.EndsWith("ves", StringComparison.Ordinal) && word is not ("olives" or "chives" or "cloves" or "endives" or "preserves" or "gloves"))
        {
            return word is "knives" or "wives" ? word[..^3] + "fe" : word[..^3] + "f";
        }

        if (word.EndsWith("oes", StringComparison.Ordinal) && word is not ("shoes" or "toes"))
        {
            return word[..^2];
        }

        bool hissing = word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("ches", StringComparison.Ordinal) && word is not ("quiches" or "brioches" or "ceviches")
            || word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("sses", StringComparison.Ordinal);
        return hissing ? word[..^2] : word[..^1];
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
