using System.Buffers;

namespace ShelfSafe.Steps;

/// <summary>Brings a word of a recipe to the form under which the rule pack's words are filed.</summary>
/// <remarks>Light on purpose: it takes off English endings only, so that "skimming" meets "skim" and "berries" meets "berry".</remarks>
internal static class WordStem
{
    /// <summary>Longest word that is looked at; longer ones match nothing.</summary>
    public const int LongestWord = 40;

    private static readonly SearchValues<char> Vowels = SearchValues.Create("aeiouy");

    // Letter, then the ASCII letters it is read as.
    private const string Accents = "àaáaâaãaäaåaāaăaąaçcćcčcďdđdèeéeêeëeēeęeěeğgìiíiîiïiīiıiłlñnńnňnòoóoôoõoöoøoōoőořrśsšsşsșsťtţtțtùuúuûuüuūuůuűuýyÿyźzżzžz";

    /// <summary>Writes a lower-case, accent-free form without apostrophes; returns its length.</summary>
    public static int Fold(ReadOnlySpan<char> word, Span<char> target)
    {
        int length = 0;
        foreach (char letter in word)
        {
            if (length == target.Length)
            {
                break;
            }

            if (char.IsLetter(letter))
            {
                target[length++] = FoldLetter(letter);
            }
        }

        return length;
    }

    /// <summary>The stem of a folded word; the buffer may be changed in place.</summary>
    public static ReadOnlySpan<char> Stem(Span<char> word)
    {
        int length = word.Length;
        if (length > 4 && Ends(word, "ies"))
        {
            word[length - 3] = 'y';
            return word[..(length - 2)];
        }

        if (length > 3 && word[^1] == 's' && word[^2] != 's' && word[^2] != 'u')
        {
            word = word[..^1];
        }

        return OfVerb(word);
    }

    // What the endings of a verb leave: "fried", "peeled", "skimming", "tie", "bake".
    private static ReadOnlySpan<char> OfVerb(Span<char> word)
    {
        int length = word.Length;
        if (length > 4 && Ends(word, "ied"))
        {
            word[length - 3] = 'y';
            return word[..(length - 2)];
        }

        if (length > 5 && Ends(word, "eed"))
        {
            return word[..^1];
        }

        if (length > 4 && Ends(word, "ing") && HasVowel(word[..^3]))
        {
            return Bare(word[..^3]);
        }

        if (length > 4 && Ends(word, "ed") && HasVowel(word[..^2]))
        {
            return Bare(word[..^2]);
        }

        if (length > 4 && Ends(word, "ie"))
        {
            word[length - 2] = 'y';
            return word[..(length - 1)];
        }

        return length > 3 && word[^1] == 'e' && word[^2] != 'e' ? word[..^1] : word;
    }

    private static char FoldLetter(char letter)
    {
        char lower = char.ToLowerInvariant(letter);
        if (lower < 128)
        {
            return lower;
        }

        for (int i = 0; i < Accents.Length; i += 2)
        {
            if (Accents[i] == lower)
            {
                return Accents[i + 1];
            }
        }

        return lower;
    }

    // "skimm" is "skim", but "boil", "chill", "press" and "stuff" keep what they have.
    private static ReadOnlySpan<char> Bare(ReadOnlySpan<char> word) =>
        word.Length > 3 && word[^1] == word[^2] && word[^1] is not ('l' or 's' or 'f' or 'z' or 'e') ? word[..^1] : word;

    private static bool Ends(ReadOnlySpan<char> word, string end) => word.EndsWith(end, StringComparison.Ordinal);

    private static bool HasVowel(ReadOnlySpan<char> word) => word.ContainsAny(Vowels);
}
