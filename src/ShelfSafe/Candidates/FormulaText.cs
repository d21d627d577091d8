using System.Globalization;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Candidates;

/// <summary>What an ingredient line says of label, jar and draining; amounts in words.</summary>
internal static class FormulaText
{
    // Units that take an s; the short ones (tbsp, lb) do not.
    private static readonly HashSet<string> Plural = new(StringComparer.Ordinal) { "cup", "pint", "quart", "gallon", "clove", "piece", "slice", "stick", "stalk", "sprig" };

    private static readonly string[] Away = ["drain", "brin", "soak", "rins", "discard", "pour off", "poured off", "poured away"];

    /// <summary>Whether the text holds one of the word beginnings.</summary>
    public static bool HasAny(string? text, IEnumerable<string> words) =>
        text is not null && words.Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether "pepper", read as the spice, is the vegetable: no kitchen takes the spice by the piece, the cup or the pound.</summary>
    public static bool IsVegetable(BatchItem item) =>
        item.Food?.Id == "black-pepper"
        && item.Ingredient.Amount is { Unit: "each" or "cup" or "lb" or "oz" or "kg" or "g" or "l" or "ml" or "pint" or "quart" or "slice" or "piece" }
        && !HasAny(item.Ingredient.Line.Text.Text, ["corn", "black", "white pepper", "ground pepper"]);

    /// <summary>Whether the line or its heading says that it is poured away.</summary>
    public static bool IsPouredAway(IngredientLine line) => HasAny(line.Text.Text, Away) || HasAny(line.Group, Away);

    /// <summary>The strength that the line prints for the vinegar, percent; <see langword="null"/> where it prints none, or one that no table vinegar has.</summary>
    public static double? Percent(string text)
    {
        if (HasAny(text, ["five percent", "five per cent", "50 grain", "50-grain"]))
        {
            return 5;
        }

        foreach (string mark in (ReadOnlySpan<string>)["%", "percent", "per cent"])
        {
            int at = text.IndexOf(mark, StringComparison.OrdinalIgnoreCase);
            if (at > 0)
            {
                int end = text.AsSpan(0, at).TrimEnd(" -\u00A0").Length;
                int start = end;
                while (start > 0 && (char.IsAsciiDigit(text[start - 1]) || text[start - 1] is '.' or ','))
                {
                    start--;
                }

                if (double.TryParse(text.AsSpan(start, end - start).ToString().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent) && percent <= 10)
                {
                    return percent;
                }
            }
        }

        return null;
    }

    /// <summary>An amount in words, such as <c>310 g</c>; a count has no unit word.</summary>
    /// <param name="up">Whether to round up; else down: toward the cautious side of what the amount is for.</param>
    public static string Amount(double value, string unit, bool up)
    {
        double step = value >= 1000 ? 10 : value >= 20 ? 1 : value >= 2 ? 0.1 : 0.01;
        double places = value / step;
        double rounded = (up ? Math.Ceiling(places - 1e-6) : Math.Floor(places + 1e-6)) * step;
        string number = rounded.ToString("0.##", CultureInfo.InvariantCulture);
        return unit is "each" or "" ? number : $"{number} {unit}{(rounded > 1 && Plural.Contains(unit) ? "s" : string.Empty)}";
    }
}
