using ShelfSafe.Core;

namespace ShelfSafe.Reading.Amounts;

/// <summary>A number or range as it stands in a text.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset after it.</param>
/// <param name="Value">What it may be; not finite for 1/0 or overflow.</param>
internal readonly record struct PrintedNumber(int Start, int End, Interval Value)
{
    /// <summary>Offset of the word that follows, blanks passed over.</summary>
    public int Next(string text) => NumberScan.Skip(text, End);
}

/// <summary>Walks over the numbers and ranges of a running text, each read once, where no letter or digit stands right before it.</summary>
internal struct NumberWalk
{
    private readonly string _text;
    private readonly int _end;
    private readonly bool _strict;
    private readonly bool _nested;
    private int _at;

    private NumberWalk(string text, int from, int end, bool strict, bool nested) =>
        (_text, _at, _end, _strict, _nested) = (text, from, Math.Min(end, text.Length), strict, nested);

    /// <summary>The number at hand.</summary>
    public PrintedNumber Current { get; private set; }

    /// <summary>The numbers of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="from">Where numbers may begin.</param>
    /// <param name="end">Offset before which they must begin.</param>
    /// <param name="strict">Whether a number right after a point, comma or slash is none of its own.</param>
    /// <param name="nested">Whether numbers within a number are read too: of "5 1/2" also ½.</param>
    public static NumberWalk In(string text, int from = 0, int end = int.MaxValue, bool strict = false, bool nested = false) =>
        new(text, from, end, strict, nested);

    /// <summary>The walk itself, so that <c>foreach</c> takes it.</summary>
    public readonly NumberWalk GetEnumerator() => this;

    /// <summary>Goes to the next number; false at the end.</summary>
    public bool MoveNext()
    {
        for (; _at < _end; _at++)
        {
            if (MayBegin(_at) && NumberScan.TryRange(_text, _at, out int after, out Interval value))
            {
                Current = new(_at, after, value);
                _at = _nested ? _at + 1 : Math.Max(_at + 1, after);
                return true;
            }
        }

        return false;
    }

    private readonly bool MayBegin(int at) =>
        !char.IsWhiteSpace(_text[at]) && (at == 0 || !(char.IsLetterOrDigit(_text[at - 1]) || (_strict && _text[at - 1] is '.' or '/' or ',')));
}
