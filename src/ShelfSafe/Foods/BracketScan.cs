using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Takes the brackets out of a line and reads what stands in them.</summary>
internal static class BracketScan
{
    /// <summary>Reads every bracket of the line and makes a hole of it.</summary>
    public static void Brackets(LineState state)
    {
        string text = state.Text;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('(' or '['))
            {
                continue;
            }

            int close = text.IndexOfAny([')', ']'], i);
            close = close < 0 ? text.Length : close;
            state.Holes.Add((i, Math.Min(text.Length, close + 1)));
            Inside(state, i + 1, close);
            i = close;
        }
    }

    private static void Inside(LineState state, int start, int end)
    {
        string inner = state.Text[start..end].Trim();
        string low = inner.ToLowerInvariant();
        Flags(state, low);
        int or = NumberScan.Skip(state.Text, start);
        if (NumberScan.Word(state.Text, or, out int afterOr) is "or" or "alternatively")
        {
            state.Others.Add((afterOr, end));
            return;
        }

        if (low.StartsWith("and/or ", StringComparison.Ordinal))
        {
            state.Others.Add((start + 7, end));
            return;
        }

        foreach (string marker in (string[])["replace with ", "substitute ", "sub with ", "swap for ", "replaced with ", "replaced by ", "substituted with ", "substituted by ", "similarly shaped "])
        {
            int at = low.IndexOf(marker, StringComparison.Ordinal);
            if (at >= 0)
            {
                state.Others.Add((NumberScan.Skip(state.Text, start) + at + marker.Length, end));
                return;
            }
        }

        state.JuiceOrZest ??= OnlyPart(inner);
        state.Preparation = Join(state.Preparation, inner);
    }

    // "2 lemons, juiced", "1 orange, zest only", "1 lime, juice and zest": only that of the fruit goes in.
    public static string? OnlyPart(string tail)
    {
        bool juice = false;
        bool zest = false;
        string[] folded = WordFolding.Words(tail);
        for (int i = 0; i < folded.Length && i < 5; i++)
        {
            bool named = folded[i] is "juice" or "juiced" or "zest" or "zested";
            if (i == 0 && !named && folded[i] is not ("grated" or "finely" or "freshly" or "squeezed" or "strained" or "the" or "only"))
            {
                return null;
            }

            juice |= folded[i] is "juice" or "juiced";
            zest |= folded[i] is "zest" or "zested";
            if (folded[i] is "of" or "from" or "slices" or "sliced" or "flesh" or "segments" or "wedges" or "pulp" or "rest") // "zest + slices": more than the zest goes in
            {
                return null;
            }
        }

        return juice && zest ? "juice and zest" : juice ? "juice" : zest ? "zest" : null;
    }
}
