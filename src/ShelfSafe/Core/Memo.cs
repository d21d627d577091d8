using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ShelfSafe.Core;

/// <summary>Remembers what a pure function gave for a text, within a fixed bound, so that memory stays flat over many recipes.</summary>
/// <remarks>It changes no answer, only how often one is worked out: cooks write "1 tsp salt" in every other recipe.</remarks>
/// <typeparam name="TKey">The text, with whatever else the answer hangs on.</typeparam>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="capacity">Most answers that are kept.</param>
internal sealed class Memo<TKey, T>(int capacity)
    where TKey : notnull
{
    private const int LongestText = 200;
    private readonly ConcurrentDictionary<TKey, T> _known = new();
    private int _count;

    /// <summary>Whether the answer is remembered.</summary>
    public bool TryGet(TKey key, [MaybeNullWhen(false)] out T answer) => _known.TryGetValue(key, out answer);

    /// <summary>Remembers an answer, unless its text is long, and gives it back.</summary>
    /// <param name="key">What it hangs on.</param>
    /// <param name="length">Length of the text.</param>
    /// <param name="answer">The answer.</param>
    public T Keep(TKey key, int length, T answer)
    {
        if (length <= LongestText)
        {
            if (Interlocked.Increment(ref _count) > capacity)
            {
                _known.Clear();
                Interlocked.Exchange(ref _count, 0);
            }

            _known[key] = answer;
        }

        return answer;
    }
}
