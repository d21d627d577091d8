using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;

namespace ShelfSafe.Candidates;

/// <summary>One printed ingredient line with the items of the jar that were read from it; made once a batch and sorted by every formula.</summary>
internal sealed class PrintedLine
{
    private string? _folded;

    private PrintedLine(ImmutableArray<BatchItem> items)
    {
        Items = items;
        Shares = items.Any(item => item.Ingredient.SharesAmountWith is not null);
        IsOneAmount = Shares && HasOneAmount(items) && !FormulaText.HasAny(Text, ["each"]);
        Choices = Runs(items, static (first, next) => first.Line == next.Line);
    }

    /// <summary>All its items.</summary>
    public ImmutableArray<BatchItem> Items { get; }

    /// <summary>Its items by the entry they came from: one food, or the foods of a choice.</summary>
    public ImmutableArray<ImmutableArray<BatchItem>> Choices { get; }

    /// <summary>Whether some of its foods have their amount together with another.</summary>
    public bool Shares { get; }

    /// <summary>Whether all its foods have one amount together.</summary>
    public bool IsOneAmount { get; }

    /// <summary>The line.</summary>
    public string Text => Items[0].Ingredient.Line.Text.Text;

    /// <summary>The folded words of the line, joined by blanks.</summary>
    public string Folded => _folded ??= string.Join(' ', WordFolding.Words(Text));

    /// <summary>The lines of a batch in their order.</summary>
    public static ImmutableArray<PrintedLine> Of(Batch batch) =>
        [.. Runs(batch.InJar, static (first, next) => ReferenceEquals(first.Ingredient.Line, next.Ingredient.Line)).Select(static items => new PrintedLine(items))];

    // Items stand in the order of the lines and entries that they were read from.
    private static ImmutableArray<ImmutableArray<BatchItem>> Runs(ImmutableArray<BatchItem> items, Func<BatchItem, BatchItem, bool> together)
    {
        ImmutableArray<ImmutableArray<BatchItem>>.Builder runs = ImmutableArray.CreateBuilder<ImmutableArray<BatchItem>>();
        for (int from = 0, to; from < items.Length; from = to)
        {
            to = from + 1;
            while (to < items.Length && together(items[from], items[to]))
            {
                to++;
            }

            runs.Add(items.Slice(from, to - from));
        }

        return runs.ToImmutable();
    }

    // Of foods that share an amount only one carries it; a second amount in the line is an amount of its own.
    private static bool HasOneAmount(ImmutableArray<BatchItem> items) =>
        items.Where(item => item.Ingredient.SharesAmountWith is null).Select(item => item.Line).Distinct().Count() == 1;
}
