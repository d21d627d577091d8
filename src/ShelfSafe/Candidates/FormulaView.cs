using System.Collections.Immutable;
using ShelfSafe.Measuring;

namespace ShelfSafe.Candidates;

/// <summary>A batch as the formulas look at it, prepared once for all questions that are asked of them.</summary>
/// <param name="batch">The batch.</param>
/// <param name="found">For each formula which slots it has a food for, and how many of its foods.</param>
internal sealed class FormulaView(Batch batch, (ulong Filled, int Foods)[] found)
{
    private ImmutableArray<PrintedLine>? _lines;

    /// <summary>The batch.</summary>
    public Batch Batch => batch;

    /// <summary>For each formula which of its slots the batch has a food for, and how many of the foods that are no seasoning it has.</summary>
    public (ulong Filled, int Foods)[] Found => found;

    /// <summary>The printed lines of the batch.</summary>
    public ImmutableArray<PrintedLine> Lines => _lines ??= PrintedLine.Of(batch);
}
