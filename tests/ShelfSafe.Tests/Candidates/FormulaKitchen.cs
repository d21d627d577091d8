using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ShelfSafe.Candidates;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Verdict;

namespace ShelfSafe.Tests.Candidates;

/// <summary>Reads recipes into batches, judges them by the formulas, and writes formulas back as recipes.</summary>
public sealed class FormulaKitchen
{
    private readonly RecipeReader _reader = new();
    private readonly IngredientReader _ingredients;
    private readonly BatchRoom _batches;

    public FormulaKitchen()
    {
        RulePack pack = RulePack.Default;
        LineWordTable words = new(pack.Text("units.csv"), pack.Text("line-words.csv"), []);
        FoodCatalogue catalogue = FoodCatalogue.Create(pack, [], words, string.Empty);
        ReadTexts texts = new(catalogue, words);
        _ingredients = new(catalogue, words, texts);
        _batches = new(pack, catalogue, words, texts, Weigher.Create(pack));
        List<PackFault> faults = [];
        Formulas = FormulaTable.Read(pack, faults);
        Faults = [.. faults];
        Judge = FormulaJudge.Create(pack, new HazardRoom(pack.Tables), faults);
    }

    internal ImmutableArray<FormulaRow> Formulas { get; }

    internal ImmutableArray<PackFault> Faults { get; }

    internal FormulaJudge Judge { get; }

    internal FormulaRow Formula(string id) => Formulas.Single(formula => formula.Id == id);

    internal Batch Batch(string text)
    {
        Recipe recipe = _reader.Read(text, false);
        RecipePart part = recipe.Parts[0];
        List<Ingredient> ingredients = [];
        foreach (IngredientLine line in part.Ingredients)
        {
            ingredients.AddRange(_ingredients.Read(line));
        }

        return _batches.Make(recipe, part, ingredients);
    }

    /// <summary>The formulas that cover the recipe, as written or once a label is named.</summary>
    internal Dictionary<string, FormulaVerdict> Covering(string text) => Judge.Judge(Judge.Look(Batch(text)))
        .Where(verdict => verdict.Candidate.Judgement != Judgement.Refuses)
        .ToDictionary(verdict => verdict.Formula.Id, StringComparer.Ordinal);

    /// <summary>Writes a formula as a recipe.</summary>
    /// <param name="wording">0: fractions in printed order; 1: decimals, cut words, backward; 2: metric.</param>
    /// <param name="change">Factor for the amount of a slot; 0 leaves it out.</param>
    internal static string Write(FormulaRow formula, int wording, double scale, Func<FormulaSlot, double>? change = null, string added = "", string step = "")
    {
        List<string> lines = [];
        foreach (FormulaSlot slot in formula.Slots)
        {
            double factor = change?.Invoke(slot) ?? 1;
            if (factor > 0 && slot.Presence != FormulaPresence.Instead && slot.Low is { } low)
            {
                lines.Add(Line(slot, low * factor * (slot.PerJar ? 1 : scale), wording));
            }
        }

        if (wording == 1)
        {
            lines.Reverse();
        }

        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"# {(wording == 1 ? "Winter jars" : formula.Name)}\n\n## Ingredients\n\n");
        foreach (string line in lines)
        {
            text.Append(wording == 2 ? "* " : "- ").Append(line).Append('\n');
        }

        text.Append(added.Length == 0 ? string.Empty : $"- {added}\n").Append("\n## Steps\n\n");
        bool ferments = formula.Kinds.Contains("fermented-vegetable");
        text.Append(ferments ? "1. Let it ferment for three weeks.\n" : string.Empty);
        text.Append(formula.Kinds.Any(kind => kind is "baked-beans" or "chili") ? "1. Soak the beans overnight and drain them.\n" : string.Empty);
        text.Append("1. Cook everything together until hot.\n");
        text.Append(formula.Needs.Contains("reduced") ? "1. Boil it down until thick.\n" : string.Empty);
        text.Append(step.Length == 0 ? string.Empty : $"1. {step}\n");
        return text.Append("1. Fill the jars and process them.\n").ToString();
    }

    private static string Line(FormulaSlot slot, double amount, int wording)
    {
        string words = slot.Words.IsEmpty || slot.Words.Any(word => slot.Name.Contains(word, StringComparison.Ordinal)) ? string.Empty : $" ({slot.Words[0]})";
        string tail = slot.Label == "5%" ? wording == 2 ? ", 5 % acidity" : " (5%)" : string.Empty;
        tail += slot.Discarded ? ", for the soak, drained off" : slot.PerJar ? " per pint jar" : string.Empty;
        if (wording == 1 && tail.Length == 0 && slot.Role == FormulaRole.AtMost)
        {
            tail = ", prepared as usual";
        }

        (double value, string unit) = wording == 2 ? Metric(amount, slot.Unit) : (amount, slot.Unit);
        string number = wording == 0 ? Fraction(value) : value.ToString("0.###", CultureInfo.InvariantCulture);
        return $"{number} {(unit == "each" ? string.Empty : unit + " ")}{slot.Name}{words}{tail}".Replace("clove garlic", "cloves garlic", StringComparison.Ordinal);
    }

    private static string Fraction(double value)
    {
        double whole = Math.Floor(value);
        double rest = value - whole;
        foreach ((double part, string text) in (ReadOnlySpan<(double, string)>)[(0.125, "1/8"), (0.25, "1/4"), (1 / 3.0, "1/3"), (0.5, "1/2"), (2 / 3.0, "2/3"), (0.75, "3/4"), (0.375, "3/8"), (0.625, "5/8")])
        {
            if (Math.Abs(rest - part) < 0.001)
            {
                return whole > 0 ? $"{whole.ToString(CultureInfo.InvariantCulture)} {text}" : text;
            }
        }

        return value.ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static (double Value, string Unit) Metric(double amount, string unit) => unit switch
    {
        "lb" => (Math.Round(amount * 453.59), "g"),
        "oz" => (Math.Round(amount * 28.35), "g"),
        "cup" => (Math.Round(amount * 240), "ml"),
        "pint" => (Math.Round(amount * 480), "ml"),
        "quart" => (Math.Round(amount * 960), "ml"),
        "gallon" => (Math.Round(amount * 3840), "ml"),
        "tbsp" => (Math.Round(amount * 15, 1), "ml"),
        "tsp" => (Math.Round(amount * 5, 1), "ml"),
        _ => (amount, unit),
    };
}
