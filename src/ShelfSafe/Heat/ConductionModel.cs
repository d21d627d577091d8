namespace ShelfSafe.Heat;

/// <summary>A thick food that heats by conduction alone, on a grid: the retort may change and the surface may resist.</summary>
/// <remarks>
/// Finite volumes in radius and height, stepped by alternating directions (Peaceman and Rachford, J. SIAM 3:28, 1955): second order in space and time.
/// The step is kept so short that each half step weights old temperatures only with positive numbers, so no temperature leaves the range of start and
/// surroundings. The jar is symmetric about half height; the centre is its slowest point while it heats, as was found for home-canned tomatoes by
/// Pakola and Andress (NCHFP, 2002).
/// </remarks>
public sealed class ConductionModel : IJarModel
{
    private readonly JarFilling _jar;
    private readonly ConductionGrid _grid;

    /// <summary>Prepares the model.</summary>
    /// <param name="jar">Size, properties, wall and starting temperature.</param>
    /// <param name="grid">Fineness; <see cref="ConductionGrid.Usual"/> where none is given.</param>
    public ConductionModel(JarFilling jar, ConductionGrid? grid = null)
    {
        _jar = jar;
        _grid = grid ?? ConductionGrid.Usual;
    }

    /// <inheritdoc/>
    public HeatHistory Run(RetortProfile profile) => Run(profile, out _);

    /// <summary>Follows the jar and hands out the temperatures at the end, row after row from the bottom, each from axis to wall.</summary>
    internal HeatHistory Run(RetortProfile profile, out double[] finalCelsius)
    {
        ConductionField field = new(_jar, _grid);
        HistoryBuilder history = new();
        double start = 0;
        history.Add(0, field.CentreCelsius, profile.Phases[0].FromCelsius);
        foreach (RetortPhase phase in profile.Phases)
        {
            double step = field.EnterPhase(phase.FilmWattsPerSquareMetreKelvin, phase.Seconds, out int steps);
            for (int i = 0; i < steps; i++)
            {
                field.Step(phase.At((i + 0.5) * step));
                history.Add(start + ((i + 1) * step), field.CentreCelsius, phase.At((i + 1) * step));
            }

            start += phase.Seconds;
        }

        finalCelsius = field.Celsius;
        double mean = field.MeanCelsius;
        return history.Build(field.AbsorbedJoules, _jar.HeatCapacityJoulesPerKelvin * (mean - _jar.InitialCelsius), mean);
    }
}
