using System.Globalization;
using System.Text;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Hazards;

/// <summary>Fills the placeholders of a card's text with the cook's own words.</summary>
/// <param name="words">Words for what a recipe does not say.</param>
internal sealed class MessageText(WordTable words)
{
    private const double QuarterLitre = 250;
    private const double Litre = 1000;
    private const double Quart = 946.352946; // Source: NIST Handbook 44, Appendix C

    /// <summary>Whether a text quotes the food it is about, so that it says nothing where there is none.</summary>
    public static bool NamesTheFood(string text) =>
        text.Contains("{ingredient}", StringComparison.Ordinal) || text.Contains("{words}", StringComparison.Ordinal) || text.Contains("{food}", StringComparison.Ordinal);

    /// <summary>The text with every known placeholder filled; an unknown one is left as it stands, for a test to find.</summary>
    public string Fill(string text, BatchItem? item, Batch batch, string? heard)
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
            filled.Append(Value(text.AsSpan(open + 1, close - open - 1), item, batch, heard) ?? text[open..(close + 1)]);
            from = close + 1;
        }

        return filled.Append(text, from, text.Length - from).ToString();
    }

    private string? Value(ReadOnlySpan<char> name, BatchItem? item, Batch batch, string? heard) => name switch
    {
        _ when name.Contains('|') => Choice(name, item),
        "ingredient" => Named(item) ?? heard ?? words["message.this"],
        "words" => heard ?? Named(item) ?? words["message.this"],
        "dish" => batch.Dish,
        "food" => item?.Food?.Name ?? Named(item) ?? words["message.it"],
        "why-no" => WhyNo(item),
        "amount" => item?.Ingredient.Amount is { } amount ? Print(amount) : words["message.no-amount"],
        "share" when item is not null => Share(item, batch),
        "more-liquid" => MoreLiquid(batch),
        _ => null,
    };

    // A line of a bare amount names no food, so the line itself is quoted.
    private static string? Named(BatchItem? item) => item is { Words.Length: 0 } ? item.Ingredient.Line.Text.Text : item?.Words;

    // What brings the jars to half liquid: the solids at their most, less the liquid at its least, up to the next quarter litre.
    private string MoreLiquid(Batch batch)
    {
        double solids = batch.InJar.Where(item => !item.Has("thin-liquid")).Sum(item => item.Millilitres.High);
        double liquid = batch.InJar.Where(item => item.Has("thin-liquid")).Sum(item => item.Millilitres.Low);
        double more = Math.Ceiling((solids - liquid) / QuarterLitre) * QuarterLitre;
        return double.IsFinite(more) && more > 0
            ? words.With("message.more-liquid", more / Litre, more / Quart)
            : words["message.more-liquid-unknown"];
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

    private string Share(BatchItem item, Batch batch)
    {
        double share = batch.ShareOf(other => ReferenceEquals(other, item)).High;
        return words.With("message.percent", Math.Ceiling(share * 100).ToString("0", CultureInfo.InvariantCulture));
    }

    private string WhyNo(BatchItem? item) =>
        item?.Food is { WhyNo.Length: > 0 } food ? food.WhyNo : words["message.why-no"];

    private string Print(Core.Amount amount)
    {
        string low = amount.Value.Low.ToString("0.##", CultureInfo.InvariantCulture);
        string number = amount.Value.High == amount.Value.Low ? low : words.With("message.range", low, amount.Value.High.ToString("0.##", CultureInfo.InvariantCulture));
        return amount.Unit == "each" ? number : $"{number} {amount.Unit}";
    }
}
