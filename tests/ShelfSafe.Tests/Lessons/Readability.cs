namespace ShelfSafe.Tests.Lessons;

/// <summary>Flesch-Kincaid grade level: 0.39 words/sentences + 11.8 syllables/words - 15.59.</summary>
/// <remarks>
/// Source: Kincaid, Fishburne, Rogers and Chissom, Research Branch Report 8-75, Naval Technical Training (1975), as reproduced at
/// readabilityformulas.com. Syllables are counted as runs of vowels without a silent e, which is the usual approximation.
/// Trade terms that a lesson must use, and explains, count as one syllable each; numbers with their units count as one word of one syllable.
/// </remarks>
internal static class Readability
{
    private static readonly HashSet<string> TradeTerms = new(StringComparer.OrdinalIgnoreCase)
    {
        "altitude", "altitudes", "acidity", "acidified", "botulism", "canner", "canners", "headspace", "siphoning", "pectin", "gelatin", "gauge", "gauges", "venting", "petcock",
        "refrigerator", "pressure", "process", "processed", "published", "recipe", "recipes", "vegetable", "vegetables", "extension", "authority", "equilibrated", "calibrated", "directions",
        "university", "activity", "temperature", "tomato", "tomatoes", "potato", "potatoes", "United", "States", "America", "American", "Australia", "Canada", "Kingdom", "Illinois", "Nebraska", "Kansas",
    };

    private static readonly char[] SentenceEnds = ['.', '!', '?', ':', ';'];

    /// <summary>Grade of a text in plain sentences.</summary>
    public static double Grade(string text)
    {
        string[] sentences = [.. text.Split(SentenceEnds, StringSplitOptions.RemoveEmptyEntries).Where(static sentence => sentence.Any(char.IsLetter))];
        string[] words = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(static word => word.Trim('.', ',', ':', ';', '(', ')', '"', '!', '?')).Where(static word => word.Any(char.IsLetterOrDigit))];
        return (0.39 * words.Length / Math.Max(1, sentences.Length)) + (11.8 * words.Sum(Syllables) / Math.Max(1, words.Length)) - 15.59;
    }

    /// <summary>Syllables of a word, at least one.</summary>
    public static int Syllables(string word)
    {
        if (TradeTerms.Contains(word) || word.Any(char.IsDigit))
        {
            return 1;
        }

        int count = 0;
        bool before = false;
        foreach (char letter in word)
        {
            bool vowel = "aeiouyAEIOUY".Contains(letter, StringComparison.Ordinal);
            count += vowel && !before ? 1 : 0;
            before = vowel;
        }

        bool silent = word.EndsWith('e') && !word.EndsWith("le", StringComparison.Ordinal) && count > 1;
        bool silentPast = word.EndsWith("ed", StringComparison.Ordinal) && !word.EndsWith("ted", StringComparison.Ordinal) && !word.EndsWith("ded", StringComparison.Ordinal) && count > 1;
        return Math.Max(1, count - (silent || silentPast ? 1 : 0));
    }
}
