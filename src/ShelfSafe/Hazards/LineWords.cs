using System.Collections.Immutable;

namespace ShelfSafe.Hazards;

/// <summary>Looks for whole words in an ingredient line; a word that ends in <c>*</c> is a stem.</summary>
internal static class LineWords
{
    /// <summary>Whether the line has one of the words or phrases, whatever their case.</summary>
    public static bool HasAny(string line, ImmutableArray<string> words)
    {
        foreach (string word in words)
        {
            bool stem = word.EndsWith('*');
            ReadOnlySpan<char> sought = word.AsSpan().TrimEnd('*');
            for (int from = 0; from < line.Length;)
            {
                int at = line.AsSpan(from).IndexOf(sought, StringComparison.OrdinalIgnoreCase);
                if (at < 0)
                {
                    break;
                }

                at += from;
                int end = at + sought.Length;
                if ((at == 0 || !char.IsLetterOrDigit(line[at - 1])) && (stem || end == line.Length || !char.IsLetterOrDigit(line[end])))
                {
                    return true;
                }

                from = at + 1;
            }
        }

        return false;
    }
}
