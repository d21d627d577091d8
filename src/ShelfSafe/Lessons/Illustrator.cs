using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>Chooses and computes the pictures of a lesson. Usable from several threads.</summary>
public sealed class Illustrator
{
    private const int MostInAReport = 2;

    private readonly JarPictures _jars;
    private readonly CannerPictures _canner;
    private readonly ChemistryPictures _chemistry;
    private readonly CompositionPictures _composition;
    private readonly RecipeMixer _mixer;
    private readonly WordTable _words;
    private readonly Dictionary<string, PictureKind> _kinds;

    internal Illustrator(RulePack pack, LessonNumbers numbers, WordTable words)
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

    /// <summary>The pictures that a printed report shows: why what must change matters, drawn for this recipe, or by the worked example where it cannot be.</summary>
    /// <param name="report">The vetted recipe.</param>
    /// <returns>At most two, one of a kind, those of the worst findings first; none for a dish that is no jar food or needs no change.</returns>
    /// <remarks>Pictures that are the same for every recipe (altitude, air, water) stay with their lessons.</remarks>
    public ImmutableArray<Figure> ForReport(VettingReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.Outcome == Outcome.NotAJarFood)
        {
            return [];
        }

        PictureKind[] kinds = [.. Kinds(report).Select(Drawn).Where(static kind => kind != PictureKind.None).Distinct().Take(MostInAReport)];
        return [.. kinds.SelectMany(kind => (ForRecipe(kind, report, report.Kitchen).Figures is { IsEmpty: false } own ? own : Worked(kind, report.Kitchen).Figures).Take(1))];
    }

    // A recipe heats in one way, so all that is drawn as a jar that heats is one picture.
    private static PictureKind Drawn(PictureKind kind) => kind switch
    {
        PictureKind.Sets or PictureKind.Conducts or PictureKind.Sizes => PictureKind.Conducts,
        PictureKind.Acid or PictureKind.Composition => kind,
        PictureKind.None or PictureKind.Altitude or PictureKind.Air or PictureKind.Water => PictureKind.None,
    };

    // Findings stand worst first.
    private IEnumerable<PictureKind> Kinds(VettingReport report) => report.Findings.IsDefault ? []
        : report.Findings.Where(static finding => finding.Level >= FindingLevel.Change).Select(finding => _kinds.GetValueOrDefault(finding.Rule));

    private ImmutableArray<Figure> Shares(VettingReport report) => _composition.Shares(report.Category) is { } shares ? [shares] : [];

    private static string Jar(Kitchen kitchen) => kitchen.Jar == "quart" ? "quart" : "pint";

    // The slower of what the findings say: thick from the start, then setting, then thin.
    private PictureKind HowItHeats(VettingReport report)
    {
        PictureKind[] kinds = [.. Kinds(report)];
        return kinds.Contains(PictureKind.Conducts) ? PictureKind.Conducts : kinds.Contains(PictureKind.Sets) ? PictureKind.Sets : PictureKind.None;
    }
}
