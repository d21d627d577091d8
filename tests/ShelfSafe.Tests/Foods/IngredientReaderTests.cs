using System.Globalization;
using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>Lines in our own words, as cooks write them.</summary>
public class IngredientReaderTests
{
    private readonly IngredientReader _reader = Reader();

    [Theory]
    [InlineData("2 onions, chopped", 2, 2, "each", "onion")]
    [InlineData("1 1/2 cups sugar", 1.5, 1.5, "cup", "sugar")]
    [InlineData("1½ cups sugar", 1.5, 1.5, "cup", "sugar")]
    [InlineData("1-1/2 cups sugar", 1.5, 1.5, "cup", "sugar")]
    [InlineData("2,5 kg carrots", 2.5, 2.5, "kg", "carrot")]
    [InlineData("1,500 g carrots", 1500, 1500, "g", "carrot")]
    [InlineData("2-3 carrots", 2, 3, "each", "carrot")]
    [InlineData("2 to 3 carrots", 2, 3, "each", "carrot")]
    [InlineData("up to 4 carrots", 0, 4, "each", "carrot")]
    [InlineData("half a dozen carrots", 6, 6, "each", "carrot")]
    [InlineData("a couple of carrots", 2, 2, "each", "carrot")]
    [InlineData("1 cup plus 2 tbsp sugar", 1.125, 1.125, "cup", "sugar")]
    [InlineData("1 lb / 450 g carrots", 1, 1, "lb", "carrot")]
    [InlineData("250 ml (1 cup) milk", 250, 250, "ml", "milk")]
    [InlineData("Onions: 3 large", 3, 3, "each", "onion")]
    [InlineData("Carrots - 2 kg", 2, 2, "kg", "carrot")]
    [InlineData("4 cloves of garlic", 4, 4, "clove", "garlic")]
    [InlineData("4 garlic cloves, crushed", 4, 4, "clove", "garlic")]
    [InlineData("A pinch of salt", 1, 1, "pinch", "salt")]
    [InlineData("2 T sugar", 2, 2, "tbsp", "sugar")]
    [InlineData("2 t sugar", 2, 2, "tsp", "sugar")]
    [InlineData("3 tblsp. sugar", 3, 3, "tbsp", "sugar")]
    [InlineData("½ tsp black pepper", 0.5, 0.5, "tsp", "black-pepper")]
    public void Read_Amount_IsReadAsPrinted(string line, double low, double high, string unit, string food)
    {
        Ingredient read = _reader.Read(Line(line))[0];

        Assert.NotNull(read.Amount);
        Assert.Equal((low, high, unit), (Math.Round(read.Amount.Value.Low, 4), Math.Round(read.Amount.Value.High, 4), read.Amount.Unit));
        Assert.Equal(food, Assert.IsType<Identified>(read.Match).Food.Id);
    }

    [Theory]
    [InlineData("2 (14 oz) cans tomatoes", 2, 14, "oz")]
    [InlineData("1 x 400 g tin tomatoes", 1, 400, "g")]
    [InlineData("one 28-oz can tomatoes", 1, 28, "oz")]
    [InlineData("400 ml can coconut milk", 1, 400, "ml")]
    public void Read_Package_KeepsCountAndSize(string line, double count, double size, string unit)
    {
        Ingredient read = _reader.Read(Line(line))[0];

        Assert.Equal((count, "can"), (read.Amount!.Value.Low, read.Amount.Unit));
        Assert.Equal((size, unit), (read.Package!.Value.Low, read.Package.Unit));
    }

    // A compound is what its head noun says, or what the whole phrase is known as; never its milder part.
    [Theory]
    [InlineData("200 ml chicken broth", "broth")]
    [InlineData("100 g peanut butter", "nut")]
    [InlineData("1 tin coconut cream", "coconut-milk")]
    [InlineData("200 g egg noodles", "pasta")]
    [InlineData("2 tbsp gravy granules", "thickener")]
    [InlineData("200 g kidney beans", "dry-legume")]
    [InlineData("200 ml sour cream", "dairy")]
    [InlineData("4 hot dogs", "cured-meat")]
    [InlineData("200 g sweetbreads", "offal")]
    [InlineData("200 g polenta", "grain")]
    [InlineData("1 tbsp rice vinegar", "weak-vinegar")]
    public void Read_Compound_CarriesItsOwnTrait(string line, string trait) =>
        Assert.True(_reader.Read(Line(line))[0].Match.MayHave(trait), line);

    [Theory]
    [InlineData("1 tsp cream of tartar", "dairy")]
    [InlineData("2 eggplants", "egg")]
    [InlineData("200 g butter beans", "dairy")]
    [InlineData("100 g oyster mushrooms", "seafood")]
    [InlineData("1 butternut squash", "dairy")]
    [InlineData("1 tsp ground nutmeg", "nut")]
    [InlineData("1 vanilla bean", "dry-legume")]
    [InlineData("100 g water chestnuts", "nut")]
    public void Read_Confusable_DoesNotCarryTheOtherFoodsTrait(string line, string trait) =>
        Assert.False(_reader.Read(Line(line))[0].Match.MayHave(trait), line);

    [Fact]
    public void Read_SeveralFoods_GivesOneEntryEach() =>
        Assert.Equal(["salt", "pepper", "thyme"], _reader.Read(Line("salt, pepper and thyme")).Select(read => read.Food));

    [Theory]
    [InlineData("500 g lamb or beef")]
    [InlineData("2 tbsp lard/oil")]
    public void Read_Choice_IsOneEntryWithAnAlternative(string line) =>
        Assert.Single(Assert.Single(_reader.Read(Line(line))).Alternatives);

    [Fact]
    public void Read_RegionalWord_IsAChoiceOfBoth() =>
        Assert.True(_reader.Read(Line("2 tbsp cornflour"))[0].Match.MayHave("thickener"));

    [Theory]
    [InlineData("salt to taste", true, false)]
    [InlineData("100 g peas (optional)", false, true)]
    public void Read_LittleWords_AreKept(string line, bool toTaste, bool optional)
    {
        Ingredient read = _reader.Read(Line(line))[0];

        Assert.Equal((toTaste, optional), (read.ToTaste, read.Optional));
    }

    [Theory]
    [InlineData("ZUCCHINI, 2 KG", "tr-TR")]
    [InlineData("1,5 kg CHILI", "de-DE")]
    public void Read_OtherCulture_ReadsTheSame(string line, string culture)
    {
        Ingredient plain = _reader.Read(Line(line))[0];
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Ingredient other = Reader().Read(Line(line))[0];

            Assert.Equal((plain.Food, plain.Amount), (other.Food, other.Amount));
            Assert.IsNotType<Unidentified>(other.Match);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Property(MaxTest = 500, Replay = "(20261125,1)")]
    public bool Read_AnyText_NeverThrowsAndStaysInside(string? text)
    {
        string line = text ?? string.Empty;
        return _reader.Read(Line(line)).All(read => read.Span.Start >= 0 && read.Span.End <= line.Length);
    }

    private static IngredientReader Reader()
    {
        PackTables tables = RulePack.Default.Tables;
        LineWordTable words = new(RulePack.Default.Text("units.csv"), RulePack.Default.Text("line-words.csv"), []);
        FoodCatalogue catalogue = new(tables.Foods, tables.Aliases, [], words.Of("filler").Concat(words.Of("size")).Concat(words.Of("prep")), words.Of("cut"), string.Empty);
        return new(catalogue, words);
    }

    private static IngredientLine Line(string text) =>
        new(new MappedText(text, [.. Enumerable.Range(0, text.Length)], [.. Enumerable.Range(1, text.Length)]), null, AtServing: false, FromProse: false);
}
