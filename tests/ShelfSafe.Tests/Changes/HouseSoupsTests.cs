using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Changes;

/// <summary>Soups and stews of every house: what the published soup directions leave out goes to serving day, and the rest is covered as it then stands.</summary>
public class HouseSoupsTests
{
    private const string Noodles = "# Vegetable noodle soup\n\n- 2 quarts chicken broth\n- 3 carrots, sliced\n- 1 cup green beans, cut\n- 1 onion, chopped\n- 2 potatoes, peeled and diced\n- 1 cup egg noodles\n- 1 tsp salt\n\n"
        + "1. Bring the broth to a boil in a large pot.\n2. Add the carrots, green beans, onion and potatoes and simmer for 15 minutes.\n3. Add the noodles and cook 8 minutes more.\n4. Season with salt.\n";

    private const string Minestrone = "# Minestrone\n\n- 1 onion, chopped\n- 8 carrots, diced\n- 2 cans (28 oz) diced tomatoes\n- 6 cups vegetable broth\n- 1 can (15 oz) kidney beans, drained and rinsed\n- 1 cup small pasta shells\n"
        + "- 1 tsp dried oregano\n- 1 tsp dried basil\n- Parmesan cheese, to serve\n\n1. Cook the onion in a little of the broth until soft.\n2. Add the carrots, tomatoes, broth, beans and herbs. Bring to a boil, then simmer for 20 minutes.\n"
        + "3. Stir in the pasta and cook until tender, about 10 minutes.\n4. Serve with Parmesan.\n";

    private const string Cream = "# Chicken soup with cream\n\n- 1 1/2 lb boneless, skinless chicken thighs, cubed\n- 8 cups chicken broth\n- 2 carrots, sliced\n- 1 cup peas\n- 1/2 cup heavy cream\n- 1 tsp salt\n\n"
        + "1. Simmer the chicken, broth and carrots for 25 minutes.\n2. Add the peas and simmer for 5 minutes.\n3. Stir in the cream. Season with salt.\n";

    private const string Dredged = "# Venison stew\n\n- 2 lb venison, cut in cubes\n- 1/4 cup flour\n- 2 tbsp butter\n- 6 cups beef broth\n- 2 cups sliced carrots\n- 2 cups diced potatoes\n- 1 tsp salt\n\n"
        + "1. Dredge the venison in the flour. Melt the butter in a heavy pot and brown the meat.\n2. Add the broth and salt. Cover and simmer for 1 1/2 hours.\n3. Add the carrots and potatoes and cook for 30 minutes.\n";

    private const string GreenBeans = "# Green beans in the farm's way\n\n- 5 lb green beans, trimmed and cut\n- 1 tbsp bacon grease\n- salt\n- water\n\n"
        + "1. Boil the beans in water with the bacon grease for 5 minutes.\n2. Pack into hot jars and cover with the boiling cooking water.\n3. Put on lids and boil for 3 hours in a water bath.\n";

    private const string BeansAtTable = "# Black bean and pork stew\n\n- 1 kg dried black beans\n- 500 g pork loin, cubed\n- 7 litres water\n- 1 avocado\n- 8 radishes\n- 10 lemons, quartered\n\n"
        + "1. Soak the black beans overnight and drain. Boil them in fresh water for 30 minutes and drain.\n2. Put the black beans, pork and water into a pot and simmer for 1 hour.\n3. Serve with avocado, radishes and lemons.\n";

    // Source: USDA Guide 4, p. 4-18: no noodles or pasta; a soup in broth has the soup process, and a food with a longer time of its own lends it.
    [Fact]
    public void Adapt_VegetablesInBroth_AreASoup()
    {
        Adaptation done = Jar(Noodles);

        Assert.Equal("soup", done.Before.Category?.Id);
        Assert.Contains("### To serve\n\n- 1 cup egg noodles\n", done.Recipe, StringComparison.Ordinal);
    }

    // Source: as above; beans out of a can have no published time, so none that stay are "the beans".
    [Fact]
    public void Adapt_BeansOfWhichNoneStay_GoOutOfTheStep()
    {
        Adaptation done = Jar(Minestrone);

        Assert.Contains("Add the carrots, tomatoes, broth and herbs.", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("add the kidney beans", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("Serve with Parmesan", done.Recipe.Split("## To serve")[^1], StringComparison.Ordinal);
    }

    // Source: USDA Guide 4, p. 4-18: no cream.
    [Fact]
    public void Adapt_ATitleWithWhatWaitsForServing_IsCut()
    {
        Adaptation done = Jar(Cream);

        Assert.StartsWith("# Chicken soup\n", done.Recipe, StringComparison.Ordinal);
        Assert.Contains(done.Changes, change => change is { Kind: "reworded", What: "Chicken soup with cream", Now: "Chicken soup" });
    }

    // Source: USDA Guide 4, p. 4-18: no flour.
    [Fact]
    public void Adapt_AStepThatOnlyCoats_GoesWithTheFlour()
    {
        Adaptation done = Jar(Dredged);

        Assert.Contains("1. Brown the meat.\n2. Add the broth", done.Recipe, StringComparison.Ordinal);
        Assert.DoesNotContain("redge", done.Recipe, StringComparison.Ordinal);
    }

    // "It" would stand for nothing, so the coating is not dropped unasked.
    [Fact]
    public void Adapt_ACoatedFoodThatTheNextStepCallsIt_IsNotLost() =>
        Assert.NotEqual(AdaptationKind.Jar, Adapter.Adapt(Dredged.Replace("Melt the butter in a heavy pot and brown the meat.", "Brown it in the butter.", StringComparison.Ordinal), Hall).Kind);

    // Source: USDA Guide 4, p. 4-7: beans in boiling water, no fat; the canner is a pressure canner.
    [Fact]
    public void Adapt_BoilingAfterTheLids_IsTheCanner()
    {
        Adaptation done = Jar(GreenBeans);

        Assert.Contains("1. Boil the beans in water for 5 minutes.\n", done.Recipe, StringComparison.Ordinal);
        Assert.DoesNotContain("3 hours", done.Recipe, StringComparison.Ordinal);
        Assert.Contains("Process the jars in a pressure canner", done.Recipe, StringComparison.Ordinal);
    }

    // What is boiled before the lids are named is food, and no canner. Source: as above.
    [Fact]
    public void Adapt_BoilingBeforeTheLids_IsNotTakenForTheCanner() =>
        Assert.DoesNotContain(Adapter.Adapt(GreenBeans.Replace("3. Put on lids and boil for 3 hours in a water bath.", "3. Boil it for 3 hours and put on lids.", StringComparison.Ordinal), Hall).Changes, change => change is { Kind: "method", What: "Boil it for 3 hours and put on lids" });

    // Source: USDA Guide 4, p. 4-18: what is served beside is in no jar. The steps bring the lemons to the table alone.
    [Fact]
    public void Adapt_WhatOnlyTheTableSees_WaitsForServing()
    {
        Assert.NotEqual(Outcome.PressureAfterChanges, Vet(BeansAtTable).Outcome);

        Adaptation done = Adapter.Adapt(BeansAtTable, Hall);

        Assert.True(done.Kind == AdaptationKind.Jar, string.Join(" | ", done.Questions.Concat(done.Reasons).Select(note => note.Text)));
        Assert.Equal(Outcome.Pressure, Vet(done.Recipe).Outcome);
        Assert.Contains("- 10 lemons, quartered\n", done.Recipe.Split("### To serve")[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2. Put the black beans, pork and water into a pot and simmer for 1 hour.", "2. Put the black beans, pork, lemons and water into a pot and simmer for 1 hour.")]
    [InlineData("2. Put the black beans, pork and water into a pot and simmer for 1 hour.", "2. Put everything into a pot and simmer for 1 hour.")]
    [InlineData("3. Serve with avocado, radishes and lemons.", "3. Serve with avocado and radishes.")]
    public void Adapt_WhatAStepMayBringIntoThePot_DoesNotWaitForServing(string words, string now) =>
        Assert.NotEqual(AdaptationKind.Jar, Adapter.Adapt(BeansAtTable.Replace(words, now, StringComparison.Ordinal), Hall).Kind);

    // Main foods without amounts weigh as much as the heaviest food that has one, so a chopped onion is not the dish. The amounts stay asked for.
    [Fact]
    public void Vet_AStewWithoutAmounts_IsNotCalledAnotherDish()
    {
        const string Scouse = "# Stew\n\n- stewing beef, cubed\n- a white onion\n- potatoes\n- carrots\n- 1 pint beef stock\n- gravy granules\n\n1. Brown the beef. Add the onion, potatoes, carrots and stock.\n2. Boil for half an hour. Stir in the gravy granules and serve.\n";

        VettingReport report = Vet(Scouse);

        Assert.Equal(Outcome.PressureAfterChanges, report.Outcome);
        Assert.Contains(report.Findings, finding => finding.Rule == "unmeasured" || finding.Rule == "too-little-liquid");
        Assert.NotEqual(AdaptationKind.Jar, Adapter.Adapt(Scouse, Hall).Kind);
    }

    // An ordinary word is no slip of a food's name: "close" is no clove.
    [Fact]
    public void Vet_AnOrdinaryWordBesideAMisspelledFood_IsNoSpice()
    {
        VettingReport report = Vet(Noodles.Replace("- 3 carrots, sliced", "- A whole ckicken weighing close to 2.5 kg", StringComparison.Ordinal));

        Assert.DoesNotContain(report.Ingredients, entry => entry.FoodId == "clove");
    }
}
