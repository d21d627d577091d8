using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>Shapes of ingredient lines beyond the usual ones: sizes in front of the food, shares, weights behind a comma, thousands, spoons of other languages.</summary>
public sealed class OtherLineShapesTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    // A size is no count: two-inch beets may be one or forty.
    [Theory]
    [InlineData("2 inch beets", null, "beet")]
    [InlineData("2-inch beets", null, "beet")]
    [InlineData("3-inch carrot sticks", null, "carrot")]
    [InlineData("4 inch cucumbers", null, "cucumber")]
    [InlineData("10 cm leeks", null, "leek")]
    [InlineData("1-inch potato cubes", null, "potato")]
    [InlineData("1/2 inch carrot slices", null, "carrot")]
    [InlineData("1 inch carrots, 3 lb", "3 lb", "carrot")]
    [InlineData("5 lb 2 inch beets", "5 lb", "beet")]
    [InlineData("12 3-inch cucumbers", "12 each", "cucumber")]
    [InlineData("2-inch piece ginger", "1 piece", "ginger")]
    [InlineData("2 inch ginger", "2 inch", "ginger")]
    // Numbers.
    [InlineData("a scant 1/2 cup sugar", "0.5 cup", "sugar")]
    [InlineData("1 & 1/2 cups sugar", "1.5 cup", "sugar")]
    [InlineData("three-quarter cup sugar", "0.75 cup", "sugar")]
    [InlineData("3~4 carrots", "3-4 each", "carrot")]
    [InlineData("1 000 g carrots", "1000 g", "carrot")]
    [InlineData("1.500 g carrots", "1.5-1500 g", "carrot")]
    [InlineData("1.250 kg carrots", "1.25 kg", "carrot")]
    [InlineData("2 400 g tins tomatoes", "2 can", "canned-tomatoes")]
    [InlineData("1-1/2 to 2 cups sugar", "1.5-2 cup", "sugar")]
    [InlineData("½–¾ tsp salt", "0.5-0.75 tsp", "salt")]
    // Units.
    [InlineData("2 EL sugar", "2 tbsp", "sugar")]
    [InlineData("2 c. à soupe sugar", "2 tbsp", "sugar")]
    [InlineData("1 c. à c. salt", "1 tsp", "salt")]
    [InlineData("2 cda sugar", "2 tbsp", "sugar")]
    [InlineData("1 cdta salt", "1 tsp", "salt")]
    [InlineData("2 rkl sugar", "2 tbsp", "sugar")]
    [InlineData("100 grms sugar", "100 g", "sugar")]
    [InlineData("1 Australian tablespoon salt", "1 tbsp", "salt")]
    [InlineData("1 breakfastcup water", "1 breakfastcup", "water")]
    // Words around an amount.
    [InlineData("10 or so small cucumbers", "10 each", "cucumber")]
    [InlineData("2 lb or so carrots", "2 lb", "carrot")]
    [InlineData("60ish carrots", "60 each", "carrot")]
    [InlineData("2 carrots (or 3 if you are brave)", "2-3 each", "carrot")]
    [InlineData("1 carrot (or 2 if they are small)", "1 each", "carrot")]
    [InlineData("walnut-sized lump of butter", "1 piece", "butter")]
    [InlineData("thumb ginger, grated", "1 piece", "ginger")]
    [InlineData("2 squares chocolate", "2 piece", "chocolate")]
    [InlineData("few shakes Worcestershire", null, "worcestershire")]
    // What stands behind "in" and "with".
    [InlineData("1 tbsp rice flour in 2 tbsp water", "1 tbsp", "rice-flour")]
    [InlineData("10 g rice flour cooked in 300 ml boiling water", "10 g", "rice-flour")]
    [InlineData("1 kg carrots, cut in 2 cm pieces", "1 kg", "carrot")]
    public void Read_Line_HasItsAmountAndFood(string line, string? amount, string food)
    {
        IngredientReport read = Assert.Single(Vet(line).Ingredients);

        Assert.Equal(amount, Printed(read.Amount));
        Assert.Equal(food, read.FoodId);
    }

    [Theory]
    [InlineData("4 chicken breasts, 4 oz each", 453, 454)]
    [InlineData("8 chicken thighs, about 3 pounds", 1360, 1361)]
    [InlineData("1 whole chicken, 3-4 lb", 1360, 1815)]
    [InlineData("1 3- to 4-pound chicken", 1360, 1815)]
    [InlineData("1 3-4 lb chicken", 1360, 1815)]
    [InlineData("3 cans, 15 ounces each, kidney beans", 1275, 1276)]
    public void Read_WeightBesideACount_IsWeighed(string line, double low, double high)
    {
        Interval grams = Assert.Single(Vet(line).Ingredients).Grams!.Value;

        Assert.InRange(grams.Low, low, grams.High);
        Assert.InRange(grams.High, grams.Low, high);
    }

    // A second food or a second amount of the same food behind a joint; water that only carries a starch is not counted as liquid.
    [Theory]
    [InlineData("25 g butter mixed with 25 g sugar", "25 g butter|25 g sugar")]
    [InlineData("1 tbsp rice flour in 2 tbsp milk", "1 tbsp rice-flour|2 tbsp milk")]
    [InlineData("1 kg carrots + 500 g small ones", "1 kg carrot|500 g carrot")]
    [InlineData("500 g barley soaked in 1 litre water", "500 g barley")]
    public void Read_SecondAmountOnALine_IsReadToo(string line, string foods) =>
        Assert.Equal(foods, string.Join('|', Vet(line).Ingredients.Select(one => $"{Printed(one.Amount)} {one.FoodId}")));

    // "20 beer bottles with caps" hold nothing yet; a bottle of beer does.
    [Theory]
    [InlineData("20 beer bottles with caps", false)]
    [InlineData("2 bottles beer", true)]
    public void Read_VesselWithItsClosure_IsNoFood(string line, bool food) => Assert.Equal(food, Vet(line).Ingredients.Any(static one => one.Identified));

    // Shares tell no amount, and each food of them is read.
    [Theory]
    [InlineData("3 parts oil to 1 part vinegar", "3 part vegetable-oil|1 part vinegar-white")]
    [InlineData("3 parts oil, 1 part vinegar", "3 part vegetable-oil|1 part vinegar-white")]
    [InlineData("1 part salt to 4 parts sugar", "1 part salt|4 part sugar")]
    [InlineData("2:1 oil to vinegar", "1-2 part vegetable-oil|1-2 part vinegar-white")]
    [InlineData("1:1 vinegar and water", "1 part vinegar-white|1 part water")]
    [InlineData("equal parts vinegar and water", "1 part vinegar-white|1 part water")]
    [InlineData("half vinegar, half water", "0.5 each vinegar-white|0.5 each water")]
    public void Read_SharesOfOneAnother_AreNotWeighed(string line, string foods)
    {
        VettingReport report = Vet(line);

        Assert.Equal(foods, string.Join('|', report.Ingredients.Select(one => $"{Printed(one.Amount)} {one.FoodId}")));
        Assert.All(report.Ingredients, static one => Assert.Null(one.Grams));
    }

    // "Cider (5 %)" is a drink in one country and juice in another; only what says vinegar is vinegar.
    [Theory]
    [InlineData("4 cups cider (5 %)", false)]
    [InlineData("4 cups cider (5% acidity)", false)]
    [InlineData("4 cups cider vinegar (5%)", true)]
    public void Vet_CiderThatDoesNotSayVinegar_IsNoVinegar(string line, bool vinegar)
    {
        VettingReport report = Vetter.Vet($"# Pickled onions\n\n- 2 lb pickling onions, peeled\n- {line}\n- 2 tbsp salt\n\n1. Boil the liquid with the salt, add the onions and boil 5 minutes. Fill hot pint jars. Process in a boiling-water canner.\n", Kitchen.Unknown);

        Assert.Equal(vinegar, report.Ingredients.Single(static one => one.Line == 4).Traits.Contains("vinegar"));
        Assert.Equal(!vinegar, report.Findings.Any(static one => one.Rule == "regional-word"));
        Assert.NotEqual(Acidity.Acid, report.Acidity);
    }

    private static string? Printed(Amount? amount) => amount is not { } one ? null
        : string.Create(CultureInfo.InvariantCulture, $"{one.Value.Low:0.###}{(one.Value.High == one.Value.Low ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{one.Value.High:0.###}"))} {one.Unit}");

    private static VettingReport Vet(string line) => Vetter.Vet($"# Line\n\n- {line}\n\n1. Mix.\n", Kitchen.Unknown);
}
