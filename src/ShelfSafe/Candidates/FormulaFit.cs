using System.Collections.Immutable;
using ShelfSafe.Measuring;

namespace ShelfSafe.Candidates;

/// <summary>How one way of sorting the lines into the slots comes out.</summary>
/// <param name="Scale">The cook's batch as a multiple of the tested one.</param>
/// <param name="Faults">What keeps it from the formula; empty where it fits as written.</param>
/// <param name="Taken">Items that a slot takes.</param>
internal sealed record FormulaFit(double Scale, ImmutableArray<FormulaFault> Faults, ImmutableArray<FormulaDifference> Differences, ImmutableArray<BatchItem> Taken)
{
    /// <summary>Whether the formula covers the batch, at most with a label to name.</summary>
    public bool Covers => Faults.All(fault => fault.IsMended);
}
