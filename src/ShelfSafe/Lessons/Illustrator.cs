using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>Chooses and computes the pictures of a lesson. Usable from several threads.</summary>
public sealed class Illustrator
{
    private readonly JarPictures _jars;
    private readonly CannerPictures _canner;
    private readonly ChemistryPictures _chemistry;
    private readonly CompositionPictures _composition;
    private readonly RecipeMixer _mixer;
    private readonly LessonWords _words;
    private readonly Dictionary<string, PictureKind> _kinds;

    internal Illustrator(RulePack pack, LessonNumbers numbers, LessonWords words)
    {
        _words = words;
        _canner = new(pack.Tables.Processes, words);
        _jars = new(pack, numbers, _canner, words);
        _chemistry = new(pack, numbers, words);
        _mixer = new(pack, numbers, words);
        _composition = new(pack, _mixer, words);
        _kinds = pack.Tables.Hazards.ToDictionary(card => card.Rule, card => LessonReader.Picture(card.Sections.GetValueOrDefault("Picture", string.Empty)) ?? PictureKind.None, StringComparer.Ordinal);
    }

    /// <summary>Pictures of the lesson's own worked example.</summary>
    /// <param name="picture">What the lesson is drawn with.</param>
    /// <param name="kitchen">Its altitude; sea level where none is given.</param>
    public Illustration Worked(PictureKind picture, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(kitchen);
        ImmutableArray<Figure> figures = picture switch
        {
            PictureKind.None => [],
            PictureKind.Sets or PictureKind.Conducts or PictureKind.Sizes => _jars.Worked(picture, kitchen.AltitudeFeet ?? 0),
            PictureKind.Altitude => [_canner.Altitude(kitchen.AltitudeFeet)],
            PictureKind.Air => [_canner.Air()],
            PictureKind.Acid => [_chemistry.Scale()],
            PictureKind.Water => [_chemistry.Water()],
            PictureKind.Composition => [_composition.Worked(_jars.Example("thick"), _jars.Example("broth"))],
        };
        return new(figures, []);
    }

    /// <summary>Pictures of a lesson: its worked example, or the scale with the foods that it tells of.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="kitchen">Its altitude; sea level where none is given.</param>
    public Illustration Worked(Lesson lesson, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson is { Picture: PictureKind.Acid, Foods.IsEmpty: false } ? new([_chemistry.Scale(lesson.Foods)], []) : Worked(lesson.Picture, kitchen);
    }

    /// <summary>Pictures for a cook's recipe: curves relative to the thin example, composition beside the tested one, foods on the pH scale.</summary>
    /// <param name="picture">What the lesson is drawn with.</param>
    /// <param name="report">The vetted recipe.</param>
    /// <param name="kitchen">Altitude and jar.</param>
    /// <returns>The pictures, or the sentence that says why there are none.</returns>
    public Illustration ForRecipe(PictureKind picture, VettingReport report, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(kitchen);
        if (picture is PictureKind.Altitude or PictureKind.Air or PictureKind.Water)
        {
            return Worked(picture, kitchen) with { Notes = [_words["why.same-for-all"]] };
        }

        if (picture == PictureKind.None)
        {
            return new([], [_words["why.none"]]);
        }

        RecipeMix mix = _mixer.Of(report);
        if (mix.Parts.IsEmpty)
        {
            return new([], [mix.WhyNot!]);
        }

        // The scale needs no composition; a food without a published one bars only the other pictures.
        if (picture == PictureKind.Acid)
        {
            return new([_chemistry.Scale(mix.Parts), .. Shares(report)], []);
        }

        if (mix.Food is not { } food)
        {
            return new([], [mix.WhyNot!]);
        }

        Figure bars = _composition.Recipe(food, report.Category, _jars.Example("broth"));
        return picture == PictureKind.Composition
            ? new([bars, .. Shares(report)], [_words["why.model"]])
            : new([_jars.Recipe(food, HowItHeats(report), Jar(kitchen), kitchen.AltitudeFeet ?? 0), bars, .. Shares(report)], [_words["why.model"]]);
    }

    private ImmutableArray<Figure> Shares(VettingReport report) => _composition.Shares(report.Category) is { } shares ? [shares] : [];

    private static string Jar(Kitchen kitchen) => kitchen.Jar == "quart" ? "quart" : "pint";

    // The slower of what the findings say: thick from the start, then setting, then thin.
    private PictureKind HowItHeats(VettingReport report)
    {
        PictureKind[] kinds = [.. report.Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => _kinds.GetValueOrDefault(finding.Rule))];
        return kinds.Contains(PictureKind.Conducts) ? PictureKind.Conducts : kinds.Contains(PictureKind.Sets) ? PictureKind.Sets : PictureKind.None;
    }
}
