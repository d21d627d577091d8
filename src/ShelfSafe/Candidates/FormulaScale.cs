using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Candidates;

/// <summary>Looks for one scale at which every amount lies where the formula was tested.</summary>
/// <remarks>
/// The scale is at least each ratio yours-high to tested of what may not be more, and at most each ratio yours-low to tested of
/// what may not be less; a fixed food binds both ways. As each low-acid food lies within its ratio, so does their sum.
/// </remarks>
/// <param name="leastGrams">Least mass of the whole batch, g.</param>
internal sealed class FormulaScale(FormulaRow formula, double leastGrams, Limits limits)
{
    private readonly double _rounding = 1 + limits["formula-rounding"];
    private readonly List<FormulaFault> _faults = [];
    private readonly List<FormulaDifference> _differences = [];
    private readonly Interval[] _yours = new Interval[formula.Slots.Length];
    private readonly FormulaLine?[] _first = new FormulaLine?[formula.Slots.Length];

    /// <summary>The fit of the lines, each in the slot of its number.</summary>
    public FormulaFit Of(List<FormulaLine> lines, int[] slots)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (slots[i] >= 0)
            {
                Add(lines[i], slots[i]);
            }
        }

        double scale = Scale();
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            Compare(i, scale);
        }

        for (int i = 0; i < lines.Count; i++)
        {
            Season(lines[i], slots[i] < 0 ? null : formula.Slots[slots[i]], scale);
        }

        ImmutableArray<BatchItem> taken = [.. lines.Where((_, at) => slots[at] >= 0).SelectMany(line => line.Items)];
        return new(scale, [.. _faults], [.. _differences], taken);
    }

    private void Add(FormulaLine line, int at)
    {
        FormulaSlot slot = formula.Slots[at];
        _first[at] ??= line;
        if (line.Ambiguous)
        {
            _faults.Add(new(FormulaFaultKind.Ambiguous, slot, line, string.Empty));
        }

        if (slot.Role == FormulaRole.Free)
        {
            return;
        }

        Label(slot, line);
        if (FormulaMeasure.In(slot, line) is { } amount)
        {
            _yours[at] += amount;
        }
        else
        {
            _faults.Add(new(FormulaFaultKind.Unmeasured, slot, line, string.Empty));
        }
    }

    private void Label(FormulaSlot slot, FormulaLine line)
    {
        if (slot.Label == "bottled" && line.Items.Any(item => item.Has("fresh-citrus")) && (!FormulaText.HasAny(line.Text, ["bottled"]) || FormulaText.HasAny(line.Text, ["fresh", "squeezed", "than bottled", "of bottled"])))
        {
            _faults.Add(new(FormulaFaultKind.Fresh, slot, line, string.Empty));
        }

        if (slot.Label == "5%" && line.Items.Any(item => item.Has("vinegar")))
        {
            double? percent = FormulaText.Percent(line.Text);
            if (percent is null or < 5)
            {
                _faults.Add(new(percent is null ? FormulaFaultKind.Unlabelled : FormulaFaultKind.Weak, slot, line, string.Empty));
            }
        }
    }

    // The base that is least for its tested amount sets the scale, the salt of a ferment no less than its heaviest food; without a base the acid does, and no less than the heaviest food.
    private double Scale()
    {
        double scale = double.PositiveInfinity;
        double salt = double.PositiveInfinity;
        double acid = 0;
        int heaviest = -1;
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            FormulaSlot slot = formula.Slots[i];
            if (slot.PerJar || slot.Discarded || slot.Role == FormulaRole.Free || slot.Presence != FormulaPresence.Required || _yours[i].High <= 0)
            {
                continue;
            }

            double ratio = _yours[i].Low / slot.Low!.Value;
            if (slot.Role == FormulaRole.AtMost)
            {
                heaviest = heaviest < 0 || slot.Grams > formula.Slots[heaviest].Grams ? i : heaviest;
            }
            else if (slot.IsAcid)
            {
                acid = acid > 0 ? Math.Min(acid, ratio) : ratio;
            }
            else if (slot.Foods.Contains("salt"))
            {
                salt = Math.Min(salt, ratio);
            }
            else
            {
                scale = Math.Min(scale, ratio);
            }
        }

        double most = heaviest < 0 ? 0 : _yours[heaviest].High / formula.Slots[heaviest].High!.Value;
        // Kraut has no brine of its own: too much salt for the cabbage keeps it from souring as much as too little. Source: USDA AIB 539 (2015) Guide 6 p. 6-2.
        bool dry = double.IsFinite(salt) && !formula.Slots.Any(static slot => slot.Foods.Contains("water"));
        return double.IsFinite(scale) ? scale : Math.Max(dry ? 0 : double.IsFinite(salt) ? salt : acid, most);
    }

    private void Compare(int at, double scale)
    {
        FormulaSlot slot = formula.Slots[at];
        if (_first[at] is not { } line)
        {
            if (slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free && !HasStandIn(at))
            {
                _faults.Add(new(FormulaFaultKind.Missing, slot, null, Tested(slot, scale)));
                _differences.Add(new(slot.Name, slot.Unit, Interval.Zero, TestedRange(slot, scale), Allowed: false));
            }

            return;
        }

        if (slot.Role == FormulaRole.Free)
        {
            return;
        }

        if (slot.PerJar)
        {
            PerJar(slot, line);
            return;
        }

        bool each = FormulaText.HasAny(line.Text, ["per", "each", "every"]) && PerJarWords.Find(line.Text) is not null; // "2 cloves garlic per jar"
        double times = each ? Jars() * scale : 1;
        bool over = slot.Role is FormulaRole.AtMost or FormulaRole.Fixed && !(_yours[at].High * times <= slot.High!.Value * scale * _rounding);
        bool under = !(slot.Discarded && slot.Presence == FormulaPresence.Optional) && slot.Role is FormulaRole.AtLeast or FormulaRole.Fixed && !(_yours[at].Low * _rounding >= slot.Low!.Value * scale);
        if (over || under)
        {
            _faults.Add(new(over ? FormulaFaultKind.TooMuch : FormulaFaultKind.TooLittle, slot, line, Within(slot, line, scale, over)));
        }

        _differences.Add(new(slot.Name, slot.Unit, _yours[at], TestedRange(slot, scale), !over && !under));
    }

    // The most jars that the formula itself fills, of "7-9 pint"; without a number no amount for a jar can be held against it.
    private double Jars()
    {
        double most = double.PositiveInfinity;
        foreach (PrintedNumber number in NumberWalk.In(formula.Yield, end: 1))
        {
            most = number.Value.High;
        }

        return formula.Yield.Contains("gallon", StringComparison.Ordinal) ? double.PositiveInfinity : most;
    }

    private bool HasStandIn(int at)
    {
        for (int i = at + 1; i < formula.Slots.Length && formula.Slots[i].Presence == FormulaPresence.Instead; i++)
        {
            if (_first[i] is not null)
            {
                return true;
            }
        }

        return false;
    }

    // An amount for each jar does not grow with the batch. A quart takes twice what a pint takes.
    private void PerJar(FormulaSlot slot, FormulaLine line)
    {
        if (PerJarWords.Find(line.Text) is not { } jar)
        {
            _faults.Add(new(slot.Role == FormulaRole.AtLeast ? FormulaFaultKind.NotPerJar : FormulaFaultKind.TooMuch, slot, line, Tested(slot, 1)));
            return;
        }

        Interval yours = FormulaMeasure.In(slot, line) ?? Interval.Unknown;
        double wanted = jar is "pint" or "half-pint" ? 1 : 2;
        bool fits = slot.Role == FormulaRole.AtLeast
            ? yours.Low * _rounding >= slot.Low!.Value * wanted
            : yours.High <= slot.High!.Value * _rounding;
        if (!fits)
        {
            _faults.Add(new(slot.Role == FormulaRole.AtLeast ? FormulaFaultKind.TooLittle : FormulaFaultKind.TooMuch, slot, line, Tested(slot, 1)));
        }
    }

    // Dry seasonings by the spoon; anything else that no slot takes is a new food.
    private void Season(FormulaLine line, FormulaSlot? slot, double scale)
    {
        if (slot is not null && (slot.Role != FormulaRole.Free || (slot.Low is null && slot.Grams is null)))
        {
            return;
        }

        if (line.Items.Any(item => !IsSeasoning(item, slot, line, scale)))
        {
            _faults.Add(new(slot is null ? FormulaFaultKind.NewFood : FormulaFaultKind.TooMuch, slot, line, slot is null ? string.Empty : Tested(slot, scale)));
        }
    }

    private bool IsSeasoning(BatchItem item, FormulaSlot? slot, FormulaLine line, double scale)
    {
        if ((item.Food?.Group == "salt" && item.Has("salt") && !item.Has("curing-salt")) || item.Food?.Id == "food-colouring")
        {
            return true;
        }

        if (FormulaText.IsVegetable(item) || item.FromSteps || (slot is null && !item.Has("dry-spice")))
        {
            return false;
        }

        double times = limits["formula-spice-times"] * scale;
        double minor = (item.Food?.MinorGramsPerKilogram ?? 0) * leastGrams / 1000;
        return item.Ingredient.Amount is null
            || item.Grams.High <= Math.Max((slot?.Grams ?? 0) * times, minor)
            || (slot is { High: { } high } && FormulaMeasure.In(slot, line) is { } amount && amount.High <= high * times);
    }

    private static Interval TestedRange(FormulaSlot slot, double scale) => slot.Role switch
    {
        FormulaRole.Fixed => new(slot.Low!.Value * scale, slot.High!.Value * scale),
        FormulaRole.AtMost => new(0, slot.High!.Value * scale),
        FormulaRole.AtLeast => new(slot.Low!.Value * scale, double.PositiveInfinity),
        FormulaRole.Free => Interval.Unknown,
    };

    private static string Tested(FormulaSlot slot, double scale) =>
        FormulaText.Amount((slot.Role == FormulaRole.AtMost ? slot.High : slot.Low) * scale ?? 0, slot.Unit, up: slot.Role == FormulaRole.AtLeast);

    private static string Within(FormulaSlot slot, FormulaLine line, double scale, bool over)
    {
        (double factor, string unit) = FormulaMeasure.Cook(slot, line) ?? (1, slot.Unit);
        return FormulaText.Amount((over ? slot.High : slot.Low) * scale * factor ?? 0, unit, up: !over);
    }
}
