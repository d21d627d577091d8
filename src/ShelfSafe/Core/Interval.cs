namespace ShelfSafe.Core;

/// <summary>What a quantity may be: from <see cref="Low"/> to <see cref="High"/>, both counted in; an unbounded end is infinite.</summary>
/// <param name="Low">Smallest possible value.</param>
/// <param name="High">Largest possible value, <see cref="double.PositiveInfinity"/> where nothing bounds it.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>Exactly nothing.</summary>
    public static Interval Zero => new(0, 0);

    /// <summary>Anything from nothing upward.</summary>
    public static Interval Unknown => new(0, double.PositiveInfinity);

    /// <summary>A single value.</summary>
    public static Interval Exactly(double value) => new(value, value);

    /// <summary>Whether the upper end is finite.</summary>
    public bool IsBounded => double.IsFinite(High);

    /// <summary>Sum of two independent quantities.</summary>
    public static Interval operator +(Interval left, Interval right) => new(left.Low + right.Low, left.High + right.High);

    /// <summary>A quantity times a factor of 0 or more.</summary>
    public static Interval operator *(Interval left, double factor) => new(left.Low * factor, Mul(left.High, factor));

    /// <summary>A quantity times a factor that is itself uncertain; both 0 or more.</summary>
    public static Interval operator *(Interval left, Interval right) => new(left.Low * right.Low, Mul(left.High, right.High));

    /// <summary>Sum of two independent quantities.</summary>
    public static Interval Add(Interval left, Interval right) => left + right;

    /// <summary>A quantity times a factor of 0 or more.</summary>
    public static Interval Multiply(Interval left, double factor) => left * factor;

    /// <summary>The smallest interval that holds both: what a quantity may be that is one of the two.</summary>
    public Interval Hull(Interval other) => new(Math.Min(Low, other.Low), Math.Max(High, other.High));

    /// <summary>The same upper end with nothing as the lower: the quantity may be left out.</summary>
    public Interval OrNothing() => new(0, High);

    /// <summary>
    /// Share of this part in a whole made of it and independent others: the upper end is high / (high + others low),
    /// never interval divided by interval, which would count the part twice.
    /// </summary>
    /// <param name="others">Everything else in the whole, in the unit of this part, 0 or more.</param>
    /// <returns>A share from 0 to 1; 0 to 1 where nothing bounds the parts.</returns>
    public Interval ShareAgainst(Interval others)
    {
        double low = Low <= 0 ? 0 : double.IsFinite(others.High) ? Low / (Low + others.High) : 0;
        double high = High <= 0 ? 0 : double.IsFinite(High) ? High / (High + others.Low) : 1;
        return new(low, high);
    }

    private static double Mul(double value, double factor) => factor == 0 ? 0 : value * factor;
}
