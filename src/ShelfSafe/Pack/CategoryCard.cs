using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>A card of <c>rules/categories/</c>: an open category of published processes and its gates.</summary>
/// <param name="Id">The file's name.</param>
/// <param name="Name">Plain name of the category.</param>
/// <param name="Dish">Plain word for such a dish in messages, for instance "soup".</param>
/// <param name="Method"><c>pressure</c>, <c>boiling-water</c> or <c>dry</c>.</param>
/// <param name="Acid">What the category asks to be added to each jar, or empty.</param>
/// <param name="Products">Products of the process table that may govern; empty means the core food's own row.</param>
/// <param name="Rank">Order in which the category is named when several apply; the higher is named.</param>
/// <param name="LongestTime">Whether the longest time of any single main food governs where it is longer than the category's own.</param>
/// <param name="Applies">The category is considered where any of these holds.</param>
/// <param name="Core">What the dish is made of: an item that satisfies any of these is part of the category itself.</param>
/// <param name="Allowed">What may stand beside the core; anything else is an <c>untested-food</c> finding.</param>
/// <param name="Gates">Conditions that change or refuse.</param>
public sealed record CategoryCard(
    string Id,
    string Name,
    string Dish,
    string Method,
    ImmutableArray<string> Products,
    int Rank,
    string Acid,
    bool LongestTime,
    ImmutableArray<Check> Applies,
    ImmutableArray<Check> Core,
    ImmutableArray<Check> Allowed,
    ImmutableArray<Gate> Gates)
{
    /// <summary>Whether what goes into the jar is smooth, strained or dry by itself, so that "mashed" or "grated" in a line of the list says nothing against it.</summary>
    public bool IsSmooth { get; init; }

    /// <summary>Products that govern in place of the others where seafood stays in the jar; empty where seafood changes nothing.</summary>
    public ImmutableArray<string> SeafoodProducts { get; init; } = [];
}

/// <summary>One gate of a category.</summary>
/// <param name="Rule">Rule id that its finding carries.</param>
/// <param name="Refuses">Whether the category is then out of reach even after changes.</param>
/// <param name="Level">Level of the finding where it does not refuse; a refusal is a change.</param>
/// <param name="Check">When the gate is shut.</param>
/// <param name="Message">What is there, with placeholders.</param>
/// <param name="Instead">What to do instead; empty for the words of the rule's own card.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>.</param>
public sealed record Gate(string Rule, bool Refuses, FindingLevel Level, Check Check, string Message, string Instead, ImmutableArray<string> Sources);
