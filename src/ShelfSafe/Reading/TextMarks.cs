using System.Text;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Small questions about characters and cuts of text that every reader asks.</summary>
internal static class TextMarks
{
    /// <summary>Whether a character shows nothing: spaces of every width, line ends, joiners, byte-order marks.</summary>
    public static bool IsBlank(char c) => char.IsWhiteSpace(c) || c is '\u200B' or '\u200C' or '\u2060' or '\uFEFF' or '\uFE0F';

    /// <summary>Whether a character has no width and parts no words: zero-width spaces and joiners, soft hyphens, marks of direction.</summary>
    public static bool IsInvisible(char c) => c >= '\u00AD' && c is '\u00AD' or '\u034F' or '\u180E' or '\u2060' or '\uFEFF' or (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2061' and <= '\u2064') or (>= '\u2066' and <= '\u2069');

    /// <summary>Whether a text holds such a character.</summary>
    public static bool HasInvisible(ReadOnlySpan<char> text)
    {
        if (Ascii.IsValid(text))
        {
            return false;
        }

        foreach (char c in text)
        {
            if (IsInvisible(c))
            {
                return true;
            }
        }

        return false;
    }

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
