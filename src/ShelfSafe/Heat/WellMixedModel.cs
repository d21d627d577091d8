namespace ShelfSafe.Heat;

/// <summary>A thin liquid that its own currents keep at one temperature: the fast end of what a jar does.</summary>
/// <remarks>
/// m cp dT/dt = U A (T1 - T), solved exactly over each phase: for T1 = a + b t, T = T1 - b/λ + (T0 - a + b/λ) e^(-λ t) with λ = U A/(m cp).
/// Then fh = ln 10 m cp/(U A) and jh = 1. Source: lumped-capacity heating, e.g. Incropera and DeWitt ch. 5; that thin liquids heat so is told by
/// Tope in USDA AIB 410 (1977). A nominal fast pack for lessons: no fh of a home jar was found in print.
/// </remarks>
public sealed class WellMixedModel : IJarModel
{
    private readonly JarFilling _jar;
    private readonly double _insideFilm;
    private readonly double _stepSeconds;

    /// <summary>Prepares the model.</summary>
    /// <param name="jar">Size, properties, wall and starting temperature.</param>
    /// <param name="insideFilmWattsPerSquareMetreKelvin">Heat transfer between wall and liquid, above 0; may be infinite.</param>
    /// <param name="stepSeconds">Time between points, from 0.1 to 600 s; the points are exact whatever it is.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public WellMixedModel(JarFilling jar, double insideFilmWattsPerSquareMetreKelvin, double stepSeconds = 10)
    {
        _jar = jar;
        _insideFilm = Bounds.Positive(insideFilmWattsPerSquareMetreKelvin, double.PositiveInfinity, "W/(m² K)");
        _stepSeconds = Bounds.Within(stepSeconds, 0.1, 600, "s");
    }

    /// <inheritdoc/>
    public HeatHistory Run(RetortProfile profile)
    {
        HistoryBuilder history = new();
        double celsius = _jar.InitialCelsius;
        double start = 0;
        history.Add(0, celsius, profile.Phases[0].FromCelsius);
        foreach (RetortPhase phase in profile.Phases)
        {
            double rate = Rate(phase);
            double slope = (phase.ToCelsius - phase.FromCelsius) / phase.Seconds;
            double lag = slope / rate;
            double offset = celsius - phase.FromCelsius + lag;
            int steps = (int)Math.Ceiling(phase.Seconds / _stepSeconds);
            for (int i = 1; i <= steps; i++)
            {
                double time = phase.Seconds * i / steps;
                celsius = phase.At(time) - lag + (offset * Math.Exp(-rate * time));
                history.Add(start + time, celsius, phase.At(time));
            }

            start += phase.Seconds;
        }

        double stored = _jar.HeatCapacityJoulesPerKelvin * (celsius - _jar.InitialCelsius);
        return history.Build(stored, stored, celsius);
    }

    /// <summary>fh of the model in a phase, jh being 1.</summary>
    /// <param name="phase">Gives the heat transfer outside the jar.</param>
    public HeatingCurve CurveIn(RetortPhase phase) => new(Math.Log(10) / Rate(phase), 1);

    private double Rate(RetortPhase phase)
    {
        double resistance = (1 / phase.FilmWattsPerSquareMetreKelvin) + _jar.WallSquareMetresKelvinPerWatt + (1 / _insideFilm);
        return resistance > 0
            ? _jar.Shape.SurfaceSquareMetres / (resistance * _jar.HeatCapacityJoulesPerKelvin)
            : throw new ArgumentOutOfRangeException(nameof(phase), phase, "a jar without film and wall has no heating rate; give one of them a resistance");
    }
}
