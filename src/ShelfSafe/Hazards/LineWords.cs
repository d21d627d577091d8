using System.Collections.Immutable;
using System.Text;

namespace ShelfSafe.Hazards;

/// <summary>Looks for whole words in an ingredient line; a word that ends in <c>*</c> is a stem.</summary>
internal static class LineWords
{
    /// <summary>Whether the line has one of the words or phrases, whatever their case.</summary>
    public static bool HasAny(string line, ImmutableArray<string> words)
    {
        bool plain = Ascii.IsValid(line);
        foreach (string word in words)
        {
            bool stem = word.EndsWith('*');
            ReadOnlySpan<char> sought = word.AsSpan().TrimEnd('*');
            for (int from = 0; from < line.Length;)
            {
                int at = plain && !sought.IsEmpty ? Find(line.AsSpan(from), sought) : line.AsSpan(from).IndexOf(sought, StringComparison.OrdinalIgnoreCase);
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

    // As IndexOf finds it in a line of ASCII letters; without the culture's tables that goes letter by letter, this by first letters.
    private static int Find(ReadOnlySpan<char> line, ReadOnlySpan<char> sought)
    {
        (char lower, char upper) = (char.ToLowerInvariant(sought[0]), char.ToUpperInvariant(sought[0]));
        for (int at = 0; at + sought.Length <= line.Length; at++)
        {
            int next = line[at..].IndexOfAny(lower, upper);
            at += next;
            if (next < 0 || at + sought.Length > line.Length)
            {
                break;
            }

            if (Ascii.EqualsIgnoreCase(line.Slice(at, sought.Length), sought))
            {
                return at;
            }
        }

        return -1;
    }
}
