using ShelfSafe.Core;

namespace ShelfSafe.Cli;

/// <summary>The words that a kitchen may be described with.</summary>
internal static class KitchenWords
{
    /// <summary>In place of the name of a profile: read none, not even the one in its usual place.</summary>
    public const string NoFile = "none";

    /// <summary>What <c>--kitchen</c> does.</summary>
    public const string FileHelp = "Kitchen profile (JSON). Without it, shelfsafe/kitchen.json in your configuration folder ($XDG_CONFIG_HOME or ~/.config, on Windows %APPDATA%) is read if it is there; none reads no profile.";

    /// <summary>Gauges of a pressure canner.</summary>
    public static IReadOnlyList<string> Gauges { get; } = Core.Gauges.All;

    /// <summary>Kinds of canner.</summary>
    public static IReadOnlyList<string> Canners { get; } = ["boiling-water", "atmospheric-steam", "pressure", "electric"];

    /// <summary>Jar sizes, small to large.</summary>
    public static IReadOnlyList<string> Jars { get; } = JarSizes.All;

    /// <summary>Countries whose kitchen words are known, as ISO 3166 codes but for the customary uk.</summary>
    public static IReadOnlyList<string> Regions { get; } = ["us", "uk", "au", "ca", "nz", "ie", "in", "za"];

    /// <summary>Countries that a profile may name: those whose words are known, and those whose authority is quoted.</summary>
    public static IReadOnlyList<string> Countries { get; } = [.. Regions, "de"];

    /// <summary>Units to show.</summary>
    public static IReadOnlyList<string> Units { get; } = ["us", "metric"];

    /// <summary>The country if its kitchen words are known, else none, so that no word is settled by a country that has no list.</summary>
    public static string WordsOf(string country) => Regions.Contains(country, StringComparer.Ordinal) ? country : string.Empty;
}
