using System.Collections.Immutable;

namespace ShelfSafe.Heat;

/// <summary>What happens around the jar, phase after phase: come-up, hold, pressure drop, cool-down.</summary>
/// <param name="Phases">The phases in order; at least one.</param>
public sealed record RetortProfile(ImmutableArray<RetortPhase> Phases)
{
    /// <summary>The phases in order.</summary>
    public ImmutableArray<RetortPhase> Phases { get; } = Phases is { IsDefaultOrEmpty: false } ? Phases : throw new ArgumentException("a profile needs at least one phase", nameof(Phases));

    /// <summary>Length of all phases, seconds.</summary>
    public double Seconds
    {
        get
        {
            double sum = 0;
            foreach (RetortPhase phase in Phases)
            {
                sum += phase.Seconds;
            }

            return sum;
        }
    }

    /// <summary>A jar plunged into a medium of constant temperature.</summary>
    /// <param name="seconds">How long, above 0 and at most 2 days.</param>
    /// <param name="celsius">Temperature of the medium, from 0 to 150 °C.</param>
    /// <param name="filmWattsPerSquareMetreKelvin">Heat transfer outside the jar, above 0; may be infinite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
    public static RetortProfile Constant(double seconds, double celsius, double filmWattsPerSquareMetreKelvin) =>
        new([new(seconds, celsius, celsius, filmWattsPerSquareMetreKelvin)]);

    /// <summary>A canner that comes up, holds, loses its pressure by itself, and a jar that then stands in the room.</summary>
    /// <param name="startCelsius">Temperature around the jar when heating starts.</param>
    /// <param name="comeUpSeconds">Time up to the hold, above 0.</param>
    /// <param name="holdCelsius">Temperature of the hold.</param>
    /// <param name="holdSeconds">Time of the hold, above 0.</param>
    /// <param name="boilingCelsius">Temperature at which the pressure is gone: the boiling point at that altitude.</param>
    /// <param name="dropSeconds">Time of the pressure drop, above 0.</param>
    /// <param name="roomCelsius">Temperature of the room.</param>
    /// <param name="roomSeconds">Time watched in the room, above 0.</param>
    /// <param name="steamFilm">Heat transfer in the canner, W/(m² K).</param>
    /// <param name="airFilm">Heat transfer in still air, W/(m² K).</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
    public static RetortProfile Canner(
        double startCelsius,
        double comeUpSeconds,
        double holdCelsius,
        double holdSeconds,
        double boilingCelsius,
        double dropSeconds,
        double roomCelsius,
        double roomSeconds,
        double steamFilm = 3_000,
        double airFilm = 10) =>
        new(
        [
            new(comeUpSeconds, startCelsius, holdCelsius, steamFilm),
            new(holdSeconds, holdCelsius, holdCelsius, steamFilm),
            new(dropSeconds, holdCelsius, boilingCelsius, steamFilm),
            new(roomSeconds, roomCelsius, roomCelsius, airFilm),
        ]);

    /// <summary>What is left of the profile after a time.</summary>
    /// <param name="seconds">From 0 to less than the whole length.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left.</exception>
    public RetortProfile After(double seconds)
    {
        Bounds.Within(seconds, 0, Seconds, "s");
        ImmutableArray<RetortPhase>.Builder left = ImmutableArray.CreateBuilder<RetortPhase>();
        double start = 0;
        foreach (RetortPhase phase in Phases)
        {
            double gone = seconds - start;
            if (gone <= 0)
            {
                left.Add(phase);
            }
            else if (gone < phase.Seconds)
            {
                left.Add(new(phase.Seconds - gone, phase.At(gone), phase.ToCelsius, phase.FilmWattsPerSquareMetreKelvin));
            }

            start += phase.Seconds;
        }

        return left.Count > 0 ? new(left.ToImmutable()) : throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "nothing is left of the profile");
    }
}
