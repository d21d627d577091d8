using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ShelfSafe.Core;

/// <summary>Remembers what a pure function gave for a text, within a fixed bound, so that memory stays flat over many recipes.</summary>
/// <remarks>
/// It changes no answer, only how often one is worked out: cooks write "1 tsp salt" in every other recipe, and "whisk in the last of the elderflower" once.
/// So a new answer is kept for a short while only; the texts of such answers are noted, and one that comes again stays.
/// </remarks>
/// <typeparam name="TKey">The text, with whatever else the answer hangs on.</typeparam>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="capacity">Most answers that stay; half of them are let go at once, those not asked for lately.</param>
internal sealed class Memo<TKey, T>(int capacity = 16_384)
    where TKey : notnull
{
    private const int LongestText = 400;
    private const int MostNew = 256;
    private static readonly ConcurrentDictionary<TKey, T> s_nothing = new();
    private readonly Turned _new = new();
    private readonly Turned _lasting = new();
    private readonly SeenBefore<TKey> _seen = new();

    /// <summary>Whether the answer is remembered.</summary>
    public bool TryGet(TKey key, [MaybeNullWhen(false)] out T answer)
    {
        if (_lasting.Now.TryGetValue(key, out answer) || _new.Now.TryGetValue(key, out answer))
        {
            return true;
        }

        if (!_lasting.Before.TryGetValue(key, out answer))
        {
            return false;
        }

        _lasting.Add(key, answer, capacity / 2); // still asked for
        return true;
    }

    /// <summary>Remembers an answer, unless its text is long, and gives it back.</summary>
    /// <param name="key">What it hangs on.</param>
    /// <param name="length">Length of the text.</param>
    /// <param name="answer">The answer.</param>
    public T Keep(TKey key, int length, T answer)
    {
        if (length > LongestText)
        {
            return answer;
        }

        if (_seen.Has(key))
        {
            _lasting.Add(key, answer, capacity / 2);
        }
        else if (_new.Add(key, answer, MostNew))
        {
            _seen.Note(_new.Before.Keys);
            _new.Before = s_nothing;
        }

        return answer;
    }

    // Answers of this turn and of the one before. Another thread may turn at the same time; what is lost then is worked out once more.
    private sealed class Turned
    {
        private int _count;

        public ConcurrentDictionary<TKey, T> Now { get; private set; } = new();

        public ConcurrentDictionary<TKey, T> Before { get; set; } = s_nothing;

        public bool Add(TKey key, T answer, int most)
        {
            bool turns = Interlocked.Increment(ref _count) > most;
            if (turns)
            {
                Before = Now;
                Now = new();
                Interlocked.Exchange(ref _count, 0);
            }

            Now[key] = answer;
            return turns;
        }
    }
}
