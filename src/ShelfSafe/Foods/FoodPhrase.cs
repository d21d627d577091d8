using System.Collections.Immutable;

namespace ShelfSafe.Foods;

/// <summary>One food of a line: its words, its plain name and what it means.</summary>
internal sealed record FoodPhrase(int Start, int End, string Food, FoodMatch Match, ImmutableArray<Alternative> Alternatives);
