using System.Runtime.InteropServices;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Collects cleaned characters together with the places they came from.</summary>
/// <remarks>Places are offsets into the body; <see cref="Build"/> turns them into file offsets.</remarks>
internal sealed class MappedTextBuilder(SourceText source)
{
    private char[] _chars = new char[256];

    // Most texts stand in the body as they are collected; places are listed from the first one on that does not.
    private int[] _starts = [];
    private int[] _ends = [];
    private int _first;
    private bool _isListed;

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

        Grow(1);
        Place(start, end);
        _chars[Length] = c;
        Length++;
    }

    /// <summary>Adds body units as they stand.</summary>
    public void AddBody(int start, int end)
    {
        ReadOnlySpan<char> units = source.Body.AsSpan(start, end - start);
        if (units.IsEmpty || TextMarks.HasInvisible(units) || _isListed || (Length > 0 && start != _first + Length))
        {
            for (int i = 0; i < units.Length; i++)
            {
                Add(units[i], start + i, start + i + 1);
            }

            return;
        }

        Grow(units.Length);
        Place(start, start + 1);
        units.CopyTo(_chars.AsSpan(Length));
        Length += units.Length;
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

        ListPlaces();
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
        _isListed = false;
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

        foreach (LineBreak at in Breaks)
        {
            if (at.Index > from && at.Index < to)
            {
                breaks?.Add(at with { Index = at.Index - from });
            }
        }

        MappedText text = Mapped(new string(_chars, from, to - from), from);
        Clear();
        return text;
    }

    private MappedText Mapped(string text, int from)
    {
        if (!_isListed)
        {
            int first = source.ToFile(_first + from);
            if (text.Length == 0 || source.ToFile(_first + from + text.Length - 1) == first + text.Length - 1)
            {
                return new(text, first);
            }

            ListPlaces();
        }

        int[] starts = new int[text.Length];
        int[] ends = new int[text.Length];
        for (int i = 0; i < starts.Length; i++)
        {
            starts[i] = source.ToFile(_starts[from + i]);
            ends[i] = Math.Max(starts[i], source.ToFile(_ends[from + i] - 1) + 1);
        }

        return new(text, ImmutableCollectionsMarshal.AsImmutableArray(starts), ImmutableCollectionsMarshal.AsImmutableArray(ends));
    }

    private void Grow(int by)
    {
        if (Length + by > _chars.Length)
        {
            Array.Resize(ref _chars, Math.Max(Length + by, 2 * _chars.Length));
        }

        if (_isListed && _starts.Length < _chars.Length)
        {
            Array.Resize(ref _starts, _chars.Length);
            Array.Resize(ref _ends, _chars.Length);
        }
    }

    // Notes the place of the next character.
    private void Place(int start, int end)
    {
        if (Length == 0 && !_isListed)
        {
            _first = start;
        }

        if (!_isListed && (start != _first + Length || end != start + 1))
        {
            ListPlaces();
        }

        if (_isListed)
        {
            _starts[Length] = start;
            _ends[Length] = end;
        }
    }

    // From here on each character has a place of its own.
    private void ListPlaces()
    {
        if (_isListed)
        {
            return;
        }

        _isListed = true;
        Grow(0);
        for (int i = 0; i < Length; i++)
        {
            _starts[i] = _first + i;
            _ends[i] = _first + i + 1;
        }
    }

    private bool EndsWithBreak() => Breaks.Count > 0 && Breaks[^1].Index == Length - 1;
}
