using System.Diagnostics.CodeAnalysis;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Small looks at the text of a line.</summary>
internal static class LineText
{
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

    public static int SkipOf(string text, int at)
    {
        int next = NumberScan.Skip(text, at);
        return NumberScan.Word(text, next, out int end) is "of" or "de" ? NumberScan.Skip(text, end) : next;
    }

    public static int Dash(string text, int at) => at < text.Length && text[at] is '-' or '\u2011' or '\u2013' && at < text.Length ? at + 1 : at;

    public static bool InHole(LineState state, int at)
    {
        foreach ((int from, int to) in state.Holes)
        {
            if (at >= from && at < to)
            {
                return true;
            }
        }

        return false;
    }

    public static string Join(string left, string right) => left.Length == 0 ? right : right.Length == 0 ? left : left + ", " + right;

    public static int EndOfClause(string text, int start, int end)
    {
        int comma = text.IndexOfAny([',', ';', '('], start);
        return comma < 0 || comma > end ? end : comma;
    }

    /// <summary>Whether a unit is a package whose size may be told beside it.</summary>
    public static bool IsPackage([NotNullWhen(true)] string? unit) => unit is "can" or "package" or "jar" or "bottle" or "block";

    public static bool IsOf(string text, int at) => NumberScan.Word(text, NumberScan.Skip(text, at), out _) is "of";

    public static bool NothingLeft(LineState state, int at) => state.Between(at, state.Text.Length).Trim(' ', '.', ',', '*').Length == 0;

    public static void Flags(LineState state, string low)
    {
        state.Optional |= low.Contains("optional", StringComparison.Ordinal) || low.Contains("if you like", StringComparison.Ordinal) || low.Contains("if desired", StringComparison.Ordinal) || low.Contains("if wanted", StringComparison.Ordinal) || low.Contains(" or none", StringComparison.Ordinal);
        state.ToTaste |= low.Contains("to taste", StringComparison.Ordinal) || low.Contains("as needed", StringComparison.Ordinal);
        state.AtServing |= (low.Contains("to serve", StringComparison.Ordinal) || low.Contains("for serving", StringComparison.Ordinal) || low.Contains("when serving", StringComparison.Ordinal) || low.Contains("at the table", StringComparison.Ordinal) || low.Contains("for the table", StringComparison.Ordinal) || low.EndsWith("at table", StringComparison.Ordinal) || low.Contains("at serving", StringComparison.Ordinal) || low.Contains("for dipping", StringComparison.Ordinal) || low.StartsWith("dip:", StringComparison.Ordinal))
            && !low.Contains("plus extra", StringComparison.Ordinal) && !low.Contains("plus more", StringComparison.Ordinal) && !low.Contains("extra for", StringComparison.Ordinal);
    }
}
