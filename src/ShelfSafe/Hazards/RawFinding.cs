using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Measuring;

namespace ShelfSafe.Hazards;

/// <summary>A finding before lines, columns and source texts are looked up.</summary>
/// <param name="Rule">Rule id.</param>
/// <param name="Item">The item it is about, or <see langword="null"/> for the steps or the whole recipe.</param>
/// <param name="Ingredient">The recipe's words, or <see langword="null"/>.</param>
/// <param name="Spans">Places in the file, at least one.</param>
/// <param name="Sources">Source keys, or texts where a row carries its source itself.</param>
internal sealed record RawFinding(
    string Rule,
    FindingLevel Level,
    BatchItem? Item,
    string? Ingredient,
    ImmutableArray<SourceSpan> Spans,
    string Message,
    string Why,
    string Instead,
    ImmutableArray<string> Sources);
