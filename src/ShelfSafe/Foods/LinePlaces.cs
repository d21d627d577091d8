using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Small looks along an ingredient line, shared by its readers.</summary>
internal static class LinePlaces
{
    /// <summary>Offset of the next character that is neither a blank nor inside a bracket.</summary>
    public static int SkipHoles(LineState state, int at)
    {
        bool moved = true;
        while (moved)
        {
            moved = false;
            at = NumberScan.Skip(state.Text, at);
            foreach ((int from, int to) in state.Holes)
            {
                if (at >= from && at < to)
                {
                    at = to;
                    moved = true;
                }
            }
        }

        return at;
    }

    /// <summary>Whether "of" stands at an offset.</summary>
    public static bool IsOf(string text, int at) => NumberScan.Word(text, NumberScan.Skip(text, at), out _) is "of";

    /// <summary>Offset behind "of", where it stands there.</summary>
    public static int SkipOf(string text, int at)
    {
        int next = NumberScan.Skip(text, at);
        return NumberScan.Word(text, next, out int end) is "of" or "de" ? NumberScan.Skip(text, end) : next;
    }

    /// <summary>Offset behind a dash, where one stands there.</summary>
    public static int Dash(string text, int at) => at < text.Length && text[at] is '-' or '\u2011' or '\u2013' && at < text.Length ? at + 1 : at;
}
