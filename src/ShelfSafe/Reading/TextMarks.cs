using System.Buffers;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Small questions about characters and cuts of text that every reader asks.</summary>
internal static class TextMarks
{
    private static readonly SearchValues<char> s_invisible = SearchValues.Create(
        "\u00AD\u034F\u180E\u200B\u200C\u200D\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2060\u2061\u2062\u2063\u2064\u2066\u2067\u2068\u2069\uFEFF");

    /// <summary>Whether a character shows nothing: spaces of every width, line ends, joiners, byte-order marks.</summary>
    public static bool IsBlank(char c) => char.IsWhiteSpace(c) || c is '\u200B' or '\u200C' or '\u2060' or '\uFEFF' or '\uFE0F';

    /// <summary>Whether a character has no width and parts no words: zero-width spaces and joiners, soft hyphens, marks of direction.</summary>
    public static bool IsInvisible(char c) => s_invisible.Contains(c);

    /// <summary>Whether a text holds such a character.</summary>
    public static bool HasInvisible(ReadOnlySpan<char> text) => text.ContainsAny(s_invisible);

    /// <summary>Whether a character is used as a bullet or a check box by people who write no Markdown.</summary>
    public static bool IsBullet(char c) => c is '•' or '·' or '‣' or '◦' or '▪' or '▫' or '●' or '○' or '■' or '□'
        or '▢' or '☐' or '☑' or '☒' or '✓' or '✔' or '◻' or '◼' or '∙' or '⁃' or '➤' or '►' or '▸';

    /// <summary>The part of a text from <paramref name="start"/> to <paramref name="end"/>, without space at its ends.</summary>
    public static MappedText Cut(this MappedText text, int start, int end)
    {
        while (start < end && IsBlank(text.Text[start]))
        {
            start++;
        }

        while (end > start && IsBlank(text.Text[end - 1]))
        {
            end--;
        }

        if (start == 0 && end == text.Text.Length)
        {
            return text;
        }

        return text.Slice(start, end);
    }
}
