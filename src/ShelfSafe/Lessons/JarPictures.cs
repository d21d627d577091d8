using System.Collections.Immutable;
using ShelfSafe.Heat;
using ShelfSafe.Pack;

namespace ShelfSafe.Lessons;

/// <summary>Temperature at the slowest point of a jar against time, thin food beside thick food.</summary>
/// <remarks>Sizes, films and foods are figures chosen for the picture (<c>rules/lesson-numbers.csv</c>); every picture says so.</remarks>
internal sealed class JarPictures(RulePack pack, LessonNumbers numbers, CannerPictures canner, WordTable words)
{
    private const string Pint = "pint";
    private const string Quart = "quart";
    private const int Points = 120;
    private const double PropertiesAtCelsius = 90;
    private const double CubicMetresPerMillilitre = 1e-6;
    private const double Kelvin = 10;

    private readonly Dictionary<string, double> _brim = Brims(pack);

    /// <summary>Composition of the worked example: <c>broth</c> or <c>thick</c>.</summary>
    public Composition Example(string name) => Composition.FromParts(
        numbers[name + "-water"], numbers[name + "-protein"], numbers[name + "-fat"], numbers[name + "-carbohydrate"], numbers[name + "-fibre"], numbers[name + "-ash"]);

    /// <summary>The lesson's own example in one canner run: the curves, and below them the lethality.</summary>
    /// <param name="kind">What the thick food does.</param>
    /// <param name="feet">Altitude, feet; the printed band above it gives the pressure.</param>
    public ImmutableArray<Figure> Worked(PictureKind kind, double feet)
    {
        RetortProfile profile = Profile(Pint, feet);
        string thick = kind == PictureKind.Sets ? "figure.sets" : "figure.conducts";
        (string Name, HeatHistory History)[] thickOnes =
        [
            (words.With(thick, words["jar.pint"]), Run(Pint, Example("thick"), kind, profile)),
            (words.With(thick, words["jar.quart"]), Run(Quart, Example("thick"), kind, profile)),
        ];
        (string Name, HeatHistory History)[] curves = kind == PictureKind.Sizes ? thickOnes :
        [
            (words.With("figure.thin", words["jar.pint"]), Run(Pint, Example("broth"), PictureKind.None, profile)),
            (words.With("figure.thin", words["jar.quart"]), Run(Quart, Example("broth"), PictureKind.None, profile)),
            .. thickOnes,
        ];
        string description = kind switch
        {
            PictureKind.Sets => "figure.sets.words",
            PictureKind.Sizes => "figure.sizes.words",
            _ => "figure.conducts.words",
        };
        return [Temperatures(words[kind == PictureKind.Sizes ? "figure.sizes" : "figure.heat"], words[description], curves), Lethality(curves, kind == PictureKind.Sizes)];
    }

    /// <summary>A cook's recipe against the thin example, in degrees between the two: no temperature, no lethality and no time can be read off.</summary>
    /// <param name="food">Composition of the recipe.</param>
    /// <param name="kind">How it heats.</param>
    /// <param name="jar">Jar: pint or quart.</param>
    /// <param name="feet">Altitude, feet.</param>
    public Figure Recipe(Composition food, PictureKind kind, string jar, double feet)
    {
        RetortProfile profile = Profile(jar, feet);
        HeatHistory tested = Run(jar, Example("broth"), PictureKind.None, profile);
        HeatHistory yours = Run(jar, food, kind, profile);
        double heating = profile.Phases[0].Seconds + profile.Phases[1].Seconds; // cooling is no gain for the recipe, so it is not drawn
        double[] at = [.. Enumerable.Range(0, Points + 1).Select(i => heating * i / Points)];
        ImmutableArray<double> share = [.. at.Select(seconds => 100 * seconds / heating)];
        double[] apart = [.. at.Select(seconds => yours.CentreAtCelsius(seconds) - tested.CentreAtCelsius(seconds))];
        string name = kind switch
        {
            PictureKind.Sets => "figure.yours-sets",
            PictureKind.Conducts => "figure.yours-conducts",
            _ => "figure.yours-thin",
        };
        double low = Math.Min(-Kelvin, Kelvin * Math.Floor(apart.Min() / Kelvin));
        double high = Math.Max(Kelvin, Kelvin * Math.Ceiling(apart.Max() / Kelvin));
        return new LineFigure(
            words.With("figure.heat-yours", words["jar." + jar]),
            words[name + ".words"],
            new(words["axis.share"], 0, 100, 20),
            new(words["axis.apart"], low, high, Kelvin),
            [new(words["figure.tested"], share, [.. at.Select(_ => 0.0)]), new(words[name], share, [.. apart])],
            [words["figure.relative"], words["figure.chosen"]]);
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

    private HeatHistory Run(string jar, Composition food, PictureKind kind, RetortProfile profile)
    {
        Cylinder shape = Cylinder.FromVolume(_brim[jar] * CubicMetresPerMillilitre, numbers["food-height-" + jar]);
        JarFilling filling = new(shape, ChoiOkos.At(food, PropertiesAtCelsius), numbers["start"], numbers["glass-resistance"]);
        IJarModel model = kind switch
        {
            PictureKind.Sets => new BrokenHeatingModel(filling, numbers["inside-film"], numbers["starch-sets"]),
            PictureKind.Conducts or PictureKind.Sizes => new ConductionModel(filling),
            _ => new WellMixedModel(filling, numbers["inside-film"]),
        };
        return model.Run(profile);
    }

    private RetortProfile Profile(string jar, double feet) => RetortProfile.Canner(
        numbers["canner-start"],
        numbers["come-up"] * 60,
        CannerPictures.Steam(canner.Psi(feet), feet),
        canner.Minutes(jar) * 60,
        CannerSteam.BoilingCelsius(feet * CannerPictures.FootMetres),
        numbers["pressure-drop-" + jar] * 60,
        numbers["room"],
        numbers["room-time"] * 60,
        numbers["steam-film"],
        numbers["air-film"]);

    private LineFigure Temperatures(string title, string description, (string Name, HeatHistory History)[] curves)
    {
        HeatHistory first = curves[0].History;
        int step = Math.Max(1, first.Seconds.Length / Points);
        int[] chosen = [.. Enumerable.Range(0, first.Seconds.Length).Where(i => i % step == 0)];
        FigureLine around = new(words["figure.around"], [.. chosen.Select(i => first.Seconds[i] / 60)], [.. chosen.Select(i => first.RetortCelsius[i])]);
        IEnumerable<FigureLine> lines = curves.Select(curve => Line(curve.Name, curve.History, curve.History.CentreAtCelsius));
        return new(title, description, Minutes(first), new(words["axis.celsius"], 20, 130, 10), [around, .. lines], [words["figure.run"], words["figure.chosen"]]);
    }

    // Shares of the first curve, not minutes: an example must not read like a measure of enough.
    private LineFigure Lethality((string Name, HeatHistory History)[] curves, bool sizes)
    {
        double whole = Sums(curves[0].History)[^1];
        FigureLine[] lines = [.. curves.Select(curve =>
        {
            double[] sums = Sums(curve.History);
            return Line(curve.Name, curve.History, seconds => 100 * sums[Math.Min(sums.Length - 1, At(curve.History, seconds))] / whole);
        })];
        IEnumerable<string> ends = lines.Select(line => words.With("figure.lethality.line", line.Name, Math.Round(line.Y[^1])));
        return new(
            words["figure.lethality"],
            words[sizes ? "figure.lethality.sizes" : "figure.lethality.words"],
            Minutes(curves[0].History),
            new(words[sizes ? "axis.lethality.thick" : "axis.lethality"], 0, 100, 20),
            [.. lines],
            [.. ends, words["figure.lethality.below"], words["figure.chosen"]],
            FirstLetter: 1); // A is what is around the jars in the picture above
    }

    private FigureAxis Minutes(HeatHistory history) => new(words["axis.minutes"], 0, Math.Ceiling(history.Seconds[^1] / 1_200) * 20, 20);

    private static int At(HeatHistory history, double seconds)
    {
        int at = history.Seconds.BinarySearch(seconds);
        return at >= 0 ? at : ~at;
    }

    // Running sum of the general method, seconds at the reference of the scale.
    private static double[] Sums(HeatHistory history)
    {
        double[] sums = new double[history.Seconds.Length];
        for (int i = 1; i < sums.Length; i++)
        {
            sums[i] = sums[i - 1] + LethalityScale.Botulinum.AccumulatedSeconds(history.Seconds.AsSpan(i - 1, 2), history.CentreCelsius.AsSpan(i - 1, 2));
        }

        return sums;
    }

    private static FigureLine Line(string name, HeatHistory history, Func<double, double> value)
    {
        double end = history.Seconds[^1];
        double[] at = [.. Enumerable.Range(0, Points + 1).Select(i => Math.Min(end, end * i / Points))];
        return new(name, [.. at.Select(seconds => seconds / 60)], [.. at.Select(value)]);
    }
}
