namespace ShelfSafe.Foods;

/// <summary>Finds known keys within one edit (two in words of nine letters or more), by deletion neighbourhoods.</summary>
/// <remarks>An edit is a letter left out, added, changed or swapped with its neighbour (Damerau 1964). Short words are never corrected.</remarks>
internal sealed class SpellingIndex
{
    private const int ShortestCorrected = 5;
    private const int LongWord = 9;
    private readonly Dictionary<string, List<string>> _byDeletion = new(StringComparer.Ordinal);
    private readonly HashSet<string> _keys;
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

    /// <summary>Indexes the keys.</summary>
    public SpellingIndex(IEnumerable<string> keys)
    {
        _keys = new(keys, StringComparer.Ordinal);
    }

    /// <summary>Known keys near a word; empty for short ones.</summary>
    public IReadOnlyList<string> Near(string key)
    {
        if (key.Length < ShortestCorrected || key.Length > 40)
        {
            return [];
        }

        Build();
        HashSet<string> found = new(StringComparer.Ordinal);
        foreach (string variant in Deletions(key).Prepend(key))
        {
            if (_keys.Contains(variant))
            {
                found.Add(variant);
            }

            if (_byDeletion.TryGetValue(variant, out List<string>? near))
            {
                foreach (string candidate in near)
                {
                    if (Distance(candidate, key) <= 1 && IsSlip(key, candidate, ShortestCorrected))
                    {
                        found.Add(candidate);
                    }
                }
            }
        }

        return found.Count > 0 || key.Length < LongWord ? [.. found] : Farther(key);
    }

    // Two edits in a long word: looked for among keys with the same first letter only.
    private List<string> Farther(string key)
    {
        List<string> found = [];
        foreach (string candidate in _keys)
        {
            if (candidate.Length >= LongWord && candidate[0] == key[0] && Math.Abs(candidate.Length - key.Length) <= 2 && TwoEdits(candidate, key) && IsSlip(key, candidate, LongWord))
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
            if (changed && (left[i].Length < shortest || left[i][0] != right[i][0] || _known.Contains(left[i])))
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

    // Built at the first unknown word only: most recipes never need it.
    private void Build()
    {
        lock (_byDeletion)
        {
            if (_byDeletion.Count > 0)
            {
                return;
            }

            foreach (string key in _keys)
            {
                _known.UnionWith(key.Split(' '));
                if (key.Length < ShortestCorrected)
                {
                    continue;
                }

                foreach (string variant in Deletions(key).Prepend(key))
                {
                    if (!_byDeletion.TryGetValue(variant, out List<string>? list))
                    {
                        _byDeletion[variant] = list = [];
                    }

                    list.Add(key);
                }
            }
        }
    }

    private static IEnumerable<string> Deletions(string key)
    {
        for (int i = 0; i < key.Length; i++)
        {
            yield return key.Remove(i, 1);
        }
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
}
