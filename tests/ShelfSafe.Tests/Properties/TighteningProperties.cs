using FsCheck;
using FsCheck.Xunit;
using ShelfSafe.Core;
using ShelfSafe.Verdict;
using Outcome = ShelfSafe.Core.Outcome;

namespace ShelfSafe.Tests.Properties;

/// <summary>The tightening principle: a computation may raise an alarm, never lower one.</summary>
[Properties(Arbitrary = [typeof(Sketches)], MaxTest = 150, Replay = "(20261125,1)")]
public class TighteningProperties
{
    private readonly RecipeVetter _vetter = BuiltIn.Vetter;

    [Property]
    public bool Vet_UnidentifiedBulkFood_NeverPermitsNow(RecipeSketch sketch) =>
        Vet(sketch with { Lines = [.. sketch.Lines, new SketchLine(400, 400, "zorblatt")] }).Outcome
            is not (Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage);

    [Property]
    public bool Vet_StopOrChange_NeverStandsBesideAProcessNow(RecipeSketch sketch)
    {
        VettingReport report = Vet(sketch);
        return report.Outcome is not (Outcome.BoilingWater or Outcome.Pressure)
            || report.Findings.All(finding => finding.Level < FindingLevel.Change);
    }

    [Property]
    public bool Vet_Stop_BarsEveryProcess(RecipeSketch sketch)
    {
        VettingReport report = Vet(sketch with { Steps = sketch.Steps + " Stir a canning powder into each jar." });
        return report.Findings.Any(finding => finding.Level == FindingLevel.Stop) && report.Process.IsEmpty && report.ProcessAfterChanges.IsEmpty;
    }

    [Property]
    public bool Vet_EveryOtherOutcome_CarriesAStopOrChange(RecipeSketch sketch)
    {
        VettingReport report = Vet(sketch);
        return report.Outcome is Outcome.Pressure or Outcome.BoilingWater or Outcome.DryStorage or Outcome.NotAJarFood
            || report.Findings.Any(finding => finding.Level >= FindingLevel.Change);
    }

    [Property]
    public bool Vet_WithoutSteps_NeverPermitsAProcessNow(RecipeSketch sketch)
    {
        string text = sketch.Markdown();
        VettingReport report = _vetter.Vet(text[..text.IndexOf("## Method", StringComparison.Ordinal)], Kitchen.Unknown);
        return report.Outcome is not (Outcome.BoilingWater or Outcome.Pressure);
    }

    [Property]
    public bool Vet_AmountWidened_NeverPermitsMoreNow(RecipeSketch sketch, PositiveInt which, PositiveInt more)
    {
        int index = which.Get % sketch.Lines.Count;
        SketchLine line = sketch.Lines[index];
        RecipeSketch wider = sketch with { Lines = [.. sketch.Lines.Select((own, i) => i == index ? line with { High = line.High + more.Get } : own)] };
        Outcome after = Vet(wider).Outcome;
        return after is not (Outcome.BoilingWater or Outcome.Pressure) || Vet(sketch).Outcome == after;
    }

    [Property]
    public bool Vet_EveryAmountScaled_KeepsTheOutcome(RecipeSketch sketch) =>
        _vetter.Vet(sketch.Markdown(scale: 2), Kitchen.Unknown).Outcome is { } doubled
        && (doubled == Vet(sketch).Outcome || sketch.Lines.Any(line => line.Food is "olive oil" or "butter" or "cream" or "bacon"));

    [Property]
    public bool Vet_LinesReordered_ChangesNothingButPlaces(RecipeSketch sketch) =>
        Same(Vet(sketch), Vet(sketch with { Lines = [.. sketch.Lines.Reverse()] }));

    [Property]
    public bool Vet_ListStyleOrLineEnd_ChangesNothingButPlaces(RecipeSketch sketch)
    {
        VettingReport plain = Vet(sketch);
        return Same(plain, _vetter.Vet(sketch.Markdown(bullet: "* "), Kitchen.Unknown))
            && Same(plain, _vetter.Vet(sketch.Markdown(bullet: "1. "), Kitchen.Unknown))
            && Same(plain, _vetter.Vet(sketch.Markdown(end: "\r\n"), Kitchen.Unknown));
    }

    [Property]
    public bool Vet_AdmittedWithAFood_IsAdmittedWithout(RecipeSketch sketch)
    {
        VettingReport with = Vet(sketch with { Lines = [.. sketch.Lines, new SketchLine(50, 50, "parsnips")] });
        return with.Outcome is not (Outcome.BoilingWater or Outcome.Pressure) || Vet(sketch).Outcome == with.Outcome;
    }

    [Property]
    public bool Vet_AnyText_NeverThrowsAndKeepsPlacesInside(string? text)
    {
        string given = text ?? string.Empty;
        VettingReport report = _vetter.Vet(given, Kitchen.Unknown);
        int lines = new LineTable(given).Count;
        return report.Findings.All(finding => finding.Places.All(place => place.Line >= 1 && place.EndLine <= lines && place.Column >= 1));
    }

    private VettingReport Vet(RecipeSketch sketch) => _vetter.Vet(sketch.Markdown(), Kitchen.Unknown);

    private static bool Same(VettingReport left, VettingReport right) =>
        left.Outcome == right.Outcome && left.Acidity == right.Acidity && Keys(left).SetEquals(Keys(right));

    private static HashSet<(string, FindingLevel, string?)> Keys(VettingReport report) =>
        [.. report.Findings.Select(finding => (finding.Rule, finding.Level, finding.Ingredient))];
}
