using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>One food that a kitchen change touched.</summary>
/// <param name="Kind"><c>swapped</c>, <c>raised</c>, <c>cut</c>, <c>added</c>, <c>left-out</c>, <c>label</c>, <c>into-jar</c> or <c>to-serving</c>.</param>
/// <param name="Matters">Whether it matters for the jar.</param>
/// <param name="Before">Ingredient line before, or <see langword="null"/> where the food is new.</param>
/// <param name="After">Ingredient line after, or <see langword="null"/> where the food is gone.</param>
/// <param name="BeforeLine">Its line in the file, from 1, or <see langword="null"/>.</param>
/// <param name="AfterLine">Its line in the file, from 1, or <see langword="null"/>.</param>
/// <param name="Factor">Amount after as a multiple of the amount before; <see langword="null"/> where nothing can be compared.</param>
/// <param name="RowId">Row of <c>rules/changes.csv</c> that judged it.</param>
/// <param name="Why">What it means.</param>
/// <param name="Instead">What to do, or empty.</param>
/// <param name="Sources">Publications that the row rests on.</param>
public sealed record IngredientChange(
    string Kind,
    bool Matters,
    string? Before,
    string? After,
    int? BeforeLine,
    int? AfterLine,
    Interval? Factor,
    string RowId,
    string Why,
    string Instead,
    ImmutableArray<SourceReference> Sources);
