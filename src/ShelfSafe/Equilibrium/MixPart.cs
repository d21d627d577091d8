using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Equilibrium;

/// <summary>One part of a mixture: a food, a juice, vinegar, water.</summary>
/// <param name="Kilograms">Its mass, 0 or more; the upper end may be unbounded.</param>
/// <param name="Acids">Acids in it.</param>
/// <param name="CationMolesPerKilogram">Strong cations (sodium, potassium) that stand against acid already turned to salt, 0 or more.</param>
/// <param name="Buffer">Its buffering, or <see langword="null"/> for water, sugar, vinegar and the like. A food is given either by acids and cations or by its buffer, else its acid counts twice.</param>
public sealed record MixPart(Interval Kilograms, ImmutableArray<AcidContent> Acids, Interval CationMolesPerKilogram, FoodBuffer? Buffer)
{
    private const double WaterIonProduct = 1e-14;

    /// <summary>Mass of the part.</summary>
    public Interval Kilograms { get; } = Amount(Kilograms, double.PositiveInfinity, "kg", nameof(Kilograms));

    /// <summary>Acids in the part.</summary>
    public ImmutableArray<AcidContent> Acids { get; } = Acids.IsDefault ? [] : Acids;

    /// <summary>Strong cations in each kilogram.</summary>
    public Interval CationMolesPerKilogram { get; } = Amount(CationMolesPerKilogram, 20, "mol/kg", nameof(CationMolesPerKilogram));

    /// <summary>Plain water.</summary>
    /// <param name="kilograms">Its mass.</param>
    public static MixPart Water(Interval kilograms) => new(kilograms, [], Interval.Zero, null);

    /// <summary>A food with its own pH and buffering.</summary>
    /// <param name="kilograms">Its mass.</param>
    /// <param name="buffer">Its own pH and its buffering.</param>
    public static MixPart Food(Interval kilograms, FoodBuffer buffer) => new(kilograms, [], Interval.Zero, buffer);

    /// <summary>A solution of one acid, such as vinegar.</summary>
    /// <param name="kilograms">Mass of the solution.</param>
    /// <param name="acid">The acid in each kilogram.</param>
    public static MixPart Acid(Interval kilograms, AcidContent acid) => new(kilograms, [acid], Interval.Zero, null);

    /// <summary>Refuses an interval that is upside down, negative, not a number or too high.</summary>
    internal static Interval Amount(Interval value, double highest, string unit, string name) =>
        value.Low >= 0 && double.IsFinite(value.Low) && value.Low <= value.High && value.High <= highest
            ? value
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture, $"must rise from 0 or more to at most {highest} {unit}"));

    /// <summary>The most positive (or most negative) charge that the part can carry at a pH, moles.</summary>
    internal double Charge(double ph, bool upper)
    {
        double hydrogen = Math.Pow(10, -ph);
        double each = hydrogen - (WaterIonProduct / hydrogen) + (upper ? CationMolesPerKilogram.High : CationMolesPerKilogram.Low);
        foreach (AcidContent acid in Acids)
        {
            each -= (upper ? acid.MolesPerKilogram.Low : acid.MolesPerKilogram.High) * acid.Charge(ph, upper);
        }

        if (Buffer is { } buffer)
        {
            double away = (upper ? buffer.OwnPh.High : buffer.OwnPh.Low) - ph;
            each += Extreme(buffer.MolesPerKilogramPh, away, upper);
        }

        return Extreme(Kilograms, each, upper);
    }

    /// <summary>Largest (or smallest) product of an amount and a number of either sign.</summary>
    private static double Extreme(Interval amount, double number, bool upper)
    {
        double end = number > 0 == upper ? amount.High : amount.Low;
        return number == 0 || end == 0 ? 0 : end * number;
    }
}
