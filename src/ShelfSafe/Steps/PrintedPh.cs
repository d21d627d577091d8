using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>A pH that the recipe prints. It may raise an alarm, never lower one.</summary>
/// <param name="Ph">The value, 0 to 14; of a range the higher, as that is the worse.</param>
/// <param name="Sentence">The sentence that prints it.</param>
/// <param name="Span">Place of the printed words.</param>
public sealed record PrintedPh(double Ph, StepSentence Sentence, SourceSpan Span);
