using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>One input to be vetted: a file, standard input, or a record of either.</summary>
/// <param name="Path">Path, or <c>-</c>.</param>
/// <param name="Kind">What it is, from <see cref="RecipeKinds"/>.</param>
/// <param name="Line">The record itself, or <see langword="null"/> where the file is still to be read.</param>
/// <param name="Record">Number of the record, from 1, or <see langword="null"/>.</param>
/// <param name="Wrong">Why the record could not be read, or empty.</param>
internal sealed record VetWork(string Path, string Kind, string? Line = null, int? Record = null, string Wrong = "");

/// <summary>One report: written out, or still to be written where it would be long.</summary>
/// <param name="Text">The report written out, UTF-8.</param>
/// <param name="Large">The recipe whose report is written as it comes, or <see langword="null"/>.</param>
internal readonly record struct VetPiece(byte[] Text, ReportItem? Large = null);

/// <summary>What came of one input: finished pieces of the report, and what to say and count.</summary>
/// <param name="Pieces">Its reports.</param>
/// <param name="Counts">One a recipe.</param>
/// <param name="Troubles">What could not be read.</param>
/// <param name="First">The first recipe, for what stands before all.</param>
internal sealed record VetResult(IReadOnlyList<VetPiece> Pieces, IReadOnlyList<VetCount> Counts, IReadOnlyList<string> Troubles, ReportItem? First);
