using System.Collections.Immutable;

namespace ShelfSafe.Heat;

/// <summary>Exact unaccomplished temperature Y = (T1 - T)/(T1 - T0) in a slab or a long cylinder after a step of the medium.</summary>
/// <remarks>
/// Y = sum of C exp(-x² Fo) times a shape over the place. Slab: x tan x = Bi, C = 4 sin x/(2x + sin 2x), shape cos. Cylinder: x J1 = Bi J0,
/// C = 2 J1/(x (J0² + J1²)), shape J0. Source: Carslaw and Jaeger, Conduction of Heat in Solids; one-term values in Incropera and DeWitt table 5.1.
/// </remarks>
public sealed class TransientSeries
{
    private readonly bool _slab;

    private TransientSeries(bool slab, double biot, int terms)
    {
        _slab = slab;
        double perBiot = 1 / Bounds.Positive(biot, double.PositiveInfinity, "(Biot number; infinite for a surface at the temperature of the medium)");
        Bounds.Within(terms, 1, 200, "terms");
        double[] roots = new double[terms];
        double[] coefficients = new double[terms];
        for (int n = 0; n < terms; n++)
        {
            double x = Root(Characteristic, n * Math.PI, (n + 1) * Math.PI);
            (double j0, double j1) = slab ? default : Bessel.Of(x);
            roots[n] = x;
            coefficients[n] = slab ? 4 * Math.Sin(x) / ((2 * x) + Math.Sin(2 * x)) : 2 * j1 / (x * ((j0 * j0) + (j1 * j1)));
        }

        Roots = [.. roots];
        Coefficients = [.. coefficients];

        double Characteristic(double x)
        {
            if (slab)
            {
                return (x * Math.Sin(x) * perBiot) - Math.Cos(x);
            }

            (double j0, double j1) = Bessel.Of(x);
            return (x * j1 * perBiot) - j0;
        }
    }

    /// <summary>The roots x, rising.</summary>
    public ImmutableArray<double> Roots { get; }

    /// <summary>The coefficients C.</summary>
    public ImmutableArray<double> Coefficients { get; }

    /// <summary>Series of a slab heated from both faces.</summary>
    /// <param name="biot">h times half thickness over k, above 0; infinity for a face at the temperature of the medium.</param>
    /// <param name="terms">How many terms, 1 to 200; one is good to 0.6 % from Fo 0.2 on.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static TransientSeries Slab(double biot, int terms = 40) => new(slab: true, biot, terms);

    /// <summary>Series of a long cylinder.</summary>
    /// <param name="biot">h times radius over k, above 0; infinity for a wall at the temperature of the medium.</param>
    /// <param name="terms">How many terms, 1 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public static TransientSeries Cylinder(double biot, int terms = 40) => new(slab: false, biot, terms);

    /// <summary>Y at a place.</summary>
    /// <param name="fourier">alpha t / (half thickness or radius)², 0 or more.</param>
    /// <param name="place">0 at the middle to 1 at the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public double Ratio(double fourier, double place = 0)
    {
        Bounds.Within(place, 0, 1, "from the middle (0) to the surface (1)");
        return Sum(fourier, x => place == 0 ? 1 : _slab ? Math.Cos(x * place) : Bessel.Of(x * place).J0);
    }

    /// <summary>Mean of Y over the whole body: the share of the heat that is still missing.</summary>
    /// <param name="fourier">alpha t / (half thickness or radius)², 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public double MeanRatio(double fourier) => Sum(fourier, x => _slab ? Math.Sin(x) / x : 2 * Bessel.Of(x).J1 / x);

    private double Sum(double fourier, Func<double, double> shape)
    {
        Bounds.Within(fourier, 0, double.MaxValue, "(Fourier number)");
        double sum = 0;
        for (int n = 0; n < Roots.Length; n++)
        {
            double decay = Math.Exp(-Roots[n] * Roots[n] * fourier);
            if (decay < 1e-18)
            {
                break;
            }

            sum += Coefficients[n] * decay * shape(Roots[n]);
        }

        return sum;
    }

    /// <summary>The only root in a bracket, by false position with halved weights (Illinois).</summary>
    private static double Root(Func<double, double> f, double low, double high)
    {
        double atLow = f(low);
        double atHigh = f(high);
        double x = low;
        for (int i = 0; i < 100 && high - low > 1e-14 * high; i++)
        {
            x = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            double at = f(x);
            if (Math.Abs(at) < 1e-15)
            {
                break;
            }

            if (at > 0 == atHigh > 0)
            {
                (high, atHigh, atLow) = (x, at, atLow / 2);
            }
            else
            {
                (low, atLow, atHigh) = (x, at, atHigh / 2);
            }
        }

        return x;
    }
}
