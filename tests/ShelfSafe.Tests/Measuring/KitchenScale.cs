using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Tests.Measuring;

/// <summary>Reads a phrase as the line reader does and weighs its first food.</summary>
internal sealed class KitchenScale
{
    private readonly IngredientReader _reader;

    public KitchenScale()
    {
        RulePack pack = RulePack.Default;
        LineWordTable words = new(pack.Text("units.csv"), pack.Text("line-words.csv"), []);
        FoodCatalogue catalogue = FoodCatalogue.Create(pack, [], words, string.Empty);
        _reader = new(catalogue, words, new ReadTexts(catalogue, words));
        Weigher = Weigher.Create(pack);
    }

    public static KitchenScale Shared { get; } = new();

    public Weigher Weigher { get; }

    public static FoodRow Food(string id) => RulePack.Default.Tables.Foods.Single(food => food.Id == id);

    public Ingredient Read(string phrase)
    {
        MappedText text = new(phrase, 0);
        return _reader.Read(new IngredientLine(text, null, AtServing: false, FromProse: false))[0];
    }

    public Weighing Weigh(string phrase, string region = "")
    {
        Ingredient ingredient = Read(phrase);
        ImmutableArray<FoodRow> foods = ingredient.Match.Candidates;
        return Weigher.Weigh(ingredient, foods.IsEmpty ? null : foods[0], region);
    }
}
