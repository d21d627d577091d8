namespace ShelfSafe.Cli;

/// <summary>The words that a kitchen may be described with.</summary>
internal static class KitchenWords
{
    /// <summary>Gauges of a pressure canner.</summary>
    public static IReadOnlyList<string> Gauges { get; } = ["dial", "weighted"];

    /// <summary>Jar sizes, small to large.</summary>
    public static IReadOnlyList<string> Jars { get; } = ["half-pint", "pint", "pint-and-a-half", "quart", "half-gallon"];

    /// <summary>Countries whose kitchen words are known, as ISO 3166 codes but for the customary uk.</summary>
    public static IReadOnlyList<string> Regions { get; } = ["us", "uk", "au", "ca", "nz", "ie", "in", "za"];
}
