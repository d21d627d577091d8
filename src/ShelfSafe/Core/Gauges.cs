namespace ShelfSafe.Core;

/// <summary>The gauges of a pressure canner, by the words that tables, profiles and records use.</summary>
public static class Gauges
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = ["dial", "weighted"];
}
