using System.Collections.Immutable;
using ShelfSafe.Heat;
using ShelfSafe.Pack;

namespace ShelfSafe.Lessons;

/// <summary>Temperature at the slowest point of a jar against time, thin food beside thick food.</summary>
internal sealed class JarPictures(RulePack pack, LessonNumbers numbers, CannerPictures canner, LessonWords words)
{
    private const int MostPoints = 120;
    private const double PropertiesAtCelsius = 90;
    private const double CubicMetresPerMillilitre = 1e-6;

    private readonly Dictionary<string, double> _brim = Brims(pack);

    /// <summary>Composition of the worked example: <c>broth</c> or <c>thick</c>.</summary>
    public Composition Example(string name) => Composition.FromParts(
        numbers[name + "-water"], numbers[name + "-protein"], numbers[name + "-fat"], numbers[name + "-carbohydrate"], numbers[name + "-fibre"], numbers[name + "-ash"]);

    /// <summary>The lesson's own example: both curves, and the lethality below them.</summary>
    public Figure Worked(PictureKind kind, string jar, double feet)
    {
        RetortProfile profile = Profile(jar, feet);
        if (kind == PictureKind.Sizes)
        {
            profile = Profile("quart", feet);
            return Draw(words["figure.sizes"], words["figure.sizes.words"], [Curve("pint", Example("thick"), kind, profile, words["figure.thick-pint"]), Curve("quart", Example("thick"), kind, profile, words["figure.thick-quart"])], lethality: true);
        }

        return Draw(
            words.With("figure.heat", words["jar." + jar]),
            words[kind == PictureKind.Sets ? "figure.sets.words" : "figure.conducts.words"],
            [Curve(jar, Example("broth"), PictureKind.None, profile, words["figure.thin"]), Curve(jar, Example("thick"), kind, profile, words[kind == PictureKind.Sets ? "figure.sets" : "figure.conducts"])],
            lethality: true);
    }

    /// <summary>A cook's recipe beside the thin food of the test: curves alone, no lethality and no search for a time.</summary>
    /// <param name="food">Composition of the recipe.</param>
    /// <param name="kind">How it heats.</param>
    /// <param name="jar">Jar.</param>
    /// <param name="feet">Altitude, feet.</param>
    public Figure Recipe(Composition food, PictureKind kind, string jar, double feet)
    {
        RetortProfile profile = Profile(jar, feet);
        string yours = kind switch
        {
            PictureKind.Sets => "figure.yours-sets",
            PictureKind.Conducts => "figure.yours-conducts",
            _ => "figure.yours-thin",
        };
        return Draw(
            words.With("figure.heat-yours", words["jar." + jar]),
            words[yours + ".words"],
            [Curve(jar, Example("broth"), PictureKind.None, profile, words["figure.tested"]), Curve(jar, food, kind, profile, words[yours])],
            lethality: false);
    }

    private static Dictionary<string, double> Brims(RulePack pack)
    {
        Dictionary<string, double> brims = new(StringComparer.Ordinal);
        CsvTable.Read(
            "jars.csv",
            pack.Text("jars.csv"),
            ["jar", "brim_ml", "ml_per_inch_low", "ml_per_inch_high", "load_low", "load_high", "source"],
            row =>
            {
                brims[row.Text("jar")] = row.Number("brim_ml") ?? 0;
                return string.Empty;
            },
            []);
        return brims;
    }

    private (FigureLine Line, HeatHistory History) Curve(string jar, Composition food, PictureKind kind, RetortProfile profile, string name)
    {
        Cylinder shape = Cylinder.FromVolume(_brim[jar] * CubicMetresPerMillilitre, numbers["food-height-" + jar]);
        JarFilling filling = new(shape, ChoiOkos.At(food, PropertiesAtCelsius), numbers["start"], numbers["glass-resistance"]);
        IJarModel model = kind switch
        {
            PictureKind.Sets => new BrokenHeatingModel(filling, numbers["inside-film"], numbers["starch-sets"]),
            PictureKind.Conducts or PictureKind.Sizes => new ConductionModel(filling),
            _ => new WellMixedModel(filling, numbers["inside-film"]),
        };
        HeatHistory history = model.Run(profile);
        int step = Math.Max(1, history.Seconds.Length / MostPoints);
        int[] chosen = [.. Enumerable.Range(0, history.Seconds.Length).Where(i => i % step == 0)];
        return (new(name, [.. chosen.Select(i => history.Seconds[i] / 60)], [.. chosen.Select(i => history.CentreCelsius[i])]), history);
    }

    private RetortProfile Profile(string jar, double feet)
    {
        double minutes = pack.Tables.Processes.First(row => string.Equals(row.Id, $"soup-hot-{jar}-pc", StringComparison.Ordinal)).Minutes;
        return RetortProfile.Canner(
            numbers["canner-start"],
            numbers["come-up"] * 60,
            CannerPictures.Steam(canner.Psi(feet), feet),
            minutes * 60,
            CannerSteam.BoilingCelsius(feet * CannerPictures.FootMetres),
            numbers["pressure-drop"] * 60,
            numbers["room"],
            numbers["room-time"] * 60,
            numbers["steam-film"],
            numbers["air-film"]);
    }

    private LineFigure Draw(string title, string description, (FigureLine Line, HeatHistory History)[] curves, bool lethality)
    {
        HeatHistory first = curves[0].History;
        int[] chosen = [.. Enumerable.Range(0, first.Seconds.Length).Where(i => i % 6 == 0)];
        FigureLine around = new(words["figure.around"], [.. chosen.Select(i => first.Seconds[i] / 60)], [.. chosen.Select(i => first.RetortCelsius[i])]);
        double end = Math.Ceiling(first.Seconds[^1] / 600) * 10;
        ImmutableArray<string> below = lethality
            ? [words["figure.lethality"], .. curves.Select(curve => words.With("figure.lethality.line", curve.Line.Name, (curve.History.AccumulatedSeconds(LethalityScale.Botulinum) / 60).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)))]
            : [words["figure.relative"]];
        return new(title, description, new(words["axis.minutes"], 0, end, 20), new(words["axis.celsius"], 20, 130, 10), [around, .. curves.Select(curve => curve.Line)], below);
    }
}
