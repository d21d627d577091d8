using System.Collections.Immutable;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Finds lines of food that the recipe's own steps bring to the table and never into the pot: "serve with radishes and lemons".</summary>
/// <remarks>
/// A line counts only if a step of serving names its food behind "with", and no other step names it, or speaks of foods without naming
/// them ("add everything", "the vegetables"). Known gap: "top each bowl with" is not read.
/// </remarks>
internal static class TableFoods
{
    /// <summary>The lines of the draft that wait for the table.</summary>
    /// <param name="draft">The draft, as it was printed for the report.</param>
    /// <param name="copy">The report on it.</param>
    /// <param name="known">Words of serving.</param>
    public static ImmutableArray<DraftLine> Of(Draft draft, VettingReport copy, AdaptWords known)
    {
        string[][] steps = [.. draft.Steps.Where(step => step is { Section: DraftSection.Method, Place: DraftPlace.Kept }).Select(step => Mentions.Words(step.Text).ToArray()).Where(words => words.Length > 0)];
        bool Serves(string[] words) => known.Table.Contains(words[0]);
        HashSet<string> table = [.. steps.Where(Serves).SelectMany(words => words.SkipWhile(word => !known.Beside.Contains(word)))];
        HashSet<string> pot = [.. steps.Where(words => !Serves(words)).SelectMany(words => words).Concat(steps.Where(Serves).SelectMany(words => words.TakeWhile(word => !known.Beside.Contains(word))))];
        HashSet<string> named = [.. Named(copy)];
        return table.Count == 0 || pot.Any(word => known.Unnamed.Contains(word) && !named.Contains(word))
            ? []
            : [.. draft.LineAt.Where(pair => pair.Value.Place == DraftPlace.Kept && IsAtTable([.. copy.Ingredients.Where(entry => entry.Line == pair.Key)], table, pot)).Select(pair => pair.Value)];
    }

    // "The beans" where the list has beans: that names them.
    private static IEnumerable<string> Named(VettingReport copy) => copy.Ingredients.SelectMany(entry => Mentions.Words(entry.Food));

    private static bool IsAtTable(IngredientReport[] entries, HashSet<string> table, HashSet<string> pot) =>
        entries is [{ Identified: true } entry]
        && entry.Alternatives.Select(other => other.Food).Append(entry.Food).All(food => Mentions.Words(food).ToArray() is [.., var head] words && table.Contains(head) && !words.Any(pot.Contains));
}
