namespace ShelfSafe.Pack;

/// <summary>One published source of <c>rules/sources.csv</c>.</summary>
/// <param name="Locator">Page or section of the primary document.</param>
/// <param name="Url">Where it was read; may be a reprint.</param>
/// <param name="Seen">When or by whom it was seen.</param>
public sealed record SourceRow(string Id, string Title, string Locator, string Url, string Seen, string Status);
