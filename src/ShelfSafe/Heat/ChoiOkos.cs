namespace ShelfSafe.Heat;

/// <summary>Thermal properties of a food from its composition.</summary>
/// <remarks>
/// Polynomials a + b t + c t² for each component and mixing by mass (specific heat), by volume (density) and in parallel by volume (conductivity, an
/// upper bound). Source: Choi and Okos, Food Engineering and Process Applications vol. 1 (1986), p. 93, as reproduced in the property annex of
/// Ibarz and in Toledo p. 233-234. Choices where prints differ: water 4176.2 J/(kg K), which real water has, not 4128.9; conductivity of fat
/// falls by 2.7604e-4 per kelvin; that of carbohydrate rises by 1.3874e-3 (both stand ten times too large in some copies). Against measured specific
/// heats the error is 1 to 2 %. Air-filled tissue is lighter and conducts less than this.
/// </remarks>
public static class ChoiOkos
{
    /// <summary>Lowest temperature of the fit, °C: above freezing, since ice is not among the components.</summary>
    public const double LowestCelsius = 0;

    /// <summary>Highest temperature of the fit, °C.</summary>
    public const double HighestCelsius = 150;

    /// <summary>Properties of an unfrozen food.</summary>
    /// <param name="food">Mass fractions; must sum to 1 within 0.001.</param>
    /// <param name="temperatureCelsius">From 0 to 150 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside, or the fractions do not sum to 1.</exception>
    public static ThermalProperties At(Composition food, double temperatureCelsius)
    {
        double t = Bounds.Within(temperatureCelsius, LowestCelsius, HighestCelsius, "°C");
        double sum = food.Water + food.Protein + food.Fat + food.Carbohydrate + food.Fibre + food.Ash;
        Bounds.Within(sum, 0.999, 1.001, "as the sum of all mass fractions", nameof(food));
        Total total = default;
        total.Add(food.Water, Poly(t, 997.18, 3.1439e-3, -3.7574e-3), Poly(t, 4176.2, -9.0864e-2, 5.4731e-3), Poly(t, 0.57109, 1.7625e-3, -6.7036e-6));
        total.Add(food.Protein, Poly(t, 1329.9, -0.5184, 0), Poly(t, 2008.2, 1.2089, -1.3129e-3), Poly(t, 0.17881, 1.1958e-3, -2.7178e-6));
        total.Add(food.Fat, Poly(t, 925.59, -0.41757, 0), Poly(t, 1984.2, 1.4733, -4.8008e-3), Poly(t, 0.18071, -2.7604e-4, -1.7749e-7));
        total.Add(food.Carbohydrate, Poly(t, 1599.1, -0.31046, 0), Poly(t, 1548.8, 1.9625, -5.9399e-3), Poly(t, 0.20141, 1.3874e-3, -4.3312e-6));
        total.Add(food.Fibre, Poly(t, 1311.5, -0.36589, 0), Poly(t, 1845.9, 1.8306, -4.6509e-3), Poly(t, 0.18331, 1.2497e-3, -3.1683e-6));
        total.Add(food.Ash, Poly(t, 2423.8, -0.28063, 0), Poly(t, 1092.6, 1.8896, -3.6817e-3), Poly(t, 0.32962, 1.4011e-3, -2.9069e-6));
        return new(1 / total.Volume, total.Heat, total.Conduction / total.Volume);
    }

    private static double Poly(double t, double a, double b, double c) => a + (b * t) + (c * t * t);

    /// <summary>Sums over the components of one kilogram of food.</summary>
    private struct Total
    {
        public double Volume;
        public double Heat;
        public double Conduction;

        public void Add(double share, double density, double heat, double conductivity)
        {
            double volume = Bounds.Within(share, 0, 1, "as a mass fraction") / density;
            Volume += volume;
            Heat += share * heat;
            Conduction += volume * conductivity;
        }
    }
}
