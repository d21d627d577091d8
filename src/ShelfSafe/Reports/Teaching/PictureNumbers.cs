using System.Globalization;
using ShelfSafe.Lessons;

namespace ShelfSafe.Reports.Teaching;

/// <summary>What all kinds of picture share: how numbers are written, which letter names a curve and where it stands.</summary>
internal static class PictureNumbers
{
    private const int LongestName = 44;

    /// <summary>A number of an axis or bar, with a point whatever the culture.</summary>
    public static string Of(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture); // the sum makes -0 a plain 0

    /// <summary>The ends of a bar; only the upper where it starts at nothing.</summary>
    public static string Of(FigureBar bar) => bar.Low <= 0 ? Of(Math.Round(bar.High, 2)) : string.Create(CultureInfo.InvariantCulture, $"{Of(bar.Low)}-{Of(bar.High)}");

    /// <summary>Letter of the curve with a number, from A.</summary>
    public static string Letter(int index) => ((char)('A' + (index % 26))).ToString();

    /// <summary>The point at which a curve carries its letter: each curve at another time, so that letters do not meet.</summary>
    public static int PlaceOfLetter(FigureLine line, int index, int count) =>
        Math.Clamp((int)(line.X.Length * (0.2 + (0.5 * index / Math.Max(1, count)))), 0, line.X.Length - 1);

    /// <summary>A name cut to what fits beside a bar.</summary>
    public static string Short(string name)
    {
        string clean = InertText.Of(name);
        if (clean.Length <= LongestName)
        {
            return clean;
        }

        int end = char.IsHighSurrogate(clean[LongestName - 2]) ? LongestName - 2 : LongestName - 1;
        return clean[..end] + "…";
    }
}
