namespace ShelfSafe.Heat;

/// <summary>Fineness of the conduction solver.</summary>
/// <param name="RadialNodes">Nodes from axis to wall, 4 to 400.</param>
/// <param name="AxialNodes">Nodes from bottom to top, 5 to 801 and odd, so that one lies at half height.</param>
/// <param name="LongestStepSeconds">Longest time step, above 0; the solver takes a shorter one where the grid asks for it.</param>
public sealed record ConductionGrid(int RadialNodes, int AxialNodes, double LongestStepSeconds = 30)
{
    /// <summary>Within 0.1 K of the exact series in a pint from the first minutes on.</summary>
    public static ConductionGrid Usual => new(20, 41);

    /// <summary>Nodes from axis to wall.</summary>
    public int RadialNodes { get; } = (int)Bounds.Within(RadialNodes, 4, 400, "nodes");

    /// <summary>Nodes from bottom to top.</summary>
    public int AxialNodes { get; } = AxialNodes % 2 == 1
        ? (int)Bounds.Within(AxialNodes, 5, 801, "nodes")
        : throw new ArgumentOutOfRangeException(nameof(AxialNodes), AxialNodes, "must be odd, so that a node lies at half height");

    /// <summary>Longest time step, seconds.</summary>
    public double LongestStepSeconds { get; } = Bounds.Positive(LongestStepSeconds, 3_600, "s");
}
