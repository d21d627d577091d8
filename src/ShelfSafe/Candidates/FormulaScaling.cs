using System.Collections.Immutable;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Scales a formula to the cook's main ingredient and names the swap it needs.</summary>
internal static class FormulaScaling
{
    /// <summary>The formula for a batch whose lines were sorted into its slots.</summary>
    public static FormulaNear Near(FormulaRow formula, List<FormulaLine> lines)
    {
        double scale = Scale(formula, lines);
        ImmutableArray<string> foods = [.. formula.Slots.Select(slot => Print(slot, scale))];
        return new(formula, Swap(formula, lines), foods);
    }

    /// <summary>The formula at the cook's scale, slot by slot, with the lines of the recipe that fill each.</summary>
    public static FormulaTarget Target(FormulaRow formula, Batch batch)
    {
        List<FormulaLine> lines = FormulaSorter.Lines(formula, batch);
        double scale = Scale(formula, lines);
        return new(
            [
                .. formula.Slots.Select((slot, at) => new FormulaTargetSlot(
                    slot.Name,
                    Print(slot, scale),
                    [.. lines.Where(line => !line.Options.IsEmpty && line.Options[0] == at).Select(line => line.Item.Ingredient.Line.Text.Span).Distinct()],
                    slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free)),
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

    private static string Print(FormulaSlot slot, double scale)
    {
        if (slot.Low is not { } low || slot.High is not { } high)
        {
            return slot.Name;
        }

        double by = slot.PerJar ? 1 : scale;
        bool up = slot.Role == FormulaRole.AtLeast;
        string first = FormulaText.Amount(low * by, slot.Unit, up);
        string amount = high > low ? $"{FormulaText.Amount(low * by, "each", up)} to {FormulaText.Amount(high * by, slot.Unit, up)}" : first;
        string tail = slot.PerJar ? " for each jar" : slot.Discarded ? ", poured away" : slot.Presence == FormulaPresence.Optional && slot.Role != FormulaRole.Free ? ", if you like" : string.Empty;
        string label = slot.Label == "5%" ? " (5 percent)" : string.Empty;
        return $"{amount} {slot.Name}{label}{tail}";
    }

    private static string Swap(FormulaRow formula, List<FormulaLine> lines)
    {
        HashSet<int> filled = [.. lines.SelectMany(line => line.Options)];
        List<string> extra = [];
        foreach (FormulaLine line in lines)
        {
            if (line.Options.IsEmpty && !line.Item.Has("dry-spice") && !line.Item.Has("salt") && !extra.Contains(line.Item.Words))
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

        string leave = extra.Count == 0 ? string.Empty : $"Leave out {List(extra)}. ";
        string add = missing.Count == 0 ? string.Empty : $"Take {List(missing)}. ";
        return $"{leave}{add}Keep to its amounts.";
    }

    private static string List(List<string> words) => words.Count == 1 ? words[0] : $"{string.Join(", ", words[..^1])} and {words[^1]}";
}
