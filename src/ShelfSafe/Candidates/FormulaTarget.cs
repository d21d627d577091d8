using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Candidates;

/// <summary>A formula at the scale of a batch.</summary>
/// <param name="Slots">Its foods with their amounts.</param>
/// <param name="Extra">Lines of the recipe that no slot takes, dry seasonings and salt aside.</param>
internal sealed record FormulaTarget(ImmutableArray<FormulaTargetSlot> Slots, ImmutableArray<SourceSpan> Extra);

/// <summary>One food of it.</summary>
/// <param name="Amount">Amount and food in words.</param>
/// <param name="Spans">Lines of the recipe that fill the slot; empty where it is missing.</param>
/// <param name="Required">Whether the formula needs it.</param>
/// <param name="Free">Whether its amount may vary, as that of dry spices.</param>
internal sealed record FormulaTargetSlot(string Name, string Amount, ImmutableArray<SourceSpan> Spans, bool Required, bool Free);
