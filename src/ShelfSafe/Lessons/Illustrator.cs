using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Heat;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>Chooses and computes the pictures of a lesson. Usable from several threads.</summary>
public sealed class Illustrator
{
    private readonly JarPictures _jars;
    private readonly CannerPictures _canner;
    private readonly ChemistryPictures _chemistry;
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
        _kinds = pack.Tables.Hazards.ToDictionary(card => card.Rule, card => LessonReader.Picture(card.Sections.GetValueOrDefault("Picture", string.Empty)) ?? PictureKind.None, StringComparer.Ordinal);
    }

    /// <summary>Pictures of the lesson's own worked example.</summary>
    /// <param name="picture">What the lesson is drawn with.</param>
    /// <param name="kitchen">Altitude and jar; the pint at sea level where they are not given. A jar other than pint or quart is drawn as a pint.</param>
    public Illustration Worked(PictureKind picture, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(kitchen);
        Figure? figure = picture switch
        {
            PictureKind.None => null,
            PictureKind.Sets or PictureKind.Conducts or PictureKind.Sizes => _jars.Worked(picture, Jar(kitchen), kitchen.AltitudeFeet ?? 0),
            PictureKind.Altitude => _canner.Altitude(kitchen.AltitudeFeet),
            PictureKind.Air => _canner.Air(),
            PictureKind.Acid => _chemistry.Scale(),
            PictureKind.Water => _chemistry.Water(),
            PictureKind.Composition => Bars(_jars.Example("thick"), "figure.bar-thick"),
        };
        return figure is null ? Illustration.Nothing : new([figure], []);
    }

    /// <summary>Pictures for a cook's recipe: curves beside the tested food, composition beside the tested one, foods on the pH scale.</summary>
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

        RecipeMix mix = _mixer.Of(report);
        if (mix.WhyNot is { } reason)
        {
            return new([], [reason]);
        }

        if (picture == PictureKind.Acid)
        {
            return new([_chemistry.Scale(mix.Parts)], []);
        }

        Composition food = mix.Food!.Value;
        Figure bars = Bars(food, "figure.bar-yours");
        return picture == PictureKind.None
            ? new([bars], [])
            : new([_jars.Recipe(food, HowItHeats(report), Jar(kitchen), kitchen.AltitudeFeet ?? 0), bars], [_words["why.model"]]);
    }

    private static string Jar(Kitchen kitchen) => kitchen.Jar == "quart" ? "quart" : "pint";

    // The slower of what the findings say: thick from the start, then setting, then thin.
    private PictureKind HowItHeats(VettingReport report)
    {
        PictureKind[] kinds = [.. report.Findings.Where(finding => finding.Level >= FindingLevel.Change).Select(finding => _kinds.GetValueOrDefault(finding.Rule))];
        return kinds.Contains(PictureKind.Conducts) ? PictureKind.Conducts : kinds.Contains(PictureKind.Sets) ? PictureKind.Sets : PictureKind.None;
    }

    private BarFigure Bars(Composition food, string name)
    {
        Composition tested = _jars.Example("broth");
        (string Key, double Yours, double Tested)[] rows =
        [
            ("part.water", food.Water, tested.Water),
            ("part.protein", food.Protein, tested.Protein),
            ("part.fat", food.Fat, tested.Fat),
            ("part.carbohydrate", food.Carbohydrate, tested.Carbohydrate),
            ("part.fibre", food.Fibre, tested.Fibre),
            ("part.ash", food.Ash, tested.Ash),
        ];
        IEnumerable<FigureBar> bars = rows.SelectMany(row => new FigureBar[]
        {
            new($"{_words[row.Key]}, {_words[name]}", 0, row.Yours * 100, Dark: true),
            new($"{_words[row.Key]}, {_words["figure.bar-tested"]}", 0, row.Tested * 100),
        });
        return new(_words["figure.composition"], _words["figure.composition.words"], new(_words["axis.percent"], 0, 100, 20), [.. bars], null, string.Empty, []);
    }
}
