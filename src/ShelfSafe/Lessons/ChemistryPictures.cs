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
    private static readonly double[] OnionKilograms = [0.25, 0.5, 1];
    private static readonly double[] SugarPercent = [20, 40, 50, 65];

    private readonly Dictionary<string, FoodRow> _foods;
    private readonly ChemistryTables _tables;
    private readonly LessonNumbers _numbers;
    private readonly LessonWords _words;

    /// <summary>Reads the chemistry of a pack.</summary>
    public ChemistryPictures(RulePack pack, LessonNumbers numbers, LessonWords words)
    {
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        _tables = ChemistryTables.Read(pack.Text, []);
        _numbers = numbers;
        _words = words;
    }

    /// <summary>Foods on the scale, and the lesson's own mixtures of vinegar and onion with their whole interval.</summary>
    public Figure Scale()
    {
        List<FigureBar> bars = [.. ScaleFoods.Where(_foods.ContainsKey).Select(id => _foods[id]).Where(food => food.PhLow is not null).Select(food => new FigureBar(food.Name, food.PhLow!.Value, food.PhHigh!.Value))];
        FoodRow? onion = _foods.GetValueOrDefault("onion");
        if (onion is { PhLow: { } low, PhHigh: { } high })
        {
            BufferRow buffer = _tables.Buffers.First(row => row.Id == "vegetable");
            foreach (double kilograms in OnionKilograms)
            {
                Interval ph = EquilibriumPh.Estimate([Vinegar(0.25), MixPart.Food(Interval.Exactly(kilograms), new(new(low, high), buffer.MolesPerKilogramPh))], _numbers["mix-model-error"]).WorkedExample;
                bars.Add(new(_words.With("figure.mix", (kilograms * 1000).ToString("0", CultureInfo.InvariantCulture)), ph.Low, ph.High, Dark: true));
            }
        }

        return Scale(bars, [_words["figure.meter"]]);
    }

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
        return new BarFigure(_words["figure.water"], _words["figure.water.words"], new(_words["axis.water"], 0, 1, 0.2), [.. bars], _numbers["water-line"], _words["figure.water.mark"], [.. bars.Select(bar => $"{bar.Name}: {bar.High.ToString("0.00", CultureInfo.InvariantCulture)}")]);
    }

    private BarFigure Scale(IReadOnlyList<FigureBar> bars, ImmutableArray<string> below) =>
        new(_words["figure.scale"], _words["figure.scale.words"], new(_words["axis.ph"], 2, 8, 1), [.. bars], _numbers["acid-line"], _words["figure.scale.mark"], below);

    private MixPart Vinegar(double kilograms)
    {
        AcidRow acetic = _tables.Acids.First(row => row.Id == "acetic");
        return MixPart.Acid(Interval.Exactly(kilograms), new(acetic.PKa, Interval.Exactly(_numbers["vinegar-acid"] / acetic.GramsPerMole)));
    }

    // Vinegar counts as plain water here: an upper end must not lean on acid of unknown strength.
    private double? Upper(IReadOnlyList<(FoodRow Food, double Kilograms)> parts)
    {
        double total = parts.Sum(part => part.Kilograms);
        List<MixPart> mix = [];
        foreach ((FoodRow food, double kilograms) in parts.Where(part => part.Kilograms > 0))
        {
            if (food.Group is "water" or "salt" or "sweetener" || food.Has("vinegar"))
            {
                mix.Add(MixPart.Water(Interval.Exactly(kilograms)));
            }
            else if (food is { PhLow: { } low, PhHigh: { } high })
            {
                mix.Add(MixPart.Food(Interval.Exactly(kilograms), new(new(low, high), Buffer(food.Group))));
            }
            else if (kilograms > _numbers["negligible-share"] * total)
            {
                return null;
            }
        }

        return mix.Exists(part => part.Buffer is not null) ? EquilibriumPh.Estimate(mix, _numbers["mix-model-error"]).UpperEnd : null;
    }

    private Interval Buffer(string group)
    {
        string kind = group switch
        {
            "vegetable" or "mushroom" or "herb-fresh" => "vegetable",
            "meat" or "poultry" or "seafood" => "meat",
            "legume-dried" or "legume-fresh" => "legume",
            _ => "fruit",
        };
        return _tables.Buffers.First(row => row.Id == kind).MolesPerKilogramPh;
    }
}
