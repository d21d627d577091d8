using System.Runtime.InteropServices;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Collects cleaned characters together with the places they came from.</summary>
/// <remarks>Places are offsets into the body; <see cref="Build"/> turns them into file offsets.</remarks>
internal sealed class MappedTextBuilder(SourceText source)
{
    private char[] _chars = new char[256];
    private int[] _starts = new int[256];
    private int[] _ends = new int[256];

    /// <summary>Number of characters collected.</summary>
    public int Length { get; private set; }

    /// <summary>Places of the line breaks in the collected text: each holds the index of the space that stands for the break.</summary>
    public List<LineBreak> Breaks { get; } = [];

    /// <summary>Adds one character that came from the body units from <paramref name="start"/> to <paramref name="end"/>.</summary>
    /// <remarks>Marks without width are left out: they would hide a word from every table ("fl" and "our").</remarks>
    public void Add(char c, int start, int end)
    {
        if (TextMarks.IsInvisible(c))
        {
            return;
        }

        if (Length == _chars.Length)
        {
            Array.Resize(ref _chars, Length * 2);
            Array.Resize(ref _starts, Length * 2);
            Array.Resize(ref _ends, Length * 2);
        }

        _chars[Length] = c;
        _starts[Length] = start;
        _ends[Length] = end;
        Length++;
    }

    /// <summary>Adds body units as they stand.</summary>
    public void AddBody(int start, int end)
    {
        string body = source.Body;
        for (int i = start; i < end; i++)
        {
            Add(body[i], i, i + 1);
        }
    }

    /// <summary>Adds a line break as one space; none at the start, and one for several.</summary>
    public void AddBreak(int start, int end, bool hard)
    {
        while (Length > 0 && _chars[Length - 1] is ' ' or '\t' && !EndsWithBreak())
        {
            Length--;
        }

        if (Length > 0 && !EndsWithBreak())
        {
            Breaks.Add(new(Length, hard));
            Add(' ', start, end);
        }
        else if (Breaks.Count > 0 && hard)
        {
            Breaks[^1] = Breaks[^1] with { Hard = true };
        }
    }

    /// <summary>Takes out footnote marks: "[^1]" in a line, "[^1]:" before the note itself.</summary>
    /// <returns>Whether one was found.</returns>
    public bool RemoveFootnoteMarks()
    {
        if (_chars.AsSpan(0, Length).IndexOf("[^") < 0)
        {
            return false;
        }

        int to = 0;
        int next = 0;
        for (int from = 0; from < Length;)
        {
            int mark = MarkLength(from, atStart: to == 0);
            if (mark > 0)
            {
                from += mark;
                continue;
            }

            while (next < Breaks.Count && Breaks[next].Index <= from)
            {
                Breaks[next] = Breaks[next] with { Index = Breaks[next].Index == from ? to : -1 };
                next++;
            }

            _chars[to] = _chars[from];
            _starts[to] = _starts[from];
            _ends[to] = _ends[from];
            to++;
            from++;
        }

        Breaks.RemoveAll(at => at.Index < 0);
        Length = to;
        return true;
    }

    private int MarkLength(int at, bool atStart)
    {
        if (_chars[at] != '[' || at + 1 >= Length || _chars[at + 1] != '^')
        {
            return 0;
        }

        int close = _chars.AsSpan(at, Math.Min(Length - at, 40)).IndexOf(']');
        bool colon = atStart && close > 0 && at + close + 1 < Length && _chars[at + close + 1] == ':';
        return close < 0 ? 0 : close + (colon ? 2 : 1);
    }

    /// <summary>Empties the builder.</summary>
    public void Clear()
    {
        Length = 0;
        Breaks.Clear();
    }

    /// <summary>The collected text without space at its ends, with the breaks moved to match; empties the builder.</summary>
    public MappedText Build(List<LineBreak>? breaks = null)
    {
        int from = 0;
        int to = Length;
        while (from < to && TextMarks.IsBlank(_chars[from]))
        {
            from++;
        }

        while (to > from && TextMarks.IsBlank(_chars[to - 1]))
        {
            to--;
        }

        int[] starts = new int[to - from];
        int[] ends = new int[to - from];
        for (int i = 0; i < starts.Length; i++)
        {
            starts[i] = source.ToFile(_starts[from + i]);
            ends[i] = Math.Max(starts[i], source.ToFile(_ends[from + i] - 1) + 1);
        }

        foreach (LineBreak at in Breaks)
        {
            if (at.Index > from && at.Index < to)
            {
                breaks?.Add(at with { Index = at.Index - from });
            }
        }

        MappedText text = new(
            new string(_chars, from, to - from),
            ImmutableCollectionsMarshal.AsImmutableArray(starts),
            ImmutableCollectionsMarshal.AsImmutableArray(ends));
        Clear();
        return text;
    }

    private bool EndsWithBreak() => Breaks.Count > 0 && Breaks[^1].Index == Length - 1;
}
