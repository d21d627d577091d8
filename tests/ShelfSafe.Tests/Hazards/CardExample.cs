using System.Text;
using ShelfSafe.Pack;

namespace ShelfSafe.Tests.Hazards;

/// <summary>A tiny recipe from the section of a card: its title, a list of ingredients, numbered steps.</summary>
internal static class CardExample
{
    /// <summary>The example as a Markdown recipe, or <see langword="null"/> where the card has no such section.</summary>
    public static string? Recipe(string rule, string section)
    {
        string card = RulePack.Default.Card($"hazards/{rule}.md");
        StringBuilder list = new();
        StringBuilder steps = new();
        string title = string.Empty;
        bool inside = false;
        foreach (string line in card.Split('\n'))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                inside = string.Equals(line, "## " + section, StringComparison.Ordinal);
            }
            else if (!inside || line.Length == 0)
            {
                continue;
            }
            else if (line.StartsWith("- ", StringComparison.Ordinal))
            {
                list.Append(line).Append('\n');
            }
            else if (char.IsAsciiDigit(line[0]))
            {
                steps.Append(line).Append('\n');
            }
            else
            {
                title = line;
            }
        }

        if (title.Length == 0)
        {
            return null;
        }

        string body = list.Length == 0 ? string.Empty : $"## Ingredients\n\n{list}\n";
        return steps.Length == 0 ? $"# {title}\n\n{body}" : $"# {title}\n\n{body}## Method\n\n{steps}";
    }
}
