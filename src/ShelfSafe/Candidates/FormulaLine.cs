using System.Collections.Immutable;
using ShelfSafe.Measuring;

namespace ShelfSafe.Candidates;

/// <summary>Items of one ingredient that go to a slot together.</summary>
/// <param name="Items">One food, or the foods of a choice that one slot takes whole.</param>
/// <param name="Sure">Whether it certainly goes in; if not, nothing of it may be counted where more is wanted.</param>
/// <param name="Options">Numbers of the slots that take it; empty where none does.</param>
/// <param name="Shares">Whether its foods have one amount together ("3 cups celery and onion").</param>
internal sealed record FormulaLine(ImmutableArray<BatchItem> Items, bool Sure, ImmutableArray<int> Options, bool Shares = false)
{
    /// <summary>Whether the line's word means this food in one country alone, and another elsewhere.</summary>
    public bool Ambiguous { get; init; }

    /// <summary>The first item, for places and words.</summary>
    public BatchItem Item => Items[0];

    /// <summary>The whole ingredient line.</summary>
    public string Text => Items[0].Ingredient.Line.Text.Text;
}
