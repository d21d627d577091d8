using System.Collections.Immutable;
using ShelfSafe.Hazards;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>How a category or formula judges the batch by itself.</summary>
internal enum Judgement
{
    /// <summary>It does not cover the batch, also not after changes.</summary>
    Refuses,

    /// <summary>It covers it once the changes are made.</summary>
    AdmitsAfter,

    /// <summary>It covers it as written.</summary>
    Admits,
}

/// <summary>What one category or formula says of the batch.</summary>
/// <param name="Processes">Rows of the process table that would govern.</param>
/// <param name="Reason">One plain sentence that tells why.</param>
internal sealed record Candidate(
    string Id,
    string Name,
    string Kind,
    string Method,
    int Rank,
    Judgement Judgement,
    ImmutableArray<RawFinding> Findings,
    ImmutableArray<ProcessRow> Processes,
    string Reason)
{
    /// <summary>Whether it refuses for a few points that its findings name one by one.</summary>
    public bool IsNear { get; init; }

    /// <summary>Whether it is named to the cook as the nearest; a formula that is made of other food is not.</summary>
    public bool IsNamed { get; init; } = true;

    /// <summary>Whether the card of the category says that its product is smooth, strained or dry by itself.</summary>
    public bool IsSmooth { get; init; }

    /// <summary>Rows of the category itself that a longer time of a single food overrules.</summary>
    public ImmutableArray<ProcessRow> Overruled { get; init; } = [];
}
