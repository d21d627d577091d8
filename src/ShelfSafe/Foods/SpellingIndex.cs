using ShelfSafe.Core;

namespace ShelfSafe.Foods;

/// <summary>Finds known keys within one edit (two in words of nine letters or more).</summary>
/// <remarks>
/// An edit is a letter left out, added, changed or swapped with its neighbour (Damerau 1964). Short words are never corrected.
/// The index sorts keys by length and letters, which rules out most of them before any distance is worked out.
/// </remarks>
internal sealed class SpellingIndex(FoodIndex index, IReadOnlyCollection<string> own, Func<string, bool> isPlain)
{
    private const int ShortestCorrected = 5;
    private const int LongWord = 9;
    private const int Longest = 40;
    private readonly HashSet<string> _ownWords = [.. own.SelectMany(key => key.Split(' '))];

    /// <summary>Known keys near a word; empty for short ones.</summary>
    public IReadOnlyList<string> Near(string key)
    {
        if (key.Length is < ShortestCorrected or > Longest)
        {
            return [];
        }

        List<string> found = [];
        foreach (string candidate in Alike(key, 1))
        {
            if (EditDistance.IsWithinOne(candidate, key) && IsSlip(key, candidate, ShortestCorrected))
            {
                found.Add(candidate);
            }
        }

        if (found.Count > 0 || key.Length < LongWord)
        {
            return found;
        }

        // Two edits in a long word: among keys with the same first letter only.
        foreach (string candidate in Alike(key, 2))
        {
            if (candidate.Length >= LongWord && candidate[0] == key[0] && EditDistance.IsWithinTwo(candidate, key) && IsSlip(key, candidate, LongWord))
            {
                found.Add(candidate);
            }
        }

        return found;
    }

    // A slip changes unknown words only: "chicken stick" is no "chicken stock", for a stick is a word of its own.
    private bool IsSlip(string written, string meant, int shortest)
    {
        string[] left = written.Split(' ');
        string[] right = meant.Split(' ');
        if (left.Length != right.Length)
        {
            return true;
        }

        for (int i = 0; i < left.Length; i++)
        {
            bool changed = !string.Equals(left[i], right[i], StringComparison.Ordinal);
            if (changed && (left[i].Length < shortest || left[i][0] != right[i][0] || Knows(left[i])))
            {
                return false;
            }
        }

        return true;
    }

    // "Close to 2 kg" is no clove: an ordinary word is no slip.
    private bool Knows(string word) => index.Knows(word) || _ownWords.Contains(word) || isPlain(word);

    private IEnumerable<string> Alike(string key, int edits) =>
        index.Alike(key, edits).Concat(own.Where(word => Math.Abs(word.Length - key.Length) <= edits && word.Length is >= FoodIndexWriter.Shortest and <= FoodIndexWriter.Longest));
}
