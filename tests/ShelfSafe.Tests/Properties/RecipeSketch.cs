using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Fluent;

namespace ShelfSafe.Tests.Properties;

/// <summary>A made-up recipe: foods of the table with amounts in grams, and steps. Invented for these tests.</summary>
public sealed record RecipeSketch(IReadOnlyList<SketchLine> Lines, string Title, string Steps)
{
    /// <summary>The recipe as Markdown.</summary>
    public string Markdown(string bullet = "- ", string end = "\n", double scale = 1)
    {
        StringBuilder text = new();
        text.Append("# ").Append(Title).Append(end).Append(end).Append("## Ingredients").Append(end).Append(end);
        int number = 1;
        foreach (SketchLine line in Lines)
        {
            text.Append(bullet == "1. " ? (number++).ToString(CultureInfo.InvariantCulture) + ". " : bullet).Append(line.Print(scale)).Append(end);
        }

        return text.Append(end).Append("## Method").Append(end).Append(end).Append(Steps).Append(end).ToString();
    }
}

/// <summary>One line of a sketch, in grams.</summary>
public sealed record SketchLine(int Low, int High, string Food)
{
    /// <summary>The line as a cook writes it.</summary>
    public string Print(double scale)
    {
        string low = (Low * scale).ToString("0.###", CultureInfo.InvariantCulture);
        return Low == High ? $"{low} g {Food}" : $"{low}-{(High * scale).ToString("0.###", CultureInfo.InvariantCulture)} g {Food}";
    }
}

/// <summary>Makes sketches for FsCheck.</summary>
public static class Sketches
{
    private static readonly string[] Titles = ["Island soup", "Harvest hall stew", "Evening pot", "Winter jam", "Plain pack", "Broth"];

    private static readonly string[] Methods =
    [
        "Brown the beef and drain it. Soak the beans overnight and drain them. Boil everything 5 minutes. Fill each jar half full of solids and top up with the hot liquid.",
        "Simmer everything until done. Fill the hot jars half full of solids and process in the pressure canner.",
        "Boil the fruit in the syrup and fill the jars. Process in the boiling water canner.",
        "Simmer for hours, strain, chill and lift off the set fat. Bring back to the boil.",
        "Simmer, then blend until smooth.",
    ];

    private static readonly string[] Foods =
        ["beef stew meat", "boneless chicken breast", "carrots", "potatoes", "onion", "celery", "tomatoes", "water", "beef broth", "salt", "black pepper", "green beans", "green peas", "corn kernels", "dried kidney beans",
         "peaches", "pears", "plums", "sugar", "apples", "flour", "cream", "butter", "olive oil", "rice", "spaghetti", "cabbage", "zucchini", "bacon", "vinegar", "egg", "lentils", "cheddar", "dried thyme"];

    /// <summary>A sketch of one to eight foods.</summary>
    public static Arbitrary<RecipeSketch> Sketch() =>
        (from lines in Line().NonEmptyListOf()
         from title in Gen.Elements(Titles)
         from steps in Gen.Elements(Methods)
         select new RecipeSketch([.. lines.DistinctBy(line => line.Food).Take(8)], title, steps)).ToArbitrary();

    private static Gen<SketchLine> Line() =>
        from food in Gen.Elements(Foods)
        from grams in Gen.Choose(5, 2_000)
        from more in Gen.Choose(1, 500)
        from wide in Gen.Elements(false, true, false)
        select new SketchLine(grams, wide ? grams + more : grams, food);
}
