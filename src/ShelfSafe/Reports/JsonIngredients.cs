using System.Text.Json;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes an ingredient: what the recipe prints, what it was read as, and what it weighs.</summary>
internal static class JsonIngredients
{
    /// <summary>Writes one object.</summary>
    public static void Write(Utf8JsonWriter json, IngredientReport ingredient)
    {
        json.WriteStartObject();
        json.WriteNumber("line"u8, ingredient.Line);
        json.WriteText("text"u8, ingredient.Text);
        json.WritePropertyName("amount"u8);
        WriteAmount(json, ingredient.Amount);
        json.WritePropertyName("package"u8);
        WriteAmount(json, ingredient.Package);
        json.WriteText("food"u8, ingredient.Food);
        json.WriteText("foodId"u8, ingredient.FoodId);
        json.WriteText("preparation"u8, ingredient.Preparation);
        json.WriteBoolean("optional"u8, ingredient.Optional);
        json.WriteBoolean("toTaste"u8, ingredient.ToTaste);
        json.WriteList("alternatives"u8, ingredient.Alternatives, WriteAlternative);
        json.WriteRange("grams"u8, ingredient.Grams);
        json.WriteTexts("traits"u8, ingredient.Traits);
        json.WriteBoolean("identified"u8, ingredient.Identified);
        json.WriteList("measures"u8, ingredient.Measures, WriteAmount);
        json.WriteText("sharesAmountWith"u8, ingredient.SharesAmountWith);
        json.WriteBoolean("onTheCooksWord"u8, ingredient.OnTheCooksWord);
        json.WriteText("part"u8, ingredient.Part);
        json.WriteEndObject();
    }

    private static void WriteAmount(Utf8JsonWriter json, Amount? amount)
    {
        if (amount is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteAmountValue("low"u8, amount.Value.Low);
        json.WriteAmountValue("high"u8, amount.Value.High);
        json.WriteText("unit"u8, amount.Unit);
        json.WriteEndObject();
    }

    private static void WriteAlternative(Utf8JsonWriter json, AlternativeReport alternative)
    {
        json.WriteStartObject();
        json.WriteText("food"u8, alternative.Food);
        json.WriteText("foodId"u8, alternative.FoodId);
        json.WriteTexts("traits"u8, alternative.Traits);
        json.WriteEndObject();
    }
}
