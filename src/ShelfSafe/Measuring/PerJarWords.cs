using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Measuring;

/// <summary>Words that give an amount to each jar: "per quart", "to each 500 ml (pint) jar". Words of a language, so they stand in code.</summary>
internal static class PerJarWords
{
    private const int MostBetween = 4;
    private static readonly string[] Each = ["per ", "each ", "every ", "/", "to a ", "in a ", "to the ", "a "];

    /// <summary>The jar that an amount is for, <c>jar</c> where its size is not named in pints or quarts, or <see langword="null"/>.</summary>
    public static string? Find(string text)
    {
        foreach (string each in Each)
        {
            for (int at = text.IndexOf(each, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(each, at + 1, StringComparison.OrdinalIgnoreCase))
            {
                if ((at == 0 || (each == "/" ? !char.IsAsciiDigit(text[at - 1]) : !char.IsLetterOrDigit(text[at - 1]))) && Named(text, at + each.Length) is { } jar)
                {
                    return jar;
                }
            }
        }

        return null;
    }

    // The jar word that stands there at once, or behind what one jar holds: "500 ml (pint) jar".
    private static string? Named(string text, int from)
    {
        int at = from;
        for (int count = 0; count < MostBetween && at < text.Length; count++)
        {
            foreach (string jar in (ReadOnlySpan<string>)["half-pint", "pint", "quart", "jar"])
            {
                if (text.AsSpan(at).StartsWith(jar, StringComparison.OrdinalIgnoreCase))
                {
                    return jar;
                }
            }

            string word = NumberScan.Word(text, at, out int end);
            bool size = word is "ml" or "l" or "cl" or "litre" or "liter" or "hot" or "clean" or "sterile";
            int next = size ? end : NumberScan.TryRange(text, at, out int after, out _) ? after : at;
            if (next == at)
            {
                return null;
            }

            at = next;
            while (at < text.Length && text[at] is ' ' or '(' or '-' or '\u00A0')
            {
                at++;
            }
        }

        return null;
    }
}
