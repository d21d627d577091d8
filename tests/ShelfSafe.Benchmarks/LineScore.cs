using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Compares read ingredient lines with labelled ones and keeps what differs.</summary>
internal sealed class LineScore
{
    private readonly List<string> _amounts = [];
    private readonly List<string> _foods = [];
    private readonly List<string> _notRead = [];
    private readonly List<string> _alternatives = [];
    private int _lines;

    /// <summary>Scores one labelled line.</summary>
    public void Add(LineLabel label, VettedFile file)
    {
        _lines++;
        IngredientReport[] read = Find(label, file);
        if (label.NotFood)
        {
            if (read.Any(static entry => entry.Identified))
            {
                _foods.Add($"{label.File}: \"{label.Line}\" is no food, read as {read[0].Food} ({read[0].FoodId})");
            }

            return;
        }

        if (read.Length == 0)
        {
            _notRead.Add($"{label.File}: \"{label.Line}\"");
            return;
        }

        if (!IsAmountRight(label, read[0]))
        {
            _amounts.Add($"{label.File}: \"{label.Line}\" read as {Shown(read[0].Amount)}{(read[0].Package is null ? string.Empty : " of " + Shown(read[0].Package))}");
        }

        if (!IsFoodRight(label, read))
        {
            _foods.Add($"{label.File}: \"{label.Line}\" read as {string.Join(" + ", read.Select(static entry => $"{entry.Food} ({entry.FoodId ?? "unread"})"))}, label {label.Food}");
        }

        if (label.Alternatives.Count > 0 && read[0].Alternatives.IsDefaultOrEmpty)
        {
            _alternatives.Add($"{label.File}: \"{label.Line}\" has no alternatives, label {string.Join(", ", label.Alternatives)}");
        }
    }

    /// <summary>Prints the figures and every difference.</summary>
    public void Print(TextWriter output)
    {
        int amounts = _lines - _amounts.Count - _notRead.Count;
        int foods = _lines - _foods.Count - _notRead.Count;
        output.WriteLine($"== {_lines} labelled ingredient lines");
        output.WriteLine($"amount and unit right: {amounts} ({RecipeScore.Share(amounts, _lines)})");
        output.WriteLine($"food right: {foods} ({RecipeScore.Share(foods, _lines)})");
        output.WriteLine($"not read as an ingredient at all: {_notRead.Count}");
        RecipeScore.List("no ingredient", _notRead, output);
        RecipeScore.List("amount", _amounts, output);
        RecipeScore.List("food", _foods, output);
        RecipeScore.List("alternatives", _alternatives, output);
        output.WriteLine();
    }

    private static IngredientReport[] Find(LineLabel label, VettedFile file)
    {
        for (int i = 0; i < file.Lines.Length; i++)
        {
            string line = file.Lines[i].Trim();
            if (line.EndsWith(label.Line, StringComparison.Ordinal) && line.Length - label.Line.Length <= 8)
            {
                IngredientReport[] read = [.. file.Report.Ingredients.Where(entry => entry.Line == i + 1)];
                if (read.Length > 0)
                {
                    return read;
                }
            }
        }

        return [];
    }

    private static bool IsAmountRight(LineLabel label, IngredientReport read)
    {
        if (label.Quantity is not { } quantity)
        {
            return read.Amount is null;
        }

        bool first = Same(new(quantity, label.QuantityMax, label.Unit), read.Amount, label.UnitAlsoOk)
            || label.AmountAlsoOk.Any(also => Same(also, read.Amount, []));
        bool package = label.Package is null || read.Package is not null || label.AmountAlsoOk.Any(also => Same(also, read.Amount, []));
        return first && package;
    }

    private static bool Same(AmountLabel label, Amount? read, IReadOnlyList<string> alsoOk) =>
        read is not null
        && Near(read.Value.Low, label.Quantity)
        && Near(read.Value.High, label.QuantityMax ?? label.Quantity)
        && (label.Unit is null || read.Unit == label.Unit || alsoOk.Contains(read.Unit));

    private static bool Near(double left, double right) => Math.Abs(left - right) <= 0.01 * Math.Max(Math.Abs(right), 0.1);

    private static bool IsFoodRight(LineLabel label, IngredientReport[] read)
    {
        if (label.Foods.Count > 0)
        {
            return label.Foods.All(food => read.Any(entry => Folded(entry.Food) == Folded(food)));
        }

        string[] right = [.. label.FoodAlsoOk.Append(label.Food ?? string.Empty).Select(Folded)];
        return read.Any(entry => right.Contains(Folded(entry.Food)));
    }

    private static string Folded(string food) =>
        string.Join(' ', food.ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Select(static word => word.TrimEnd('s')));

    private static string Shown(Amount? amount) =>
        amount is null ? "nothing" : System.FormattableString.Invariant($"{amount.Value.Low}-{amount.Value.High} {amount.Unit}");
}
