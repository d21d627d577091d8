using ShelfSafe.Core;

namespace ShelfSafe.Lessons;

/// <summary>Finds the known words that come nearest to one that is not known.</summary>
internal static class Nearest
{
    private const int LongestWord = 40;

    /// <summary>The nearest words, best first: those that begin with it, hold it, or differ by few letters.</summary>
    /// <param name="word">What was asked for.</param>
    /// <param name="known">All known words.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> known, int most)
    {
        string asked = (word.Length > LongestWord ? word[..LongestWord] : word).ToLowerInvariant();
        return [.. known
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(name => (Name: name, Score: Score(asked, name.ToLowerInvariant())))
            .OrderBy(pair => pair.Score)
            .ThenBy(pair => pair.Name.Length)
            .ThenBy(pair => pair.Name, StringComparer.Ordinal)
            .Take(most)
            .Select(pair => pair.Name)];
    }

    // A shared beginning or a word inside counts as one wrong letter.
    private static int Score(string asked, string name) =>
        asked.Length >= 3 && (name.Contains(asked, StringComparison.Ordinal) || (name.Length >= 3 && asked.Contains(name, StringComparison.Ordinal)))
            ? 1
            : EditDistance.Between(asked, name);
}
