using FsCheck;
using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Xunit;
using Outcome = ShelfSafe.Core.Outcome;

namespace ShelfSafe.Tests.Properties;

/// <summary>The tightening principle where it matters most: over recipes that are permitted, with something more written into them.</summary>
[Properties(Arbitrary = [typeof(PermittedRecipes)], MaxTest = 250, Replay = "(20261127,1)")]
public class PermittedRecipeProperties
{
    // Findings about shares, amounts and the whole batch may go when a food is added: it thins, dilutes, or makes another dish of it.
    private static readonly string[] ShareRules = ["too-little-liquid", "proportions", "fat", "dense", "low-sugar", "syrup", "low-acid", "untested-food", "borderline-acid", "sound", "own-process", "raw-start", "jar-too-large", "unmeasured"];

    private readonly RecipeVetter _vetter = BuiltIn.Vetter;

    [Fact]
    public void All_AsWritten_ArePermitted() =>
        Assert.All(PermittedRecipes.All, sketch => Assert.True(IsPermitted(Vet(sketch)), sketch.Title + ": " + string.Join("; ", Vet(sketch).Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => finding.Message))));

    [Fact]
    public void All_ServedWithABarredFood_ArePermittedStill() =>
        Assert.All(PermittedRecipes.All, sketch => Assert.True(IsPermitted(Vet(sketch.Markdown() + "\nWhen you open a jar, serve it with bread and butter.\n")), sketch.Title));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10 to 1-26: the procedure that these sentences follow or comment.
    [Fact]
    public void All_WithAnOrdinarySentence_ArePermittedStill() =>
        Assert.All(PermittedRecipes.All.SelectMany(sketch => PermittedRecipes.Ordinary.Select(sentence => new UndoneProcess(sketch, sentence, AsNote: false))), told => Assert.True(IsPermitted(Vet(told.Markdown())), told.Sketch.Title + ": " + told.Sentence));

    // Source: USDA AIB 539 (2015) Guide 1 p. 1-10 to 1-26: what these sentences leave out or change. The dry rub has no process.
    [Fact]
    public void All_WithAnUndoingSentence_AreNotPermittedNow() =>
        Assert.All(PermittedRecipes.All.SkipLast(1).SelectMany(sketch => PermittedRecipes.Undoing.Select(sentence => new UndoneProcess(sketch, sentence, AsNote: false))), told => Assert.False(IsPermitted(Vet(told.Markdown())), told.Sketch.Title + ": " + told.Sentence));

    // Source: USDA Complete Guide, AIB 539 (2015) Guide 4 p. 4-18: every food of a mixture needs a process of its own; what no list names is asked.
    [Theory]
    [InlineData("Dilled beans", "Add some mushrooms.")]
    [InlineData("Dilled beans", "Pack in a few prawns.")]
    [InlineData("Beans in jars", "Sweeten with treacle.")]
    [InlineData("Island soup", "Add chunks of squash.")]
    [InlineData("Island soup", "Tip in a bag of frozen mixed vegetables.")]
    [InlineData("Island soup", "Add some beans.")]
    [InlineData("Island soup", "Add some fish.")]
    [InlineData("Dilled beans", "Blend until smooth.")]
    [InlineData("Dilled beans", "Ferment for a week first.")]
    [InlineData("Beef stock", "Leave the meat in for a heartier broth.")]
    [InlineData("Ground venison", "Pack the balls tightly without liquid.")]
    [InlineData("Beans in jars", "Crush a third of them.")]
    [InlineData("Bottled plums", "Add the syrup cold.")]
    [InlineData("Potatoes in jars", "Do not bother to peel.")]
    [InlineData("Dilled beans", "Thin the brine with a pint of water.")]
    [InlineData("Dilled beans", "Pour off the liquid.")]
    [InlineData("Dilled beans", "Deep fry them first.")]
    [InlineData("Blackberry jam", "Zorblatt can be added now.")]
    [InlineData("Island soup", "Zorblatt.")]
    [InlineData("Island soup", "Leave the bones in the jar.")]
    [InlineData("Garden peas", "Add no liquid.")]
    [InlineData("Garden peas", "Process in a steam canner.")]
    [InlineData("Ground venison", "Keep the fat in.")]
    [InlineData("Dry rub", "Stir in 2 cups water.")]
    public void Named_WithASentenceThatChangesTheFood_IsNotPermittedNow(string title, string sentence)
    {
        RecipeSketch sketch = PermittedRecipes.All.Single(one => one.Title == title);
        int jar = sketch.Steps.IndexOf("Fill", StringComparison.Ordinal) is var fill and >= 0 ? fill : 0;
        Assert.False(IsPermitted(Vet(sketch with { Steps = sketch.Steps.Insert(jar, sentence + " ") })), sentence);
    }

    [Property]
    public bool Vet_BarredFoodInAnyPlace_IsNeverPermittedNow(HiddenFood hidden) => !IsPermitted(Vet(hidden.Markdown()));

    [Property]
    public bool Vet_ProcessUndone_IsNeverPermittedNow(UndoneProcess undone) => !IsPermitted(Vet(undone.Markdown()));

    [Property]
    public bool Vet_UnidentifiedBulkFood_IsNeverPermittedNow(PermittedRecipe recipe, PositiveInt grams) =>
        !IsPermitted(Vet(With(recipe.Sketch, new(300 + grams.Get, 300 + grams.Get, "zorblatt"))));

    // A word that nobody knows may be a food, wherever it stands in a line that goes into the jar.
    [Property]
    public bool Vet_UnknownWordInALine_IsNeverPermittedNow(PermittedRecipe recipe, PositiveInt which, PositiveInt tail)
    {
        RecipeSketch sketch = recipe.Sketch;
        string[] tails = [" mixed with zorblatt", " (and zorblatt)", ", tossed in zorblatt", " and a tin of zorblatt"];
        int index = which.Get % sketch.Lines.Count;
        return !IsPermitted(Vet(sketch with { Lines = [.. sketch.Lines.Select((own, i) => i == index ? own with { Food = own.Food + tails[tail.Get % tails.Length] } : own)] }));
    }

    // Source: USDA Complete Guide, AIB 539 (2015) Guide 6 p. 6-14: the dilled beans at their own proportions. Two beds of words for more of a food, and for less acid.
    [Theory]
    [InlineData("green beans", ", doubled")]
    [InlineData("green beans", " (plus another 2 kg)")]
    [InlineData("green beans", " (or 4 kg)")]
    [InlineData("green beans", " (make that 4000)")]
    [InlineData("garlic", ", or more to taste")]
    [InlineData("white vinegar (5%)", " mixed with 2 cups water")]
    [InlineData("white vinegar (5%)", ", minus a cup")]
    public void Named_WithAnAmountTakenBackInItsLine_IsNotPermittedNow(string food, string tail)
    {
        RecipeSketch sketch = PermittedRecipes.All.Single(static one => one.Title == "Dilled beans");
        RecipeSketch other = sketch with { Lines = [.. sketch.Lines.Select(own => own.Food == food ? own with { Food = food + tail } : own)] };
        Assert.False(IsPermitted(Vet(other)), other.Markdown());
    }

    [Property]
    public bool Vet_AmountWidened_PermitsNoMore(PermittedRecipe recipe, PositiveInt which, PositiveInt more)
    {
        RecipeSketch sketch = recipe.Sketch;
        int index = which.Get % sketch.Lines.Count;
        VettingReport wide = Vet(sketch with { Lines = [.. sketch.Lines.Select((own, i) => i == index ? own with { High = own.High + (more.Get * 50) } : own)] });
        return !IsPermitted(wide) || wide.Outcome == Vet(sketch).Outcome;
    }

    [Property]
    public bool Vet_FoodAdded_RemovesOnlyShareFindings(PermittedRecipe recipe, HiddenFood first, HiddenFood second)
    {
        RecipeSketch one = With(recipe.Sketch, new(200, 200, first.Food));
        RecipeSketch both = With(one, new(150, 150, second.Food));
        HashSet<(string, string?)> after = [.. Vet(both).Findings.Select(finding => (finding.Rule, finding.Ingredient))];
        return first.Food == second.Food || Vet(one).Findings.Where(finding => finding.Level >= FindingLevel.Change && finding.Ingredient == first.Food && !ShareRules.Contains(finding.Rule, StringComparer.Ordinal))
            .All(finding => after.Contains((finding.Rule, finding.Ingredient)));
    }

    // "Neither names nor counts as its liquid": a food that title and steps do not speak of, and no water, broth or sugar.
    [Property]
    public bool Vet_FoodTakenAway_IsPermittedStill(PermittedRecipe recipe, PositiveInt which)
    {
        RecipeSketch sketch = recipe.Sketch;
        SketchLine line = sketch.Lines[which.Get % sketch.Lines.Count];
        bool named = line.Food.Split(' ', ',').Where(word => word.Length > 3).Any(word => (sketch.Title + " " + sketch.Steps).Contains(word[..Math.Min(5, word.Length)].TrimEnd('s'), StringComparison.OrdinalIgnoreCase));
        return named || sketch.Lines.Count == 1 || IsPermitted(Vet(sketch with { Lines = [.. sketch.Lines.Where(own => own != line)] }));
    }

    [Property]
    public bool Vet_EveryAmountScaled_KeepsTheOutcome(PermittedRecipe recipe, PositiveInt times) =>
        Vet(recipe.Sketch.Markdown(scale: 1 + (times.Get % 4))).Outcome == Vet(recipe.Sketch).Outcome;

    [Property]
    public bool Vet_LinesReversedOrRestyled_KeepsTheOutcome(PermittedRecipe recipe)
    {
        Outcome plain = Vet(recipe.Sketch).Outcome;
        return Vet(recipe.Sketch with { Lines = [.. recipe.Sketch.Lines.Reverse()] }).Outcome == plain
            && Vet(recipe.Sketch.Markdown(bullet: "1. ")).Outcome == plain
            && Vet(recipe.Sketch.Markdown(bullet: "* ", end: "\r\n")).Outcome == plain;
    }

    private static RecipeSketch With(RecipeSketch sketch, SketchLine line) => sketch with { Lines = [.. sketch.Lines, line] };

    private static bool IsPermitted(VettingReport report) => report.Outcome is Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage;

    private VettingReport Vet(RecipeSketch sketch) => Vet(sketch.Markdown());

    private VettingReport Vet(string text) => _vetter.Vet(text, Kitchen.Unknown);
}
