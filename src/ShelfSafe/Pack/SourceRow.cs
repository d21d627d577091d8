namespace ShelfSafe.Pack;

/// <summary>One published source of <c>rules/sources.csv</c>.</summary>
/// <param name="Id">Key by which cards cite it.</param>
/// <param name="Title">Name of the publication.</param>
/// <param name="Locator">Page or section of the primary document.</param>
/// <param name="Url">Where it was read; may be a reprint.</param>
/// <param name="Seen">When or by whom it was seen.</param>
/// <param name="Status"><c>verified</c>, <c>memory</c>, <c>absence</c> or <c>none</c>; see <c>rules/README.md</c>.</param>
public sealed record SourceRow(string Id, string Title, string Locator, string Url, string Seen, string Status);
