using System.Buffers;
using System.Collections.Frozen;

namespace ShelfSafe.Reading;

/// <summary>Word lists that tell an ingredient line from a direction, a timing or a tool.</summary>
/// <remarks>They steer the reading of structure only: no food and no amount is judged here.</remarks>
internal static class LineWords
{
    private static readonly FrozenSet<string> _verbs = FrozenSet.Create(
        StringComparer.Ordinal,
        "add", "adjust", "allow", "arrange", "assemble", "bake", "baste", "beat", "blanch", "blend", "blitz", "boil", "bottle", "break",
        "bring", "brush", "char", "check", "chill", "clean", "close", "coat", "collect", "combine", "continue", "cook", "cool", "cover",
        "crush", "cut", "deglaze", "discard", "dissolve", "divide", "do", "drain", "drizzle", "drop", "enjoy", "fill", "finish", "flip",
        "fold", "form", "fry", "gently", "get", "give", "go", "grate", "grease", "heat", "hold", "if", "keep", "knead", "ladle", "lay",
        "leave", "let", "lift", "line", "lower", "make", "marinate", "marinade", "mash", "measure", "melt", "mix", "move", "once", "open",
        "peel", "pick", "place", "plate", "poach", "pop", "pound", "pour", "preheat", "prepare", "press", "process", "pull", "push", "put",
        "reduce", "refrigerate", "reheat", "release", "remove", "repeat", "rest", "return", "rinse", "roll", "rub", "sauté", "saute",
        "scoop", "scrape", "screw", "seal", "sear", "select", "separate", "serve", "set", "shake", "shape", "shred", "sieve", "simmer",
        "sift", "skim", "slice", "slowly", "soak", "soften", "sort", "spoon", "spread", "sprinkle", "squeeze", "start", "steam", "sterilise",
        "sterilize", "stir", "store", "strain", "stuff", "take", "taste", "then", "throw", "tip", "toss", "transfer", "trim", "turn", "use",
        "wait", "warm", "wash", "weigh", "when", "while", "whisk", "wipe", "work", "wrap", "finely", "carefully", "dip", "season", "slide",
        "stack", "begin", "bury", "layer", "chop", "dice", "mince", "brown", "toast", "roast", "grill", "juice", "salt", "flour", "dry",
        "stick", "smash", "tear", "vent", "pack", "can", "don't", "never", "always", "grind", "pat", "in", "after", "before");

    /// <summary>Verbs that also begin the name of a food ("ground", "mince", "brown sugar"): no proof of a direction alone.</summary>
    private static readonly FrozenSet<string> _twoFaced = FrozenSet.Create(
        StringComparer.Ordinal,
        "salt", "flour", "dry", "brown", "toast", "roast", "grill", "juice", "mince", "dice", "season", "can", "stick", "rub", "stuff", "line",
        "cover", "finely", "pack", "steam", "cut", "ladle", "spoon", "warm", "smash", "chop", "coat", "shred", "slice", "peel", "grind",
        "roll", "pat", "bottle", "crush", "scoop", "layer", "marinade", "cool", "dip", "tip", "pop", "blend", "mix", "process", "clean",
        "spread", "rest", "if", "in", "squeeze", "drizzle", "sprinkle", "mash");

    private static readonly FrozenSet<string> _measures = FrozenSet.Create(
        StringComparer.Ordinal,
        "g", "gr", "gm", "gram", "grams", "gramme", "grammes", "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "mg", "ml", "mls", "cl",
        "dl", "l", "litre", "litres", "liter", "liters", "millilitre", "millilitres", "milliliter", "milliliters", "oz", "ozs", "ounce",
        "ounces", "lb", "lbs", "pound", "pounds", "cup", "cups", "c", "tsp", "tsps", "teaspoon", "teaspoons", "tbsp", "tbsps", "tblsp", "tbs",
        "tb", "tablespoon", "tablespoons", "spoon", "spoons", "spoonful", "spoonfuls", "pint", "pints", "pt", "quart", "quarts", "qt", "qts",
        "gallon", "gallons", "gal", "stick", "sticks", "clove", "cloves", "can", "cans", "tin", "tins", "jar", "jars", "bottle", "bottles",
        "packet", "packets", "package", "packages", "pack", "packs", "pkg", "bunch", "bunches", "sprig", "sprigs", "slice", "slices", "piece",
        "pieces", "pinch", "pinches", "dash", "dashes", "handful", "handfuls", "head", "heads", "stalk", "stalks", "rib", "ribs", "leaf",
        "leaves", "knob", "thumb", "splash", "glass", "fl", "cube", "cubes", "strip", "strips", "bag", "bags", "box", "boxes", "peck", "bushel",
        "large", "medium", "small", "whole", "ear", "ears", "el", "tl", "prise", "zehe", "zehen", "tasse", "tassen", "stück", "bund", "pfund");

    private static readonly FrozenSet<string> _notFoodUnits = FrozenSet.Create(
        StringComparer.Ordinal,
        "min", "mins", "minute", "minutes", "hour", "hours", "hr", "hrs", "h", "sec", "secs", "second", "seconds", "day", "days", "week",
        "weeks", "month", "months", "year", "years", "degrees", "degree", "f", "c", "psi", "people", "persons",
        "servings", "serving", "portions", "calories", "kcal", "cal", "kj", "times", "watts", "mins.", "step", "steps", "pm", "am", "feet", "ft");

    private static readonly FrozenSet<string> _numbers = FrozenSet.Create(
        StringComparer.Ordinal,
        "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "dozen", "half", "quarter",
        "couple", "few", "several", "ein", "eine", "zwei", "drei", "vier", "twenty", "fifteen");

    private static readonly FrozenSet<string> _equipment = FrozenSet.Create(
        StringComparer.Ordinal,
        "pot", "pots", "pan", "pans", "saucepan", "stockpot", "skillet", "bowl", "bowls", "knife", "knives", "board", "whisk", "oven",
        "blender", "thermometer", "jars", "lids", "bands", "tray", "sheet", "colander", "sieve", "strainer", "canner", "funnel", "tongs",
        "grater", "processor", "mixer", "foil", "timer", "scale", "scales", "rack", "towel", "towels", "cheesecloth", "dish", "dishes",
        "utensils", "wok", "plate", "plates", "peeler", "spatula", "cooker", "kettle", "lifter", "ladle", "masher", "mortar", "rings");

    /// <summary>First letters of <see cref="_timings"/>.</summary>
    private static readonly SearchValues<char> _timingLetters = SearchValues.Create("pctwrsbaymdklqohf");

    private static readonly string[] _timings =
    [
        "prep time", "prep", "cook time", "cooking time", "total time", "time", "wait time", "chill time", "rest time", "resting time",
        "preparation time", "soak time", "bake time", "active time", "ready in", "servings", "serves", "serving size", "yield", "yields",
        "makes", "portions", "amount", "calories", "kcal", "difficulty", "course", "cuisine", "author", "source", "category", "rating",
        "level", "cost", "keywords", "tags", "diet", "date", "protein", "carbs", "carbohydrates", "rise time", "freeze time", "marinate time",
        "canning time", "processing time", "process time", "oven", "temperature", "quantity", "recipe by", "from", "hands on", "feeds",
    ];

    /// <summary>Whether a lower-case word begins a direction.</summary>
    public static bool IsVerb(string word) => _verbs.Contains(word);

    /// <summary>Whether a lower-case word begins a direction and no food's name.</summary>
    public static bool IsPlainVerb(string word) => _verbs.Contains(word) && !_twoFaced.Contains(word);

    /// <summary>Whether a lower-case word measures food.</summary>
    public static bool IsMeasure(ReadOnlySpan<char> word) => _measures.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    /// <summary>Whether a number before this lower-case word counts no food: time, heat, length, people.</summary>
    public static bool IsNotFoodUnit(ReadOnlySpan<char> word) => _notFoodUnits.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    /// <summary>Whether a lower-case word is a number.</summary>
    public static bool IsNumber(ReadOnlySpan<char> word) =>
        word.Length is > 2 and < 9 && _numbers.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    /// <summary>Whether a lower-case word is a tool.</summary>
    public static bool IsEquipment(ReadOnlySpan<char> word) => _equipment.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    /// <summary>Whether normalised words begin like a timing, a yield or another fact about the recipe.</summary>
    /// <param name="words">As <see cref="HeadingWords.Normalise"/> gives them.</param>
    /// <param name="named">Whether the printed text has a colon, dash or number right after the name.</param>
    public static bool IsTiming(string words, out int named)
    {
        named = 0;
        if (words.Length == 0 || !_timingLetters.Contains(words[0]))
        {
            return false;
        }

        foreach (string timing in _timings)
        {
            if (timing[0] == words[0] && timing.Length > named && words.StartsWith(timing, StringComparison.Ordinal)
                && (words.Length == timing.Length || words[timing.Length] == ' '))
            {
                named = timing.Length;
            }
        }

        return named > 0;
    }
}
