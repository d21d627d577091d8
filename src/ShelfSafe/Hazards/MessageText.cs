using System.Globalization;
using System.Text;
using ShelfSafe.Measuring;

namespace ShelfSafe.Hazards;

/// <summary>Fills the placeholders of a card's text with the cook's own words.</summary>
internal static class MessageText
{
    /// <summary>The text with every known placeholder filled; an unknown one is left as it stands, for a test to find.</summary>
    public static string Fill(string text, BatchItem? item, Batch batch, string? words)
    {
        if (!text.Contains('{', StringComparison.Ordinal))
        {
            return text;
        }

        StringBuilder filled = new(text);
        filled.Replace("{ingredient}", item?.Words ?? words ?? "this");
        filled.Replace("{words}", words ?? item?.Words ?? "this");
        filled.Replace("{dish}", batch.Dish);
        filled.Replace("{food}", item?.Food?.Name ?? item?.Words ?? "it");
        filled.Replace("{why-no}", WhyNo(item));
        filled.Replace("{amount}", item?.Ingredient.Amount is { } amount ? Print(amount) : "an amount that is not given");
        if (text.Contains("{share}", StringComparison.Ordinal) && item is not null)
        {
            double share = batch.ShareOf(other => ReferenceEquals(other, item)).High;
            filled.Replace("{share}", Math.Ceiling(share * 100).ToString("0", CultureInfo.InvariantCulture) + " percent");
        }

        return filled.ToString();
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
