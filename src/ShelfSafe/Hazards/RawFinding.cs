using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Measuring;

namespace ShelfSafe.Hazards;

/// <summary>A finding before lines, columns and source texts are looked up.</summary>
/// <param name="Rule">Rule id.</param>
/// <param name="Level">How grave it is.</param>
/// <param name="Item">The item it is about, or <see langword="null"/> for the steps or the whole recipe.</param>
/// <param name="Ingredient">The recipe's words, or <see langword="null"/>.</param>
/// <param name="Spans">Places in the file, at least one.</param>
/// <param name="Words">The texts of its card; those that are set below go before them.</param>
/// <param name="Sources">Source keys, or texts where a row carries its source itself.</param>
internal sealed record RawFinding(
    string Rule,
    FindingLevel Level,
    BatchItem? Item,
    string? Ingredient,
    ImmutableArray<SourceSpan> Spans,
    CardWords? Words,
    ImmutableArray<string> Sources)
{
    /// <summary>What is wrong.</summary>
    public string Message
    {
        get => field ?? Words?.Message ?? string.Empty;
        init;
    }

    /// <summary>Why.</summary>
    public string Why
    {
        get => field ?? Words?.Why ?? string.Empty;
        init;
    }

    /// <summary>What to do instead.</summary>
    public string Instead
    {
        get => field ?? Words?.Instead ?? string.Empty;
        init;
    }
}
