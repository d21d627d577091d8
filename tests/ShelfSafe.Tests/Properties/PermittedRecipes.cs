using FsCheck;
using FsCheck.Fluent;

namespace ShelfSafe.Tests.Properties;

/// <summary>Made-up recipes that published processes cover as written, and ways to write something more into them. Invented for these tests.</summary>
/// <remarks>Sources of the processes: USDA AIB 539 (2015), Guides 2 to 7.</remarks>
public static class PermittedRecipes
{
    /// <summary>One recipe for each open category and some published formulas.</summary>
    public static IReadOnlyList<RecipeSketch> All { get; } =
    [
        new([new(1400, 1400, "boneless chicken breast, cubed"), new(700, 700, "carrots, sliced"), new(900, 900, "potatoes, peeled and cubed"), new(5700, 5700, "chicken broth"), new(30, 30, "salt")],
            "Island soup", "Simmer the chicken in water until tender and drain it. Boil everything 5 minutes. Fill the hot jars half full of solids and top up with the hot broth. Process in a pressure canner."),
        new([new(4000, 4000, "shelled green peas"), new(3000, 3000, "water"), new(30, 30, "salt")],
            "Garden peas", "Boil the peas in the water for 3 minutes. Fill the hot jars with the hot peas and liquid, leaving 1 inch headspace. Process in a pressure canner."),
        new([new(8000, 8000, "potatoes, peeled and cubed"), new(6000, 6000, "water"), new(40, 40, "salt")],
            "Potatoes in jars", "Boil the potatoes in the water for 2 minutes. Fill the hot jars with the hot potatoes and liquid, leaving 1 inch headspace. Process in a pressure canner."),
        new([new(2000, 2000, "dried pinto beans"), new(9000, 9000, "water"), new(30, 30, "salt")],
            "Beans in jars", "Soak the beans overnight and drain them. Cover with fresh water and boil 30 minutes. Fill the hot jars half full of beans and top up with the hot liquid, leaving 1 inch headspace. Process in a pressure canner."),
        new([new(4500, 4500, "ground venison"), new(3800, 3800, "meat broth"), new(40, 40, "salt")],
            "Ground venison", "Brown the ground venison in small balls and drain off the fat. Fill the hot jars and cover with boiling broth, leaving 1 inch headspace. Process in a pressure canner."),
        new([new(3600, 3600, "beef bones"), new(7600, 7600, "water")],
            "Beef stock", "Cover the bones with water and simmer 4 hours. Remove the bones and strain the broth through a sieve. Cool, skim off the fat and discard it. Bring to a boil and fill the hot jars, leaving 1 inch headspace. Process in a pressure canner."),
        new([new(11000, 11000, "salmon"), new(90, 90, "salt")],
            "Canned salmon", "Cut the salmon in lengths. Fill hot pint jars, leaving 1 inch headspace. Do not add liquid. Process in a pressure canner."),
        new([new(6000, 6000, "plums"), new(2400, 2400, "water"), new(400, 400, "sugar")],
            "Bottled plums", "Boil the sugar and water. Add the plums and boil 2 minutes. Fill the hot jars with the hot plums and syrup, leaving 1/2 inch headspace. Process in a boiling-water canner."),
        new([new(7500, 7500, "pears"), new(2400, 2400, "water")],
            "Pears in water", "Peel, halve and core the pears. Boil the pears 5 minutes in the water. Fill the hot jars with the hot pears and liquid, leaving 1/2 inch headspace. Process in a boiling-water canner."),
        new([new(9500, 9500, "apples"), new(480, 480, "water")],
            "Applesauce", "Peel, core and slice the apples. Heat with the water until tender. Press through a food mill. Bring back to a boil and fill the hot jars, leaving 1/2 inch headspace. Process in a boiling-water canner."),
        new([new(600, 600, "crushed blackberries"), new(800, 800, "sugar")],
            "Blackberry jam", "Bring the berries and sugar slowly to a boil, stirring. Boil fast to the setting point. Pour hot into hot half-pint jars, leaving 1/4 inch headspace. Process in a boiling-water canner."),
        new([new(1814, 1814, "green beans"), new(950, 950, "water"), new(960, 960, "white vinegar (5%)"), new(144, 144, "canning salt"), new(24, 24, "garlic")],
            "Dilled beans", "Combine salt, vinegar and water and bring to a boil. Place the beans and garlic in hot pint jars. Pour the hot solution over the beans, leaving 1/2 inch headspace. Process in a boiling-water canner."),
        new([new(60, 60, "paprika"), new(40, 40, "salt"), new(20, 20, "black pepper")],
            "Dry rub", "Mix the spices together and keep in an airtight jar."),
    ];

    /// <summary>Foods whose card says stop or change in every category, dry or wet.</summary>
    public static IReadOnlyList<string> Barred { get; } = ["cream", "butter", "cheddar", "bacon", "coconut milk", "peanut butter", "eggs", "tahini", "fresh milk", "cream cheese"];

    /// <summary>Sentences by which the published process would not be kept, with what a cook might really write.</summary>
    public static IReadOnlyList<string> Undoing { get; } =
    [
        "The canner is optional.", "Skip the canner if the lids pop.", "We never process ours.", "Process as long as you like.", "Half the usual time is plenty.",
        "Ten minutes less is enough.", "Turn the jars upside down.", "Then invert them and wait.", "Fill right up to the rim.", "Old lids will do.", "Never mind the altitude.",
        "Use whatever you have.", "The amounts are only a guide.", "Fill them into old mayonnaise jars.", "You can also use the oven.", "Use half-gallon jars.", "Or do them in the microwave.",
        "Just one minute in the bath is plenty.", "Let it go for about half as long as the book says.", "We live in the mountains but use the sea-level time.", "If the pressure drops for a bit, do not worry.",
        "Carry on even when the gauge sags.", "Start counting as soon as you put the lid on.", "Take the lid off while it still hisses.", "The water need not cover the lids.", "My pot is not deep enough but it works.",
        "Process whenever you have time.", "We store ours unprocessed in the cellar.", "Put the lids on and turn them over.", "Fill to the top.", "It is very forgiving.", "Use up whatever is in the fridge.",
        "Feel free to swap things around.", "Ours has no gauge but it whistles.", "If liquid is lost, open the jar and refill it.", "Any jar of any size will do.", "A glug of oil on top keeps the air out of the jars.",
        "If a lid does not seal, push it down with your thumb and it will hold.",
        "Pint time works for quarts.", "Let the pressure go up and down, it evens out.", "Let the canner run dry at the end.", "Pack as full as you can get them.", "Process until the lids are concave.",
        "Process at 180 F.", "Use paper and string to cover the jars.", "Start timing when you put the jars in.", "Lay the jars on their sides.", "At 8000 feet no change is needed.", "Adjust nothing for altitude.",
        "Let the jars cool in the canner overnight.", "Put cold jars into boiling water.", "Lids that did not seal can be glued.", "Store opened jars in the cupboard.", "Boil the jars three days in a row.", "Ignore bulging lids.",
        "Stop the canner when you smell the food.", "Eat it straight from the jar if it smells fine.", "A bain-marie at 90 degrees is gentler.",
    ];

    /// <summary>What cooks and guides write beside the work, and what speaks against no published process.</summary>
    public static IReadOnlyList<string> Ordinary { get; } =
    [
        "Label with the date.", "Write the date on the lid.", "Wipe the rims with a clean damp cloth.", "Double check the seal before storing.", "Use a non-metallic spatula to free air bubbles.",
        "Sterilize the jars if you process for less than 10 minutes.", "Add more boiling water if the level drops below the lids.", "Any jars that didn't seal go in the fridge.", "Do not forget to vent the canner.",
        "Prep time: 40 minutes. Cook time: 30 minutes.", "If the pressure falls below the mark, bring it back up and start the timing again.", "The water should cover the jars by at least an inch.",
        "Start counting when the water comes to a full boil.", "Leave the canner alone until the pressure is zero.", "Listen for the lids to ping as they cool.", "Ask your extension office for the pressure at your altitude.",
        "Keep the jars hot until you fill them.", "It makes a lovely gift.", "When you open a jar, boil the contents for 10 minutes before you eat it.", "For best quality, use within 12 months.",
        "Tap the lids the next day; they should not flex.", "Reprocess within 24 hours if a jar has not sealed, with a new lid.", "Save the extra broth for another day.", "Keep the jar only if the seal looks good.",
    ];

    /// <summary>Ways to write a food into a recipe, each with the place where it hides.</summary>
    public static IReadOnlyList<(string Place, Func<string, string, string> Write)> Places { get; } =
    [
        ("step", static (text, food) => BeforeFilling(text, $"Stir in the {food}.")),
        ("step in capitals", static (text, food) => BeforeFilling(text, $"STIR IN THE {food.ToUpperInvariant()}.")),
        ("step with a mark of no width", static (text, food) => BeforeFilling(text, $"Stir in the {food[..2]}\u200B{food[2..]}.")),
        ("step with a soft hyphen", static (text, food) => BeforeFilling(text, $"Stir in the {food[..3]}\u00AD{food[3..]}.")),
        ("bold in a step", static (text, food) => BeforeFilling(text, $"Stir in the **{food}**.")),
        ("link in a step", static (text, food) => BeforeFilling(text, $"Stir in the [{food}](https://recipe.example/).")),
        ("last step", static (text, food) => text.TrimEnd() + $" Before filling, stir in the {food}.\n"),
        ("note", static (text, food) => text + $"\n## Notes\n\nI stir a cup of {food} into the pot before filling.\n"),
        ("list in the notes", static (text, food) => text + $"\n## Notes\n\n- 1 cup {food} makes it better\n"),
        ("variation", static (text, food) => text + $"\n*Variation:* with {food}.\n"),
        ("quote", static (text, food) => text + $"\n> I put {food} in the jar.\n"),
        ("introduction", static (text, food) => BeforeList(text, $"\n\nMine has {food} in it.")),
        ("title", static (text, food) => BeforeList(text, $" with {food}")),
        ("bold in the title", static (text, food) => BeforeList(text, $" with **{food}**")),
        ("list", static (text, food) => AfterList(text, $"\n- 300 g {food}")),
        ("list, amount last", static (text, food) => AfterList(text, $"\n- {food}: 300 g")),
        ("list within the list", static (text, food) => AfterList(text, $"\n  - with 300 g {food}")),
        ("struck-through line", static (text, food) => AfterList(text, $"\n- ~~300 g {food}~~")),
        ("picture as a line", static (text, food) => AfterList(text, $"\n- ![300 g {food}](picture.png)")),
        ("tail of a line", static (text, food) => AfterList(text, $", with 300 g {food}")),
        ("hard break in a line", static (text, food) => AfterList(text, $"<br>300 g {food}")),
        ("group of the list", static (text, food) => AfterList(text, $"\n\n### To finish\n\n- 300 g {food}")),
        ("table", static (text, food) => AfterList(text, $"\n\n| What | How much |\n| --- | --- |\n| {food} | 300 g |")),
        ("heading of its own", static (text, food) => text + $"\n## For the finish\n\n- 300 g {food}\n"),
        ("details", static (text, food) => text + $"\n<details><summary>More</summary>Stir in 300 g {food} before filling.</details>\n"),
        ("footnote", static (text, food) => BeforeFilling(text, "Mind the note[^1].") + $"\n[^1]: Stir in 300 g {food} before filling.\n"),
        ("front matter", static (text, food) => $"---\nnotes: stir in 300 g {food} before filling\n---\n" + text),
    ];

    /// <summary>A permitted recipe.</summary>
    public static Arbitrary<PermittedRecipe> Recipes() =>
        (from index in Gen.Choose(0, All.Count - 1) select new PermittedRecipe(All[index])).ToArbitrary();

    /// <summary>A permitted recipe with a barred food written in somewhere.</summary>
    public static Arbitrary<HiddenFood> HiddenFoods() =>
        (from index in Gen.Choose(0, All.Count - 1)
         from food in Gen.Elements<string>([.. Barred])
         from place in Gen.Choose(0, Places.Count - 1)
         select new HiddenFood(All[index], food, Places[place].Place)).ToArbitrary();

    /// <summary>A permitted recipe with a sentence that undoes its process.</summary>
    public static Arbitrary<UndoneProcess> UndoneProcesses() =>
        (from index in Gen.Choose(0, All.Count - 2) // the dry rub has no process
         from sentence in Gen.Elements<string>([.. Undoing])
         from note in Gen.Elements(true, false)
         select new UndoneProcess(All[index], sentence, note)).ToArbitrary();

    private static string BeforeFilling(string text, string sentence)
    {
        int steps = text.IndexOf("## Method", StringComparison.Ordinal);
        int jar = text.IndexOf(" jar", steps, StringComparison.Ordinal);
        int stop = text.LastIndexOf(". ", jar, StringComparison.Ordinal);
        int at = stop > steps ? stop + 2 : text.IndexOf("\n\n", steps, StringComparison.Ordinal) + 2;
        return text.Insert(at, sentence + " ");
    }

    private static string BeforeList(string text, string words) => text.Insert(text.IndexOf("\n\n## Ingredients", StringComparison.Ordinal), words);

    private static string AfterList(string text, string words) => text.Insert(text.IndexOf("\n\n## Method", StringComparison.Ordinal), words);
}

/// <summary>A recipe that is permitted as written.</summary>
public sealed record PermittedRecipe(RecipeSketch Sketch);

/// <summary>A permitted recipe and a barred food in a place.</summary>
public sealed record HiddenFood(RecipeSketch Sketch, string Food, string Place)
{
    /// <summary>The recipe with the food written in.</summary>
    public string Markdown() => PermittedRecipes.Places.First(place => place.Place == Place).Write(Sketch.Markdown(), Food);
}

/// <summary>A permitted recipe and a sentence that undoes its process, as its last step or as a note.</summary>
public sealed record UndoneProcess(RecipeSketch Sketch, string Sentence, bool AsNote)
{
    /// <summary>The recipe with the sentence.</summary>
    public string Markdown() => AsNote ? Sketch.Markdown() + $"\n## Notes\n\n{Sentence}\n" : Sketch.Markdown().TrimEnd() + $" {Sentence}\n";
}
