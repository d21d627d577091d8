namespace ShelfSafe.Equilibrium;

/// <summary>Water activity of solutions: the share of pure water's vapour pressure that a food has.</summary>
/// <remarks>
/// Good to 0.01 for simple sugar or salt, to 0.03 to 0.05 for jam. Always of the water phase: fat and insoluble fibre do not count. It excuses no low-acid
/// recipe. Sources are named at each equation.
/// </remarks>
public static class WaterActivity
{
    private const double WaterGramsPerMole = 18.015;

    /// <summary>Raoult's law for an ideal solution: aw = nw/(nw + i ns). Use it only above 0.95; saturated salt comes out at 0.82 instead of 0.753.</summary>
    /// <param name="waterGrams">Water, above 0 g.</param>
    /// <param name="particleMoles">Moles of molecules and ions together (salt counts twice), 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double Raoult(double waterGrams, double particleMoles)
    {
        double water = WaterMoles(waterGrams);
        ArgumentOutOfRangeException.ThrowIfNegative(particleMoles);
        return water / (water + particleMoles);
    }

    /// <summary>Norrish's equation: aw = Xw exp(-(sum of sqrt(K) X)²).</summary>
    /// <param name="waterGrams">Water, above 0 g.</param>
    /// <param name="solutes">Sugars, polyols and the like; not salts.</param>
    /// <remarks>Source: Norrish (1966) as in Baeza et al., Food and Bioprocess Technology 3:87 (2010); the rule for mixtures as recalled.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The water is not above 0.</exception>
    public static double Norrish(double waterGrams, params ReadOnlySpan<Solute> solutes)
    {
        double water = WaterMoles(waterGrams);
        double all = water;
        double pull = 0;
        foreach (Solute solute in solutes)
        {
            all += solute.Moles;
            pull += Math.Sqrt(solute.NorrishK) * solute.Moles;
        }

        return water / all * Math.Exp(-(pull / all) * (pull / all));
    }

    /// <summary>Osmotic coefficient of sodium chloride at 25 °C.</summary>
    /// <param name="molality">Moles in each kilogram of water, 0 to 6.2 (saturated).</param>
    /// <remarks>
    /// φ = 1 - A sqrt(m)/(1 + 1.2 sqrt(m)) + m (b0 + b1 exp(-2 sqrt(m))) + C m². Source: Pitzer and Mayorga (1973); b0, b1 and C as in the Pitzer
    /// database of PHREEQC (USGS), A as recalled. It meets the published 1.271 at 6 mol/kg (Robinson and Stokes) within 0.003.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The molality lies outside.</exception>
    public static double SaltOsmoticCoefficient(double molality)
    {
        if (!(molality >= 0 && molality <= 6.2))
        {
            throw new ArgumentOutOfRangeException(nameof(molality), molality, "must lie from 0 to 6.2 mol/kg (saturated)");
        }

        double root = Math.Sqrt(molality);
        return 1 - (0.3915 * root / (1 + (1.2 * root))) + (molality * (0.0765 + (0.2664 * Math.Exp(-2 * root)))) + (0.00127 * molality * molality);
    }

    /// <summary>Water activity of salt water at 25 °C: aw = exp(-2 φ m Mw).</summary>
    /// <param name="molality">Moles in each kilogram of water, 0 to 6.2 (saturated).</param>
    /// <exception cref="ArgumentOutOfRangeException">The molality lies outside.</exception>
    public static double Salt(double molality) => FromOsmotic(molality, SaltOsmoticCoefficient(molality), ions: 2);

    /// <summary>Water activity from an osmotic coefficient: aw = exp(-i φ m Mw).</summary>
    /// <param name="molality">Moles in each kilogram of water, 0 or more.</param>
    /// <param name="osmoticCoefficient">φ, 0 or more.</param>
    /// <param name="ions">Particles of a molecule, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static double FromOsmotic(double molality, double osmoticCoefficient, int ions)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(molality);
        ArgumentOutOfRangeException.ThrowIfNegative(osmoticCoefficient);
        ArgumentOutOfRangeException.ThrowIfLessThan(ions, 1);
        return Math.Exp(-ions * osmoticCoefficient * molality * WaterGramsPerMole / 1_000);
    }

    /// <summary>Ross's rule: the product of the activities that each solute would give alone in all the water.</summary>
    /// <param name="each">Activity of each, 0 to 1.</param>
    /// <remarks>Source: Ross, Food Technology 29(3):26 (1975).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An activity lies outside.</exception>
    public static double Ross(params ReadOnlySpan<double> each)
    {
        double product = 1;
        foreach (double one in each)
        {
            product *= one is >= 0 and <= 1 ? one : throw new ArgumentOutOfRangeException(nameof(each), one, "must lie from 0 to 1");
        }

        return product;
    }

    /// <summary>Grover's rule for confectionery: aw = 1.04 - 0.1 Es + 0.0045 Es².</summary>
    /// <param name="sucroseEquivalents">Es: sum of E times grams over grams of water, from 1.2 (about 55 % sucrose) to 11.</param>
    /// <remarks>Source: help page of Recipe Water Activity, knowledgerevolution.com.au. Useless in thin syrup.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The syrup is too thin for the rule or past its lowest point.</exception>
    public static double Grover(double sucroseEquivalents) => sucroseEquivalents is >= 1.2 and <= 11
        ? 1.04 - (0.1 * sucroseEquivalents) + (0.0045 * sucroseEquivalents * sucroseEquivalents)
        : throw new ArgumentOutOfRangeException(nameof(sucroseEquivalents), sucroseEquivalents, "must lie from 1.2 to 11 g of sucrose for each g of water");

    /// <summary>Money and Born's rule for jams and fondants: aw = 1/(1 + 0.27 n).</summary>
    /// <param name="sugarMolesPer100Grams">n: moles of sugars in each 100 g of water, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative.</exception>
    public static double MoneyBorn(double sugarMolesPer100Grams)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sugarMolesPer100Grams);
        return 1 / (1 + (0.27 * sugarMolesPer100Grams));
    }

    /// <summary>Water activity above a saturated salt, for checking a meter: ln aw = k1/T - k2.</summary>
    /// <param name="k1">Slope of the regression, kelvin.</param>
    /// <param name="k2">Constant of the regression.</param>
    /// <param name="temperatureCelsius">From 0 to 60 °C.</param>
    /// <remarks>Source: regressions after Labuza et al. (1985).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside.</exception>
    public static double SaturatedSalt(double k1, double k2, double temperatureCelsius) => temperatureCelsius is >= 0 and <= 60
        ? Math.Exp((k1 / (temperatureCelsius + 273.15)) - k2)
        : throw new ArgumentOutOfRangeException(nameof(temperatureCelsius), temperatureCelsius, "must lie from 0 to 60 °C");

    private static double WaterMoles(double grams)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grams);
        return grams / WaterGramsPerMole;
    }
}
