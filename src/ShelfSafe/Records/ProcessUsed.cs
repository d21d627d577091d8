namespace ShelfSafe.Records;

/// <summary>The process as the cook ran it; whatever was not told is <see langword="null"/>.</summary>
/// <param name="Method"><c>boiling-water</c>, <c>atmospheric-steam</c> or <c>pressure</c>.</param>
/// <param name="Jar">Jar size, a word of the process table.</param>
/// <param name="Pack"><c>hot</c> or <c>raw</c>.</param>
/// <param name="Minutes">Full minutes at a boil or at pressure.</param>
/// <param name="Gauge"><c>dial</c> or <c>weighted</c>.</param>
/// <param name="Psi">Gauge pressure, pounds a square inch.</param>
/// <param name="RowId">Row of the process table that it meets; set by <see cref="PublishedJudge"/> alone.</param>
public sealed record ProcessUsed(string? Method, string? Jar, string? Pack, int? Minutes, string? Gauge, double? Psi, string? RowId = null);
