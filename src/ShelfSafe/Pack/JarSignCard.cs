using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>A card of <c>rules/jars-in-hand/</c>: what a cook sees on a jar, and what published guidance says to do.</summary>
/// <param name="Id">The sign in trade words.</param>
/// <param name="Title">The sign in one plain line.</param>
/// <param name="Words">Other words for it.</param>
/// <param name="Hours">Hours after the canner from which <paramref name="TooLate"/> holds, or <see langword="null"/>.</param>
/// <param name="Also">Cautions that are printed after it, by their names.</param>
/// <param name="Sources">Keys of the sources table.</param>
/// <param name="Any">Steps for any jar.</param>
/// <param name="Hot">Steps for a jar put up by a published hot-pack process, in time.</param>
/// <param name="Raw">Steps for a jar put up by a published raw-pack process, in time.</param>
/// <param name="TooLate">Steps for a jar put up by a published process, once the hours are over.</param>
/// <param name="NotPublished">Steps for a jar put up by no published process; the strictest of all.</param>
/// <param name="Why">The reason.</param>
public sealed record JarSignCard(
    string Id,
    string Title,
    ImmutableArray<string> Words,
    int? Hours,
    ImmutableArray<string> Also,
    ImmutableArray<string> Sources,
    ImmutableArray<string> Any,
    ImmutableArray<string> Hot,
    ImmutableArray<string> Raw,
    ImmutableArray<string> TooLate,
    ImmutableArray<string> NotPublished,
    string Why);
