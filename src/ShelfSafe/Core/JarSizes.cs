using System.Collections.Immutable;

namespace ShelfSafe.Core;

/// <summary>The jar sizes that tables and kitchens name, from small to large.</summary>
public static class JarSizes
{
    /// <summary>All size ids.</summary>
    public static ImmutableArray<string> All { get; } = ["half-pint", "pint", "pint-and-a-half", "quart", "half-gallon"];

    /// <summary>Place of a size from small to large, or -1 for a word that is none.</summary>
    public static int Order(string jar) => All.IndexOf(jar);
}
