using System.Buffers;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Finds the words that say how much a recipe makes.</summary>
internal static class YieldFinder
{
    private static readonly string[] _names =
    [
        "servings", "serves", "serving size", "makes", "yields", "yield", "portions", "feeds", "quantity", "ergibt", "portionen",
    ];

    private static readonly SearchValues<string> _anyName = SearchValues.Create(_names, StringComparison.OrdinalIgnoreCase);

    private static readonly string[] _vessels = ["pint", "pints", "quart", "quarts", "jar", "jars", "people", "persons", "servings"];

    /// <summary>Whether a text says for how many jars or people it is, and nothing else: "for 7 quarts".</summary>
    public static bool IsBare(string text)
    {
        string[] all = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return all is [var lead, var number, var vessel]
            && lead.Equals("for", StringComparison.OrdinalIgnoreCase)
            && AmountScan.NumberEnd(number, 0) == number.Length
            && _vessels.Contains(vessel.ToLowerInvariant(), StringComparer.Ordinal);
    }

    /// <summary>The yield as printed, if the line is one; asked for a second time, the words need not be searched.</summary>
    public static string? Find(MappedText text) =>
        (text.Look.Yield ??= Find(text.Text) ?? string.Empty) is { Length: > 0 } printed ? printed : null;

    /// <summary>The yield as printed, if the line is one: "Serves 8", "Yield: 6 pints", "For 6".</summary>
    public static string? Find(string text)
    {
        if (text.Length > 4_000)
        {
            text = text[..4_000];
        }

        int start = 0;
        while (start < text.Length && !char.IsLetterOrDigit(text[start]))
        {
            start++;
        }

        foreach (string name in text.AsSpan().ContainsAny(_anyName) ? _names : [])
        {
            int at = text.IndexOf(name, StringComparison.OrdinalIgnoreCase);
            bool whole = at >= 0 && (at == 0 || !char.IsLetter(text[at - 1]))
                && (at + name.Length == text.Length || !char.IsLetter(text[at + name.Length]));
            bool placed = whole && (at == start || (at > 0 && text[at - 1] is '(' or '.' or ' ' && IsClauseStart(text, at)));
            if (placed && HasNumberSoon(text, at + name.Length))
            {
                return text[at..ClauseEnd(text, at)].TrimEnd('.', ' ');
            }
        }

        return text.Length < 40 && text.AsSpan(start).StartsWith("for ", StringComparison.OrdinalIgnoreCase)
            && HasNumberSoon(text, start + 4) && AmountScan.NumberEnd(text, start + 4) > start + 4 ? text[start..ClauseEnd(text, start)].TrimEnd('.', ' ') : null;
    }

    private static bool IsClauseStart(string text, int at)
    {
        int before = at - 1;
        while (before >= 0 && text[before] == ' ')
        {
            before--;
        }

        return before < 0 || text[before] is '.' or '(' or '|' or '-' or '–' or '·' or '!';
    }

    private static bool HasNumberSoon(string text, int at)
    {
        ReadOnlySpan<char> rest = text.AsSpan(at, Math.Min(text.Length - at, 30));
        int words = 0;
        for (int i = 0; i < rest.Length && words < 4; i++)
        {
            bool start = i == 0 || !char.IsLetterOrDigit(rest[i - 1]);
            if (start && AmountScan.NumberEnd(rest, i) > i)
            {
                return true;
            }

            words += rest[i] == ' ' ? 1 : 0;
        }

        return false;
    }

    private static int ClauseEnd(string text, int at)
    {
        for (int i = at; i < text.Length; i++)
        {
            bool spaced = i + 1 == text.Length || text[i + 1] == ' ';
            if (text[i] is ';' or '|' or '\n' || (text[i] is '.' or ')' && spaced))
            {
                return text[i] == ')' && text.IndexOf('(', at, i - at) >= 0 ? i + 1 : i;
            }
        }

        return text.Length;
    }
}
