using System.Globalization;

namespace ShelfSafe.Core;

/// <summary>Inches as a cook reads them: in quarters and eighths.</summary>
public static class Inches
{
    /// <summary>Such as <c>1/2</c>, <c>1</c> or <c>1 1/4</c>; a length between eighths is printed with a point.</summary>
    /// <param name="inches">A length in inches, 0 or more.</param>
    public static string Of(double inches)
    {
        double whole = Math.Floor(inches);
        string part = ((inches - whole) * 8) switch
        {
            0 => string.Empty,
            1 => "1/8",
            2 => "1/4",
            3 => "3/8",
            4 => "1/2",
            5 => "5/8",
            6 => "3/4",
            7 => "7/8",
            _ => ".",
        };
        string number = whole.ToString("0", CultureInfo.InvariantCulture);
        return part == "." ? inches.ToString("0.##", CultureInfo.InvariantCulture)
            : part.Length == 0 ? number
            : whole == 0 ? part
            : $"{number} {part}";
    }
}
