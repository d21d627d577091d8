using System.Collections.Immutable;

namespace ShelfSafe.Steps;

/// <summary>Where the phrases of a condition are looked for.</summary>
internal enum PhraseScope
{
    /// <summary>In the sentence of the hit.</summary>
    Sentence,

    /// <summary>In the sentence of the hit, the one before or the one after.</summary>
    Neighbour,

    /// <summary>Anywhere in the dish.</summary>
    Part,

    /// <summary>Just before the hit, with no comma between.</summary>
    Before,

    /// <summary>Right before the hit, with no word between.</summary>
    Adjacent,
}

/// <summary>Some phrases, one of which must (or must not) stand near a hit.</summary>
/// <param name="Number">Number of the condition within its reader, for the memory of a reading.</param>
/// <param name="Scope">Where to look.</param>
/// <param name="Any">The alternatives.</param>
internal sealed record PhraseCondition(int Number, PhraseScope Scope, ImmutableArray<Phrase> Any);
