using System.Globalization;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Foods;

/// <summary>Words that a careless matcher would read as another food.</summary>
public sealed class FoodCatalogueTests
{
    [Theory]
    [InlineData("chicken broth", "chicken-broth")]
    [InlineData("chicken stock", "chicken-broth")]
    [InlineData("butter beans", "canned-butter-bean|lima-bean-dried")]
    [InlineData("peanut butter", "peanut-butter")]
    [InlineData("cocoa butter", "cocoa-butter")]
    [InlineData("apple butter", "apple-butter")]
    [InlineData("almond butter", "nut-butter")]
    [InlineData("cream of tartar", "cream-of-tartar")]
    [InlineData("cream of coconut", "coconut-cream")]
    [InlineData("coconut cream", "coconut-cream")]
    [InlineData("coconut milk", "coconut-milk")]
    [InlineData("coconut water", "coconut-water")]
    [InlineData("egg noodles", "egg-noodle")]
    [InlineData("rice noodles", "rice-noodle")]
    [InlineData("eggplant", "aubergine")]
    [InlineData("oyster mushrooms", "oyster-mushroom")]
    [InlineData("oyster sauce", "oyster-sauce")]
    [InlineData("oysters", "oyster")]
    [InlineData("kidney beans", "kidney-bean")]
    [InlineData("canned kidney beans", "kidney-bean-canned")]
    [InlineData("kidneys", "kidney")]
    [InlineData("lamb kidneys", "kidney")]
    [InlineData("rice vinegar", "vinegar-rice")]
    [InlineData("rice wine", "rice-wine")]
    [InlineData("rice flour", "rice-flour")]
    [InlineData("rice", "rice")]
    [InlineData("tomato paste", "tomato-paste")]
    [InlineData("tomato juice", "tomato-juice")]
    [InlineData("tomatoes", "tomato")]
    [InlineData("potato flakes", "potato-flake")]
    [InlineData("potatoes", "potato")]
    [InlineData("sweet potatoes", "sweet-potato")]
    [InlineData("butternut squash", "butternut-squash")]
    [InlineData("butternuts", "butternut-squash")]
    [InlineData("black pepper", "black-pepper")]
    [InlineData("bell pepper", "bell-pepper")]
    [InlineData("red pepper", "bell-pepper")]
    [InlineData("red pepper flakes", "chile-flakes")]
    [InlineData("chilli", "chile-fresh")]
    [InlineData("pepper", "black-pepper")]
    [InlineData("cayenne pepper", "cayenne")]
    [InlineData("onion powder", "onion-powder")]
    [InlineData("onions", "onion")]
    [InlineData("celery seed", "celery-seed")]
    [InlineData("celery", "celery")]
    [InlineData("celery salt", "celery-salt")]
    [InlineData("garlic salt", "garlic-salt")]
    [InlineData("garlic powder", "garlic-powder")]
    [InlineData("garlic", "garlic")]
    [InlineData("horseradish", "horseradish-fresh")]
    [InlineData("radish", "radish")]
    [InlineData("hot dogs", "hot-dog")]
    [InlineData("sweetbreads", "sweetbread")]
    [InlineData("bread", "bread")]
    [InlineData("mincemeat", "mincemeat")]
    [InlineData("mince", "ground-beef")]
    [InlineData("beef mince", "ground-beef")]
    [InlineData("water chestnuts", "water-chestnut")]
    [InlineData("chestnuts", "chestnut")]
    [InlineData("water", "water")]
    [InlineData("hominy", "hominy")]
    [InlineData("polenta", "polenta")]
    [InlineData("passata", "passata")]
    [InlineData("stock cube", "bouillon-cube")]
    [InlineData("sour cream", "sour-cream")]
    [InlineData("cream", "cream")]
    [InlineData("cream cheese", "cream-cheese")]
    [InlineData("cornflour", "corn-flour|cornstarch")]
    [InlineData("cornstarch", "cornstarch")]
    [InlineData("corn syrup", "corn-syrup")]
    [InlineData("corn tortillas", "corn-tortilla")]
    [InlineData("creamed corn", "cream-style-corn")]
    [InlineData("cream-style corn", "cream-style-corn")]
    [InlineData("ginger ale", "soft-drink")]
    [InlineData("ginger", "ginger")]
    [InlineData("lemon grass", "lemongrass")]
    [InlineData("lemon juice", "lemon-juice-fresh")]
    [InlineData("bottled lemon juice", "lemon-juice-bottled")]
    [InlineData("lemon zest", "lemon-zest")]
    [InlineData("lime leaves", "makrut-lime-leaf")]
    [InlineData("pickling lime", "pickling-lime")]
    [InlineData("lime juice", "lime-juice-fresh")]
    [InlineData("bay leaf", "bay-leaf")]
    [InlineData("curry leaf", "curry-leaf")]
    [InlineData("curry powder", "curry-powder")]
    [InlineData("grape leaves", "grape-leaf")]
    [InlineData("almond milk", "plant-milk")]
    [InlineData("almonds", "almond")]
    [InlineData("soy sauce", "soy-sauce")]
    [InlineData("milk", "milk")]
    [InlineData("buttermilk", "buttermilk")]
    [InlineData("condensed milk", "condensed-milk")]
    [InlineData("milk chocolate", "chocolate")]
    [InlineData("fish sauce", "fish-sauce")]
    [InlineData("clam juice", "fish-stock")]
    [InlineData("beef dripping", "beef-dripping")]
    [InlineData("vanilla bean", "vanilla")]
    [InlineData("green beans", "green-bean")]
    [InlineData("baked beans", "baked-beans")]
    [InlineData("bean sprouts", "bean-sprouts")]
    [InlineData("coffee beans", "coffee")]
    [InlineData("jelly beans", "candy")]
    [InlineData("cocoa beans", "cocoa")]
    [InlineData("refried beans", "refried-beans")]
    [InlineData("split peas", "split-pea")]
    [InlineData("pine nuts", "pine-nut")]
    [InlineData("apple cider vinegar", "vinegar-cider")]
    [InlineData("crab apples", "crab-apple")]
    [InlineData("crab", "crab")]
    [InlineData("crab sticks", "imitation-crab")]
    [InlineData("custard powder", "custard-powder")]
    [InlineData("mustard", "mustard-prepared")]
    [InlineData("mustard seed", "mustard-seed")]
    [InlineData("mustard greens", "greens-mixed")]
    [InlineData("nutmeg", "nutmeg")]
    [InlineData("butter lettuce", "lettuce")]
    [InlineData("goat cheese", "goat-cheese")]
    [InlineData("goat milk", "goat-milk")]
    [InlineData("cottage cheese", "cottage-cheese")]
    [InlineData("headcheese", "pate")]
    [InlineData("macaroni and cheese", "macaroni-cheese")]
    [InlineData("half and half", "cream")]
    [InlineData("cream of mushroom soup", "condensed-cream-soup")]
    [InlineData("mushrooms", "mushroom")]
    [InlineData("wild mushrooms", "wild-mushroom")]
    [InlineData("sausages", "sausage")]
    [InlineData("ham hock", "ham-hock")]
    [InlineData("turkey bacon", "bacon")]
    [InlineData("turkey", "turkey")]
    [InlineData("ground turkey", "ground-turkey")]
    [InlineData("ground chicken", "ground-chicken")]
    [InlineData("ground beef", "ground-beef")]
    [InlineData("ground almonds", "almond-flour")]
    [InlineData("ground ginger", "ginger-ground")]
    [InlineData("beef liver", "liver")]
    [InlineData("chicken livers", "chicken-liver")]
    [InlineData("black pudding", "blood-sausage")]
    [InlineData("rice pudding", "rice-pudding")]
    [InlineData("suet", "suet")]
    [InlineData("duck fat", "duck-fat")]
    [InlineData("duck", "duck")]
    [InlineData("duck eggs", "egg")]
    [InlineData("egg whites", "egg-white")]
    [InlineData("salt pork", "salt-pork")]
    [InlineData("salt cod", "salt-cod")]
    [InlineData("pickling salt", "pickling-salt")]
    [InlineData("baking soda", "baking-soda")]
    [InlineData("baking powder", "baking-powder")]
    [InlineData("sherry vinegar", "sherry-vinegar")]
    [InlineData("sherry", "fortified-wine")]
    [InlineData("ginger beer", "soft-drink")]
    [InlineData("beetroot", "beet")]
    [InlineData("celery root", "celeriac")]
    [InlineData("arrowroot", "arrowroot")]
    [InlineData("wild rice", "wild-rice")]
    [InlineData("spaghetti squash", "spaghetti-squash")]
    [InlineData("spaghetti", "spaghetti")]
    [InlineData("pumpkin pie spice", "pumpkin-pie-spice")]
    [InlineData("pumpkin seeds", "pumpkin-seed")]
    [InlineData("canned pumpkin", "pumpkin-puree")]
    [InlineData("banana peppers", "chile-fresh")]
    [InlineData("elderberries", "elderberry")]
    [InlineData("maple syrup", "maple-syrup")]
    [InlineData("molasses", "molasses")]
    [InlineData("sugar", "sugar")]
    [InlineData("sugar snap peas", "snow-pea")]
    [InlineData("tapioca", "tapioca")]
    [InlineData("roux", "roux")]
    [InlineData("white sauce", "white-sauce")]
    [InlineData("gravy granules", "gravy-granules")]
    [InlineData("smoked salmon", "smoked-fish")]
    [InlineData("salmon", "salmon")]
    [InlineData("tuna in oil", "tuna-in-oil")]
    [InlineData("shrimp paste", "shrimp-paste")]
    [InlineData("pork rinds", "pork-rind")]
    [InlineData("leg of lamb", "lamb")]
    [InlineData("oxtail", "beef-shank")]
    [InlineData("tahini", "tahini")]
    [InlineData("coriander seeds", "coriander-seed")]
    [InlineData("cilantro", "coriander-leaf")]
    [InlineData("star anise", "star-anise")]
    [InlineData("rose water", "rose-water")]
    [InlineData("orange juice", "orange-juice")]
    [InlineData("orange peel", "orange-zest")]
    [InlineData("tofu", "tofu")]
    [InlineData("tempeh", "tofu")]
    [InlineData("fermented black beans", "fermented-black-bean")]
    [InlineData("black bean sauce", "black-bean-sauce")]
    [InlineData("red lentils", "red-lentil")]
    [InlineData("lentils", "lentil")]
    [InlineData("ramen noodles", "instant-noodle")]
    [InlineData("evaporated milk", "evaporated-milk")]
    [InlineData("ice cream", "ice-cream")]
    [InlineData("aquafaba", "aquafaba")]
    [InlineData("rum", "spirits")]
    [InlineData("rum extract", "flavour-extract")]
    [InlineData("welsh rabbit", "cheese-sauce")]
    [InlineData("mint jelly", "mint-jelly")]
    [InlineData("watermelon rind", "watermelon-rind")]
    public void Find_AWordThatMisleads_IsTheFoodTheCookMeans(string phrase, string expected) =>
        Assert.Equal(expected, FoodFixture.Ids(FoodFixture.Catalogue.Find(phrase)));

    // Cultures: Turkish lower-cases I to a dotless letter, German writes decimals with a comma.
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("")]
    public void Find_InAnyCulture_IsTheSame(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal("chicken-liver", FoodFixture.Ids(FoodFixture.Catalogue.Find("CHICKEN LIVERS")));
            Assert.Equal("1.5 kg", FoodFixture.Print(FoodFixture.Read("1,5 KG VENISON, DICED")[0].Amount));
            Assert.Equal("0.5 tsp", FoodFixture.Print(FoodFixture.Read("0.5 tsp Chili")[0].Amount));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("Jalapeños", "jalapeno")]
    [InlineData("crème fraîche", "creme-fraiche")]
    [InlineData("black-eyed peas", "black-eyed-pea")]
    [InlineData("confectioners\u2019 sugar", "icing-sugar")]
    [InlineData("loaves of bread", "bread")]
    [InlineData("potatoes", "potato")]
    [InlineData("2 % milk", "milk")]
    public void Find_AccentsHyphensAndPlurals_MakeNoDifference(string phrase, string expected) =>
        Assert.Equal(expected, FoodFixture.Ids(FoodFixture.Catalogue.Find(phrase)));

    [Theory]
    [InlineData("brocolli", "broccoli")]
    [InlineData("tumeric", "turmeric")]
    [InlineData("oinon", "onion")]
    [InlineData("cinammon", "cinnamon")]
    public void Find_ASlipOfTheFinger_IsForgivenWhereOneFoodIsNear(string phrase, string expected) =>
        Assert.Equal(expected, FoodFixture.Ids(FoodFixture.Catalogue.Find(phrase)));

    [Theory]
    [InlineData("xyzzy")]
    [InlineData("qwertz paste blend zzz")]
    [InlineData("vinegar zorblax")]
    [InlineData("")]
    [InlineData("???")]
    [InlineData("bean")]
    public void Find_AnyWord_NeverBecomesAnAcidFoodByGuessing(string phrase) =>
        Assert.DoesNotContain(FoodFixture.Catalogue.Find(phrase).Candidates, food => food.Acidity == FoodAcidity.Acid);

    [Theory]
    [InlineData("chicken stick")]
    [InlineData("wheat")]
    public void Find_AKnownWordNearAnother_IsNotCorrected(string phrase) =>
        Assert.False(FoodFixture.Catalogue.Find(phrase) is Identified { Corrected: true });

    // An unknown word at the end is the head of the phrase, so the food before it only describes it.
    [Theory]
    [InlineData("beef zorblax")]
    [InlineData("salt and zorblax")]
    [InlineData("tomato zorblax")]
    public void Find_AnUnknownHead_IsUnidentified(string phrase) => Assert.IsType<Unidentified>(FoodFixture.Catalogue.Find(phrase));

    [Theory]
    [InlineData("peanut soup", "nut")]
    [InlineData("cheese bread", "dairy")]
    [InlineData("macaroni with cheese", "pasta")]
    [InlineData("courgettes stuffed with rice", "rice")]
    [InlineData("very lean ground beef", "ground")]
    [InlineData("olives stuffed with almonds", "nut")]
    public void Find_WhatStandsBesideTheHead_KeepsItsHazard(string phrase, string trait) =>
        Assert.True(FoodFixture.Catalogue.Find(phrase).MayHave(trait));

    [Fact]
    public void Find_AWordWithTwoMeanings_IsSettledByTheRegion()
    {
        Assert.Equal("cornstarch", FoodFixture.Ids(FoodFixture.Make("uk", []).Catalogue.Find("cornflour")));
        Assert.Equal("corn-flour", FoodFixture.Ids(FoodFixture.Make("us", []).Catalogue.Find("cornflour")));
    }

    [Fact]
    public void Find_TheCooksOwnWord_PointsToAFoodOfTheTable()
    {
        (FoodCatalogue catalogue, _) = FoodFixture.Make(string.Empty, [new("harvest dust", "spice-mix", string.Empty, "the cook", 1)]);
        Identified match = Assert.IsType<Identified>(catalogue.Find("Harvest Dust"));
        Assert.Equal("spice-mix", match.Food.Id);
        Assert.True(match.OnTheCooksWord);
    }

    [Fact]
    public void Mentions_InASentence_FindsTheLongestWordsWithTheirPlace()
    {
        const string Sentence = "Whisk the sour cream and a spoon of corn starch into the chicken broth.";
        string[] found = [.. FoodFixture.Catalogue.Mentions(Sentence).Where(mention => mention.Match is Identified).Select(mention => Sentence[mention.Start..mention.End])];
        Assert.Contains("sour cream", found);
        Assert.Contains("corn starch", found);
        Assert.Contains("chicken broth", found);
        Assert.DoesNotContain("cream", found);
    }

    [Fact]
    public void Table_EveryAlias_PointsToAFoodAndIsUnique()
    {
        HashSet<string> ids = [.. RulePack.Default.Tables.Foods.Select(food => food.Id)];
        HashSet<(string, string)> seen = [];
        foreach (AliasRow alias in RulePack.Default.Tables.Aliases)
        {
            Assert.Contains(alias.Food, ids);
            Assert.True(seen.Add((alias.Alias, alias.Region)), alias.Alias);
        }

        Assert.True(ids.Count >= 800);
        Assert.Equal(ids.Count, RulePack.Default.Tables.Foods.Length);
    }
}
