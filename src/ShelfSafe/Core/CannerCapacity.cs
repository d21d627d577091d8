using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>How many jars one load of the cook's own canner takes.</summary>
/// <param name="Any">Jars of whatever size, 1 or more, or <see langword="null"/>.</param>
/// <param name="Jars">Jars by size id, each 1 or more.</param>
public sealed record CannerCapacity(int? Any, ImmutableSortedDictionary<string, int> Jars)
{
    /// <summary>Jars of one size in a load: never more than fits, so that the loads are not counted too few.</summary>
    /// <param name="jar">Size id.</param>
    /// <param name="usual">Jars of that size in the canner of the table.</param>
    /// <returns>
    /// The number told for the size; else that of the next larger size told, since as many smaller jars fit at least;
    /// else the number told for any size; else the usual one, but no more than was told for a smaller size.
    /// </returns>
    public Interval Of(string jar, Interval usual)
    {
        int own = JarSizes.Order(jar);
        int[] larger = [.. Jars.Where(told => JarSizes.Order(told.Key) >= own).OrderBy(told => JarSizes.Order(told.Key)).Select(told => told.Value)];
        if (larger.Length > 0)
        {
            return Interval.Exactly(larger[0]);
        }

        if (Any is { } any)
        {
            return Interval.Exactly(any);
        }

        double most = Jars.IsEmpty ? double.PositiveInfinity : Jars.Values.Min();
        return new(Math.Min(usual.Low, most), Math.Min(usual.High, most));
    }
}
