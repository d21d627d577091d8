using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Equilibrium;
using ShelfSafe.Pack;

namespace ShelfSafe.Lessons;

/// <summary>The pH scale with foods on it, and the water activity of syrups and jam.</summary>
internal sealed class ChemistryPictures
{
    private static readonly string[] ScaleFoods = ["lemon", "apple", "peach", "tomato", "onion", "carrot", "potato", "green-bean", "beef"];
    private static readonly string[] OnionNumbers = ["mix-onion-low", "mix-onion-middle", "mix-onion-high"];
    private static readonly double[] SugarPercent = [20, 40, 50, 65];

    private readonly Dictionary<string, FoodRow> _foods;
    private readonly ChemistryTables _tables;
    private readonly LessonNumbers _numbers;
    private readonly WordTable _words;

    /// <summary>Reads the chemistry of a pack.</summary>
    public ChemistryPictures(RulePack pack, LessonNumbers numbers, WordTable words)
    {
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        _tables = ChemistryTables.Read(pack.Text, []);
        _numbers = numbers;
        _words = words;
    }

    /// <summary>Foods on the scale, and the lesson's own mixtures of vinegar and onion with their whole interval.</summary>
    public Figure Scale()
    {
        List<FigureBar> bars = [.. Bars(ScaleFoods, dark: false)];
        FoodRow? onion = _foods.GetValueOrDefault("onion");
        if (onion is { PhLow: { } low, PhHigh: { } high })
        {
            BufferRow buffer = _tables.Buffers.First(row => row.Id == "vegetable");
            double vinegar = _numbers["mix-vinegar"];
            foreach (double kilograms in OnionNumbers.Select(id => _numbers[id]))
            {
                Interval ph = EquilibriumPh.Estimate([Vinegar(vinegar), MixPart.Food(Interval.Exactly(kilograms), new(new(low, high), buffer.MolesPerKilogramPh))], _numbers["mix-model-error"]).WorkedExample;
                bars.Add(new(_words.With("figure.mix", Math.Round(vinegar * 1000), Math.Round(kilograms * 1000)), Math.Floor(ph.Low * 10) / 10, Math.Ceiling(ph.High * 10) / 10, Dark: true));
            }
        }

        return Scale(bars, [_words["figure.mix.below"], _words["figure.meter"]]);
    }

    /// <summary>Foods that were asked for, dark, above a few that everybody knows.</summary>
    /// <param name="own">Ids of the foods.</param>
    public Figure Scale(IReadOnlyList<string> own) =>
        Scale([.. Bars(own, dark: true), .. Bars(ScaleFoods.Except(own, StringComparer.Ordinal), dark: false)], [_words["figure.scale.own"], _words["figure.meter"]]);

    /// <summary>A cook's foods on the scale; of the mixture only the upper end, and only where it raises an alarm.</summary>
    /// <param name="parts">Foods and kilograms.</param>
    public Figure Scale(IReadOnlyList<(FoodRow Food, double Kilograms)> parts)
    {
        FigureBar[] bars = [.. parts.Where(part => part.Food.PhLow is not null).OrderByDescending(part => part.Kilograms).Take(12).Select(part => new FigureBar(part.Food.Name, part.Food.PhLow!.Value, part.Food.PhHigh!.Value))];
        string mixture = Upper(parts) is { } upper && upper > _numbers["acid-line"]
            ? _words.With("figure.upper", upper.ToString("0.0", CultureInfo.InvariantCulture))
            : _words["figure.no-upper"];
        return Scale(bars, [mixture, _words["figure.meter"]]);
    }

    /// <summary>Water activity of syrups and jam by Norrish's equation.</summary>
    public Figure Water()
    {
        SoluteRow sugar = _tables.Solutes.First(row => row.Id == "sucrose");
        FigureBar[] bars = [.. SugarPercent.Select(percent => new FigureBar(
            _words.With("figure.sugar", percent),
            0,
            WaterActivity.Norrish(100 - percent, Solute.FromGrams(percent, sugar.GramsPerMole, sugar.NorrishK))))];
        FigureBar[] published =
        [
            new(_words["figure.aw-jam"], _numbers["aw-jam-low"], _numbers["aw-jam-high"], Dark: true),
            new(_words["figure.aw-dry"], _numbers["aw-dry-low"], _numbers["aw-dry-high"], Dark: true),
        ];
        return new BarFigure(_words["figure.water"], _words["figure.water.words"], new(_words["axis.water"], 0, 1, 0.2), [.. bars, .. published], _numbers["water-line"], _words["figure.water.mark"], [_words["figure.water.below"], .. bars.Select(bar => $"{bar.Name}: {bar.High.ToString("0.00", CultureInfo.InvariantCulture)}")]);
    }

    private IEnumerable<FigureBar> Bars(IEnumerable<string> ids, bool dark) => ids
        .Where(_foods.ContainsKey)
        .Select(id => _foods[id])
        .Where(food => food is { PhLow: not null, PhHigh: not null })
        .Select(food => new FigureBar(food.Name, food.PhLow!.Value, food.PhHigh!.Value, dark));

    private BarFigure Scale(IReadOnlyList<FigureBar> bars, ImmutableArray<string> below) =>
        new(_words["figure.scale"], _words["figure.scale.words"], new(_words["axis.ph"], 2, 8, 1), [.. bars], _numbers["acid-line"], _words["figure.scale.mark"], below);

    private MixPart Vinegar(double kilograms)
    {
        AcidRow acetic = _tables.Acids.First(row => row.Id == "acetic");
        return MixPart.Acid(Interval.Exactly(kilograms), new(acetic.PKa, Interval.Exactly(_numbers["vinegar-acid"] / acetic.GramsPerMole)));
    }

    // Vinegar counts as plain water, and each food may hold its own pH without bound: an upper end must lean on no acid and on no recalled buffering.
    private double? Upper(IReadOnlyList<(FoodRow Food, double Kilograms)> parts)
    {
        double total = parts.Sum(part => part.Kilograms);
        List<MixPart> mix = [];
        foreach ((FoodRow food, double kilograms) in parts.Where(part => part.Kilograms > 0))
        {
            if (food.Has("alkaline"))
            {
                return null;
            }

            if (food.Group is "water" or "salt" or "sweetener" || food.Has("vinegar"))
            {
                mix.Add(MixPart.Water(Interval.Exactly(kilograms)));
            }
            else if (food is { PhLow: { } low, PhHigh: { } high })
            {
                mix.Add(MixPart.Food(Interval.Exactly(kilograms), new(new(low, high), new(0, double.PositiveInfinity))));
            }
            else if (kilograms > _numbers["negligible-share"] * total)
            {
                return null;
            }
        }

        // Foods that only mix cannot end above the highest of them, whatever the model's own error.
        return mix.Exists(part => part.Buffer is not null)
            ? Math.Min(EquilibriumPh.Estimate(mix, _numbers["mix-model-error"]).UpperEnd, mix.Max(part => part.Buffer?.OwnPh.High ?? 0))
            : null;
    }
}
