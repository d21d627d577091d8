using ShelfSafe.Core;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>A processing time, pressure, jar or method that the recipe itself prints; compared with the published one, never followed.</summary>
/// <param name="Minutes">Printed minutes, a range as low and high; <see langword="null"/> where none is printed.</param>
/// <param name="PressurePsi">Printed gauge pressure, pounds a square inch; kPa and bar are converted; <see langword="null"/> where none is printed.</param>
/// <param name="Jar">half-pint, pint, pint-and-a-half, quart, half-gallon or gallon as printed (litres and millilitres: the next larger); <see langword="null"/> where none is printed.</param>
/// <param name="Method">boiling-water, atmospheric-steam or pressure; <see langword="null"/> where none is printed.</param>
/// <param name="Sentence">The sentence that prints it.</param>
/// <param name="Span">Place of the printed words.</param>
public sealed record PrintedProcess(Interval? Minutes, double? PressurePsi, string? Jar, string? Method, StepSentence Sentence, SourceSpan Span);
