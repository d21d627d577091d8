using System.Globalization;
using System.Text;
using ShelfSafe.Measuring;

namespace ShelfSafe.Hazards;

/// <summary>Fills the placeholders of a card's text with the cook's own words.</summary>
internal static class MessageText
{
    private const double QuarterLitre = 250;
    private const double Litre = 1000;
    private const double Quart = 946.352946; // Source: NIST Handbook 44, Appendix C

    /// <summary>The text with every known placeholder filled; an unknown one is left as it stands, for a test to find.</summary>
    public static string Fill(string text, BatchItem? item, Batch batch, string? words)
    {
        if (!text.Contains('{', StringComparison.Ordinal))
        {
            return text;
        }

        StringBuilder filled = new(text.Length + 64);
        int from = 0;
        for (int open = text.IndexOf('{', StringComparison.Ordinal); open >= 0; open = text.IndexOf('{', from))
        {
            int close = text.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            filled.Append(text, from, open - from);
            filled.Append(Value(text.AsSpan(open + 1, close - open - 1), item, batch, words) ?? text[open..(close + 1)]);
            from = close + 1;
        }

        return filled.Append(text, from, text.Length - from).ToString();
    }

    private static string? Value(ReadOnlySpan<char> name, BatchItem? item, Batch batch, string? words) => name switch
    {
        _ when name.Contains('|') => Choice(name, item),
        "ingredient" => item?.Words ?? words ?? "this",
        "words" => words ?? item?.Words ?? "this",
        "dish" => batch.Dish,
        "food" => item?.Food?.Name ?? item?.Words ?? "it",
        "why-no" => WhyNo(item),
        "amount" => item?.Ingredient.Amount is { } amount ? Print(amount) : "an amount that is not given",
        "share" when item is not null => Share(item, batch),
        "more-liquid" => MoreLiquid(batch),
        _ => null,
    };

    // What brings the jars to half liquid: the solids at their most, less the liquid at its least, up to the next quarter litre.
    private static string MoreLiquid(Batch batch)
    {
        double solids = batch.InJar.Where(item => !item.Has("thin-liquid")).Sum(item => item.Millilitres.High);
        double liquid = batch.InJar.Where(item => item.Has("thin-liquid")).Sum(item => item.Millilitres.Low);
        double more = Math.Ceiling((solids - liquid) / QuarterLitre) * QuarterLitre;
        return double.IsFinite(more) && more > 0
            ? string.Create(CultureInfo.InvariantCulture, $"about {more / Litre:0.##} litres ({more / Quart:0.#} quarts) more than the list has")
            : "as much as the drained solids take up";
    }

    // "large onions are", "beef is": the cook's last word against that of the food, which is always told in the singular.
    private static string Choice(ReadOnlySpan<char> choice, BatchItem? item)
    {
        int bar = choice.IndexOf('|');
        return (item is not null && IsPlural(item) ? choice[(bar + 1)..] : choice[..bar]).ToString();
    }

    private static bool IsPlural(BatchItem item)
    {
        ReadOnlySpan<char> last = LastWord(item.Words ?? string.Empty);
        return last.EndsWith("s", StringComparison.OrdinalIgnoreCase)
            && !last.EndsWith("ss", StringComparison.OrdinalIgnoreCase)
            && !last.EndsWith("us", StringComparison.OrdinalIgnoreCase)
            && !last.Equals(LastWord(item.Ingredient.Food ?? string.Empty), StringComparison.OrdinalIgnoreCase)
            && !last.Equals(LastWord(item.Food?.Name ?? string.Empty), StringComparison.OrdinalIgnoreCase);
    }

    private static ReadOnlySpan<char> LastWord(string words) => words.AsSpan(words.LastIndexOf(' ') + 1);

    private static string Share(BatchItem item, Batch batch)
    {
        double share = batch.ShareOf(other => ReferenceEquals(other, item)).High;
        return Math.Ceiling(share * 100).ToString("0", CultureInfo.InvariantCulture) + " percent";
    }

    private static string WhyNo(BatchItem? item) =>
        item?.Food is { WhyNo.Length: > 0 } food ? food.WhyNo : "no published home process names it";

    private static string Print(Core.Amount amount)
    {
        string low = amount.Value.Low.ToString("0.##", CultureInfo.InvariantCulture);
        string number = amount.Value.High == amount.Value.Low ? low : $"{low} to {amount.Value.High.ToString("0.##", CultureInfo.InvariantCulture)}";
        return amount.Unit == "each" ? number : $"{number} {amount.Unit}";
    }
}
