using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Hazards;

/// <summary>Holds every card to its own examples and to the house's rules for words.</summary>
public class CardTextTests
{
    private static readonly RecipeVetter Vetter = BuiltIn.Vetter;

    private static readonly string[] Placeholders =
        ["{more-liquid}", "{ingredient}", "{words}", "{dish}", "{food}", "{why-no}", "{share}", "{amount}", "{published}"];


    private static readonly string[] NotYetRaised = [];

    public static TheoryData<string> Cards => [.. RulePack.Default.Tables.Hazards.Select(card => card.Rule)];

    public static TheoryData<string> CardsWithExamples =>
        [.. RulePack.Default.Tables.Hazards.Select(card => card.Rule).Where(rule => CardExample.Recipe(rule, "Trips") is not null && !NotYetRaised.Contains(rule))];

    // The rule ids are those of the product's list; a card may not be lost.
    [Theory]
    [InlineData("thickener|pasta|rice|grain|bread|dairy|egg|fat|dense|too-little-liquid|seafood|cured-meat|offal|ground-poultry")]
    [InlineData("wild-mushroom|fermented|alkaline|leftovers|syrup|low-sugar|own-process|untested-food|fresh-citrus|weak-vinegar")]
    [InlineData("borderline-acid|oil-infusion|coconut-milk|nut|chocolate|leavening|gelatin|alcohol|unsoaked-beans|raw-start")]
    [InlineData("jar-too-large|unsafe-method|low-acid|proportions|unidentified|unmeasured|no-ingredients|no-steps|several-methods")]
    [InlineData("step-food|sub-recipe|regional-word|absurd-amount|printed-ph|sound|unread|at-serving|cooks-word")]
    public void Cards_EveryRuleId_HasOne(string rules)
    {
        HashSet<string> known = [.. RulePack.Default.Tables.Hazards.Select(card => card.Rule)];

        Assert.All(rules.Split('|'), rule => Assert.Contains(rule, known));
    }

    [Theory]
    [MemberData(nameof(CardsWithExamples))]
    public void Trips_OfACard_RaiseItsRule(string rule)
    {
        VettingReport report = Vetter.Vet(CardExample.Recipe(rule, "Trips")!, Kitchen.Unknown);

        Assert.Contains(rule, report.Findings.Select(finding => finding.Rule));
    }

    [Theory]
    [MemberData(nameof(CardsWithExamples))]
    public void NearMiss_OfACard_DoesNotRaiseItsRule(string rule)
    {
        VettingReport report = Vetter.Vet(CardExample.Recipe(rule, "Near miss")!, Kitchen.Unknown);

        Assert.DoesNotContain(rule, report.Findings.Select(finding => finding.Rule));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Text_OfACard_KeepsToTheHouseWords(string rule)
    {
        HazardCard card = RulePack.Default.Tables.Hazards.Single(one => one.Rule == rule);

        foreach (string text in (string[])[card.Message, card.StepMessage, card.Why, card.Instead])
        {
            Assert.DoesNotContain("safe", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("please", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain('?', text);
            Assert.DoesNotContain('!', text);
            Assert.DoesNotContain('{', Placeholders.Aggregate(NumberChoice.Singular(text), (rest, known) => rest.Replace(known, string.Empty, StringComparison.Ordinal)));
            Assert.True(text.Length == 0 || text[^1] is '.' or ':' || text.EndsWith("\".", StringComparison.Ordinal), text);
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Text_OfACard_HasShortSentences(string rule)
    {
        HazardCard card = RulePack.Default.Tables.Hazards.Single(one => one.Rule == rule);
        string[] sentences = $"{card.Why} {card.Instead}".Split(['.', ';', ':'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        double words = sentences.Average(sentence => (double)sentence.Split(' ').Length);

        // About school grade 8: sentences of twenty words at most on the average.
        Assert.InRange(words, 1, 20);
    }

    [Fact]
    public void Stop_IsKeptForWhatNothingMends()
    {
        IEnumerable<string> rules = RulePack.Default.Tables.Hazards
            .Where(card => card.Rows.Any(row => row.Level == FindingLevel.Stop))
            .Select(card => card.Rule);

        Assert.Equal(["leftovers", "no-ingredients", "oil-infusion", "unsafe-method", "wild-mushroom"], rules.Order(StringComparer.Ordinal));
    }

    // Source: National Center for Home Food Preservation, Garlic-in-oil (reviewed 2015): at most 4 days cold, or frozen.
    [Fact]
    public void Storage_OfFoodInOil_GivesDaysAndTheFreezer()
    {
        StorageRow oil = RulePack.Default.Tables.Storage[0];

        Assert.Equal("oil", oil.Id);
        Assert.Contains("4 days", oil.Fridge, StringComparison.Ordinal);
        Assert.NotEmpty(oil.Freezer);
        Assert.Contains("freeze", oil.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Storage_LastRow_ServesAnyDish() =>
        Assert.Equal("any", RulePack.Default.Tables.Storage[^1].Applies);

    [Theory]
    [InlineData("pressure-canner")]
    [InlineData("boiling-water-canner")]
    [InlineData("altitude")]
    [InlineData("jars-and-lids")]
    [InlineData("cooling-and-seals")]
    [InlineData("storing")]
    [InlineData("spoilage")]
    [InlineData("boil-before-tasting")]
    [InlineData("botulism")]
    [InlineData("whom-to-ask")]
    [InlineData("acid-in-tomatoes")]
    [InlineData("changing-a-recipe")]
    public void Cautions_EachCard_CitesKnownSources(string caution)
    {
        string card = RulePack.Default.Card($"cautions/{caution}.md");
        HashSet<string> known = [.. RulePack.Default.Tables.Sources.Select(source => source.Id)];
        string row = Assert.Single(card.Split('\n'), line => line.StartsWith("| source |", StringComparison.Ordinal));

        Assert.All(row.Split('|')[2].Split(';', StringSplitOptions.TrimEntries), key => Assert.Contains(key, known));
    }
}
