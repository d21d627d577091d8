using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Reading;

/// <summary>Word lists that tell an ingredient line from a direction, a timing or a tool.</summary>
/// <remarks>
/// They steer the reading of structure only: no food and no amount is judged here. They are patterns, not sets, so that a start
/// builds nothing.
/// </remarks>
internal static class LineWords
{
    /// <summary>Verbs that also begin the name of a food ("ground", "mince", "brown sugar"): no proof of a direction alone.</summary>
    private static bool IsTwoFaced(ReadOnlySpan<char> word) => word is
        "salt" or "flour" or "dry" or "brown" or "toast" or "roast" or "grill" or "juice" or "mince" or "dice" or "season" or "can" or "stick"
        or "rub" or "stuff" or "line" or "cover" or "finely" or "pack" or "steam" or "cut" or "ladle" or "spoon" or "warm" or "smash" or "chop"
        or "coat" or "shred" or "slice" or "peel" or "grind" or "roll" or "pat" or "bottle" or "crush" or "scoop" or "layer" or "marinade" or "cool"
        or "dip" or "tip" or "pop" or "blend" or "mix" or "process" or "clean" or "spread" or "rest" or "if" or "in" or "squeeze" or "drizzle"
        or "sprinkle" or "mash";

    /// <summary>First letters of <see cref="_timings"/>.</summary>
    private const string TimingLetters = "pctwrsbaymdklqohf";

    private static readonly string[] _timings =
    [
        "prep time", "prep", "cook time", "cooking time", "total time", "time", "wait time", "chill time", "rest time", "resting time",
        "preparation time", "soak time", "bake time", "active time", "ready in", "servings", "serves", "serving size", "yield", "yields",
        "makes", "portions", "amount", "calories", "kcal", "difficulty", "course", "cuisine", "author", "source", "category", "rating",
        "level", "cost", "keywords", "tags", "diet", "date", "protein", "carbs", "carbohydrates", "rise time", "freeze time", "marinate time",
        "canning time", "processing time", "process time", "oven", "temperature", "quantity", "recipe by", "from", "hands on", "feeds",
    ];

    /// <summary>Whether a lower-case word begins a direction.</summary>
    public static bool IsVerb(ReadOnlySpan<char> word) => word is
        "add" or "adjust" or "allow" or "arrange" or "assemble" or "bake" or "baste" or "beat" or "blanch" or "blend" or "blitz" or "boil" or "bottle"
        or "break" or "bring" or "brush" or "char" or "check" or "chill" or "clean" or "close" or "coat" or "collect" or "combine" or "continue"
        or "cook" or "cool" or "cover" or "crush" or "cut" or "deglaze" or "discard" or "dissolve" or "divide" or "do" or "drain" or "drizzle"
        or "drop" or "enjoy" or "fill" or "finish" or "flip" or "fold" or "form" or "fry" or "gently" or "get" or "give" or "go" or "grate"
        or "grease" or "heat" or "hold" or "if" or "keep" or "knead" or "ladle" or "lay" or "leave" or "let" or "lift" or "line" or "lower" or "make"
        or "marinate" or "marinade" or "mash" or "measure" or "melt" or "mix" or "move" or "once" or "open" or "peel" or "pick" or "place" or "plate"
        or "poach" or "pop" or "pound" or "pour" or "preheat" or "prepare" or "press" or "process" or "pull" or "push" or "put" or "reduce"
        or "refrigerate" or "reheat" or "release" or "remove" or "repeat" or "rest" or "return" or "rinse" or "roll" or "rub" or "sauté" or "saute"
        or "scoop" or "scrape" or "screw" or "seal" or "sear" or "select" or "separate" or "serve" or "set" or "shake" or "shape" or "shred"
        or "sieve" or "simmer" or "sift" or "skim" or "slice" or "slowly" or "soak" or "soften" or "sort" or "spoon" or "spread" or "sprinkle"
        or "squeeze" or "start" or "steam" or "sterilise" or "sterilize" or "stir" or "store" or "strain" or "stuff" or "take" or "taste" or "then"
        or "throw" or "tip" or "toss" or "transfer" or "trim" or "turn" or "use" or "wait" or "warm" or "wash" or "weigh" or "when" or "while"
        or "whisk" or "wipe" or "work" or "wrap" or "finely" or "carefully" or "dip" or "season" or "slide" or "stack" or "begin" or "bury" or "layer"
        or "chop" or "dice" or "mince" or "brown" or "toast" or "roast" or "grill" or "juice" or "salt" or "flour" or "dry" or "stick" or "smash"
        or "tear" or "vent" or "write" or "stand" or "scald" or "dredge" or "sweat" or "eat" or "parboil" or "pack" or "can" or "don't" or "never" or "always" or "grind" or "pat" or "in" or "after" or "before";

    /// <summary>Whether a lower-case word begins a direction and no food's name.</summary>
    public static bool IsPlainVerb(ReadOnlySpan<char> word) => IsVerb(word) && !IsTwoFaced(word);

    /// <summary>Whether a lower-case word measures food.</summary>
    public static bool IsMeasure(ReadOnlySpan<char> word) => word is
        "dkg" or "dag" or "deka" or "g" or "gr" or "gm" or "gram" or "grams" or "gramme" or "grammes" or "kg" or "kgs" or "kilo" or "kilos" or "kilogram" or "kilograms" or "mg"
        or "ml" or "mls" or "cl" or "dl" or "l" or "litre" or "litres" or "liter" or "liters" or "millilitre" or "millilitres" or "milliliter"
        or "milliliters" or "oz" or "ozs" or "ounce" or "ounces" or "lb" or "lbs" or "pound" or "pounds" or "cup" or "cups" or "c" or "tsp" or "tsps"
        or "teaspoon" or "teaspoons" or "tbsp" or "tbsps" or "tblsp" or "tbs" or "tb" or "tablespoon" or "tablespoons" or "spoon" or "spoons"
        or "spoonful" or "spoonfuls" or "pint" or "pints" or "pt" or "quart" or "quarts" or "qt" or "qts" or "gallon" or "gallons" or "gal" or "stick"
        or "sticks" or "clove" or "cloves" or "can" or "cans" or "tin" or "tins" or "jar" or "jars" or "bottle" or "bottles" or "packet" or "packets"
        or "package" or "packages" or "pack" or "packs" or "pkg" or "bunch" or "bunches" or "sprig" or "sprigs" or "slice" or "slices" or "piece"
        or "pieces" or "pinch" or "pinches" or "dash" or "dashes" or "handful" or "handfuls" or "head" or "heads" or "stalk" or "stalks" or "rib"
        or "ribs" or "leaf" or "leaves" or "knob" or "thumb" or "splash" or "glass" or "fl" or "cube" or "cubes" or "strip" or "strips" or "bag"
        or "bags" or "box" or "boxes" or "peck" or "bushel" or "large" or "medium" or "small" or "whole" or "ear" or "ears" or "el" or "tl" or "prise"
        or "zehe" or "zehen" or "tasse" or "tassen" or "stück" or "bund" or "pfund";

    /// <summary>Whether a point behind this lower-case word only shortens it: "2 qts. sm. onions".</summary>
    public static bool IsShortened(ReadOnlySpan<char> word) => IsMeasure(word) || word is "sm" or "med" or "lg" or "lge" or "pkgs" or "doz" or "approx" or "env";

    /// <summary>Whether a number before this lower-case word counts no food: time, heat, length, people.</summary>
    public static bool IsNotFoodUnit(ReadOnlySpan<char> word) => word is
        "min" or "mins" or "minute" or "minutes" or "hour" or "hours" or "hr" or "hrs" or "h" or "sec" or "secs" or "second" or "seconds" or "day"
        or "days" or "week" or "weeks" or "month" or "months" or "year" or "years" or "degrees" or "degree" or "f" or "c" or "psi" or "people"
        or "persons" or "servings" or "serving" or "portions" or "calories" or "kcal" or "cal" or "kj" or "times" or "watts" or "mins." or "step"
        or "steps" or "pm" or "am" or "feet" or "ft" or "dial" or "gauge" or "weighted" or "altitude" or "elevation" or "pressure" or "kpa";

    /// <summary>Whether a lower-case word is a number.</summary>
    public static bool IsNumber(ReadOnlySpan<char> word) => word is
        "one" or "two" or "three" or "four" or "five" or "six" or "seven" or "eight" or "nine" or "ten" or "eleven" or "twelve" or "dozen" or "half"
        or "quarter" or "couple" or "few" or "several" or "ein" or "eine" or "zwei" or "drei" or "vier" || NumberWords.Of(word) > 0;

    /// <summary>Whether a lower-case word is a tool.</summary>
    public static bool IsEquipment(ReadOnlySpan<char> word) => word is
        "pot" or "pots" or "pan" or "pans" or "saucepan" or "stockpot" or "skillet" or "bowl" or "bowls" or "knife" or "knives" or "board" or "whisk"
        or "oven" or "blender" or "thermometer" or "jars" or "lids" or "bands" or "tray" or "sheet" or "colander" or "sieve" or "strainer" or "canner"
        or "funnel" or "tongs" or "grater" or "processor" or "mixer" or "foil" or "timer" or "scale" or "scales" or "rack" or "towel" or "towels"
        or "cheesecloth" or "dish" or "dishes" or "utensils" or "wok" or "plate" or "plates" or "peeler" or "spatula" or "cooker" or "kettle"
        or "lifter" or "ladle" or "masher" or "mortar" or "rings";

    /// <summary>Whether normalised words begin like a timing, a yield or another fact about the recipe.</summary>
    /// <param name="words">As <see cref="HeadingWords.Normalise"/> gives them.</param>
    /// <param name="named">Whether the printed text has a colon, dash or number right after the name.</param>
    public static bool IsTiming(string words, out int named)
    {
        named = 0;
        if (words.Length == 0 || !TimingLetters.Contains(words[0], StringComparison.Ordinal))
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
