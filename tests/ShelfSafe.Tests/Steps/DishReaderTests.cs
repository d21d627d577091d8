using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Steps;
using Xunit;

namespace ShelfSafe.Tests.Steps;

public sealed class DishReaderTests
{
    private static readonly DishReader Reader = DishReader.Create(RulePack.Default);

    [Theory]
    [InlineData("Green tomato chutney", "chutney")]
    [InlineData("Roasted tomato salsa", "salsa")]
    [InlineData("Beef chili", "chili")]
    [InlineData("Roast pumpkin soup", "soup")]
    [InlineData("Plum and cardamom jam", "jam")]
    [InlineData("Clear beef broth", "stock")]
    [InlineData("Beetroot relish", "relish")]
    [InlineData("Mild garlic dills", "pickle")]
    [InlineData("Dilly green beans", "pickle")]
    [InlineData("Home made curry powder", "spice-mix")]
    [InlineData("Chicken tortilla soup", "soup")]
    public void Kinds_EverydayTitle_TellsTheKind(string title, string kind) =>
        Assert.Contains(Kinds(title), one => one.Id == kind && one.FromTitle);

    [Theory]
    [InlineData("Seed loaf")]
    [InlineData("Fluffy waffles")]
    [InlineData("Banana milkshake")]
    [InlineData("Lentil burgers")]
    [InlineData("Club sandwich")]
    [InlineData("Scallop ceviche")]
    [InlineData("Potato salad")]
    [InlineData("Cheese quesadillas")]
    [InlineData("Apple crumble")]
    public void NotAJar_BakedFriedOrFreshDish_IsYes(string title) =>
        Assert.Equal("yes", DishReader.NotAJar(Kinds(title)));

    [Theory]
    [InlineData("Vegetable soup")]
    [InlineData("Bread and butter pickles")]
    [InlineData("Burger sauce")]
    [InlineData("Pizza sauce")]
    [InlineData("Candied jalapeños")]
    [InlineData("Hot fudge for gifts")]
    [InlineData("Stuffed cabbage rolls")]
    [InlineData("Chicken tortilla soup")]
    public void NotAJar_DishThatCouldGoInJars_IsNotYes(string title) =>
        Assert.NotEqual("yes", DishReader.NotAJar(Kinds(title)));

    [Fact]
    public void Kinds_TitleSaysNothing_ReadsFoodsAndFacts() =>
        Assert.Contains(Reader.Kinds("Grandmother's best", [], [], ["wheat-flour", "yeast", "water"]), one => one.Id == "bread" && !one.FromTitle);

    private static ImmutableArray<DishKind> Kinds(string title) => Reader.Kinds(title, [], [], []);
}
