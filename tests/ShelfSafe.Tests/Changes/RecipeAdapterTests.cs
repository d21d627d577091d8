using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Changes;

/// <summary>A jar version comes out as promised, or there is none.</summary>
public class RecipeAdapterTests
{
    private const string Stew = """
        # Beef and carrot stew

        ## Ingredients

        - 500 g beef, cubed
        - 400 g carrots, sliced
        - 2 litres beef broth
        - 1 tsp salt
        - 3 tbsp flour

        ## Steps

        1. Brown the beef in a dry pan and drain it.
        2. Boil the beef and carrots in the beef broth for 20 minutes.
        3. Stir in the flour.
        """;

    private static readonly string[] _jarVersions = ["plum-and-cardamom-jam.md", "tomatoes-in-water.md", "venison-and-chickpea-stew.md"];
    private static readonly string[] _asWritten = ["clear-beef-broth.md", "peach-halves.md", "vegetable-beef-soup.md"];
    private static readonly string[] _nothing = ["dry-rub.md", "seed-loaf.md"];

    public static TheoryData<string> JarVersions => [.. _jarVersions];

    public static TheoryData<string> Others => [.. SampleNames.Except(_jarVersions)];

    // The rule of the house: outcomes without a process never get a jar version by themselves.
    public static TheoryData<string> WithoutProcess => [.. SampleNames.Except(_jarVersions).Except(_asWritten).Except(_nothing)];

    [Theory]
    [MemberData(nameof(JarVersions))]
    public void Adapt_ASampleWithAJarVersion_KeepsItsPromise(string name)
    {
        Adaptation done = Adapter.Adapt(Sample(name), Hall);

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Contains(done.Before.Outcome, (Outcome[])[Outcome.PressureAfterChanges, Outcome.BoilingWaterAfterChanges]);
        VettingReport again = Vet(done.Recipe);
        Assert.Equal(done.Before.Outcome == Outcome.PressureAfterChanges ? Outcome.Pressure : Outcome.BoilingWater, again.Outcome);
        Assert.All(again.Findings, finding => Assert.True(finding.Level < FindingLevel.Change));
        Assert.Subset(done.Before.ProcessAfterChanges.Select(line => line.RowId).ToHashSet(), again.Process.Select(line => line.RowId).ToHashSet());
        Assert.All(done.Changes, change => Assert.NotEmpty(change.Sources));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Adapt_ASampleWithoutAJarVersion_WritesNone(string name)
    {
        Adaptation done = Adapter.Adapt(Sample(name), Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
        Assert.Empty(done.Recipe);
        Assert.Null(done.After);
    }

    [Theory]
    [MemberData(nameof(WithoutProcess))]
    public void Adapt_AnOutcomeWithoutProcess_GivesTheFreezerVersionAndItsReason(string name)
    {
        Adaptation done = Adapter.Adapt(Sample(name), Hall);

        Assert.Contains(done.Before.Outcome, (Outcome[])[Outcome.FreezeOrChill, Outcome.TestedRecipeOnly, Outcome.CannotTell]);
        Assert.Contains(done.Kind, (AdaptationKind[])[AdaptationKind.Freezer, AdaptationKind.Question]);
        Assert.NotEmpty(done.Freezing);
        Assert.NotEmpty(done.Reasons.Concat(done.Questions));
    }

    // Source: USDA Guide 4, p. 4-18 (no flour in soups; jars half full of solids).
    [Fact]
    public void Adapt_FlourInAStew_GoesToServingWithItsStep()
    {
        Adaptation done = Adapter.Adapt(Stew, Hall);

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Contains("### To serve\n\n- 3 tbsp flour\n", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("Stir in the flour.", done.Serving);
        Assert.DoesNotContain("Stir in the flour", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("half full", done.Recipe, StringComparison.Ordinal);
        Assert.Equal(Outcome.Pressure, Vet(done.Recipe).Outcome);
    }

    // A step may call the food by the name of its kind.
    [Theory]
    [InlineData("- 200 g spaghetti", "Add the pasta and cook until soft.")]
    [InlineData("- 200 g penne", "Tip in the noodles.")]
    [InlineData("- 100 g cheddar", "Stir in the cheese.")]
    [InlineData("- 3 tbsp cornflour", "Stir in the starch.")]
    [InlineData("- 200 g cabbage, shredded", "Add the leaves.")]
    public void Adapt_AFoodUnderAnotherName_NeverStaysInTheSteps(string line, string step)
    {
        Adaptation done = Adapter.Adapt(Stew.Replace("- 3 tbsp flour", line, StringComparison.Ordinal).Replace("Stir in the flour.", step, StringComparison.Ordinal), Hall);

        string method = done.Recipe.Contains("## Method", StringComparison.Ordinal) ? done.Recipe.Split("## Method")[1].Split("## ")[0] : string.Empty;
        Assert.DoesNotContain(step, method, StringComparison.Ordinal);
    }

    [Fact]
    public void Adapt_TwoFoodsOnOneLine_AsksAndDoesNotSplit()
    {
        Adaptation done = Adapter.Adapt(Stew.Replace("- 3 tbsp flour", "- 3 tbsp flour and butter", StringComparison.Ordinal), Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
        Assert.Contains(done.Questions, note => note.What == "3 tbsp flour and butter");
    }

    [Fact]
    public void Adapt_AMixedSentence_AsksAndDoesNotPromise()
    {
        Adaptation done = Adapter.Adapt(Stew.Replace("3. Stir in the flour.", "3. Beat the flour into the beef.", StringComparison.Ordinal), Hall);

        Assert.Equal(AdaptationKind.Question, done.Kind);
        Assert.Contains(done.Questions, note => note.What.StartsWith("Beat the flour", StringComparison.Ordinal));
        Assert.Empty(done.Recipe);
    }

    [Fact]
    public void Adapt_AnUnknownFood_IsNeverDroppedToEarnAProcess()
    {
        Adaptation done = Adapter.Adapt(Stew.Replace("- 3 tbsp flour", "- 3 tbsp flour\n- 40 g blorfwurzel", StringComparison.Ordinal), Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
    }

    // A recipe without steps never gets a process, and added steps must not make up for them.
    [Fact]
    public void Adapt_NoSteps_AsksForThem()
    {
        string list = Stew[..Stew.IndexOf("## Steps", StringComparison.Ordinal)];

        Adaptation done = Adapter.Adapt(list, Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
    }

    [Theory]
    [InlineData("3. Stir in the flour.", "3. Stir in the flour. Blend the soup until smooth.")]
    [InlineData("3. Stir in the flour.", "3. Stir in the flour. Mash everything to a thick puree.")]
    [InlineData("- 500 g beef, cubed", "- 500 g cod fillet")]
    [InlineData("- 1 tsp salt", "- 1 tsp salt\n- 500 ml vinegar")]
    [InlineData("- 3 tbsp flour", "- 3 tbsp flour or blorfwurzel")]
    [InlineData("3. Stir in the flour.", "3. Stir in the flour. Fill the jars and leave 1/4 inch of headspace.")]
    [InlineData("3. Stir in the flour.", "3. Stir in the flour and my white sauce.")]
    public void Adapt_WhatNoChangeMends_GivesTheFreezerVersion(string words, string now)
    {
        Adaptation done = Adapter.Adapt(Stew.Replace(words, now, StringComparison.Ordinal), Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
        Assert.NotEmpty(done.Freezing);
    }

    // Source: USDA Guide 4, p. 4-18: each jar half solids, half liquid.
    [Fact]
    public void Adapt_TooLittleLiquid_AddsItUpToHalf()
    {
        Adaptation done = Adapter.Adapt(Stew.Replace("2 litres", "300 ml", StringComparison.Ordinal), Hall);

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Contains(done.Changes, change => change.Kind == "liquid" && change.What.EndsWith(") beef broth", StringComparison.Ordinal));
        Assert.True(Vet(done.Recipe).Measures.SolidsShare!.Value.High <= 0.5);
    }

    // Source: USDA Guide 3, p. 3-5: 1 tablespoon of bottled lemon juice a pint, 2 a quart.
    [Fact]
    public void Adapt_PlainTomatoes_GetThePublishedAcid()
    {
        Adaptation done = Adapter.Adapt(Sample("tomatoes-in-water.md"), Hall);

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Contains("1 tbsp bottled lemon juice for each pint jar", done.Recipe, StringComparison.Ordinal);
        Assert.Equal(Outcome.BoilingWater, Vet(done.Recipe).Outcome);
    }

    private const string Pears = """
        # Pears in apple juice

        Makes 9 pints.

        - 6 lb pears
        - 2 litres apple juice
        - 1 litre water

        1. Sterilise the jars.
        2. Peel, halve and core the pears. Boil the apple juice and the water, add the pears and boil for 5 minutes.
        3. Fill the hot jars with the pears. Pour the boiling juice over the pears, leaving 1/2 inch headspace.
        4. Wipe the rims, put on the lids and process for 20 minutes in a boiling-water bath.
        5. Let the jars cool for a day, then label them.
        """;

    private static string[] Method(Adaptation done) =>
        [.. done.Recipe.Split("## Method")[1].Split("## ")[0].Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..])];

    // Source: USDA AIB 539 (rev. 2015), Guide 1, p. 1-13 to 1-18: fill, headspace, bubbles, rims, lids, canner, in this order;
    // Guide 2, pears, halved: 1/2 inch of headspace (apple juice, which only covers them, has 1/4).
    [Fact]
    public void Adapt_StepsAtTheJar_StandInWorkingOrderAndOnce()
    {
        Adaptation done = Adapter.Adapt(Pears, Hall);

        Assert.Equal(AdaptationKind.Jar, done.Kind);
        Assert.Equal(
            [
                "Sterilise the jars.",
                "Peel, halve and core the pears.",
                "Boil the apple juice and the water, add the pears and boil for 5 minutes.",
                "Fill the hot jars with the pears.",
                "Pour the boiling juice over the pears, leaving 1/2 inch headspace.",
                "Leave 1/2 inch of headspace, let the air bubbles out, wipe the rims, and put on the lids.",
                "Process the jars in a boiling-water canner by the published process.",
                "Let the jars cool for a day, then label them.",
            ],
            Method(done));
        Assert.Contains("Makes 9 pints.", done.Recipe.Split("## Ingredients")[0], StringComparison.Ordinal);
        Assert.Contains(done.Changes, change => change.Kind == "method" && change.What.StartsWith("Wipe the rims", StringComparison.Ordinal));
        Assert.Contains("pint jars, 25 minutes in a boiling-water canner", done.Recipe, StringComparison.Ordinal);
    }

    // A sentence that says more than how jars are filled and closed is never taken over unread.
    [Theory]
    [InlineData("Wipe the rims, put on the lids and stand them in the sun, then process for 25 minutes in a boiling-water canner.")]
    [InlineData("Put on the lids, process for 25 minutes in a boiling-water canner and bury the jars.")]
    public void Adapt_ASentenceAtTheJarThatSaysMore_AsksAboutIt(string step)
    {
        Adaptation done = Adapter.Adapt(Pears.Replace("Wipe the rims, put on the lids and process for 20 minutes in a boiling-water bath.", step, StringComparison.Ordinal).Replace("2. Peel", "2. Spice with 1 tsp vanilla. Peel", StringComparison.Ordinal), Hall);

        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
        Assert.Empty(done.Recipe);
    }

    [Fact]
    public void Adapt_CookingAfterTheJarsAreClosed_Asks()
    {
        Adaptation done = Adapter.Adapt(Pears.Replace("Let the jars cool for a day, then label them.", "Boil the pears for 5 minutes more.", StringComparison.Ordinal), Hall);

        Assert.Contains(done.Questions, note => note.What.StartsWith("Boil the pears", StringComparison.Ordinal));
    }

    [Fact]
    public void Adapt_TextAndListBeforeTheSteps_AreNoSteps()
    {
        Adaptation done = Adapter.Adapt(Sample("tomatoes-in-water.md"), Hall);

        Assert.Equal(6, Method(done).Length);
        Assert.StartsWith("Dip the tomatoes", Method(done)[0], StringComparison.Ordinal);
        Assert.StartsWith("Put 1 tbsp bottled lemon juice", Method(done)[2], StringComparison.Ordinal);
        Assert.StartsWith("Fill the hot jars with the whole tomatoes", Method(done)[3], StringComparison.Ordinal);
        Assert.StartsWith("# Tomatoes in water\n\nFrom the glasshouse.\n\nFills about 7 quart jars.\n\n## Ingredients", done.Recipe, StringComparison.Ordinal);
    }

    [Fact]
    public void Adapt_LadleAndLidsInOneSentence_GiveWayToThePublishedSteps()
    {
        Adaptation done = Adapter.Adapt(Sample("plum-and-cardamom-jam.md"), Hall);

        Assert.Equal(["Fill the hot jars.", "Leave 1/4 inch of headspace, let the air bubbles out, wipe the rims, and put on the lids.", "Process the jars in a boiling-water canner by the published process."], Method(done)[^3..]);
        Assert.DoesNotContain("screw the lids on", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("sterile jars", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("Yield: 7 small jars.", done.Recipe, StringComparison.Ordinal);
    }

    [Fact]
    public void Adapt_FoodKeptForServing_HasAStepThatIsPrinted()
    {
        Adaptation done = Adapter.Adapt(Sample("venison-and-chickpea-stew.md"), Hall);

        Assert.Contains("## To serve\n\n- Scatter parsley over each bowl at the table.\n- When you heat the opened jar to serve it, add the flour. Cook first what is raw.", done.Recipe, StringComparison.Ordinal);
    }

    [Fact]
    public void Adapt_AnyRecipe_NeverAddsAcidToAMixture()
    {
        Adaptation done = Adapter.Adapt(Sample("green-tomato-chutney.md"), Hall);

        Assert.DoesNotContain(done.Changes, change => change.Kind == "acid");
        Assert.NotEqual(AdaptationKind.Jar, done.Kind);
    }

    [Fact]
    public void AdaptTo_AFormula_ShowsEveryAmountThatMoves()
    {
        Adaptation done = Adapter.AdaptTo(Sample("cucumber-pickle.md"), Hall, "bread-and-butter-pickles");

        Assert.NotNull(done.Formula);
        Assert.All(done.Formula!.Amounts.Where(amount => amount.Required), amount => Assert.Contains(done.Changes.Select(change => change.Now).Append(Sample("cucumber-pickle.md")), now => now.Contains(amount.Line.Split(',')[0], StringComparison.Ordinal)));
        Assert.True(done.Kind != AdaptationKind.Jar || Vet(done.Recipe).Outcome == Outcome.BoilingWater);
    }

    private const string Chili = """
        # Chili

        - 2 lb ground beef
        - 1 onion, chopped
        - 2 cans (15 oz) kidney beans, drained
        - 1 can (28 oz) crushed tomatoes
        - 2 tbsp chili powder
        - 1 tsp salt
        - 1 tbsp olive oil

        1. Brown the beef with the onion in the oil. Drain off the fat.
        2. Add the tomatoes, beans, chili powder and salt.
        3. Simmer for 30 minutes.
        """;

    // Source: USDA Guide 5, p. 5-8: 3 cups dried beans, 3 pounds ground beef, 2 quarts crushed tomatoes; salt and spices by taste.
    [Fact]
    public void AdaptTo_AWeeknightChili_BecomesThePublishedOne()
    {
        Adaptation done = Adapter.AdaptTo(Chili, Hall, "chile-con-carne");

        Assert.True(done.Kind == AdaptationKind.Jar, string.Join(" | ", done.Questions.Concat(done.Reasons).Select(note => $"{note.What}: {note.Text}")));
        Assert.Equal(("chile-con-carne", Outcome.Pressure), (Vet(done.Recipe).Category?.Id, Vet(done.Recipe).Outcome));
        Assert.Contains(done.Changes, change => change is { What: "2 cans (15 oz) kidney beans, drained", Now: "2 cups dried pinto beans or kidney beans" });
        Assert.Contains(done.Changes, change => change.What == "1 can (28 oz) crushed tomatoes" && change.Now.Contains("crushed tomato", StringComparison.Ordinal));
        Assert.DoesNotContain(done.Changes, change => change.What is "1 tsp salt" or "2 lb ground beef" or "2 tbsp chili powder");
        Assert.Contains("soak for 12 to 18 hours", done.Recipe, StringComparison.Ordinal);
        Assert.DoesNotContain("in the oil", done.Recipe, StringComparison.Ordinal);
    }

    [Fact]
    public void AdaptTo_AnUnknownFormula_IsMisuse() =>
        Assert.Throws<ArgumentException>(() => Adapter.AdaptTo(Stew, Hall, "no-such-formula"));

    [Fact]
    public void Without_AFoodInAList_LeavesTheOthers() =>
        Assert.Equal(
            "Add the carrots and garlic and cook for ten minutes.",
            SentenceCut.Without("Add the carrots, onions and garlic and cook for ten minutes.", new(["onion"], ["carrot", "garlic"], new(RulePack.Default.Tables.Lists))));

    [Theory]
    [InlineData("Brown the beef in the oil in small lots.", "Brown the beef in small lots.")]
    [InlineData("Fry the carrots with the oil, then drain.", "Fry the carrots, then drain.")]
    [InlineData("Toss the beef in the oil and the carrots.", "Toss the beef in the carrots.")]
    [InlineData("Drain the fat and stir in the oil.", "Drain the fat and stir.")]
    [InlineData("Add the oil to the beef until it shines.", null)]
    [InlineData("Pour the oil over the beef.", null)]
    public void Without_OilInAPhrase_IsCutOnlyWhereItStandsAlone(string sentence, string? expected) =>
        Assert.Equal(expected, SentenceCut.Without(sentence, new(["oil"], ["beef", "carrot"], new(RulePack.Default.Tables.Lists))));
}
