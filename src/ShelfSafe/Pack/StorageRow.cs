namespace ShelfSafe.Pack;

/// <summary>How long a kind of dish keeps cold (<c>rules/storage.csv</c>).</summary>
/// <param name="Applies">Kind of dish.</param>
public sealed record StorageRow(string Id, string Applies, string Fridge, string Freezer, string Text, string Source, string Url, string Status);
