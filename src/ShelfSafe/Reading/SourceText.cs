using System.Text;

namespace ShelfSafe.Reading;

/// <summary>The text that is handed to the Markdown library, and the way back to file offsets.</summary>
/// <remarks>
/// A byte-order mark and front matter are left out, and nesting deeper than any recipe needs is cut from the raw lines,
/// because the library refuses deep nesting and slows down long before that. Nothing but indentation and list marks is cut.
/// </remarks>
internal sealed class SourceText
{
    private const int MaxMarkers = 16;
    private const int MaxIndent = 48;

    /// <summary>Longest line, and longest run of lines without a blank one, that is read as Markdown.</summary>
    private const int MaxParagraph = 20_000;

    private readonly int _shift;
    private readonly List<(int BodyFrom, int Shift)> _cuts = [];

    private SourceText(string text, int start, bool raw)
    {
        _shift = start;
        Body = start == 0 ? text : text[start..];
        Body = raw ? Body : CapNesting(Body);
    }

    /// <summary>The text to parse.</summary>
    public string Body { get; }

    /// <summary>Place in the body of the first line that was nested too deep, or -1.</summary>
    public int DeepAt { get; private set; } = -1;

    /// <summary>Place in the body of a line or paragraph too long to be read as Markdown, or -1.</summary>
    public int LongAt { get; private set; } = -1;

    /// <summary>Prepares the text from <paramref name="start"/> on.</summary>
    /// <param name="raw">Whether nothing is to be cut.</param>
    public static SourceText From(string text, int start, bool raw = false) => new(text, start, raw);

    /// <summary>File offset of a body offset.</summary>
    public int ToFile(int body)
    {
        if (_cuts.Count == 0)
        {
            return body + _shift;
        }

        int low = 0;
        int high = _cuts.Count - 1;
        int shift = _shift;
        while (low <= high)
        {
            int middle = (low + high) / 2;
            if (_cuts[middle].BodyFrom <= body)
            {
                shift = _cuts[middle].Shift;
                low = middle + 1;
            }
            else
            {
                high = middle - 1;
            }
        }

        return body + shift;
    }

    private string CapNesting(string body)
    {
        StringBuilder? kept = null;
        int copied = 0;
        int run = 0;
        for (int start = 0; start < body.Length;)
        {
            int length = body.AsSpan(start).IndexOfAny('\n', '\r');
            int end = length < 0 ? body.Length : start + length;
            int cutFrom = ReadPrefix(body, start, end, out int content, out int lastMarker, out bool listed);
            bool marked = lastMarker >= 0;
            run = content == end || listed || body[content] == '#' ? 0 : run;
            run += end - content;
            if (run > MaxParagraph && LongAt < 0)
            {
                LongAt = start;
            }

            if (cutFrom >= 0)
            {
                kept ??= new StringBuilder(body.Length);
                kept.Append(body, copied, cutFrom - copied);
                int keepFrom = marked ? Math.Max(cutFrom, lastMarker) : content;
                copied = keepFrom;
                _cuts.Add((kept.Length, _shift + keepFrom - kept.Length));
                if (marked && content < end && DeepAt < 0)
                {
                    DeepAt = kept.Length;
                }
            }

            start = end + 1;
        }

        return kept is null ? body : kept.Append(body, copied, body.Length - copied).ToString();
    }

    /// <summary>Walks over indentation and markers; answers where the prefix grew too deep, or -1.</summary>
    private static int ReadPrefix(string body, int start, int end, out int content, out int lastMarker, out bool listed)
    {
        listed = false;
        lastMarker = -1;
        int markers = 0;
        int indent = 0;
        int cut = -1;
        int at = start;
        while (at < end)
        {
            int step = MarkerLength(body, at, end);
            if (step > 0)
            {
                markers++;
                lastMarker = at;
                listed |= body[at] != '>';
            }
            else if (body[at] is ' ' or '\t')
            {
                step = 1;
                indent += body[at] == ' ' ? 1 : 4;
            }
            else
            {
                break;
            }

            if (cut < 0 && (markers > MaxMarkers || indent > MaxIndent))
            {
                cut = at;
            }

            at += step;
        }

        content = at;
        return cut;
    }

    private static int MarkerLength(string body, int at, int end)
    {
        char c = body[at];
        if (c == '>')
        {
            return 1;
        }

        bool spaced = at + 1 < end && body[at + 1] is ' ' or '\t';
        if (c is '-' or '*' or '+')
        {
            return spaced ? 1 : 0;
        }

        int digits = at;
        while (digits < end && digits - at < 9 && char.IsAsciiDigit(body[digits]))
        {
            digits++;
        }

        return digits > at && digits + 1 < end && body[digits] is '.' or ')' && body[digits + 1] is ' ' or '\t' ? digits - at + 1 : 0;
    }
}
