using ShelfSafe.Core;
using ShelfSafe.Heat;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Lessons;

/// <summary>The pictures show the published findings, and for a cook's own recipe nothing that could be read as a process.</summary>
public class IllustratorTests
{
    private const double Foot = 0.3048;

    private static readonly Illustrator Illustrator = LessonBook.Create(RulePack.Default).Illustrator;
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    private static readonly string[] Recipes =
    [
        "# Soup\n\n- 1 kg beef\n- 500 g carrots\n- 2 l water\n\n1. Boil for 5 minutes.\n",
        "# Stew\n\n- 1 kg beef\n- 500 g potatoes\n- 1 l water\n- 60 g flour\n\n1. Boil. Stir in the flour.\n",
        "# Puree\n\n- 1 kg pumpkin\n- 200 ml water\n\n1. Boil and blend until smooth.\n",
        "# Relish\n\n- 1 kg beetroot\n- 300 g onions\n- 500 ml vinegar\n- 200 g sugar\n\n1. Simmer.\n",
        "# Pickle\n\n- 1 kg lemons\n- 100 ml vinegar\n\n1. Simmer.\n",
        "# Fruit\n\n- 1 kg apples\n- 100 g sugar\n\n1. Simmer.\n",
    ];

    public static TheoryData<PictureKind> Heated => [PictureKind.Sets, PictureKind.Conducts, PictureKind.Sizes];

    public static TheoryData<PictureKind> Kinds => [.. Enum.GetValues<PictureKind>()];

    // Source: product rules of this program: lethality and a pH below the line belong to worked examples alone.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void ForRecipe_AnyRecipe_ShowsNoLethalityNoTimeAndNoAcidEnd(PictureKind kind)
    {
        foreach (string recipe in Recipes)
        {
            Illustration drawn = Illustrator.ForRecipe(kind, Vetter.Vet(recipe, Kitchen.Unknown), Kitchen.Unknown);
            foreach (Figure figure in drawn.Figures.Where(_ => kind is not (PictureKind.Altitude or PictureKind.Air or PictureKind.Water)))
            {
                string told = string.Join(' ', figure.Below.Append(figure.Title).Append(figure.Description).Append(figure.X.Name));
                Assert.DoesNotContain("ethality", told, StringComparison.Ordinal);
                Assert.DoesNotContain("minutes", told, StringComparison.Ordinal);
                Assert.DoesNotContain("121", told, StringComparison.Ordinal);
                Assert.DoesNotContain("below 4.6", told, StringComparison.Ordinal);
                Assert.False(figure is LineFigure { Y.Name: "temperature, °C" });
                Assert.False(figure is BarFigure bars && bars.Bars.Any(bar => bar.Name.Contains("mixture", StringComparison.Ordinal)));
            }
        }
    }

    [Fact]
    public void ForRecipe_LowAcidFoodInVinegar_TellsOnlyTheUpperEndWithTheWarning()
    {
        Figure scale = Illustrator.ForRecipe(PictureKind.Acid, Vetter.Vet(Recipes[3], Kitchen.Unknown), Kitchen.Unknown).Figures[0];
        double upper = RulePack.Default.Tables.Foods.First(food => food.Id == "beet").PhHigh!.Value;

        Assert.Contains(FormattableString.Invariant($"pH {upper:0.0}"), scale.Below[0], StringComparison.Ordinal);
        Assert.Contains("Warning", scale.Below[0], StringComparison.Ordinal);
        Assert.Contains("Only a calibrated meter", scale.Below[1], StringComparison.Ordinal);
    }

    [Fact]
    public void ForRecipe_AcidFoodAlone_NamesNoNumberAndWarns()
    {
        Figure scale = Illustrator.ForRecipe(PictureKind.Acid, Vetter.Vet(Recipes[4], Kitchen.Unknown), Kitchen.Unknown).Figures[0];

        Assert.DoesNotContain("pH 2", scale.Below[0], StringComparison.Ordinal);
        Assert.Contains("no upper end", scale.Below[0], StringComparison.Ordinal);
        Assert.Contains("Only a calibrated meter", scale.Below[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("# Soup\n\n- beef\n- 1 l water\n\n1. Boil.\n", "no amount")]
    [InlineData("# Soup\n\n- 200 g zibbleroot\n- 1 l water\n\n1. Boil.\n", "could not be read")]
    [InlineData("# Empty\n\nNothing here.\n", "nothing in this recipe")]
    public void ForRecipe_WhatCannotBeWeighed_SaysWhyInOneLine(string recipe, string reason)
    {
        Illustration drawn = Illustrator.ForRecipe(PictureKind.Sets, Vetter.Vet(recipe, Kitchen.Unknown), Kitchen.Unknown);

        Assert.Empty(drawn.Figures);
        Assert.Contains(reason, Assert.Single(drawn.Notes), StringComparison.Ordinal);
    }

    // No food of it has a published pH: the scale stays empty, and the warning stands.
    [Fact]
    public void ForRecipe_FoodsWithoutPublishedPh_StillWarns()
    {
        string food = RulePack.Default.Tables.Foods.First(row => row is { PhLow: null, Group: "vegetable" }).Name;
        Illustration drawn = Illustrator.ForRecipe(PictureKind.Acid, Vetter.Vet($"# Pot\n\n- 1 kg {food}\n\n1. Boil.\n", Kitchen.Unknown), Kitchen.Unknown);

        Assert.Contains("Warning", drawn.Figures[0].Below[0], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Heated))]
    public void Worked_Temperatures_NeverPassTheCannerWhileItHeats(PictureKind kind)
    {
        LineFigure figure = (LineFigure)Illustrator.Worked(kind, Kitchen.Unknown).Figures[0];
        double hold = figure.Lines[0].Y.Max();

        Assert.All(figure.Lines.Skip(1), line => Assert.All(line.Y, celsius => Assert.True(celsius <= hold + 1e-9)));
    }

    [Theory]
    [MemberData(nameof(Heated))]
    public void Worked_Lethality_NeverFallsAndTheQuartEndsBelowThePint(PictureKind kind)
    {
        LineFigure figure = (LineFigure)Illustrator.Worked(kind, Kitchen.Unknown).Figures[1];

        Assert.All(figure.Lines, line => Assert.All(line.Y.Zip(line.Y.Skip(1)), pair => Assert.True(pair.First <= pair.Second + 1e-9)));
        Assert.True(figure.Lines[^1].Y[^1] < figure.Lines[^2].Y[^1]);
    }

    // Source: USDA AIB 539 (rev. 2015): weighted gauge 10 lb to 1,000 ft, 15 lb above.
    [Fact]
    public void Worked_Altitude_TenPoundsAt1500MetresIsTooCoolAndThePrintedFifteenIsNot()
    {
        LineFigure figure = (LineFigure)Illustrator.Worked(PictureKind.Altitude, Kitchen.Unknown).Figures[0];
        double least = CannerSteam.TemperatureCelsius(10 * CannerPictures.PsiPascals, 1_000 * Foot);
        int there = figure.Lines[1].X.ToList().FindIndex(feet => feet >= 1_500 / Foot);

        Assert.True(figure.Lines[3].Y[there] < least - 1);
        Assert.True(figure.Lines[1].Y[there] >= least);
    }

    // Source: Choi and Okos: fat passes less heat than water, so the same pot with oil lags more.
    [Fact]
    public void ForRecipe_OilStirredIn_FallsFurtherBehind()
    {
        const string Lean = "# Puree\n\n- 1 kg pumpkin\n- 400 ml water\n\n1. Boil and blend until smooth.\n";
        const string Oily = "# Puree\n\n- 1 kg pumpkin\n- 400 ml water\n- 500 g olive oil\n\n1. Boil and blend until smooth.\n";

        Assert.True(Behind(Oily) < Behind(Lean), FormattableString.Invariant($"{Behind(Oily)} and {Behind(Lean)}"));
    }

    [Fact]
    public void Worked_MoreOnionInTheSameVinegar_MovesTheWholeBarUp()
    {
        BarFigure figure = (BarFigure)Illustrator.Worked(PictureKind.Acid, Kitchen.Unknown).Figures[0];
        FigureBar[] mixtures = [.. figure.Bars.Where(bar => bar.Dark)];

        Assert.Equal(3, mixtures.Length);
        Assert.True(mixtures[0].Low < mixtures[1].Low && mixtures[1].Low < mixtures[2].Low);
        Assert.True(mixtures[0].High < mixtures[1].High && mixtures[1].High < mixtures[2].High);
    }

    // Source: 21 CFR 114.3 (0.85); New York State Department of Agriculture: 50 % sugar near 0.93.
    [Fact]
    public void Worked_Water_SugarStaysAboveTheLineAndDryGoodsBelow()
    {
        BarFigure figure = (BarFigure)Illustrator.Worked(PictureKind.Water, Kitchen.Unknown).Figures[0];

        Assert.All(figure.Bars.Where(bar => !bar.Dark), bar => Assert.True(bar.High > figure.Mark));
        Assert.Contains(figure.Bars, bar => bar.Name.StartsWith("50 %", StringComparison.Ordinal) && Math.Abs(bar.High - 0.93) < 0.01);
        Assert.Contains(figure.Bars, bar => bar.Dark && bar.High < figure.Mark);
    }

    [Fact]
    public void ForRecipe_JudgedByAPublishedRecipe_StandsBesideItsComposition()
    {
        const string Chili = "# Chili con carne\n\n- 3 cups dried pinto beans\n- 3 lb ground beef\n- 1 1/2 cups onions, chopped\n- 1 cup bell peppers, chopped\n- 2 quarts crushed tomatoes\n- 5 tsp salt\n- 5 tbsp chili powder\n\n1. Simmer 5 minutes.\n";
        Illustration drawn = Illustrator.ForRecipe(PictureKind.Composition, Vetter.Vet(Chili, Kitchen.Unknown), Kitchen.Unknown);

        Assert.Equal(2, drawn.Figures.Length);
        Assert.Contains(drawn.Figures[0].Below, line => line.Contains("The tested recipe is", StringComparison.Ordinal));
        Assert.StartsWith("Your amounts beside the tested ones", drawn.Figures[1].Title, StringComparison.Ordinal);
    }

    [Fact]
    public void ForReport_ThickAndFatDish_ShowsOnePictureOfAKindDrawnForIt()
    {
        VettingReport report = Vetter.Vet("# Stew\n\n- 1 kg beef\n- 500 g potatoes\n- 1 l water\n- 60 g flour\n- 200 g butter\n\n1. Boil. Stir in the flour and the butter. Mash it.\n", Kitchen.Unknown);

        Figure[] figures = [.. Illustrator.ForReport(report)];

        Assert.Equal(2, figures.Length);
        Assert.Contains("of your recipe", Assert.Single(figures.OfType<LineFigure>()).Title, StringComparison.Ordinal);
        Assert.Contains(Assert.Single(figures.OfType<BarFigure>()).Bars, bar => bar.Dark);
    }

    [Fact]
    public void ForReport_WhatCannotBeWeighed_ShowsTheWorkedExample()
    {
        VettingReport report = Vetter.Vet("# Stew\n\n- beef\n- flour\n- 1 l water\n\n1. Boil. Stir in the flour.\n", Kitchen.Unknown);

        Assert.Contains("thin and thick food", Illustrator.ForReport(report)[0].Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("# Bread\n\n- 500 g flour\n- 300 ml water\n- 7 g yeast\n\n1. Knead, let rise and bake for 40 minutes.\n")] // no jar food
    [InlineData("# Rub\n\n- 2 tbsp paprika\n- 1 tbsp dried thyme\n\n1. Mix and keep in a dry jar.\n")] // nothing to change
    public void ForReport_NothingToTeachForAJar_ShowsNone(string recipe) => Assert.Empty(Illustrator.ForReport(Vetter.Vet(recipe, Kitchen.Unknown)));

    private static double Behind(string recipe) =>
        ((LineFigure)Illustrator.ForRecipe(PictureKind.Conducts, Vetter.Vet(recipe, Kitchen.Unknown), Kitchen.Unknown).Figures[0]).Lines[1].Y[^1];
}
