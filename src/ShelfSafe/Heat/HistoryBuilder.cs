using System.Collections.Immutable;

namespace ShelfSafe.Heat;

/// <summary>Collects the points of a history while a model runs.</summary>
internal sealed class HistoryBuilder
{
    private readonly ImmutableArray<double>.Builder _seconds = ImmutableArray.CreateBuilder<double>();
    private readonly ImmutableArray<double>.Builder _centre = ImmutableArray.CreateBuilder<double>();
    private readonly ImmutableArray<double>.Builder _retort = ImmutableArray.CreateBuilder<double>();

    /// <summary>Adds a point.</summary>
    public void Add(double seconds, double centreCelsius, double retortCelsius)
    {
        _seconds.Add(seconds);
        _centre.Add(centreCelsius);
        _retort.Add(retortCelsius);
    }

    /// <summary>The history with its balance.</summary>
    public HeatHistory Build(double absorbedJoules, double storedJoules, double meanCelsius) =>
        new(_seconds.ToImmutable(), _centre.ToImmutable(), _retort.ToImmutable(), absorbedJoules, storedJoules, meanCelsius);
}
