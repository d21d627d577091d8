using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Equilibrium;

/// <summary>An acid in a part of a mixture.</summary>
/// <param name="DissociationPh">pKa of each step, rising; an interval where sources disagree.</param>
/// <param name="MolesPerKilogram">Acid and its salts together, in each kilogram of the part, 0 or more.</param>
public sealed record AcidContent(ImmutableArray<Interval> DissociationPh, Interval MolesPerKilogram)
{
    /// <summary>pKa of each step.</summary>
    public ImmutableArray<Interval> DissociationPh { get; } = DissociationPh is { IsDefaultOrEmpty: false } && DissociationPh.All(step => step.Low <= step.High && step.Low >= -2 && step.High <= 16)
        ? DissociationPh
        : throw new ArgumentOutOfRangeException(nameof(DissociationPh), "give at least one pKa, each from -2 to 16");

    /// <summary>Acid in each kilogram of the part.</summary>
    public Interval MolesPerKilogram { get; } = MixPart.Amount(MolesPerKilogram, 20, "mol/kg", nameof(MolesPerKilogram));

    /// <summary>Mean negative charge of a molecule: sum of j P_j over sum of P_j, P_j = product of the first j Ka / [H]^j.</summary>
    /// <param name="ph">pH of the mixture.</param>
    /// <param name="upper">Takes the upper end of each pKa, which gives the smaller charge.</param>
    internal double Charge(double ph, bool upper)
    {
        double weight = 1;
        double sum = 1;
        double charged = 0;
        for (int j = 0; j < DissociationPh.Length; j++)
        {
            weight *= Math.Pow(10, ph - (upper ? DissociationPh[j].High : DissociationPh[j].Low));
            sum += weight;
            charged += (j + 1) * weight;
        }

        return charged / sum;
    }
}
