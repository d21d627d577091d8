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
        json.WriteNumber(JsonNames.Line, ingredient.Line);
        json.WriteText(JsonNames.Text, ingredient.Text);
        json.WritePropertyName(JsonNames.Amount);
        WriteAmount(json, ingredient.Amount);
        json.WritePropertyName(JsonNames.Package);
        WriteAmount(json, ingredient.Package);
        json.WriteText(JsonNames.Food, ingredient.Food);
        json.WriteText(JsonNames.FoodId, ingredient.FoodId);
        json.WriteText(JsonNames.Preparation, ingredient.Preparation);
        json.WriteBoolean(JsonNames.Optional, ingredient.Optional);
        json.WriteBoolean(JsonNames.ToTaste, ingredient.ToTaste);
        json.WriteList(JsonNames.Alternatives, ingredient.Alternatives, WriteAlternative);
        json.WriteRange(JsonNames.Grams, ingredient.Grams);
        json.WriteTexts(JsonNames.Traits, ingredient.Traits);
        json.WriteBoolean(JsonNames.Identified, ingredient.Identified);
        json.WriteList(JsonNames.Measures, ingredient.Measures, WriteAmount);
        json.WriteText(JsonNames.SharesAmountWith, ingredient.SharesAmountWith);
        json.WriteBoolean(JsonNames.OnTheCooksWord, ingredient.OnTheCooksWord);
        json.WriteText(JsonNames.Part, ingredient.Part);
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
        json.WriteAmountValue(JsonNames.Low, amount.Value.Low);
        json.WriteAmountValue(JsonNames.High, amount.Value.High);
        json.WriteText(JsonNames.Unit, amount.Unit);
        json.WriteEndObject();
    }

    private static void WriteAlternative(Utf8JsonWriter json, AlternativeReport alternative)
    {
        json.WriteStartObject();
        json.WriteText(JsonNames.Food, alternative.Food);
        json.WriteText(JsonNames.FoodId, alternative.FoodId);
        json.WriteTexts(JsonNames.Traits, alternative.Traits);
        json.WriteEndObject();
    }
}
