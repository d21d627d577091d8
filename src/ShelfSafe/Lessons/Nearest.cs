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
            : Distance(asked, name);

    /// <summary>Letters to insert, drop or replace (Levenshtein).</summary>
    private static int Distance(string left, string right)
    {
        int[] before = [.. Enumerable.Range(0, right.Length + 1)];
        int[] now = new int[right.Length + 1];
        for (int i = 1; i <= left.Length; i++)
        {
            now[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                now[j] = Math.Min(Math.Min(now[j - 1], before[j]) + 1, before[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
            }

            (before, now) = (now, before);
        }

        return before[right.Length];
    }
}
