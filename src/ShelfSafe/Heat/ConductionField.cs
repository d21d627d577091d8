namespace ShelfSafe.Heat;

/// <summary>The temperatures of the conduction grid and one step forward.</summary>
/// <remarks>
/// Nodes lie on the axis and every dr from it, the last half a dr inside the wall; in height in the middle of equal slices. Couplings below are
/// conductance over heat capacity, times half a step.
/// </remarks>
internal sealed class ConductionField
{
    private readonly JarFilling _jar;
    private readonly int _width;
    private readonly int _height;
    private readonly double _dr;
    private readonly double _dz;
    private readonly double _longestStep;
    private readonly double[] _ringVolume;
    private readonly double[] _work;
    private readonly double[] _inward;
    private readonly double[] _outward;
    private readonly double[] _wall;
    private readonly double[] _down;
    private readonly double[] _up;
    private readonly double[] _end;
    private Tridiagonal? _radial;
    private Tridiagonal? _axial;
    private double _wallConductance;
    private double _endTransfer;
    private double _step;

    public ConductionField(JarFilling jar, ConductionGrid grid)
    {
        (_jar, _width, _height, _longestStep) = (jar, grid.RadialNodes, grid.AxialNodes, grid.LongestStepSeconds);
        _dr = jar.Shape.RadiusMetres / (_width - 0.5);
        _dz = 2 * jar.Shape.HalfHeightMetres / _height;
        Celsius = new double[_width * _height];
        Array.Fill(Celsius, jar.InitialCelsius);
        _work = new double[Celsius.Length];
        (_inward, _outward, _wall) = (new double[_width], new double[_width], new double[_width]);
        (_down, _up, _end) = (new double[_height], new double[_height], new double[_height]);
        _ringVolume = new double[_width];
        for (int i = 0; i < _width; i++)
        {
            _ringVolume[i] = 2 * Math.PI * _dz * (i == 0 ? _dr * _dr / 8 : i * _dr * _dr);
        }
    }

    /// <summary>Temperatures, row after row from the bottom, each from axis to wall.</summary>
    public double[] Celsius { get; }

    /// <summary>Heat that passed the surface inward so far.</summary>
    public double AbsorbedJoules { get; private set; }

    /// <summary>Temperature on the axis at half height.</summary>
    public double CentreCelsius => Celsius[_height / 2 * _width];

    /// <summary>Mean over the volume.</summary>
    public double MeanCelsius
    {
        get
        {
            double sum = 0;
            for (int at = 0; at < Celsius.Length; at++)
            {
                sum += _ringVolume[at % _width] * Celsius[at];
            }

            return sum / _jar.Shape.VolumeCubicMetres;
        }
    }

    /// <summary>Sets surface and step for a phase.</summary>
    /// <returns>The step in seconds, which divides the phase into whole steps.</returns>
    public double EnterPhase(double film, double seconds, out int steps)
    {
        double k = _jar.Food.ConductivityWattsPerMetreKelvin;
        double outside = (1 / film) + _jar.WallSquareMetresKelvinPerWatt;
        double wallTransfer = 1 / (outside + (_dr / 2 / k));
        _endTransfer = 1 / (outside + (_dz / 2 / k));
        _wallConductance = 2 * Math.PI * _jar.Shape.RadiusMetres * _dz * wallTransfer;
        double perSecond = FillCouplings(half: 1);
        steps = (int)Math.Ceiling(seconds / Math.Min(_longestStep, 2 / perSecond));
        _step = seconds / steps;
        FillCouplings(_step / 2);
        _radial = new(_inward, _outward, _wall);
        _axial = new(_down, _up, _end);
        return _step;
    }

    /// <summary>One step forward with the temperature that the surroundings have halfway through it.</summary>
    public void Step(double retortCelsius)
    {
        AbsorbEnds(retortCelsius);
        ExplicitAxial(retortCelsius);
        for (int j = 0; j < _height; j++)
        {
            _radial!.Solve(_work.AsSpan(j * _width, _width));
        }

        AbsorbWall(retortCelsius);
        ExplicitRadial(retortCelsius);
        _axial!.SolveColumns(Celsius, _width);
        AbsorbEnds(retortCelsius);
    }

    /// <summary>Writes all couplings for a half step and returns the largest sum of one node's couplings in one direction.</summary>
    private double FillCouplings(double half)
    {
        double k = _jar.Food.ConductivityWattsPerMetreKelvin;
        double capacity = _jar.Food.HeatCapacityJoulesPerCubicMetreKelvin;
        double largest = 0;
        for (int i = 0; i < _width; i++)
        {
            double over = half / (capacity * _ringVolume[i]);
            double face = 2 * Math.PI * _dz * k * over;
            _inward[i] = i == 0 ? 0 : face * (i - 0.5);
            _outward[i] = i == _width - 1 ? 0 : face * (i + 0.5);
            _wall[i] = i == _width - 1 ? _wallConductance * over : 0;
            largest = Math.Max(largest, _inward[i] + _outward[i] + _wall[i]);
        }

        double slice = half * k / (capacity * _dz * _dz);
        for (int j = 0; j < _height; j++)
        {
            _down[j] = j == 0 ? 0 : slice;
            _up[j] = j == _height - 1 ? 0 : slice;
            _end[j] = j == 0 || j == _height - 1 ? half * _endTransfer / (capacity * _dz) : 0;
            largest = Math.Max(largest, _down[j] + _up[j] + _end[j]);
        }

        return largest;
    }

    /// <summary>First half step: height as it stands, plus what both surfaces send in.</summary>
    private void ExplicitAxial(double retort)
    {
        for (int j = 0; j < _height; j++)
        {
            int row = j * _width;
            double keep = 1 - _down[j] - _up[j] - _end[j];
            ReadOnlySpan<double> below = Celsius.AsSpan(j == 0 ? row : row - _width, _width);
            ReadOnlySpan<double> above = Celsius.AsSpan(j == _height - 1 ? row : row + _width, _width);
            ReadOnlySpan<double> here = Celsius.AsSpan(row, _width);
            Span<double> into = _work.AsSpan(row, _width);
            double sent = _end[j] * retort;
            for (int i = 0; i < into.Length; i++)
            {
                into[i] = (keep * here[i]) + (_down[j] * below[i]) + (_up[j] * above[i]) + sent;
            }

            into[^1] += _wall[^1] * retort;
        }
    }

    /// <summary>Second half step: radius as it stands after the first, plus what both surfaces send in.</summary>
    private void ExplicitRadial(double retort)
    {
        int last = _width - 1;
        for (int j = 0; j < _height; j++)
        {
            int row = j * _width;
            ReadOnlySpan<double> here = _work.AsSpan(row, _width);
            Span<double> into = Celsius.AsSpan(row, _width);
            double sent = _end[j] * retort;
            into[0] = ((1 - _outward[0]) * here[0]) + (_outward[0] * here[1]) + sent;
            for (int i = 1; i < last; i++)
            {
                into[i] = ((1 - _inward[i] - _outward[i]) * here[i]) + (_inward[i] * here[i - 1]) + (_outward[i] * here[i + 1]) + sent;
            }

            into[last] = ((1 - _inward[last] - _wall[last]) * here[last]) + (_inward[last] * here[last - 1]) + (_wall[last] * retort) + sent;
        }
    }

    private void AbsorbEnds(double retort)
    {
        int top = (_height - 1) * _width;
        double sum = 0;
        for (int i = 0; i < _width; i++)
        {
            sum += _ringVolume[i] / _dz * ((2 * retort) - Celsius[i] - Celsius[top + i]);
        }

        AbsorbedJoules += _step / 2 * _endTransfer * sum;
    }

    private void AbsorbWall(double retort)
    {
        double sum = 0;
        for (int j = 0; j < _height; j++)
        {
            sum += retort - _work[(j * _width) + _width - 1];
        }

        AbsorbedJoules += _step * _wallConductance * sum;
    }
}
