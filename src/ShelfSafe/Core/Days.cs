using System.Globalization;

namespace ShelfSafe.Core;

/// <summary>A day as it is kept and shown everywhere: year, month, day, the same in every culture.</summary>
public static class Days
{
    /// <summary>Characters of a day.</summary>
    public const int Length = 10;

    private const string Form = "yyyy-MM-dd";

    /// <summary>Such as <c>2026-10-03</c>.</summary>
    public static string Of(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>Reads such a day; any other form is none.</summary>
    public static bool TryRead(string text, out DateOnly day) => DateOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
