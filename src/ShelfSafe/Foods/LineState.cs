using ShelfSafe.Core;

namespace ShelfSafe.Foods;

/// <summary>What has been read of a line so far.</summary>
internal sealed class LineState(string text)
{
    /// <summary>The whole line.</summary>
    public string Text { get; } = text;

    /// <summary>Printed measures in reading order.</summary>
    public List<Amount> Measures { get; } = [];

    /// <summary>Size of one package.</summary>
    public Amount? Package { get; set; }

    /// <summary>Whether the line gives its foods in parts of one another: "2:1 oil to vinegar".</summary>
    public bool IsRatio { get; set; }

    /// <summary>Start of the food phrase.</summary>
    public int Start { get; set; }

    /// <summary>End of the food phrase.</summary>
    public int End { get; set; } = text.Length;

    /// <summary>Alternatives that stand in brackets or behind a comma: offsets of their words.</summary>
    public List<(int Start, int End)> Others { get; } = [];

    /// <summary>Preparation words.</summary>
    public string Preparation { get; set; } = string.Empty;

    /// <summary>small, medium or large.</summary>
    public string? Size { get; set; }

    /// <summary>Whether the line says it may be left out.</summary>
    public bool Optional { get; set; }

    /// <summary>Whether the amount is left to taste.</summary>
    public bool ToTaste { get; set; }

    /// <summary>Whether it is only added at serving.</summary>
    public bool AtServing { get; set; }

    /// <summary>juice, zest, or both, of a counted fruit.</summary>
    public string? JuiceOrZest { get; set; }

    /// <summary>Offsets that belong to no phrase: brackets and amounts inside.</summary>
    public List<(int Start, int End)> Holes { get; } = [];

    /// <summary>The food phrase with its holes left out.</summary>
    public string Phrase => Between(Start, End);

    /// <summary>Text between two offsets, holes as blanks.</summary>
    public string Between(int start, int end)
    {
        if (end <= start)
        {
            return string.Empty;
        }

        if (Holes.Count == 0)
        {
            return Text.AsSpan(start, end - start).Trim().ToString();
        }

        char[] chars = Text[start..end].ToCharArray();
        foreach ((int from, int to) in Holes)
        {
            for (int i = Math.Max(from, start); i < Math.Min(to, end); i++)
            {
                chars[i - start] = ' ';
            }
        }

        return new string(chars).Trim();
    }
}
