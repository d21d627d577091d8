namespace ShelfSafe.Equilibrium;

/// <summary>Something dissolved, for Norrish's equation.</summary>
/// <param name="Moles">Amount, 0 or more.</param>
/// <param name="NorrishK">Norrish's constant, 0 (an ideal solute) to 50.</param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
public readonly record struct Solute(double Moles, double NorrishK)
{
    /// <summary>Amount, moles.</summary>
    public double Moles { get; } = Moles >= 0 && double.IsFinite(Moles) ? Moles : throw new ArgumentOutOfRangeException(nameof(Moles), Moles, "must be 0 mol or more");

    /// <summary>Norrish's constant.</summary>
    public double NorrishK { get; } = NorrishK is >= 0 and <= 50 ? NorrishK : throw new ArgumentOutOfRangeException(nameof(NorrishK), NorrishK, "must lie from 0 to 50");

    /// <summary>A solute by weight.</summary>
    /// <param name="grams">Amount, 0 g or more.</param>
    /// <param name="gramsPerMole">Molar mass, above 0.</param>
    /// <param name="norrishK">Norrish's constant, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
    public static Solute FromGrams(double grams, double gramsPerMole, double norrishK)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gramsPerMole);
        return new(grams / gramsPerMole, norrishK);
    }
}
