using System.Collections.Frozen;

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

    private static readonly FrozenSet<string> _methodWords = FrozenSet.Create(
        StringComparer.Ordinal,
        "direction", "directions", "method", "methods", "instruction", "instructions", "step", "steps", "preparation", "procedure",
        "process", "processing", "cooking", "how", "making", "prep", "assembly", "assembling", "zubereitung", "anleitung", "preparación",
        "préparation", "preparazione", "procedimiento", "elaboración", "bereiding", "przygotowanie", "canning", "filling the jars", "what to do");

    private static readonly FrozenSet<string> _noteWords = FrozenSet.Create(
        StringComparer.Ordinal,
        "note", "notes", "hint", "hints", "storage", "storing", "store", "substitution", "substitutions", "keeping",
        "leftovers", "faq", "nutrition", "nutritional", "source", "sources", "credit", "credits", "comment", "comments", "tags", "history",
        "warning", "warnings", "freezing", "remarks", "footnotes", "references", "trivia", "notizen", "tipps");

    private static readonly FrozenSet<string> _introductionWords = FrozenSet.Create(
        StringComparer.Ordinal,
        "description", "introduction", "intro", "about", "summary", "overview", "background", "yield", "yields", "servings", "serves",
        "makes", "time", "times", "info", "information", "details", "story");

    private static readonly FrozenSet<string> _groupWords = FrozenSet.Create(
        StringComparer.Ordinal,
        "sauce", "filling", "dough", "crust", "topping", "toppings", "dressing", "glaze", "frosting", "icing", "marinade", "broth", "gravy",
        "batter", "base", "layer", "seasoning", "seasonings", "spices", "rub", "paste", "garnish", "brine", "syrup", "extras", "vegetables",
        "meat", "meatballs", "dumplings", "crumble", "stuffing", "coating", "blend", "mix", "mixture", "also", "optional", "wet", "dry",
        "main", "other", "rest", "aromatics", "herbs", "produce", "pantry", "dairy", "fridge", "roux", "cream", "pickling", "bouquet");

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
            if (_methodWords.Contains(word))
            {
                return words.Contains(" time", StringComparison.Ordinal) ? HeadingKind.Introduction : HeadingKind.Method;
            }

            if (kind == HeadingKind.Name && each.Length <= 4)
            {
                kind = _noteWords.Contains(word) || IsTips(each, word) ? HeadingKind.Note
                    : _introductionWords.Contains(word) ? HeadingKind.Introduction
                    : kind;
            }
        }

        if (words.StartsWith("to make", StringComparison.Ordinal) || words.StartsWith("make ahead", StringComparison.Ordinal)
            || words.StartsWith("what to do", StringComparison.Ordinal))
        {
            return words.StartsWith("make ahead", StringComparison.Ordinal) ? HeadingKind.Note : HeadingKind.Method;
        }

        return kind == HeadingKind.Name && (_groupWords.Contains(each[^1]) || _groupWords.Contains(each[0])) && each.Length <= 4
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
