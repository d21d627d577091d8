using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>How long a kind of dish keeps cold (<c>rules/storage.csv</c>).</summary>
/// <param name="Id">Key of the row.</param>
/// <param name="Applies">Kinds of dish, rule ids or traits parted by <c>;</c>, or <c>any</c>; of all rows the first that fits is used.</param>
/// <param name="Fridge">Time in the refrigerator as published, such as "3 to 4 days", or empty.</param>
/// <param name="Freezer">Time in the freezer as published, or empty.</param>
/// <param name="Text">What it holds for and how, in plain words.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Url">Where it was read.</param>
/// <param name="Status">Whether it was seen; see <c>rules/README.md</c>.</param>
public sealed record StorageRow(string Id, string Applies, string Fridge, string Freezer, string Text, string Source, string Url, string Status)
{
    /// <summary>The words of <see cref="Applies"/>, each with its mask.</summary>
    internal ImmutableArray<(string Word, ulong Mask)> Words { get; } =
        [.. Applies.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(static word => (word, WordMask.Of(word)))];
}
