using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Cuts down foods of which a jar may hold only a seasoning, such as onion: the published share stays, the rest is for serving.</summary>
internal sealed class SeasoningLines(AdaptRules rules, AdaptLog log, Dictionary<DraftLine, ImmutableArray<IngredientReport>> entries)
{
    private static readonly double GramsPerOunce = UnitFactors.Ratio("oz", "g")!.Value;
    private const double LeastGrams = 3; // less is no seasoning that a kitchen scale can weigh out

    private readonly Dictionary<DraftLine, AdaptChange> _changes = [];

    /// <summary>Whether a finding only says that a food is more than a seasoning of a soup, on a line of its own with a known weight.</summary>
    public bool MayStay(Finding finding, DraftLine line, VettingReport report) => report.Category is { Id: "soup" }
        && finding is { Rule: "untested-food", Ingredient: not null }
        && line.Place == DraftPlace.Kept
        && entries.TryGetValue(line, out ImmutableArray<IngredientReport> own)
        && own is [{ Identified: true, Alternatives.IsEmpty: true, Grams.IsBounded: true } entry]
        && rules.SeasoningLimit(entry) is not null;

    /// <summary>Writes the largest seasoning amount into the line, rounded down; <see langword="false"/> where none is left.</summary>
    public bool CutDown(DraftLine line, VettingReport report)
    {
        IngredientReport entry = entries[line][0];
        Interval? now = report.Ingredients.FirstOrDefault(other => other.Text == line.Text)?.Grams;
        if (rules.SeasoningLimit(entry) is not { } limit || now is not { IsBounded: true } own || report.Measures.TotalGrams is not { } total)
        {
            return false;
        }

        // Its share of the whole at most: x / (x + the others at their least).
        double others = total.Low - own.Low;
        double grams = Math.Min(limit * others / (1000 - limit), own.High - 1);
        grams = Math.Floor(grams / Step(grams)) * Step(grams);
        if (grams < LeastGrams)
        {
            return false;
        }

        string preparation = entry.Preparation is { Length: > 0 } words ? $", {words}" : string.Empty;
        double ounces = Math.Floor(grams / GramsPerOunce * 10) / 10;
        string text = string.Create(CultureInfo.InvariantCulture, $"up to {grams:0} g ({ounces:0.#} oz) {entry.Food}{preparation}");
        AdaptChange change = new("amount", _changes.GetValueOrDefault(line)?.What ?? line.Text, text, rules["@seasoning"].Text, rules.Sources(rules["@seasoning"]));
        log.Changes.Remove(_changes.GetValueOrDefault(line, change));
        log.Changes.Add(change);
        _changes[line] = change;
        line.Text = text;
        return true;
    }

    private static double Step(double grams) => grams >= 50 ? 10 : grams >= 10 ? 5 : 1;
}
