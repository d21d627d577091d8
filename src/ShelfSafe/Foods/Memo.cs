using System.Collections.Concurrent;

namespace ShelfSafe.Foods;

/// <summary>Remembers what a pure function gave for a text, within a fixed bound, so that memory stays flat over many recipes.</summary>
/// <remarks>It changes no answer, only how often one is worked out: cooks write "1 tsp salt" in every other recipe.</remarks>
internal sealed class Memo<T>(int capacity)
{
    private const int LongestText = 200;
    private readonly ConcurrentDictionary<string, T> _known = new(StringComparer.Ordinal);
    private int _count;

    /// <summary>The remembered answer, or the answer of the function.</summary>
    public T Of(string text, Func<string, T> work)
    {
        if (_known.TryGetValue(text, out T? known))
        {
            return known;
        }

        T made = work(text);
        if (text.Length <= LongestText)
        {
            if (Interlocked.Increment(ref _count) > capacity)
            {
                _known.Clear();
                Interlocked.Exchange(ref _count, 0);
            }

            _known[text] = made;
        }

        return made;
    }
}
