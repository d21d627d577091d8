using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Reads a word that names both a leaf and a dried spice by the company it keeps: "coriander" among dry spices is the seed.</summary>
/// <remarks>
/// Only the words of kinds <c>dry-name</c> and <c>dry-herb</c>, measured by weight or spoon, and only where every other food of the list is dry and known.
/// Known gap: a list of dry spices with nothing but "coriander" for its leaf is read as the seed.
/// </remarks>
internal sealed class DryCompany(FoodCatalogue catalogue, LineWordTable words)
{
    /// <summary>Changes the match of such words in place.</summary>
    public void Settle(List<Ingredient> ingredients)
    {
        List<int> named = [];
        int dry = 0;
        for (int i = 0; i < ingredients.Count; i++)
        {
            if (IsDryName(ingredients[i]))
            {
                named.Add(i);
            }
            else if (ingredients[i].Match.Candidates is [_, ..] foods && foods.All(static food => food.Acidity == FoodAcidity.Dry))
            {
                dry++;
            }
            else
            {
                return;
            }
        }

        foreach (int i in dry > 1 ? named : [])
        {
            ingredients[i] = ingredients[i] with { Match = catalogue.Find((words.Is("dry-herb", ingredients[i].Food) ? "dried " : "ground ") + ingredients[i].Food) };
        }
    }

    private bool IsDryName(Ingredient ingredient) =>
        (words.Is("dry-name", ingredient.Food) || words.Is("dry-herb", ingredient.Food))
        && ingredient is { Alternatives.IsEmpty: true, Amount.Unit: "tsp" or "tbsp" or "cup" or "g" or "oz" or "part" }
        && !WordFolding.Words(ingredient.Line.Text.Text).Any(word => words.Is("dry-name-not", word));
}
