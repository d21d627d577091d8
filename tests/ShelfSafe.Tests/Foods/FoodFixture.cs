using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Tests.Foods;

/// <summary>Catalogue and line reader over the built-in tables, made once for the tests of this room.</summary>
internal static class FoodFixture
{
    private static readonly Lazy<(FoodCatalogue Catalogue, IngredientReader Reader)> Made = new(() => Make(string.Empty, []));

    /// <summary>The catalogue without a region.</summary>
    public static FoodCatalogue Catalogue => Made.Value.Catalogue;

    /// <summary>The foods of one line.</summary>
    public static ImmutableArray<Ingredient> Read(string text) => Made.Value.Reader.Read(Line(text));

    /// <summary>A catalogue for a region and a cook's own words.</summary>
    public static (FoodCatalogue Catalogue, IngredientReader Reader) Make(string region, IReadOnlyList<AliasRow> own)
    {
        RulePack pack = RulePack.Default;
        LineWordTable words = new(pack.Text("units.csv"), pack.Text("line-words.csv"), []);
        FoodCatalogue catalogue = new(pack.Tables.Foods, pack.Tables.Aliases, own, words.Of("filler").Concat(words.Of("size")).Concat(words.Of("prep")), words.Of("cut"), region);
        return (catalogue, new(catalogue, words, new ReadTexts(catalogue, words)));
    }

    /// <summary>A memory of texts for one reader.</summary>
    public static ReadTexts NewTexts() => new(Catalogue, LineWordTable.Of(RulePack.Default, []));

    /// <summary>A line that stands alone in its file.</summary>
    public static IngredientLine Line(string text) =>
        new(new MappedText(text, 0), null, AtServing: false, FromProse: false);

    /// <summary>Food ids of a match, several in ordinal order joined by a bar; <c>?</c> where unidentified.</summary>
    public static string Ids(FoodMatch match) =>
        match.Candidates.IsEmpty ? "?" : string.Join('|', match.Candidates.Select(food => food.Id).Order(StringComparer.Ordinal));

    /// <summary>An amount as "2-3 cup", "2+ cup" or "none".</summary>
    public static string Print(Amount? amount)
    {
        if (amount is null)
        {
            return "none";
        }

        string low = amount.Value.Low.ToString("0.###", CultureInfo.InvariantCulture);
        string high = amount.Value.High.ToString("0.###", CultureInfo.InvariantCulture);
        return (!amount.Value.IsBounded ? low + "+" : low == high ? low : low + "-" + high) + " " + amount.Unit;
    }
}
