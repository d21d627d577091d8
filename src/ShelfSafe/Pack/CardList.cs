using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>The list of one section of a card, each item as one line of text.</summary>
internal static class CardList
{
    /// <summary>Reads the items; a line that begins without a dash goes on with the item before.</summary>
    /// <param name="text">The card.</param>
    /// <param name="section">Heading of the section.</param>
    public static ImmutableArray<string> Read(string text, string section)
    {
        List<string> items = [];
        bool inside = false;
        foreach (ReadOnlySpan<char> raw in text.AsSpan().EnumerateLines())
        {
            ReadOnlySpan<char> line = raw.Trim();
            if (line.StartsWith("#", StringComparison.Ordinal))
            {
                inside = line.StartsWith("## ", StringComparison.Ordinal) && line[3..].Trim().Equals(section, StringComparison.Ordinal);
            }
            else if (inside && line.StartsWith("- ", StringComparison.Ordinal))
            {
                items.Add(line[2..].Trim().ToString());
            }
            else if (inside && line.Length > 0 && items.Count > 0)
            {
                items[^1] += " " + line.ToString();
            }
        }

        return [.. items];
    }
}
