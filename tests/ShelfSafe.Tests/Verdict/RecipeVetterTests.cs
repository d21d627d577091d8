using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

public class RecipeVetterTests
{
    private const string Soup = """
        # Harvest hall soup

        ## Ingredients

        - 900 g beef stew meat, cubed
        - 600 g carrots, sliced
        - 600 g potatoes, cubed
        - 3 l beef broth
        - 2 tsp salt

        ## Method

        1. Brown the beef and drain off the fat.
        2. Add everything else and boil 5 minutes.
        3. Fill each jar half full of solids, top up with the hot liquid and process in the pressure canner.
        """;

    private readonly RecipeVetter _vetter = BuiltIn.Vetter;

    // Source: USDA AIB 539 (rev. 2015), Guide 4 p. 4-18 to 4-19: soups of foods with a process of their own, half solids.
    [Fact]
    public void Vet_SoupByThePublishedConditions_GetsThePressureProcess()
    {
        VettingReport report = _vetter.Vet(Soup, new Kitchen(1345, "weighted"));

        Assert.Equal(Outcome.Pressure, report.Outcome);
        Assert.All(report.Process, line => Assert.Equal(15, line.Psi));

        // The meat's own time (Guide 5 p. 5-6 to 5-7) is longer than the soup's (Guide 4 p. 4-19): it is shown, and the soup's is named.
        Assert.Contains(report.Process, line => line is { Jar: "pint", Minutes: 75 } && line.Overruled.Any(other => other.Minutes == 60));
        Assert.Contains(report.Process, line => line is { Jar: "quart", Minutes: 90 } && line.Overruled.Any(other => other.Minutes == 75));
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 4 p. 4-18: no noodles, pasta, rice, flour, cream, milk or other thickening agents.
    [Theory]
    [InlineData("30 g wheat flour", "thickener")]
    [InlineData("1/2 tsp cornstarch", "thickener")]
    [InlineData("200 g spaghetti", "pasta")]
    [InlineData("100 g rice", "rice")]
    [InlineData("100 ml cream", "dairy")]
    [InlineData("200 ml coconut milk", "coconut-milk")]
    [InlineData("2 eggs", "egg")]
    [InlineData("150 g bacon", "cured-meat")]
    [InlineData("300 g cabbage, shredded", "untested-food")]
    public void Vet_OneForbiddenFoodAdded_IsFlaggedAndNoLongerAsWritten(string line, string rule)
    {
        VettingReport report = _vetter.Vet(Soup.Replace("- 2 tsp salt", "- 2 tsp salt\n- " + line, StringComparison.Ordinal), Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == rule && finding.Level == FindingLevel.Change);
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
        Assert.Empty(report.Process);
    }

    // Source: USDA AIB 539 (2015) Guide 4 p. 4-18: no thickener; pieces in thin broth.
    [Theory]
    [InlineData("Whisk in a spoon of flour at the end.", "thickener")]
    [InlineData("Blend the soup until smooth.", "dense")]
    public void Vet_HazardOnlyInTheSteps_IsFound(string step, string rule)
    {
        VettingReport report = _vetter.Vet(Soup + "\n4. " + step, Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == rule && finding.Level >= FindingLevel.Change);
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 4 p. 4-18: jars half full of solids; there must be liquid to top them up with.
    [Fact]
    public void Vet_HalfFullOnlyInWords_AsksForTheLiquid()
    {
        VettingReport report = _vetter.Vet(Soup.Replace("3 l beef broth", "200 ml beef broth", StringComparison.Ordinal), Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding is { Rule: "too-little-liquid", Level: FindingLevel.Change });
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    [Fact]
    public void Vet_FoodsOnlyInTheSteps_AreEachReported()
    {
        VettingReport report = _vetter.Vet(Soup + "\n4. Add the parsnips and a handful of macaroni.", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == "step-food" && finding.Message.Contains("parsnips", StringComparison.Ordinal));
        Assert.Contains(report.Findings, finding => finding.Rule == "pasta");
        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    // Source: 21 CFR 114.3: low-acid food with water in it; dryness keeps only what stays dry.
    [Theory]
    [InlineData("- 1 lb dried kidney beans\n- 6 cups water\n- 1 tsp salt", "Boil the beans and ladle into jars.")]
    [InlineData("- 1 lb dried kidney beans\n- 1 tsp salt", "Boil the beans in plenty of water and fill the jars.")]
    [InlineData("- 1 lb white rice\n- 2 l water", "Simmer the rice and fill the jars.")]
    public void Vet_DryGoodsCookedInWater_AreNotDry(string lines, string steps)
    {
        VettingReport report = _vetter.Vet($"# Shelf jars\n\n## Ingredients\n\n{lines}\n\n## Method\n\n{steps}\n", Kitchen.Unknown);

        Assert.Equal(Acidity.LowAcid, report.Acidity);
        Assert.NotEqual(Outcome.DryStorage, report.Outcome);
    }

    // Source: USDA AIB 539 (2015) Guide 7: jars turned upside down are no process.
    [Fact]
    public void Vet_DryMixWithAWrongMethod_IsNotSentToTheShelf()
    {
        VettingReport report = _vetter.Vet("# Rub\n\n## Ingredients\n\n- 50 g salt\n- 20 g paprika\n\n## Method\n\nMix, fill the jars and turn the jars upside down to seal.\n", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Level >= FindingLevel.Change);
        Assert.NotEqual(Outcome.DryStorage, report.Outcome);
    }

    // A food that only a step names must not be taken for a verb, a tool or something served beside.
    // Source: USDA AIB 539 (rev. 2015), Guide 4 p. 4-18 (no thickener, dairy, rice); Guide 1 (open kettle).
    [Theory]
    [InlineData("Add bacon potatoes and carrots to the pot.", "cured-meat")]
    [InlineData("Stir in the cream it makes the soup rich.", "dairy")]
    [InlineData("Whisk in flour off the heat.", "thickener")]
    [InlineData("Stir in flour out of the packet.", "thickener")]
    [InlineData("To use up the cream, stir it in.", "dairy")]
    [InlineData("Mix while hot with rice.", "rice")]
    [InlineData("Stir in the grain and simmer.", "grain")]
    [InlineData("Blanch the carrots 1 minute in boiling water. Ladle the soup into hot jars and screw on the lids at once.", "unsafe-method")]
    public void Vet_HazardOnlyInASentence_IsFound(string step, string rule)
    {
        VettingReport report = _vetter.Vet($"# Soup\n\n- 2 kg carrots\n- 1 kg potatoes, cubed\n- 6 l chicken broth\n\n1. Boil 5 minutes.\n2. {step}\n", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == rule && finding.Level >= FindingLevel.Change);
    }

    [Theory]
    [InlineData("Slice the beef across the grain.", "grain")]
    [InlineData("Fish out the bay leaf.", "seafood")]
    [InlineData("Wash, seed and peel.", "nut")]
    [InlineData("Freeze leftovers in an old yoghurt tub.", "dairy")]
    public void Vet_WordThatIsNoFood_IsNoFinding(string step, string rule)
    {
        VettingReport report = _vetter.Vet($"# Soup\n\n- 2 kg carrots\n- 1 kg potatoes, cubed\n- 6 l chicken broth\n\n1. Boil 5 minutes.\n2. {step}\n", Kitchen.Unknown);

        Assert.DoesNotContain(report.Findings, finding => finding.Rule == rule);
    }

    [Fact]
    public void Vet_MoreFoodsThanAnyRecipe_StopsAndPermitsNothing()
    {
        VettingReport report = _vetter.Vet("# Carrots\n\n" + string.Concat(Enumerable.Repeat("- 1 kg carrots\n", 1_500)) + "- 5 l water\n\n1. Boil 5 minutes and fill the jars.\n", Kitchen.Unknown);

        Assert.Contains(report.Findings, finding => finding.Rule == "unread" && finding.Level == FindingLevel.Stop);
        Assert.Empty(report.Process.Concat(report.ProcessAfterChanges));
    }

    // Source: USDA AIB 539 (rev. 2015), Guide 5 p. 5-9: the stock process is for strained broth; a soup has times of its own.
    [Theory]
    [InlineData("Add the beetroot and carrots to the broth and boil 10 minutes.")]
    [InlineData("Boil the carrots in it for 10 minutes.")]
    [InlineData("Return the meat to the pot.")]
    [InlineData("Discard the bones and return the meat to the broth.")]
    public void Vet_SolidsInStrainedBroth_NeverGetTheStockTime(string step)
    {
        VettingReport report = _vetter.Vet($"# Sunday jars\n\n- 1 kg beef shank\n- 4 l water\n- 600 g beetroot, diced\n- 400 g carrots, diced\n- 2 tsp salt\n\n1. Simmer the beef in the water for 3 hours, strain, skim off the fat.\n2. {step}\n3. Fill hot jars and process pints 20 minutes in a pressure canner.\n", Kitchen.Unknown);

        Assert.DoesNotContain(report.Process.Concat(report.ProcessAfterChanges), line => line.Product.Contains("stock", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("")]
    [InlineData("# Only a title")]
    [InlineData("Just a note about the weather.")]
    public void Vet_NoIngredient_SaysSo(string text)
    {
        VettingReport report = _vetter.Vet(text, Kitchen.Unknown);

        Assert.Equal(Outcome.CannotTell, report.Outcome);
        Assert.Contains(report.Findings, finding => finding.Rule == "no-ingredients");
    }

    [Theory]
    [InlineData("0 g beef")]
    [InlineData("1/0 cup beef")]
    [InlineData("1e99 cups beef")]
    [InlineData("-3 kg beef")]
    public void Vet_AbsurdAmount_PermitsNothing(string line)
    {
        VettingReport report = _vetter.Vet(Soup.Replace("900 g beef stew meat, cubed", line, StringComparison.Ordinal), Kitchen.Unknown);

        Assert.NotEqual(Outcome.Pressure, report.Outcome);
    }

    // Source: USDA AIB 539 (2015), dial gauge tables: the last band ends at 8,000 feet.
    [Fact]
    public void Vet_AboveEveryPrintedDialBand_GivesNoDialLine()
    {
        VettingReport report = _vetter.Vet(Soup, new Kitchen(8001, "dial"));

        Assert.Empty(report.Process);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Vet_OtherCulture_GivesTheSameReport(string culture)
    {
        VettingReport plain = _vetter.Vet(Soup, Kitchen.Unknown);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            VettingReport other = RecipeVetter.Create(RulePack.Default).Vet(Soup, Kitchen.Unknown);

            Assert.Equal(plain.Outcome, other.Outcome);
            Assert.Equal(plain.Findings.Select(finding => finding.Message), other.Findings.Select(finding => finding.Message));
            Assert.Equal(plain.Ingredients.Select(line => line.FoodId), other.Ingredients.Select(line => line.FoodId));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
