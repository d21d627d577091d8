using System.Collections.Immutable;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Scales a formula to the cook's main ingredient and names the swap it needs.</summary>
/// <param name="words">Words of amounts and swaps.</param>
internal sealed class FormulaScaling(WordTable words)
{
    /// <summary>The formula for a batch whose lines were sorted into its slots.</summary>
    public FormulaNear Near(FormulaRow formula, List<FormulaLine> lines)
    {
        double scale = Scale(formula, lines);
        ImmutableArray<string> foods = [.. formula.Slots.Select(slot => Print(slot, scale))];
        return new(formula, Swap(formula, lines), foods);
    }

    /// <summary>The formula at the cook's scale, slot by slot, with the lines of the recipe that fill each.</summary>
    public FormulaTarget Target(FormulaRow formula, Batch batch)
    {
        List<FormulaLine> lines = FormulaSorter.Lines(formula, PrintedLine.Of(batch), batch);
        double scale = Scale(formula, lines);
        return new(
            [
                .. formula.Slots.Select((slot, at) => new FormulaTargetSlot(
                    slot.Name,
                    Print(slot, scale),
                    [.. lines.Where(line => !line.Options.IsEmpty && line.Options[0] == at).Select(line => line.Item.Ingredient.Line.Text.Span).Distinct()],
                    slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free,
                    slot.Role == FormulaRole.Free)),
            ],
            [.. lines.Where(line => line.Options.IsEmpty && !line.Item.Has("dry-spice") && !line.Item.Has("salt")).Select(line => line.Item.Ingredient.Line.Text.Span).Distinct()]);
    }

    // By the heaviest food that both have; the tested batch itself where they share none that can be measured.
    private static double Scale(FormulaRow formula, List<FormulaLine> lines)
    {
        double heaviest = 0;
        double scale = 1;
        foreach (FormulaLine line in lines)
        {
            if (line.Options.IsEmpty || formula.Slots[line.Options[0]] is not { Role: not FormulaRole.Free, PerJar: false, Discarded: false, Low: > 0 } slot)
            {
                continue;
            }

            if (slot.Grams > heaviest && FormulaMeasure.In(slot, line) is { IsBounded: true, High: > 0 } amount)
            {
                heaviest = slot.Grams.Value;
                scale = (amount.Low + amount.High) / 2 / slot.Low.Value;
            }
        }

        return scale;
    }

    private string Print(FormulaSlot slot, double scale)
    {
        if (slot.Low is not { } low || slot.High is not { } high)
        {
            return slot.Name;
        }

        double by = slot.PerJar ? 1 : scale;
        bool up = slot.Role == FormulaRole.AtLeast;
        string first = FormulaText.Amount(low * by, slot.Unit, up);
        string amount = high > low ? words.With("message.range", FormulaText.Amount(low * by, "each", up), FormulaText.Amount(high * by, slot.Unit, up)) : first;
        string? tail = slot.PerJar ? "near.each-jar" : slot.Discarded ? "near.poured-away" : slot.Presence == FormulaPresence.Optional && slot.Role != FormulaRole.Free ? "near.if-you-like" : null;
        string food = slot.Label == "5%" ? words.With("near.strength", $"{amount} {slot.Name}") : $"{amount} {slot.Name}";
        return tail is null ? food : words.With(tail, food);
    }

    private string Swap(FormulaRow formula, List<FormulaLine> lines)
    {
        HashSet<int> filled = [.. lines.SelectMany(line => line.Options)];
        List<string> extra = [];
        foreach (FormulaLine line in lines)
        {
            if (line.Options.IsEmpty && !line.Item.Has("dry-spice") && !line.Item.Has("salt") && !extra.Contains(line.Item.Words) && FormulaSorter.OfOneKind(formula, line.Item) is null)
            {
                extra.Add(line.Item.Words);
            }
        }

        List<string> missing = [];
        for (int at = 0; at < formula.Slots.Length; at++)
        {
            if (formula.Slots[at] is { Presence: FormulaPresence.Required, Role: not FormulaRole.Free } slot && !filled.Contains(at))
            {
                missing.Add(slot.Name);
            }
        }

        string keep = words["near.keep"];
        string take = missing.Count == 0 ? keep : words.With("near.take", List(missing), keep);
        return extra.Count == 0 ? take : words.With("near.leave-out", List(extra), take);
    }

    private string List(List<string> foods) => foods.Count == 1 ? foods[0] : words.With("near.and", string.Join(", ", foods[..^1]), foods[^1]);
}
