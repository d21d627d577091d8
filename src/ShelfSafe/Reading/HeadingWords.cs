
namespace ShelfSafe.Reading;

/// <summary>Tells from the words of a heading what stands below it.</summary>
internal static class HeadingWords
{
    /// <summary>Headings and lines are looked at up to this many characters.</summary>
    private const int LongestWords = 200;

    private static readonly string[] _equipment =
    [
        "equipment", "utensils", "utensil", "tools", "cookware", "gear", "hardware", "kitchenware", "appliances", "ausrüstung", "geräte",
    ];

    private static readonly string[] _servingStarts =
    [
        "to serve", "for serving", "at serving", "when serving", "serve with", "served with", "to be served", "on the day",
        "at the table", "for the table", "when you eat", "when eating", "before serving", "just before serving", "after opening",
        "when you open", "add when serving", "add at serving", "serving suggestion", "zum servieren", "pour servir",
    ];

    private static readonly string[] _ingredients =
    [
        "ingredient", "ingrediënt", "ingrédient", "zutat", "ingredien", "składnik", "ingredienser", "ainekset", "ainesosat", "malzeme",
        "ингредиент", "what goes in", "what's in", "shopping list", "grocery", "groceries", "einkaufsliste", "from the pantry",
    ];

    private static readonly string[] _needs =
    [
        "you need", "you'll need", "youll need", "you will need", "we need", "we'll need", "is needed", "you want", "gather", "du brauchst",
    ];

    private static bool IsOfMethod(ReadOnlySpan<char> word) => word is
        "direction" or "directions" or "method" or "methods" or "instruction" or "instructions" or "step" or "steps" or "preparation" or "procedure"
        or "process" or "processing" or "cooking" or "how" or "making" or "prep" or "assembly" or "assembling" or "zubereitung" or "anleitung"
        or "preparación" or "préparation" or "preparazione" or "procedimiento" or "elaboración" or "bereiding" or "przygotowanie" or "canning"
        or "filling the jars" or "what to do";

    private static bool IsOfNote(ReadOnlySpan<char> word) => word is
        "note" or "notes" or "hint" or "hints" or "storage" or "storing" or "store" or "substitution" or "substitutions" or "keeping" or "leftovers"
        or "faq" or "nutrition" or "nutritional" or "source" or "sources" or "credit" or "credits" or "comment" or "comments" or "tags" or "history"
        or "warning" or "warnings" or "freezing" or "remarks" or "footnotes" or "references" or "trivia" or "notizen" or "tipps";

    private static bool IsOfIntroduction(ReadOnlySpan<char> word) => word is
        "description" or "introduction" or "intro" or "about" or "summary" or "overview" or "background" or "yield" or "yields" or "servings"
        or "serves" or "makes" or "time" or "times" or "info" or "information" or "details" or "story";

    private static bool IsOfGroup(ReadOnlySpan<char> word) => word is
        "sauce" or "filling" or "dough" or "crust" or "topping" or "toppings" or "dressing" or "glaze" or "frosting" or "icing" or "marinade"
        or "broth" or "gravy" or "batter" or "base" or "layer" or "seasoning" or "seasonings" or "spices" or "rub" or "paste" or "garnish" or "brine"
        or "syrup" or "extras" or "vegetables" or "meat" or "meatballs" or "dumplings" or "crumble" or "stuffing" or "coating" or "blend" or "mix"
        or "mixture" or "also" or "optional" or "wet" or "dry" or "main" or "other" or "rest" or "aromatics" or "herbs" or "produce" or "pantry"
        or "dairy" or "fridge" or "roux" or "cream" or "pickling" or "bouquet";

    /// <summary>Lower-case words with one space between them; marks and pictures fall away.</summary>
    public static string Normalise(ReadOnlySpan<char> text)
    {
        Span<char> words = stackalloc char[LongestWords];
        int length = 0;
        foreach (char c in text)
        {
            if (length == LongestWords)
            {
                break;
            }

            if (char.IsLetterOrDigit(c))
            {
                words[length++] = char.ToLowerInvariant(c);
            }
            else if (c is '\'' or '’')
            {
                words[length++] = '\'';
            }
            else if (length > 0 && words[length - 1] != ' ')
            {
                words[length++] = ' ';
            }
        }

        return words[..length].Trim().ToString();
    }

    /// <summary>What a heading of these words announces.</summary>
    public static HeadingKind Classify(ReadOnlySpan<char> heading)
    {
        string words = Normalise(heading);
        if (words.Length == 0)
        {
            return HeadingKind.Name;
        }

        string[] each = words.Split(' ');
        if (StartsAny(words, _servingStarts) || words is "serve" or "serving" or "to finish at serving"
            || words.Contains("at serving", StringComparison.Ordinal) || words.Contains("when serving", StringComparison.Ordinal)
            || words.Contains("for serving", StringComparison.Ordinal) || words.Contains("on the day you eat", StringComparison.Ordinal))
        {
            return HeadingKind.Serving;
        }

        if (HasWord(each, _equipment))
        {
            return HeadingKind.Equipment;
        }

        if (each[0] is "variation" or "variations" or "variant" or "variants" or "alternative" or "version")
        {
            return HeadingKind.Variation;
        }

        if (LineWords.IsPlainVerb(each[0]) && each.Length > 1)
        {
            return HeadingKind.Method;
        }

        if (ContainsAny(words, _ingredients))
        {
            return HeadingKind.Ingredients;
        }

        return ContainsAny(words, _needs) || words is "needs" or "needed" ? HeadingKind.Needs : ByWord(words, each);
    }

    private static HeadingKind ByWord(string words, string[] each)
    {
        if (each[0] is "for" && each.Length > 1 && !char.IsAsciiDigit(each[1][0]))
        {
            return HeadingKind.Group;
        }

        HeadingKind kind = HeadingKind.Name;
        foreach (string word in each)
        {
            if (IsOfMethod(word))
            {
                return words.Contains(" time", StringComparison.Ordinal) ? HeadingKind.Introduction : HeadingKind.Method;
            }

            if (kind == HeadingKind.Name && each.Length <= 4)
            {
                kind = IsOfNote(word) || IsTips(each, word) ? HeadingKind.Note
                    : IsOfIntroduction(word) ? HeadingKind.Introduction
                    : kind;
            }
        }

        if (words.StartsWith("to make", StringComparison.Ordinal) || words.StartsWith("make ahead", StringComparison.Ordinal)
            || words.StartsWith("what to do", StringComparison.Ordinal))
        {
            return words.StartsWith("make ahead", StringComparison.Ordinal) ? HeadingKind.Note : HeadingKind.Method;
        }

        return kind == HeadingKind.Name && (IsOfGroup(each[^1]) || IsOfGroup(each[0])) && each.Length <= 4
            ? HeadingKind.Group
            : kind;
    }

    /// <summary>"Tips" and "Canning tips" advise; "Beef tips" are food.</summary>
    private static bool IsTips(string[] each, string word) => word is "tip" or "tips"
        && (each[0] == word || each[0] is "cooking" or "canning" or "serving" or "helpful" or "pro" or "recipe" or "quick" or "chef's" or "storage" or "some" or "top");

    private static bool StartsAny(string words, string[] starts)
    {
        foreach (string start in starts)
        {
            if (words.StartsWith(start, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static bool ContainsAny(string words, string[] parts)
    {
        foreach (string part in parts)
        {
            if (words.Contains(part, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasWord(string[] each, string[] wanted)
    {
        foreach (string word in each)
        {
            if (Array.IndexOf(wanted, word) >= 0)
            {
                return true;
            }
        }

        return false;
    }
}
