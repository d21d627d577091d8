namespace ShelfSafe.Reports;

/// <summary>How a report for people is laid out.</summary>
/// <param name="Width">Columns to fill; below 40 is read as 40.</param>
/// <param name="Colour">Whether terminal colours may be used.</param>
public sealed record TextStyle(int Width = 80, bool Colour = false)
{
    /// <summary>Fewest columns that a report can be laid out in.</summary>
    public const int Narrowest = 40;
}
