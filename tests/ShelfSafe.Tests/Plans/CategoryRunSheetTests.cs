using ShelfSafe.Pack;
using ShelfSafe.Plans;
using ShelfSafe.Verdict;
using Xunit;
using static ShelfSafe.Tests.Changes.WorkFixture;

namespace ShelfSafe.Tests.Plans;

/// <summary>The run sheet of each published category, line by line beside the guide's procedure; 410 m (1,345 ft), weighted gauge, pints.</summary>
public class CategoryRunSheetTests
{
    private const string PressureLines = "canner water vent come-up start hold fall cool wait lift rest seal store headspace bubbles rims jars wash";
    private const string BoilingLines = "water-bw come-up-bw start-bw hold-bw fall-bw wait-bw lift rest seal store headspace bubbles rims jars wash";

    private static readonly RunSheetBuilder _builder = RunSheetBuilder.Create(RulePack.Default);

    // Category, pages of its procedure, pack, minutes, headspace in inches, lines of its own, lines that it must not have, recipe.
    private static readonly (string Category, string Page, string Pack, int Minutes, double Headspace, string Own, string Without, string Recipe)[] _sheets =
    [
        ("soup", "Guide 5 p. 5-6 to 5-7", "hot", 75, 1, "meat-soup vegetables boil-soup soup-half unsealed", "boil-hot meat soak acid sterile conditions",
            "# Beef soup\n\n- 1 kg stewing beef, cubed\n- 500 g carrots, sliced\n- 5 litres beef broth\n\n1. Brown the beef in a dry pan and drain it.\n2. Put the beef, carrots and beef broth into a pot and simmer until the beef is tender.\n3. Boil for 5 minutes. Fill hot jars half full with the pieces, top up with the broth, and process in a pressure canner.\n"),
        ("meat-pieces", "Guide 5 p. 5-6 to 5-7", "hot", 75, 1, "meat boil-hot conditions unsealed", "meat-soup soup-half soak acid sterile vegetables",
            "# Beef in broth\n\n- 3 kg lean beef, cut in cubes\n- 2 litres beef broth\n\n1. Brown the beef in a dry pan and drain off the fat.\n2. Fill hot jars with the hot beef, cover with the boiling beef broth, and process in a pressure canner.\n"),
        ("ground-meat", "Guide 5 p. 5-6", "hot", 75, 1, "meat boil-hot conditions unsealed", "meat-soup soup-half soak acid sterile vegetables",
            "# Ground beef\n\n- 3 kg lean ground beef\n- 2 litres beef broth\n\n1. Brown the ground beef in a dry pan and drain off the fat.\n2. Fill hot jars with the hot ground beef, cover with the boiling beef broth, and process in a pressure canner.\n"),
        ("poultry", "Guide 5 p. 5-5", "hot", 75, 1.25, "boil-hot conditions unsealed", "meat-soup soup-half soak acid sterile vegetables",
            "# Chicken in broth\n\n- 3 kg boneless, skinless chicken breasts, cut in pieces\n- 2 litres chicken broth\n\n1. Boil the chicken in the chicken broth until it is two-thirds done.\n2. Fill hot jars with the hot chicken, cover with the boiling chicken broth, and process in a pressure canner.\n"),
        ("stock", "Guide 5 p. 5-7", "hot", 20, 1, "boil-hot conditions unsealed", "meat-soup soup-half soak acid sterile meat",
            "# Clear chicken stock\n\n- 3 kg chicken bones\n- 5 litres water\n- 2 tsp salt\n\n1. Cover the bones with the water and simmer for 4 hours.\n2. Strain the broth and throw away the bones.\n3. Chill the broth and lift off all the fat.\n4. Heat the broth to boiling and add the salt.\n5. Fill hot jars and process in a pressure canner.\n"),
        ("dried-beans", "Guide 4 p. 4-5 to 4-6", "hot", 75, 1, "soak beans boil-hot conditions unsealed", "meat-soup soup-half meat acid sterile vegetables",
            "# Beans in water\n\n- 1 kg dried kidney beans\n- water\n- 1 tbsp salt\n\n1. Soak the kidney beans overnight in cold water and drain them.\n2. Boil the kidney beans in fresh water for 30 minutes.\n3. Fill hot jars with the beans and their cooking water, and process in a pressure canner.\n"),
        ("plain-vegetable", "Guide 4 p. 4-8 to 4-9", "hot", 20, 1, "vegetables boil-hot unsealed", "meat-soup soup-half meat acid sterile soak",
            "# Green beans\n\n- 4 kg green beans, trimmed\n- 4 litres water\n\n1. Boil the green beans in the water for 5 minutes.\n2. Fill hot jars with them and the boiling water, and process in a pressure canner.\n"),
        ("mixed-vegetables", "Guide 4 p. 4-12 to 4-13", "hot", 75, 1, "vegetables boil-hot conditions unsealed", "meat-soup soup-half meat acid sterile soak",
            "# Mixed vegetables\n\n- 2 kg carrots, sliced\n- 1 kg green beans, cut\n- 4 litres water\n- 2 tsp salt\n\n1. Boil the carrots and green beans in the water for 5 minutes.\n2. Fill hot jars with them and the boiling water, and process in a pressure canner.\n"),
        ("cream-style-corn", "Guide 4 p. 4-10 to 4-11", "hot", 85, 1, "vegetables boil-hot conditions unsealed", "meat-soup soup-half meat acid sterile soak",
            "# Scraped corn\n\n- 20 ears corn, cut and scraped\n- 2 cups boiling water\n- 1 tsp salt\n\n1. Blanch the ears for 4 minutes. Cut the corn from the cob at the middle of the kernels and scrape the cobs.\n2. Add 2 cups of boiling water to each quart of corn and heat to boiling.\n3. Fill hot pint jars with the corn and process in a pressure canner.\n"),
        ("fish", "Guide 5 p. 5-10 to 5-11", "raw", 100, 1, "conditions unsealed-raw", "boil-hot meat-soup soup-half meat acid sterile soak vegetables",
            "# Salmon in jars\n\n- 5 kg salmon, cut in pieces\n- salt\n\n1. Pack the raw salmon into pint jars with the skin side to the glass. Add no liquid.\n2. Process in a pressure canner.\n"),
        ("clams", "Guide 5 p. 5-9", "hot", 70, 1, "boil-hot conditions unsealed", "meat-soup soup-half meat sterile soak vegetables",
            "# Minced clams\n\n- 3 kg shucked clams\n- 1/2 tsp citric acid for each gallon of water\n- water\n- 1 tbsp salt\n\n1. Wash the clam meat in water with the salt, and rinse it.\n2. Boil the clams for 2 minutes in water with the citric acid. Drain the clams and mince them.\n3. Fill hot pint jars loosely with the clams, cover with fresh boiling water, and process in a pressure canner.\n"),
        ("oysters", "Guide 5 p. 5-12 to 5-13", "raw", 75, 1, "conditions unsealed-raw", "meat-soup soup-half meat acid sterile soak vegetables",
            "# Oysters\n\n- 3 kg shucked oysters\n- water\n- 1 tsp salt\n\n1. Wash the oysters in water with the salt and drain them.\n2. Fill hot pint jars with the oysters, cover with fresh boiling water, and process in a pressure canner.\n"),
        ("tuna", "Guide 5 p. 5-14 to 5-15", "raw", 100, 1, "conditions unsealed-raw", "meat-soup soup-half meat acid sterile soak vegetables",
            "# Tuna in water\n\n- 5 kg tuna, skinned and boned, in chunks\n- water\n- 1 tsp salt\n\n1. Pack the raw tuna into pint jars, cover it with boiling water, and add the salt.\n2. Process in a pressure canner.\n"),
        ("smoked-fish", "Guide 5 p. 5-13 to 5-14", "raw", 110, 1, "conditions", "meat-soup soup-half meat acid sterile soak vegetables",
            "# Smoked salmon\n\n- 3 kg lightly smoked salmon, in pieces\n\n1. Pack the smoked salmon upright into pint jars. Add no liquid.\n2. Process in a pressure canner.\n"),
        ("fruit", "Guide 2 p. 2-19", "hot", 25, 0.5, "boil-hot unsealed canner-bw", "meat-soup soup-half meat acid sterile soak vent canner-bw-deep", Sample("peach-halves.md")),
        ("applesauce", "Guide 2 p. 2-8", "hot", 20, 0.5, "boil-hot unsealed canner-bw", "meat-soup soup-half meat acid sterile soak vent",
            "# Applesauce\n\n- 5 kg apples, peeled and cored\n- 2 cups water\n\n1. Simmer the apples in the water until tender, and press them through a food mill.\n2. Bring the sauce back to a boil, fill hot jars, and process in a boiling-water canner.\n"),
        ("fruit-puree", "Guide 2 p. 2-14", "hot", 20, 0.25, "boil-hot unsealed canner-bw conditions", "meat-soup soup-half meat acid sterile soak vent",
            "# Sieved plums\n\n- 3 kg plums, pitted\n- 3 cups water\n\n1. Crush the plums, add the water and cook until soft, and press them through a sieve.\n2. Bring them to a boil, fill hot jars, and process in a boiling-water canner.\n"),
        ("grape-juice", "Guide 2 p. 2-15 to 2-16", "hot", 10, 0.25, "boil-hot unsealed canner-bw conditions", "meat-soup soup-half meat acid soak vent sterile",
            "# Grape juice\n\n- 10 kg grapes\n- 3 litres water\n\n1. Cover the grapes with the boiling water and simmer for 10 minutes.\n2. Strain the juice through a cloth and let it settle in the refrigerator for a day. Strain it again.\n3. Heat the juice to a boil, fill hot jars, and process in a boiling-water canner.\n"),
        ("apple-juice", "Guide 2 p. 2-6 to 2-7", "hot", 10, 0.25, "boil-hot unsealed canner-bw conditions", "meat-soup soup-half meat acid soak vent sterile",
            "# Apple juice\n\n- 10 kg apples\n\n1. Press the juice out of the apples.\n2. Strain the juice through a cloth.\n3. Heat the juice to a boil, fill hot jars, and process in a boiling-water canner.\n"),
        ("asian-pears", "Guide 2 p. 2-20", "hot", 25, 0.5, "boil-hot unsealed canner-bw acid", "meat-soup soup-half meat sterile soak vent",
            "# Asian pears\n\n- 5 kg Asian pears, peeled, cored and halved\n- 3 litres water\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Boil the Asian pears in the water for 5 minutes.\n2. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot pears and the boiling water, and process in a boiling-water canner.\n"),
        ("figs", "Guide 2 p. 2-14", "hot", 50, 0.5, "boil-hot unsealed canner-bw-deep acid", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Figs in syrup\n\n- 4 kg figs\n- 9 cups water\n- 2 1/4 cups sugar\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Cover the figs with water and boil them for 2 minutes. Drain.\n2. Boil the sugar and water to a syrup. Boil the figs gently in the syrup for 5 minutes.\n3. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot figs and the boiling syrup, and process in a boiling-water canner.\n"),
        ("jam", "Guide 7 p. 7-6 to 7-7", "hot", 10, 0.25, "boil-hot unsealed canner-bw conditions", "meat-soup soup-half meat acid soak vent",
            "# Blackberry jam\n\n- 2 kg blackberries\n- 2 kg sugar\n\n1. Crush the blackberries, add the sugar, and boil until it sheets from a spoon.\n2. Fill hot jars and process in a boiling-water canner.\n"),
        ("tomatoes", "Guide 3 p. 3-9 to 3-10", "hot", 45, 0.5, "vegetables acid boil-hot conditions unsealed canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Tomatoes in water\n\n- 8 kg whole tomatoes, peeled\n- 3 litres water\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Boil the tomatoes gently in the water for 5 minutes.\n2. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot tomatoes and the boiling water, and process in a boiling-water canner.\n"),
        ("tomatoes-crushed", "Guide 3 p. 3-7 to 3-8", "hot", 40, 0.5, "vegetables acid boil-hot unsealed canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Crushed tomatoes\n\n- 10 kg tomatoes, peeled, cored and quartered\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Crush a few tomatoes in a pot and bring them to a boil, add the rest bit by bit, and boil for 5 minutes.\n2. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot tomatoes, and process in a boiling-water canner.\n"),
        ("tomatoes-in-juice", "Guide 3 p. 3-10 to 3-11", "hot", 90, 0.5, "vegetables acid boil-hot unsealed canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Tomatoes in juice\n\n- 8 kg whole tomatoes, peeled\n- 3 litres plain tomato juice\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Boil the tomatoes gently in the tomato juice for 5 minutes.\n2. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the hot tomatoes and the boiling tomato juice, and process in a boiling-water canner.\n"),
        ("tomatoes-own-juice", "Guide 3 p. 3-11 to 3-12", "raw", 90, 0.5, "vegetables acid unsealed-raw canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw boil-hot",
            "# Raw packed tomatoes\n\n- 10 kg whole tomatoes, peeled\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Put 1 tablespoon of bottled lemon juice into each hot pint jar.\n2. Press the raw tomatoes into the jars until the spaces fill with their juice. Add no liquid.\n3. Process in a boiling-water canner.\n"),
        ("tomato-juice", "Guide 3 p. 3-5 to 3-6", "hot", 40, 0.5, "acid boil-hot unsealed canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Tomato juice\n\n- 10 kg tomatoes, cored and quartered\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Crush the tomatoes, boil them for 5 minutes, and press them through a sieve.\n2. Bring the juice back to a boil.\n3. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the boiling juice, and process in a boiling-water canner.\n"),
        ("tomato-sauce", "Guide 3 p. 3-8 to 3-9", "hot", 40, 0.25, "acid boil-hot unsealed canner-bw-deep", "meat-soup soup-half meat sterile soak vent canner-bw",
            "# Plain tomato sauce\n\n- 10 kg tomatoes, cored and quartered\n- 1 tbsp bottled lemon juice for each pint jar\n\n1. Crush the tomatoes, boil them for 5 minutes, and press them through a sieve.\n2. Simmer the juice until it is reduced by a third.\n3. Put 1 tablespoon of bottled lemon juice into each hot pint jar, fill it with the boiling sauce, and process in a boiling-water canner.\n"),
    ];

    public static TheoryData<string> Categories => [.. _sheets.Select(one => one.Category)];

    // Source: the USDA Complete Guide to Home Canning, AIB 539 (rev. 2015), on the page that stands in each row above; for canners Guide 1, p. 1-17 to 1-22.
    [Theory]
    [MemberData(nameof(Categories))]
    public void Build_EachPublishedCategory_FollowsItsProcedure(string category)
    {
        (string _, string page, string pack, int minutes, double headspace, string own, string without, string text) = _sheets.Single(one => one.Category == category);
        VettingReport report = VetPints(text);
        Assert.True(PlanChoice.Of(report).Process is not null, $"{report.Outcome}: {string.Join(" | ", report.Findings.Where(finding => finding.Level >= ShelfSafe.Core.FindingLevel.Change).Select(finding => finding.Rule + ": " + finding.Message))}");
        Assert.Equal(category, report.Category?.Id);

        RunSheet sheet = _builder.Build([(category, report)]);
        PlannedRecipe recipe = sheet.Recipes[0];

        Assert.Equal((pack, minutes, headspace), (recipe.Process.Pack, recipe.Process.Minutes, recipe.Process.HeadspaceInches));
        Assert.EndsWith(page, recipe.Process.Source, StringComparison.Ordinal);
        string[] ids = [.. sheet.Before.Concat(recipe.Prepare).Concat(recipe.Fill).Concat(recipe.Canner).Concat(recipe.Trouble).Concat(sheet.After).Select(step => step.Id)];
        Assert.Empty($"{(recipe.Process.Method == "pressure" ? PressureLines : BoilingLines)} {own}".Split(' ').Except(ids));
        Assert.Empty(ids.Intersect(without.Split(' ')));
        Assert.Contains(recipe.Canner, step => step.Text.Contains($" for {minutes} minutes", StringComparison.Ordinal));
        Assert.Contains(recipe.Trouble, step => step.Text.Contains($"the full {minutes} minutes again", StringComparison.Ordinal));
    }

    // Dry mixes meet no canner; every other category has its sheet above.
    [Fact]
    public void Build_EveryCategory_IsReviewed() =>
        Assert.Equal(
            RulePack.Default.Tables.Categories.Where(card => card.Method != "dry").Select(card => card.Id).Order(StringComparer.Ordinal),
            _sheets.Select(one => one.Category).Order(StringComparer.Ordinal));
}
