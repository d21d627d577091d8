using System.Text;

namespace ShelfSafe.Reports;

/// <summary>Text that stands in Markdown as itself: no mark of it becomes a link, a heading, an element or a picture.</summary>
internal static class MarkdownText
{
    /// <summary>The text in one line, every mark that Markdown would act on made plain.</summary>
    public static string Of(string text)
    {
        string clean = InertText.Of(text);
        StringBuilder built = new(clean.Length + 16);
        for (int i = 0; i < clean.Length; i++)
        {
            switch (clean[i])
            {
                case '&':
                    built.Append("&amp;");
                    break;
                case '<':
                    built.Append("&lt;");
                    break;
                case '>':
                    built.Append("&gt;");
                    break;
                default:
                    built.Append(IsMark(clean, i) ? "\\" : string.Empty).Append(clean[i]);
                    break;
            }
        }

        return built.ToString();
    }

    // Marks that act anywhere, those that act at the start of a line, and those that make a bare address a link.
    private static bool IsMark(string text, int at) => text[at] switch
    {
        '\\' or '`' or '*' or '_' or '[' or ']' or '{' or '}' or '|' or '~' or '#' or '!' or '^' or '$' or '=' or '@' => true,
        ':' => at + 1 < text.Length && text[at + 1] != ' ',
        '-' or '+' => at == 0 || (at + 1 < text.Length && text[at + 1] == text[at]),
        '.' or ')' => OnlyDigitsBefore(text, at) || IsAfter(text, at, "www"),
        '"' or '\'' => at + 1 < text.Length && text[at + 1] == text[at],
        _ => false,
    };

    private static bool OnlyDigitsBefore(string text, int at)
    {
        int digits = at - 1;
        while (digits >= 0 && char.IsAsciiLetterOrDigit(text[digits]) && at - digits < 10)
        {
            digits--;
        }

        return digits < 0 && at > 0;
    }

    private static bool IsAfter(string text, int at, string word) =>
        at >= word.Length && text.AsSpan(at - word.Length, word.Length).Equals(word, StringComparison.OrdinalIgnoreCase);
}
