namespace ShelfSafe.Heat;

/// <summary>A constant tridiagonal system, factored once and solved many times (Thomas).</summary>
/// <remarks>Rows are (below, 1 + below + above + surface, above) with the outer entries taken negative: diagonally dominant, so no pivoting is needed.</remarks>
internal sealed class Tridiagonal
{
    private readonly double[] _below;
    private readonly double[] _ratio;
    private readonly double[] _inverse;

    /// <summary>Factors a system.</summary>
    /// <param name="below">Coupling of each row to the one before; the first is 0.</param>
    /// <param name="above">Coupling of each row to the one after; the last is 0.</param>
    /// <param name="surface">Coupling of each row to the surroundings.</param>
    public Tridiagonal(double[] below, double[] above, double[] surface)
    {
        _below = below;
        _ratio = new double[below.Length];
        _inverse = new double[below.Length];
        for (int i = 0; i < below.Length; i++)
        {
            double pivot = 1 + below[i] + above[i] + surface[i] - (i > 0 ? below[i] * _ratio[i - 1] : 0);
            _inverse[i] = 1 / pivot;
            _ratio[i] = above[i] / pivot;
        }
    }

    /// <summary>Solves one system in place.</summary>
    public void Solve(Span<double> row)
    {
        double before = 0;
        for (int i = 0; i < row.Length; i++)
        {
            before = (row[i] + (_below[i] * before)) * _inverse[i];
            row[i] = before;
        }

        for (int i = row.Length - 2; i >= 0; i--)
        {
            row[i] += _ratio[i] * row[i + 1];
        }
    }

    /// <summary>Solves as many systems as a row is wide at once; the unknowns of each stand one below another.</summary>
    public void SolveColumns(double[] values, int width)
    {
        for (int j = 0; j < _inverse.Length; j++)
        {
            Span<double> row = values.AsSpan(j * width, width);
            double inverse = _inverse[j];
            if (j == 0)
            {
                for (int i = 0; i < row.Length; i++)
                {
                    row[i] *= inverse;
                }

                continue;
            }

            ReadOnlySpan<double> before = values.AsSpan((j - 1) * width, width);
            for (int i = 0; i < row.Length; i++)
            {
                row[i] = (row[i] + (_below[j] * before[i])) * inverse;
            }
        }

        for (int j = _inverse.Length - 2; j >= 0; j--)
        {
            Span<double> row = values.AsSpan(j * width, width);
            ReadOnlySpan<double> after = values.AsSpan((j + 1) * width, width);
            for (int i = 0; i < row.Length; i++)
            {
                row[i] += _ratio[j] * after[i];
            }
        }
    }
}
