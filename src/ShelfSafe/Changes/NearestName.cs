using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Finds a published formula by id or name, and the nearest name where none fits.</summary>
public static class NearestName
{
    private const int LongestWord = 100;

    /// <summary>The formula of that id or name, whatever the letter case; <see langword="null"/> where none has it.</summary>
    public static FormulaName? Exact(IReadOnlyList<FormulaName> formulas, string words) =>
        formulas.FirstOrDefault(formula => string.Equals(formula.Id, words.Trim(), StringComparison.OrdinalIgnoreCase) || string.Equals(formula.Name, words.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The formula whose id or name is spelled most alike; <see langword="null"/> where there are no formulas.</summary>
    public static FormulaName? Nearest(IReadOnlyList<FormulaName> formulas, string words)
    {
        string[] asked = Pieces(words);
        return formulas.MinBy(formula => Math.Min(Far(asked, Pieces(formula.Id)), Far(asked, Pieces(formula.Name))));
    }

    private static string[] Pieces(string text) => text.ToLowerInvariant().Split([' ', '-', ','], StringSplitOptions.RemoveEmptyEntries);

    // Each word asked for against the word that is spelled most alike; words left over count a little.
    private static double Far(string[] asked, string[] name) =>
        asked.Take(20).Sum(word => name.Min(other => EditDistance.Between(word.Length > LongestWord ? word[..LongestWord] : word, other))) + (0.3 * Math.Abs(asked.Length - name.Length));
}
