using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>One step of the run sheet (<c>rules/run-sheet.csv</c>), in the order of the work.</summary>
/// <param name="Part"><c>before</c>, <c>prepare</c>, <c>fill</c>, <c>canner</c>, <c>after</c> or <c>trouble</c>.</param>
/// <param name="Method"><c>pressure</c>, <c>boiling-water</c> or <c>any</c>.</param>
/// <param name="Applies">Tests: a food of the recipe (<c>group x</c>, <c>trait x</c>, <c>food x</c>), <c>category x</c>, <c>pack hot</c>, <c>gauge dial</c>, <c>under 10</c> minutes, <c>over 30</c> minutes, <c>any</c>.</param>
/// <param name="Minutes">Minutes it takes, least and most, or <see langword="null"/> where it takes no time of its own.</param>
/// <param name="MinutesMost">The most.</param>
/// <param name="Text">What to do; may hold <c>{minutes}</c>, <c>{psi}</c>, <c>{headspace}</c>, <c>{jar}</c>, <c>{jars}</c>, <c>{loads}</c>, <c>{foods}</c>, <c>{acid}</c>, <c>{gauge}</c>, <c>{kilopascals}</c>, <c>{millimetres}</c>; what stands in square brackets is for kitchens that ask for metric figures.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Status"><c>verified</c> or <c>common practice</c>.</param>
public sealed record RunSheetRow(
    string Id,
    string Part,
    string Method,
    ImmutableArray<string> Applies,
    double? Minutes,
    double? MinutesMost,
    string Text,
    string Source,
    string Url,
    string Status);
