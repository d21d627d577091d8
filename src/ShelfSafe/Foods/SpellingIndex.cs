using System.Numerics;

namespace ShelfSafe.Foods;

/// <summary>Finds known keys within one edit (two in words of nine letters or more).</summary>
/// <remarks>
/// An edit is a letter left out, added, changed or swapped with its neighbour (Damerau 1964). Short words are never corrected.
/// Keys stand by length; a set of letters for each rules out most of them before any distance is worked out.
/// </remarks>
internal sealed class SpellingIndex
{
    private const int ShortestCorrected = 5;
    private const int LongWord = 9;
    private const int Longest = 40;
    private readonly Lazy<Table> _table;

    /// <summary>Takes the keys; they are sorted at the first unknown word only, for most recipes never need it.</summary>
    public SpellingIndex(IEnumerable<string> keys) => _table = new(() => new Table(keys));

    /// <summary>Whether the word stands in any key.</summary>
    public bool Knows(string word) => _table.Value.Words.Contains(word);

    /// <summary>Known keys near a word; empty for short ones.</summary>
    public IReadOnlyList<string> Near(string key)
    {
        if (key.Length is < ShortestCorrected or > Longest)
        {
            return [];
        }

        List<string> found = [];
        foreach (string candidate in _table.Value.Alike(key, 1))
        {
            if (Distance(candidate, key) <= 1 && IsSlip(key, candidate, ShortestCorrected))
            {
                found.Add(candidate);
            }
        }

        if (found.Count > 0 || key.Length < LongWord)
        {
            return found;
        }

        // Two edits in a long word: among keys with the same first letter only.
        foreach (string candidate in _table.Value.Alike(key, 2))
        {
            if (candidate.Length >= LongWord && candidate[0] == key[0] && TwoEdits(candidate, key) && IsSlip(key, candidate, LongWord))
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
            if (changed && (left[i].Length < shortest || left[i][0] != right[i][0] || _table.Value.Words.Contains(left[i])))
            {
                return false;
            }
        }

        return true;
    }

    private static bool TwoEdits(string left, string right)
    {
        int[] before = new int[right.Length + 1];
        int[] now = new int[right.Length + 1];
        for (int j = 0; j <= right.Length; j++)
        {
            before[j] = j;
        }

        for (int i = 1; i <= left.Length; i++)
        {
            now[0] = i;
            int least = i;
            for (int j = 1; j <= right.Length; j++)
            {
                now[j] = Math.Min(Math.Min(before[j] + 1, now[j - 1] + 1), before[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
                least = Math.Min(least, now[j]);
            }

            if (least > 2)
            {
                return false;
            }

            (before, now) = (now, before);
        }

        return before[right.Length] <= 2;
    }

    // Optimal string alignment distance, cut off above 1.
    private static int Distance(string left, string right)
    {
        if (left == right)
        {
            return 0;
        }

        if (Math.Abs(left.Length - right.Length) > 1)
        {
            return 2;
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
        return changed || added || dropped || swapped ? 1 : 2;
    }

    private sealed class Table
    {
        private readonly List<(ulong Letters, string Key)>[] _byLength = new List<(ulong, string)>[Longest + 3];

        public Table(IEnumerable<string> keys)
        {
            foreach (string key in keys)
            {
                Words.UnionWith(key.Split(' '));
                if (key.Length is >= ShortestCorrected - 1 and <= Longest + 2)
                {
                    (_byLength[key.Length] ??= []).Add((Letters(key), key));
                }
            }
        }

        /// <summary>Every word that stands in a key.</summary>
        public HashSet<string> Words { get; } = new(StringComparer.Ordinal);

        /// <summary>Keys whose length and letters allow for so many edits: each edit changes at most two letters of the set.</summary>
        public IEnumerable<string> Alike(string key, int edits)
        {
            ulong letters = Letters(key);
            for (int length = Math.Max(0, key.Length - edits); length <= key.Length + edits; length++)
            {
                if (_byLength[length] is not { } bucket)
                {
                    continue;
                }

                foreach ((ulong known, string candidate) in bucket)
                {
                    if (BitOperations.PopCount(known ^ letters) <= 2 * edits)
                    {
                        yield return candidate;
                    }
                }
            }
        }

        private static ulong Letters(string key)
        {
            ulong letters = 0;
            foreach (char letter in key)
            {
                letters |= 1UL << (letter % 64);
            }

            return letters;
        }
    }
}
