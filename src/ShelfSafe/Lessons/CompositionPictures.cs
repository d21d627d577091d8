using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Heat;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Lessons;

/// <summary>What a recipe is made of beside the tested one, and its amounts as shares of the tested amounts.</summary>
internal sealed class CompositionPictures(RulePack pack, RecipeMixer mixer, WordTable words)
{
    private const double Widest = 200; // percent of the tested amount; a bar that goes on is cut there

    /// <summary>The thick example beside the thin one.</summary>
    public Figure Worked(Composition thick, Composition thin) => Bars(words["figure.bar-thick"], thick, words["figure.bar-thin"], thin, words["figure.chosen"]);

    /// <summary>A recipe beside the published recipe it was judged by; where that is not known, beside the thin example, which is named as one.</summary>
    public Figure Recipe(Composition food, CategoryReport? category, Composition thin)
    {
        FormulaRow? formula = category is { Kind: "formula" }
            ? FormulaTable.Read(pack, []).FirstOrDefault(row => string.Equals(row.Id, category.Id, StringComparison.Ordinal))
            : null;
        return formula is not null && mixer.Of(formula) is { } tested
            ? Bars(words["figure.bar-yours"], food, words["figure.bar-tested"], tested, words.With("figure.composition.formula", formula.Name, formula.Source))
            : Bars(words["figure.bar-yours"], food, words["figure.bar-thin"], thin, words["figure.composition.example"]);
    }

    /// <summary>The comparison of the report, each row as a share of its tested limit; <see langword="null"/> where the report has none.</summary>
    public Figure? Shares(CategoryReport? category)
    {
        if (category is null || category.Differences.IsDefaultOrEmpty)
        {
            return null;
        }

        List<FigureBar> bars = [];
        List<string> below = [];
        foreach (Difference row in category.Differences)
        {
            bool most = double.IsFinite(row.Tested.High);
            double limit = most ? row.Tested.High : row.Tested.Low;
            if (limit > 0)
            {
                double high = Math.Min(Widest, 100 * row.Yours.High / limit);
                bars.Add(new(row.What, Math.Min(high, 100 * row.Yours.Low / limit), high, Dark: !row.Allowed));
                below.Add(words.With(most ? "figure.share.most" : "figure.share.least", row.What, Measured(row.Yours, row.Unit), Measured(Interval.Exactly(limit), row.Unit)));
            }
        }

        return bars.Count == 0 ? null : new BarFigure(
            words.With("figure.shares", category.Name), words["figure.shares.words"], new(words["axis.tested"], 0, Widest, 25), [.. bars], 100, words["figure.shares.mark"], [.. below]);
    }

    // A share is told in per cent, as the reports tell it.
    private string Measured(Interval range, string unit)
    {
        const string Share = "share";
        bool share = unit.StartsWith(Share, StringComparison.Ordinal);
        double factor = share ? 100 : 1;
        string suffix = share ? " %" + unit[Share.Length..] : unit.Length == 0 ? string.Empty : " " + unit;
        string low = Number(Math.Round(range.Low * factor, 2));
        string high = Number(Math.Round(range.High * factor, 2));
        return (!range.IsBounded ? words.With("figure.share.open", low) : low == high ? low : words.With("figure.share.range", low, high)) + suffix;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private BarFigure Bars(string darkName, Composition dark, string lightName, Composition light, string below)
    {
        (string Key, double Dark, double Light)[] rows =
        [
            ("part.water", dark.Water, light.Water),
            ("part.protein", dark.Protein, light.Protein),
            ("part.fat", dark.Fat, light.Fat),
            ("part.carbohydrate", dark.Carbohydrate, light.Carbohydrate),
            ("part.fibre", dark.Fibre, light.Fibre),
            ("part.ash", dark.Ash, light.Ash),
        ];
        IEnumerable<FigureBar> bars = rows.SelectMany(row => new FigureBar[]
        {
            new($"{words[row.Key]}, {darkName}", 0, row.Dark * 100, Dark: true),
            new($"{words[row.Key]}, {lightName}", 0, row.Light * 100),
        });
        IEnumerable<string> numbers = rows.Select(row => words.With("figure.composition.row", words[row.Key], darkName, Number(Math.Round(row.Dark * 100, 1)), lightName, Number(Math.Round(row.Light * 100, 1))));
        return new(words["figure.composition"], words["figure.composition.words"], new(words["axis.percent"], 0, 100, 20), [.. bars], null, string.Empty, [.. numbers, below]);
    }
}
