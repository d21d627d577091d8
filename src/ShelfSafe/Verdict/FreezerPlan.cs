using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>One step of the freezer version.</summary>
/// <param name="Part"><c>cool</c>, <c>pack</c>, <c>keeps</c> or <c>use</c>.</param>
/// <param name="Text">What to do, one or two sentences; months stand in the storage table.</param>
/// <param name="Sources">Publications that it rests on.</param>
public sealed record FreezingStep(string Part, string Text, ImmutableArray<SourceReference> Sources);

/// <summary>Chooses the rows of the freezer version for the foods of a recipe; months stand in the storage table.</summary>
/// <param name="rows">Rows of <c>rules/freezing.csv</c>.</param>
/// <param name="sources">Sources by their key.</param>
internal sealed class FreezerPlan(ImmutableArray<FreezingRow> rows, IReadOnlyDictionary<string, SourceRow> sources)
{
    /// <summary>The freezer version for some foods, in the order of the table.</summary>
    public ImmutableArray<FreezingStep> For(IReadOnlyList<FoodRow> foods) =>
        [.. rows.Where(row => row.Foods.Any(test => Passes(test, foods))).Select(row => new FreezingStep(row.Part, row.Text, Sources(row.Sources)))];

    private static bool Passes(string test, IReadOnlyList<FoodRow> foods) => test == "any" || foods.Any(food => test switch
    {
        ['t', 'r', 'a', 'i', 't', ' ', .. string trait] => food.Has(trait),
        ['g', 'r', 'o', 'u', 'p', ' ', .. string group] => food.Group == group,
        ['f', 'o', 'o', 'd', ' ', .. string id] => food.Id == id,
        _ => false,
    });

    private ImmutableArray<SourceReference> Sources(ImmutableArray<string> keys) =>
        [.. keys.Where(sources.ContainsKey).Select(key => sources[key]).Select(row => new SourceReference(row.Id, row.Title, row.Locator, row.Url))];
}
