using System.Numerics;
using ShelfSafe.Core;

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
        foreach (string candidate in _table.Value.Alike(key, 2))
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
            if (changed && (left[i].Length < shortest || left[i][0] != right[i][0] || _table.Value.Words.Contains(left[i])))
            {
                return false;
            }
        }

        return true;
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
