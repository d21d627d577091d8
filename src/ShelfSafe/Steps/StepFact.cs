using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>Something the steps say that matters for the jar: blended, thickened, turned upside down, strained...</summary>
/// <param name="Id">Fact id, a row of <c>rules/step-facts.csv</c>.</param>
/// <param name="Sentence">The sentence that says it.</param>
/// <param name="Span">Place of the words that say it.</param>
/// <param name="Words">Those words.</param>
public sealed record StepFact(string Id, StepSentence Sentence, SourceSpan Span, string Words);
