namespace ShelfSafe.Heat;

/// <summary>What a food is made of, as mass fractions that sum to 1.</summary>
/// <param name="Water">Share of water, 0 to 1.</param>
/// <param name="Protein">Share of protein, 0 to 1.</param>
/// <param name="Fat">Share of fat, 0 to 1.</param>
/// <param name="Carbohydrate">Share of carbohydrate without fibre, 0 to 1.</param>
/// <param name="Fibre">Share of fibre, 0 to 1.</param>
/// <param name="Ash">Share of ash, 0 to 1.</param>
public readonly record struct Composition(double Water, double Protein, double Fat, double Carbohydrate, double Fibre, double Ash)
{
    /// <summary>Makes a composition of grams, kilograms or per cent: only the proportions count.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A part is negative or not finite, or all are 0.</exception>
    public static Composition FromParts(double water, double protein, double fat, double carbohydrate, double fibre, double ash)
    {
        const string Unit = "in one common unit of mass";
        double sum = Bounds.Within(water, 0, 1e9, Unit) + Bounds.Within(protein, 0, 1e9, Unit) + Bounds.Within(fat, 0, 1e9, Unit)
            + Bounds.Within(carbohydrate, 0, 1e9, Unit) + Bounds.Within(fibre, 0, 1e9, Unit) + Bounds.Within(ash, 0, 1e9, Unit);
        Bounds.Positive(sum, 6e9, Unit);
        return new(water / sum, protein / sum, fat / sum, carbohydrate / sum, fibre / sum, ash / sum);
    }
}
