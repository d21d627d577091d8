using System.Globalization;
using System.Runtime.CompilerServices;

namespace ShelfSafe.Heat;

/// <summary>Refuses physical nonsense with the valid range in the message.</summary>
internal static class Bounds
{
    /// <summary>The value itself, where it lies in a closed range; not-a-number lies in none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside.</exception>
    public static double Within(double value, double low, double high, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture, $"must lie from {low} to {high} {unit}"));

    /// <summary>The value itself, where it is above zero and not above a highest one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative, too high or not a number.</exception>
    public static double Positive(double value, double high, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value > 0 && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture, $"must be above 0 and at most {high} {unit}"));
}
