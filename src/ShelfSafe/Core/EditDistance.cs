namespace ShelfSafe.Core;

/// <summary>Counts slips between two words: a letter left out, added, changed, or swapped with its neighbour (Damerau 1964).</summary>
public static class EditDistance
{
    private const int ShortWord = 3;

    /// <summary>The known word that a mistyped one is nearest to: within one slip, or two in words of four letters or more.</summary>
    /// <param name="word">What was typed.</param>
    /// <param name="known">Words that would have been understood; of several equally near the first is taken.</param>
    /// <returns>The known word, or <see langword="null"/> where none is near.</returns>
    public static string? Nearest(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        string[] all = [.. known];
        return all.FirstOrDefault(one => IsWithinOne(one, word))
            ?? (word.Length > ShortWord ? all.FirstOrDefault(one => IsWithinTwo(one, word)) : null);
    }

    /// <summary>Whether at most one slip lies between two words.</summary>
    internal static bool IsWithinOne(string left, string right)
    {
        if (left == right)
        {
            return true;
        }

        if (Math.Abs(left.Length - right.Length) > 1)
        {
            return false;
        }

        int i = 0;
        while (i < left.Length && i < right.Length && left[i] == right[i])
        {
            i++;
        }

        bool changed = left.AsSpan(Math.Min(i + 1, left.Length)).SequenceEqual(right.AsSpan(Math.Min(i + 1, right.Length))) && left.Length == right.Length;
        bool added = left.AsSpan(i).SequenceEqual(right.AsSpan(Math.Min(i + 1, right.Length)));
        bool dropped = right.AsSpan(i).SequenceEqual(left.AsSpan(Math.Min(i + 1, left.Length)));
        bool swapped = left.Length == right.Length && i + 1 < left.Length && left[i] == right[i + 1] && left[i + 1] == right[i]
            && left.AsSpan(i + 2).SequenceEqual(right.AsSpan(i + 2));
        return changed || added || dropped || swapped;
    }

    /// <summary>Whether at most two letters were left out, added or changed between two words.</summary>
    internal static bool IsWithinTwo(string left, string right) => Math.Abs(left.Length - right.Length) <= 2 && Between(left, right, 2) <= 2;

    /// <summary>Letters to leave out, add or change between two words (Levenshtein 1966).</summary>
    /// <param name="left">One word.</param>
    /// <param name="right">The other.</param>
    /// <param name="most">Beyond this count the exact number does not matter, and any larger one may be given.</param>
    internal static int Between(string left, string right, int most = int.MaxValue)
    {
        int[] before = [.. Enumerable.Range(0, right.Length + 1)];
        int[] now = new int[right.Length + 1];
        for (int i = 1; i <= left.Length; i++)
        {
            now[0] = i;
            int least = i;
            for (int j = 1; j <= right.Length; j++)
            {
                now[j] = Math.Min(Math.Min(before[j], now[j - 1]) + 1, before[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
                least = Math.Min(least, now[j]);
            }

            if (least > most)
            {
                return least;
            }

            (before, now) = (now, before);
        }

        return before[right.Length];
    }
}
