namespace ShelfSafe.Heat;

/// <summary>Water to drive off until a pot is as thick as wanted, and the heat for it.</summary>
/// <remarks>
/// Solids balance m1 = m0 x0 / x1. Heat of evaporation 2257 kJ/kg at 100 °C (saturated-steam table), about 2 % more at 90 °C. Source: steam table at
/// engineerlaboratory.com. A reduced dish is thicker than the one a process was tested with.
/// </remarks>
public static class BoilDown
{
    private const double EvaporationJoulesPerKilogram = 2_257_000;

    /// <summary>Water to drive off.</summary>
    /// <param name="massKilograms">Mass before, 0 to 1,000 kg.</param>
    /// <param name="solidsBefore">Share of solids before, above 0.</param>
    /// <param name="solidsAfter">Share of solids after, not below the first, at most 1.</param>
    /// <returns>Kilograms of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double WaterKilograms(double massKilograms, double solidsBefore, double solidsAfter)
    {
        Bounds.Within(massKilograms, 0, 1_000, "kg");
        Bounds.Positive(solidsBefore, 1, "as a share");
        Bounds.Within(solidsAfter, solidsBefore, 1, "as a share");
        return massKilograms * (1 - (solidsBefore / solidsAfter));
    }

    /// <summary>Heat that evaporates water already at its boiling point near sea level.</summary>
    /// <param name="waterKilograms">0 to 1,000 kg.</param>
    /// <returns>Joules, losses of pot and stove not counted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass lies outside.</exception>
    public static double EvaporationJoules(double waterKilograms) =>
        Bounds.Within(waterKilograms, 0, 1_000, "kg") * EvaporationJoulesPerKilogram;
}
