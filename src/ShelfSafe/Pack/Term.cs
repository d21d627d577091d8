using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>One term of a check.</summary>
/// <param name="Kind">What it looks at.</param>
/// <param name="Negated">Whether the term must not hold.</param>
/// <param name="Values">Ids or words, any of which is enough.</param>
/// <param name="Threshold">Number behind "above": grams, millilitres, share 0 to 1, or pH.</param>
/// <param name="Unit">Unit of an amount: <c>g</c> or <c>ml</c>; else empty.</param>
public sealed record Term(TermKind Kind, bool Negated, ImmutableArray<string> Values, double Threshold = 0, string Unit = "")
{
    /// <summary>Its values as a mask.</summary>
    internal ulong Mask { get; } = WordMask.Of(Values);

    /// <summary>Whether it looks at one ingredient.</summary>
    public bool IsItemTerm => Kind <= TermKind.AboveSeasoning;
}

/// <summary>One row of a card: all terms must hold.</summary>
/// <param name="Terms">The terms, at least one.</param>
/// <param name="Line">Line in the card, from 1.</param>
public sealed record Check(ImmutableArray<Term> Terms, int Line)
{
    /// <summary>Traits of which the food must carry one, as a mask; none where nothing is asked.</summary>
    internal ulong TraitNeed { get; } = Need(Terms, TermKind.Trait);

    /// <summary>Foods of which it must be one, as a mask; none where nothing is asked.</summary>
    internal ulong FoodNeed { get; } = Need(Terms, TermKind.Food);

    private static ulong Need(ImmutableArray<Term> terms, TermKind kind) => terms.FirstOrDefault(term => term.Kind == kind && !term.Negated)?.Mask ?? 0;

    /// <summary>Whether it fires for ingredients rather than once for the recipe.</summary>
    public bool HasItemTerm { get; } = Terms.Any(term => term.IsItemTerm);
}
