using ShelfSafe.Core;

namespace ShelfSafe.Equilibrium;

/// <summary>How a food resists a change of its own pH.</summary>
/// <param name="OwnPh">pH of the food by itself, 0 to 14.</param>
/// <param name="MolesPerKilogramPh">Acid that moves one kilogram by one pH, 0 or more; unbounded where nothing is published.</param>
/// <remarks>
/// Taken as constant over pH, which real foods are not. Price et al. (J. Food Sci. 85:918, 2020) work with measured titration curves and
/// call prediction for foods without them impractical: hence intervals, and wide ones.
/// </remarks>
public sealed record FoodBuffer(Interval OwnPh, Interval MolesPerKilogramPh)
{
    /// <summary>pH of the food by itself.</summary>
    public Interval OwnPh { get; } = MixPart.Amount(OwnPh, 14, "(pH)", nameof(OwnPh));

    /// <summary>Acid that moves one kilogram by one pH.</summary>
    public Interval MolesPerKilogramPh { get; } = MixPart.Amount(MolesPerKilogramPh, double.PositiveInfinity, "mol/(kg pH)", nameof(MolesPerKilogramPh));
}
