namespace ShelfSafe.Foods;

/// <summary>Exact ratios between kitchen units of one kind. Source: NIST Handbook 44, Appendix C.</summary>
internal static class UnitFactors
{
    private static readonly Dictionary<string, (char Kind, double Factor)> Factors = new(StringComparer.Ordinal)
    {
        ["g"] = ('m', 1), ["kg"] = ('m', 1000), ["dag"] = ('m', 10), ["mg"] = ('m', 0.001), ["oz"] = ('m', 28.349523125), ["lb"] = ('m', 453.59237),
        ["cm"] = ('l', 1), ["inch"] = ('l', 2.54),
        ["ml"] = ('v', 1), ["cl"] = ('v', 10), ["dl"] = ('v', 100), ["l"] = ('v', 1000), ["tsp"] = ('v', 4.92892159375), ["tbsp"] = ('v', 14.78676478125),
        ["cup"] = ('v', 236.5882365), ["fl-oz"] = ('v', 29.5735295625), ["pint"] = ('v', 473.176473), ["quart"] = ('v', 946.352946), ["gallon"] = ('v', 3785.411784),
    };

    /// <summary>Whether two units can be told apart by print: a cup or spoon is no exact part of a litre, since nobody says whose cup it is.</summary>
    public static bool Alike(string from, string to) => IsHousehold(from) == IsHousehold(to);

    private static bool IsHousehold(string unit) => Factors.TryGetValue(unit, out (char Kind, double Factor) known) && known.Kind == 'v' && unit is not ("ml" or "cl" or "dl" or "l");

    /// <summary>How many of <paramref name="to"/> one <paramref name="from"/> is; <see langword="null"/> where they are unlike.</summary>
    public static double? Ratio(string from, string to) =>
        from == to ? 1
        : Factors.TryGetValue(from, out (char Kind, double Factor) left) && Factors.TryGetValue(to, out (char Kind, double Factor) right) && left.Kind == right.Kind
            ? left.Factor / right.Factor
            : null;
}
