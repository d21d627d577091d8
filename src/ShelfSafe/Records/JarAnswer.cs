using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Records;

/// <summary>What published guidance says to do with a jar in the hand.</summary>
/// <param name="Card">The sign.</param>
/// <param name="Batch">The batch it came from, or <see langword="null"/> where that is not known.</param>
/// <param name="Cases">Steps by case; the key names the words of the heading.</param>
/// <param name="Cautions">What is printed after it: title, lines and keys of its sources.</param>
/// <param name="Sources">All sources, each once.</param>
public sealed record JarAnswer(
    JarSignCard Card,
    BatchRecord? Batch,
    ImmutableArray<JarCase> Cases,
    ImmutableArray<JarCaution> Cautions,
    ImmutableArray<SourceRow> Sources);

/// <summary>Steps for one case.</summary>
/// <param name="Key">Key of the heading in the words.</param>
/// <param name="Steps">Steps, plain sentences.</param>
public sealed record JarCase(string Key, ImmutableArray<string> Steps);

/// <summary>A caution of the pack.</summary>
/// <param name="Title">Title.</param>
/// <param name="Lines">Plain sentences.</param>
public sealed record JarCaution(string Title, ImmutableArray<string> Lines);
