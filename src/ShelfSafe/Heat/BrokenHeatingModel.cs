namespace ShelfSafe.Heat;

/// <summary>A jar that heats by currents until its starch sets, and by conduction from then on.</summary>
/// <remarks>
/// Well mixed (<see cref="WellMixedModel"/>) up to the setting temperature, then conduction (<see cref="ConductionModel"/>) from that even temperature.
/// Setting is taken to be sudden and everywhere at once, which real starch is not. That starch which gels in the can turns convection into conduction and
/// gives a broken heating curve is told of cream-style corn and condensed soup (Tope in USDA AIB 410, 1977).
/// </remarks>
public sealed class BrokenHeatingModel : IJarModel
{
    private readonly JarFilling _jar;
    private readonly WellMixedModel _before;
    private readonly double _setsAtCelsius;
    private readonly ConductionGrid _grid;

    /// <summary>Prepares the model.</summary>
    /// <param name="jar">Size, properties, wall and starting temperature.</param>
    /// <param name="insideFilmWattsPerSquareMetreKelvin">Heat transfer between wall and liquid before setting, above 0; may be infinite.</param>
    /// <param name="setsAtCelsius">Temperature at which the food sets, from 0 to 150 °C; at or below the start it is set from the first moment.</param>
    /// <param name="grid">Fineness of the conduction part.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside.</exception>
    public BrokenHeatingModel(JarFilling jar, double insideFilmWattsPerSquareMetreKelvin, double setsAtCelsius, ConductionGrid? grid = null)
    {
        _jar = jar;
        _before = new(jar, insideFilmWattsPerSquareMetreKelvin);
        _setsAtCelsius = Bounds.Within(setsAtCelsius, 0, 150, "°C");
        _grid = grid ?? ConductionGrid.Usual;
    }

    /// <inheritdoc/>
    public HeatHistory Run(RetortProfile profile)
    {
        if (_jar.InitialCelsius >= _setsAtCelsius)
        {
            return new ConductionModel(_jar, _grid).Run(profile);
        }

        HeatHistory mixed = _before.Run(profile);
        int set = 0;
        while (set < mixed.Seconds.Length && mixed.CentreCelsius[set] < _setsAtCelsius)
        {
            set++;
        }

        // Set in the very last moment or never: nothing is left to conduct.
        if (set >= mixed.Seconds.Length - 1)
        {
            return mixed;
        }

        double celsius = mixed.CentreCelsius[set];
        double stored = _jar.HeatCapacityJoulesPerKelvin * (celsius - _jar.InitialCelsius);
        HeatHistory before = new(mixed.Seconds[..(set + 1)], mixed.CentreCelsius[..(set + 1)], mixed.RetortCelsius[..(set + 1)], stored, stored, celsius);
        return before.Then(new ConductionModel(_jar.StartingAt(celsius), _grid).Run(profile.After(mixed.Seconds[set])));
    }
}
